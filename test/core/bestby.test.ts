import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { materials } from '#core/barrier.ts';
import {
  type Kept,
  keepsMonths,
  monthsUntilUsed,
  q10,
  q10FromArrhenius,
  shelfMonths,
  whatLengthens,
} from '#core/bestby.ts';

// The months are this project's own cautious choice (common practice, no source): written out here so that a change of
// them shows; what lies between is worked by hand on straight lines. What passes a wall and how warmth ages is held against
// print in test/published.
const foil: Kept = {
  material: 'foil',
  areaCm2: 1200,
  isMeasuredDry: true,
  fatFraction: 0.02,
  absorber: true,
  spareMl: 150,
};

describe('material and barrier first', () => {
  test.each([
    ['foil, measured dry', {}, 36],
    ['foil, dry by weight', { isMeasuredDry: false }, 24],
    ['glass, dry by weight', { material: 'glass', isMeasuredDry: false }, 24],
    ['tin, measured dry', { material: 'tin' }, 36],
    // 1200 cm² let 0.584 ml in a day: 150 ml last 257 days, 8.4 months; 30 ml 1.7, but never less than without one.
    ['clear', { material: 'clear' }, 8.43],
    ['clear, much to spare', { material: 'clear', spareMl: 600 }, 12],
    ['clear, little to spare', { material: 'clear', spareMl: 30 }, 3],
    ['clear, size not known', { material: 'clear', areaCm2: null }, 12],
    ['nobody said', { material: null }, 8.43],
  ] as const)('%s', (_, change, months) => {
    expect(keepsMonths({ ...foil, ...change }, 20)).toBeCloseTo(months, 1);
  });
});

test.each([
  [0, 36],
  [0.05, 36],
  [0.1, 27],
  [0.15, 18],
  [0.2, 14.4],
  [0.275, 9],
  [0.3875, 6.5],
  [0.5, 4],
  [1, 4],
])('fat %f of the dry matter: %f months in foil, measured dry, at 20 °C', (fatFraction, months) => {
  expect(keepsMonths({ ...foil, fatFraction }, 20)).toBeCloseTo(months, 9);
});

describe('temperature', () => {
  test('ten degrees warmer halve it', () => expect(keepsMonths(foil, 30)).toBeCloseTo(18, 9));
  test('above 30 °C a steeper one: 18 months at 30 °C are 3.6 at 40 °C', () => {
    expect(keepsMonths(foil, 40)).toBeCloseTo(18 / 5, 9);
    expect(keepsMonths(foil, 30.001)).toBeCloseTo(18, 2);
  });
  test('cooler never more than doubles it, nor beyond 60 months, nor in clear bags beyond 12', () => {
    expect(keepsMonths({ ...foil, fatFraction: 0.15 }, 4)).toBe(36);
    expect(keepsMonths({ ...foil, fatFraction: 0.15 }, -18)).toBe(36);
    expect(keepsMonths(foil, 4)).toBe(60);
    expect(keepsMonths({ ...foil, material: 'clear', spareMl: 900 }, 4)).toBe(12);
  });
  test('half a life in the warm, the rest in the cool', () => {
    // 9 of 18 months at 30 °C use half; half of 36 at 20 °C is left.
    const months = monthsUntilUsed([{ months: 9, tempC: 30 }], 20, (tempC) => keepsMonths(foil, tempC));
    expect(months).toBeCloseTo(27, 9);
    const gone = monthsUntilUsed([{ months: 30, tempC: 30 }], 4, (tempC) => keepsMonths(foil, tempC));
    expect(gone).toBeCloseTo(18, 9);
  });
});

describe('without an absorber', () => {
  test.each([
    [0.05, 6],
    [0.15, 4.5],
    [0.275, 2.25],
    [0.5, 1],
  ])('fat %f: %f months at 20 °C', (fatFraction, months) => {
    expect(keepsMonths({ ...foil, absorber: false, fatFraction }, 20)).toBeCloseTo(months, 9);
  });
  test('the cold does not lift it above six', () => {
    expect(keepsMonths({ ...foil, absorber: false }, -18)).toBe(6);
  });
});

test.each([
  [{}, 12, []],
  [{}, 20, ['cooler']],
  [{ isMeasuredDry: false, fatFraction: 0.06 }, 20, ['a dry jar', 'less fat', 'cooler']],
  [{ material: 'clear' }, 12, ['foil', 'a larger absorber']],
  [{ material: 'clear', spareMl: 900 }, 12, ['foil']],
  [{ material: null, absorber: false }, 25, ['tell the pouch', 'an absorber', 'cooler']],
] as const)('longer: %j at %f °C', (change, storageC, longer) => {
  expect(whatLengthens({ ...foil, ...change }, storageC)).toEqual(longer);
});

test.each([
  [-0.1, 20, 'impossible-fat'],
  [1.01, 20, 'impossible-fat'],
  [NaN, 20, 'impossible-fat'],
  [0.1, 51, 'impossible-temperature'],
  [0.1, NaN, 'impossible-temperature'],
])('fat %s at %s °C is refused', (fatFraction, storageC, code) => {
  expect(() => keepsMonths({ ...foil, fatFraction }, storageC)).toThrow(expect.objectContaining({ code }));
});

test('kinetics refuse what cannot be', () => {
  expect(() => q10(20, 20, 10, 20)).toThrow(expect.objectContaining({ code: 'same-temperature' }));
  expect(() => q10(0, 20, 10, 30)).toThrow(expect.objectContaining({ code: 'impossible-life' }));
  expect(() => shelfMonths(12, 20, 30, 0.5)).toThrow(expect.objectContaining({ code: 'impossible-q10' }));
  expect(() => q10FromArrhenius(-1, 20)).toThrow(expect.objectContaining({ code: 'impossible-energy' }));
  expect(() => q10FromArrhenius(85, -300)).toThrow(
    expect.objectContaining({ code: 'impossible-temperature' }),
  );
  expect(() => monthsUntilUsed([{ months: -1, tempC: 20 }], 20, () => 24)).toThrow(
    expect.objectContaining({ code: 'impossible-time' }),
  );
});

describe('laws', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const degC = fc.double({ min: -30, max: 50, noNaN: true });
  const kept: fc.Arbitrary<Kept> = fc.record({
    material: fc.constantFrom(...materials, null),
    areaCm2: fc.option(fc.double({ min: 50, max: 4000, noNaN: true })),
    isMeasuredDry: fc.boolean(),
    fatFraction: share,
    absorber: fc.boolean(),
    spareMl: fc.option(fc.double({ min: 0, max: 2000, noNaN: true })),
  });
  test('no cliff: a hundredth of fat, a degree or a millilitre never moves a date by more than a tenth and two months', () => {
    fc.assert(
      fc.property(kept, degC, (one, tempC) => {
        const months = keepsMonths(one, tempC);
        const near = [
          keepsMonths({ ...one, fatFraction: Math.max(0, one.fatFraction - 0.01) }, tempC),
          keepsMonths({ ...one, spareMl: one.spareMl === null ? null : one.spareMl + 1 }, tempC),
          // A degree above 30 °C ages by 5^0.1, 17 %.
          keepsMonths(one, Math.max(-40, tempC - 1)) / 1.1746,
        ];
        for (const other of near) expect(other - months).toBeLessThanOrEqual(3.6 + 1e-9);
      }),
    );
  });
  test('a tighter wall, a measured dryness, less fat, an absorber, more to spare, a cooler place: never an earlier date', () => {
    fc.assert(
      fc.property(kept, degC, share, degC, (one, tempC, otherFat, otherC) => {
        const months = keepsMonths(one, tempC);
        const better: Kept[] = [
          { ...one, material: 'foil' },
          { ...one, isMeasuredDry: true },
          { ...one, fatFraction: Math.min(one.fatFraction, otherFat) },
          { ...one, absorber: true },
          { ...one, spareMl: one.spareMl === null ? null : one.spareMl * 2 },
        ];
        for (const other of better) expect(keepsMonths(other, tempC)).toBeGreaterThanOrEqual(months - 1e-9);
        expect(keepsMonths(one, Math.min(tempC, otherC))).toBeGreaterThanOrEqual(months - 1e-9);
        expect(months).toBeLessThanOrEqual(60);
        expect(months).toBeGreaterThan(0);
      }),
    );
  });
  test('shelf life to another temperature and back is the same', () => {
    fc.assert(
      fc.property(degC, degC, fc.double({ min: 1, max: 5, noNaN: true }), (a, b, q) => {
        expect(shelfMonths(shelfMonths(12, a, b, q), b, a, q)).toBeCloseTo(12, 6);
      }),
    );
  });
  test('where the temperature never changes, stretches change nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 30, noNaN: true })), degC, (spells, tempC) => {
        const past = spells.map((months) => ({ months, tempC }));
        const life = (at: number) => keepsMonths(foil, at);
        expect(monthsUntilUsed(past, tempC, life)).toBeCloseTo(life(tempC), 6);
      }),
    );
  });
});
