import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuelG, heatFromSnowKJ, heatToBoilKJ, learntEfficiency, usualEfficiency } from '#core/fuel.ts';

// Figures are held against print in test/published: water-heat, lower-heating-values. Here: edges, worked by hand.

const boiled = { beforeG: 230, afterG: 220, waterMl: 500, startC: 10, boilC: 100, lhvMJPerKg: 45.6 };

test('a margin carries so much more', () => {
  expect(fuelG(377.1, 0.5, 45.7, 1.2)).toBeCloseTo(fuelG(377.1, 0.5, 45.7) * 1.2, 12);
});

test('colder snow takes more heat: 2.1 kJ for each kilogram and degree (from memory)', () => {
  expect(heatFromSnowKJ(1000, 100, -10) - heatFromSnowKJ(1000, 100)).toBeCloseTo(21, 9);
});

describe('what a canister teaches', () => {
  test('half a litre on 10 g: 188.55 kJ of 456 kJ', () => {
    const learnt = learntEfficiency([boiled]);
    expect(learnt.weighings).toBe(1);
    expect(learnt.fraction).toBeCloseTo(0.41349, 5);
    expect(learnt.lowFraction).toBe(learnt.highFraction);
  });
  test('a longer boil weighs more than a short one, and the range is what was seen', () => {
    // 188.55 + 754.2 kJ of 456 + 1368 kJ.
    const learnt = learntEfficiency([boiled, { ...boiled, beforeG: 250, waterMl: 2000 }]);
    expect(learnt.fraction).toBeCloseTo(942.75 / 1824, 9);
    expect(learnt.lowFraction).toBeCloseTo(188.55 / 456, 9);
    expect(learnt.highFraction).toBeCloseTo(754.2 / 1368, 9);
  });
  test('until then the plan stays in the low half of the stated range', () => {
    expect(learntEfficiency([]).weighings).toBe(0);
    expect(usualEfficiency.planned).toBeLessThan((usualEfficiency.low + usualEfficiency.high) / 2);
  });
  test.each([
    { beforeG: 220, afterG: 220 },
    { beforeG: 210, afterG: 220 },
    { beforeG: 222, afterG: 220 },
    { waterMl: 0 },
    { beforeG: NaN },
  ])('%o cannot be', (wrong) => {
    expect(() => learntEfficiency([{ ...boiled, ...wrong }])).toThrow(
      expect.objectContaining({ code: 'impossible-canister' }),
    );
  });
});

describe('refusals', () => {
  test.each([
    [-1, 0.5, 45, 1, 'impossible-heat'],
    [100, 0, 45, 1, 'impossible-efficiency'],
    [100, 1.01, 45, 1, 'impossible-efficiency'],
    [100, NaN, 45, 1, 'impossible-efficiency'],
    [100, 0.5, 0, 1, 'impossible-fuel'],
    [100, 0.5, 45, 0.9, 'impossible-margin'],
  ])('%s kJ at %s, %s MJ/kg, margin %s', (heat, efficiency, lhv, margin, code) => {
    expect(() => fuelG(heat, efficiency, lhv, margin)).toThrow(expect.objectContaining({ code }));
  });
  test('water warmer than its boiling point, ice above freezing', () => {
    expect(() => heatToBoilKJ(500, 96, 95)).toThrow(
      expect.objectContaining({ code: 'impossible-temperature' }),
    );
    expect(() => heatToBoilKJ(-1, 10, 95)).toThrow(expect.objectContaining({ code: 'impossible-water' }));
    expect(() => heatFromSnowKJ(500, 95, 1)).toThrow(
      expect.objectContaining({ code: 'impossible-temperature' }),
    );
  });
});

test('law: fuel for two pots is fuel for the one that holds both', () => {
  const ml = fc.double({ min: 0, max: 5000, noNaN: true });
  fc.assert(
    fc.property(ml, ml, fc.double({ min: 0.05, max: 1, noNaN: true }), (a, b, efficiency) => {
      const fuel = (waterMl: number) => fuelG(heatToBoilKJ(waterMl, 8, 93), efficiency, 45.6);
      expect(fuel(a) + fuel(b)).toBeCloseTo(fuel(a + b), 6);
    }),
  );
});
