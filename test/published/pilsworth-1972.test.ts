import { expect, test } from 'vitest';
import { forecastByWeights } from '#core/forecast.ts';

// Pilsworth, U.S. Army Natick Laboratories, AD0769592 (1972), as given in the reference of this project: the weight of
// freeze-drying beef falls as a quadratic in time, and the ice core lasts until about 4 % of the dry weight. Worked: a
// weight of D + W (1 - t/T)^2 has its ice gone at T, where the root of what is to go meets nothing.
const line = { factor: 1, spreadFraction: 0, loads: 0 };
test.each([
  [12, 3, 6],
  [12, 6, 9],
  [30, 10, 20],
])('ice gone after %i h is foreseen from the weights at %i and %i h', (endHours, first, second) => {
  const weight = (hours: number) => ({ hours, massG: 250 + 750 * (1 - hours / endHours) ** 2 });
  const forecast = forecastByWeights([weight(0), weight(first), weight(second)], 250, line);
  expect(forecast?.readyHours).toBeCloseTo(endHours, 9);
});
