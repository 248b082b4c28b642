import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'start-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const start = (input: string, env: Record<string, string> = {}) =>
  execFileSync(process.execPath, [join(import.meta.dirname, '..', 'src', 'start.js')], {
    input,
    encoding: 'utf8',
    env: { ...process.env, HOUSEHOLD_DB: join(folder, 'household.db'), TELEGRAM_BOT_TOKEN: '', ...env },
  });

test('a newcomer pipes a first batch in, gets right figures, and the program ends', () => {
  const said = start(
    [
      'Ana: /recipe Lentil pot, 4 servings',
      '  400 g red lentils',
      '  1.6 l water',
      '  6 g salt',
      '[2027-01-02 08:00]',
      'Ana: /batch lentil pot trays 950 950 g',
      '[2027-01-03 06:00]',
      'Ben: /weigh B1 190 190',
      '[2027-01-03 09:00]',
      'Ben: /weigh B1 190 190',
      'Ana: /seal 3 x 95 g B1',
      'Ana: /water B1-2',
      '/stock',
    ].join('\n'),
    { HOUSEHOLD_NOW: '2027-01-01T08:00:00Z', TZ: 'UTC' },
  );
  // The balance: 1900 g wet, 380 g dry, so 95 g take (1900 − 380) x 95 / 380 = 380 ml.
  expect(said).toMatch(/B1-2 \(95 g Lentil pot\): start with \d+ ml of boiling water, up to 380 ml/);
  expect(said).toContain('> Lentil pot: 3 pouches of 95 g');
});

test('what was recorded is there after a restart, in files for their owner alone', () => {
  expect(start('/pouch B1-3\n')).toContain('> B1-3: Lentil pot');
  for (const name of ['household.db', 'foods.db']) {
    expect(existsSync(join(folder, name))).toBe(true);
    expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600);
  }
});

test('a bad setting names itself and stops the start', () => {
  expect(() => start('', { HOUSEHOLD_NOW: 'yesterday' })).toThrow(/HOUSEHOLD_NOW is no ISO 8601 time/);
});
