import { describe, expect, test } from 'vitest';
import { costOf, costSum, pricePerKg, runEnergy } from '#core/costs.ts';

// Worked by hand: kWh are kW times hours (SI), money adds up. How near to a run a meter must be read is chosen.
const hour = 3_600_000;
const run = { startMs: 100 * hour, endMs: 124 * hour, ranHours: 23 };
const read = (hours: number, kwh: number) => ({ atMs: hours * hour, kwh });

describe('energy of a run', () => {
  test('by the meter where it was read near both ends, the nearest reading of each', () => {
    const readings = [read(97, 900), read(99, 1000), read(112, 1010), read(124, 1018), read(126, 1030)];
    expect(runEnergy(run, readings, 1200)).toEqual({ kwh: 18, by: 'meter' });
  });
  test('a reading more than three hours away does not speak of it', () => {
    expect(runEnergy(run, [read(97, 1000), read(127, 1018)], null)).toEqual({ kwh: 18, by: 'meter' });
    expect(runEnergy(run, [read(96.99, 1000), read(127, 1018)], null)).toBeUndefined();
    expect(runEnergy(run, [read(97, 1000), read(127.01, 1018)], null)).toBeUndefined();
  });
  test('else by the plate and the hours it ran, which is the most; else unknown', () => {
    expect(runEnergy(run, [read(100, 1000)], 1200)).toEqual({ kwh: 1.2 * 23, by: 'plate' });
    expect(runEnergy(run, [], null)).toBeUndefined();
  });
});

describe('money', () => {
  test('by the kg', () => {
    expect(pricePerKg(0.95, 400)).toBeCloseTo(2.375, 9);
    expect(costOf(600, 3.2)).toBeCloseTo(1.92, 9);
    expect(() => pricePerKg(1, 0)).toThrow(expect.objectContaining({ code: 'impossible-weight' }));
    expect(() => costOf(1, -1)).toThrow(expect.objectContaining({ code: 'impossible-price' }));
  });
  test('what has no price is named and counts nothing', () => {
    expect(
      costSum([
        { called: 'lentils', cost: 1.92 },
        { called: 'salt', cost: null },
        { called: 'water', cost: 0 },
      ]),
    ).toEqual({
      sum: 1.92,
      unpriced: ['salt'],
    });
  });
});
