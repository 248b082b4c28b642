// Witness: common practice, no source.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'household-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The terminal as a script drives it: lines in, answers out, the exit code. */
function play(lines: string[], now: string, database = join(folder, 'h.db')) {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['--import', 'tsx', 'src/main.ts'], {
    cwd: join(import.meta.dirname, '..', '..'),
    input: lines.join('\n'),
    encoding: 'utf8',
    env: { PATH: process.env['PATH'] ?? '', HOUSEHOLD_DB: database, HOUSEHOLD_NOW: now, TZ: 'UTC' },
  });
  return { stdout, stderr, status };
}

test('reminders show at the start and when the clock moves, once and once more, also behind a restart', () => {
  const first = play(
    ['Ana: /recipe Rice, 6 servings: 300 g long grain rice; 1 l water', 'Ana: /batch rice trays 800 g'],
    '2027-04-01T08:00:00Z',
  );
  expect(first).toMatchObject({ status: 0, stderr: '' });
  expect(first.stdout).not.toContain('reminder');
  const second = play(
    ['Ana: /batch rice trays 400 g anew', '[2027-04-03 12:00]', 'Ana: /help'],
    '2027-04-02T09:00:00Z',
  );
  expect(second.status).toBe(0);
  const lines = second.stdout.split('\n');
  expect(lines.slice(0, 2)).toEqual(['> A reminder:', expect.stringContaining('B1, Rice: time to weigh')]);
  // Nobody weighed it: a day later it is said once more.
  expect(second.stdout.match(/B1, Rice: time to weigh/g)).toHaveLength(2);
  expect(second.stdout.match(/B2, Rice: time to weigh/g)).toHaveLength(1);
  const third = play(['Ana: /help'], '2027-04-03T12:00:00Z');
  expect(third.stdout).not.toContain('time to weigh');
});

test('a recipe goes on with its lines as they were copied, up to an empty line or the next request', () => {
  const { stdout } = play(
    [
      'Ana: /recipe Rice pot, serves 6',
      '300 g long grain rice',
      '1 l water',
      'salt',
      '',
      'Ana: /recipe Oat pot, serves 2',
      '- 100 g rolled oats',
      'For later:',
      '- 20 g raisins',
      'Ben: /recipe rice pot',
      'how many servings has the oat pot?',
    ],
    '2027-04-01T08:00:00Z',
    join(folder, 'copied.db'),
  );
  expect(stdout).toContain('Recorded: Rice pot, 6 servings.');
  expect(stdout).toContain('Recorded: Oat pot, 2 servings.');
  expect(stdout).toContain('Rice pot, 6 servings.');
  expect(stdout).not.toContain('I found no request');
});

test('what is said of several people names no speaker', () => {
  const { stdout } = play(
    ['we are three: me, Tom 9, Ida 6', 'Dr. Ana Lee: /eater me'],
    '2027-04-01T08:00:00Z',
    join(folder, 'speaker.db'),
  );
  expect(stdout).toContain('Tom (child, 9 years)');
  expect(stdout).toContain('Dr. Ana Lee (adult)');
});
