import { expect, test } from 'vitest';
import { bucketOf, daysLeftAfter, monthsOf } from '#core/picks/grid.ts';

// Two months, a year and three years are this project's own choice: the edges are written out so that a change shows.
test.each([
  [0, 0],
  [60, 0],
  [61, 1],
  [365, 1],
  [366, 2],
  [1095, 2],
  [1096, 3],
  [36500, 3],
])('%i days left after the trip stand in bucket %i', (days, bucket) => expect(bucketOf(days)).toBe(bucket));

test.each([
  [100, 40, 60],
  [40, 40, 0],
  [39, 40, 0],
  [null, 40, 36500],
  [99_999, 40, 36500],
])('best by day %s, back on day %i: %i days left', (bestBy, lastDay, days) =>
  expect(daysLeftAfter(bestBy, lastDay)).toBe(days),
);

test.each([
  [29, 0],
  [30, 1],
  [59, 1],
  [60, 2],
])('%i days are %i whole months', (days, months) => expect(monthsOf(days)).toBe(months));
