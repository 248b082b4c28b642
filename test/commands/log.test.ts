import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason } from '../season.ts';

test('newest first, with who and when', () => {
  const lines = openSeason().say('/log 3 entries').split('\n');
  expect(lines).toHaveLength(3);
  expect(lines[0]).toMatch(/^\w{3} \d+ \w+ \d\d:\d\d Ana: planned the trip Heron Lake/);
});

test('an empty house says so', () => {
  expect(openTestHouse().say('/log')).toBe('Nothing has been recorded yet.');
});
