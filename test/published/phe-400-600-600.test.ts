import { expect, test } from 'vitest';
import { mealFloorKcal } from '#core/meal-floors.ts';

// Public Health England, press release of 6 March 2018: about 400 kcal for breakfast, 600 for lunch, 600 for dinner,
// of 2,000 kcal a day for women.
test.each([
  ['breakfast', 400],
  ['lunch', 600],
  ['dinner', 600],
] as const)('of 2,000 kcal %s gives %i', (meal, kcal) =>
  expect(mealFloorKcal(2000, meal, 'walk')).toBe(kcal),
);
