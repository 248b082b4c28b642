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
