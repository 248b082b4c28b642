import { expect, test } from 'vitest';
import { barrierMonths, oxygenInMlPerDay } from '#core/barrier.ts';

// A pouch maker's sheet (read): PET/foil/LDPE under 0.006 cc through a square metre a day.
test('through foil passes next to nothing: a pouch of 20 x 30 cm lets in under a millilitre in three years', () => {
  expect(oxygenInMlPerDay('foil', 10_000)).toBeCloseTo(0.006, 9);
  expect(oxygenInMlPerDay('foil', 2 * 20 * 30) * 3 * 365.25).toBeLessThan(1);
  expect(barrierMonths(20, 'foil', 1200)).toBeGreaterThan(120);
});

test('glass and tin let nothing through', () => {
  for (const material of ['glass', 'tin'] as const) {
    expect(oxygenInMlPerDay(material, 1000)).toBe(0);
    expect(barrierMonths(20, material, 1000)).toBe(Infinity);
  }
});
