import { expect, test } from 'vitest';
import { barrierMonths, clearMlMilPer100In2Day, oxygenInMlPerDay } from '#core/barrier.ts';

// Biosystems Engineering, Table 11.2 (read in an excerpt): nylon/LDPE lets 4 to 5 cm³·mil through 100 in² a day at 1 atm.
test('the middle of the printed range', () => {
  const [low, high] = [4, 5];
  expect(clearMlMilPer100In2Day).toBe((low + high) / 2);
});

// Worked from it: a bag of 18 x 26 cm and 3 mil has 936 cm² on both sides, 145 in²: 4.5 / 3 x 1.45 x 0.2095 ml a day.
test('a clear bag of 18 x 26 cm and 3 mil lets about 0.46 ml in a day, 500 ml in three years', () => {
  const aDay = oxygenInMlPerDay('clear', 2 * 18 * 26);
  expect(aDay).toBeCloseTo(0.456, 3);
  expect(aDay * 3 * 365.25).toBeGreaterThan(490);
  expect(aDay * 3 * 365.25).toBeLessThan(510);
  // So an absorber with 100 ml to spare lasts 219 days, 7.2 months.
  expect(barrierMonths(100, 'clear', 936)).toBeCloseTo(7.2, 1);
});
