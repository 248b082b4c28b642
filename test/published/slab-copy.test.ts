import { expect, test } from 'vitest';
import { forecastBeforeLoading } from '#core/load-hours.ts';

// Freeze-drying of slabs, read in a copy without title or year, as given in the reference of this project: 12.5 mm of
// 75 to 85 % water take 14 to 18 h, in proportion to the square of the depth. At home a load takes 20 to 48 h (makers;
// common practice, no source), which bounds it where no loads of one's own are known.
test.each([
  [10, 20],
  [12.5, 20],
  [16, 26.2],
  [20, 41],
  [30, 48],
])('food %f mm deep: %f h', (depthMm, hours) => {
  expect(forecastBeforeLoading(1500, depthMm, []).readyHours).toBeCloseTo(hours, 1);
});

test('twice as deep takes four times as long between the bounds of home loads', () => {
  const at = (depthMm: number) =>
    forecastBeforeLoading(
      1500,
      depthMm,
      [16, 16, 16].map((hours) => ({ waterG: 1500, hours, depthMm: 12.5 })),
    );
  expect(at(12.5).readyHours).toBeCloseTo(16, 9);
  expect(at(25).readyHours).toBeCloseTo(64, 9);
});
