import { expect, test } from 'vitest';
import { effortFactor } from '#core/meal-floors.ts';

// Dietary Reference Intakes for Energy (2002/2005), estimated energy requirements at 30 years, as printed (read as
// repeated in Powers & Howley): kcal a day at low active, active, very active. Rows: height, body mass index, sex.
const rows = [
  ['1.50 m, 18.5, men', 2009, 2215, 2554],
  ['1.50 m, 24.99, men', 2267, 2506, 2898],
  ['1.65 m, 18.5, men', 2254, 2490, 2880],
  ['1.65 m, 24.99, men', 2566, 2842, 3296],
  ['1.80 m, 18.5, men', 2513, 2782, 3225],
  ['1.80 m, 24.99, men', 2884, 3200, 3720],
  ['1.50 m, 18.5, women', 1803, 2025, 2291],
  ['1.50 m, 24.99, women', 1956, 2198, 2489],
  ['1.65 m, 18.5, women', 2016, 2267, 2567],
  ['1.65 m, 24.99, women', 2202, 2477, 2807],
  ['1.80 m, 18.5, women', 2239, 2519, 2855],
  ['1.80 m, 24.99, women', 2459, 2769, 3141],
] as const;

test.each(rows)('%s: within 2 % of the printed day', (_, low, active, very) => {
  expect(Math.abs(active * effortFactor.rest - low) / low).toBeLessThan(0.02);
  expect(Math.abs(active * effortFactor.hard - very) / very).toBeLessThan(0.02);
  expect(effortFactor.walk).toBe(1);
});
test('the factors are the means over all rows to two figures', () => {
  const mean = (of: (row: (typeof rows)[number]) => number) =>
    rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
  expect(mean(([, low, active]) => low / active)).toBeCloseTo(effortFactor.rest, 2);
  expect(mean(([, , active, very]) => very / active)).toBeCloseTo(effortFactor.hard, 2);
});
