import { expect, test } from 'vitest';
import { loadHours } from '#core/load-hours.ts';

// A mean, worked by hand; a day until three are recorded is common practice, no source.
const took = (...hours: number[]) => loadHours(hours.map((h) => ({ hours: h })));

test.each([
  [[], 24, 0],
  [[30, 34], 24, 2],
  [[30, 34, 35], 33, 3],
])('loads of %j h: %f h from %i', (hours, mean, recorded) => {
  expect(took(...hours)).toEqual({ hours: mean, recorded });
});
