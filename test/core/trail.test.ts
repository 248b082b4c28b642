import { expect, test } from 'vitest';
import { kcalPerG, trailFoodG } from '#core/trail.ts';

test.each([0, -1, NaN])('%s people, days, pounds or grams are refused', (bad) => {
  expect(() => trailFoodG(bad, 8, 1.75)).toThrow(expect.objectContaining({ code: 'impossible-trip' }));
  expect(() => trailFoodG(4, bad, 1.75)).toThrow(expect.objectContaining({ code: 'impossible-trip' }));
  expect(() => trailFoodG(4, 8, bad)).toThrow(expect.objectContaining({ code: 'impossible-trip' }));
  expect(() => kcalPerG(3000, bad)).toThrow(expect.objectContaining({ code: 'impossible-weight' }));
});
