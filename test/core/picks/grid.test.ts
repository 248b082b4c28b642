import { expect, test } from 'vitest';
import { daysLeftAfter, monthsOf } from '#core/picks/classes.ts';

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
