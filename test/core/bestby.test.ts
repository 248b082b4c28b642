import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestBy, lifeUsedFraction, q10, q10FromArrhenius, shelfMonths, whatLengthens } from '#core/bestby.ts';

// The months by fat are this project's own cautious choice (common practice, no source): the points are written out here
// so that a change of them shows; what lies between is worked by hand on straight lines. Q10 itself is held against print in
// test/published/labuza-q10.test.ts.
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
])('fat %f of the dry matter: %f months at 20 °C', (fatFraction, months) => {
  expect(bestBy(fatFraction, 20, true).months).toBeCloseTo(months, 9);
  expect(bestBy(fatFraction, 20, true).at20Months).toBeCloseTo(months, 9);
});

test('law: a hundredth of fat more or less never changes a date by more than two months', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.99, noNaN: true }), (fat) => {
      expect(bestBy(fat, 20, true).months - bestBy(fat + 0.01, 20, true).months).toBeLessThanOrEqual(
        1.8 + 1e-9,
      );
    }),
  );
});

test.each([
  [0.05, 20, true, ['a cooler place']],
  [0.06, 12, true, ['less fat']],
  [0.3, 25, false, ['an absorber', 'less fat', 'a cooler place']],
  [0, 4, true, []],
])('fat %f at %f °C, absorber %s: longer with %j', (fat, storageC, absorber, longer) => {
  expect(whatLengthens(fat, storageC, absorber)).toEqual(longer);
});

describe('temperature', () => {
  test('ten degrees warmer halve it, and the band shows what Q10 1.5 to 3 would make of it', () => {
    const plan = bestBy(0.05, 30, true);
    expect(plan.months).toBeCloseTo(18, 9);
    expect(plan.lowMonths).toBeCloseTo(12, 9);
    expect(plan.highMonths).toBeCloseTo(24, 9);
  });
  test('above 30 °C a steeper one: 18 months at 30 °C are 3.6 at 40 °C', () => {
    expect(bestBy(0.05, 40, true).months).toBeCloseTo(18 / 5, 9);
    expect(bestBy(0.05, 30.001, true).months).toBeCloseTo(18, 2);
  });
  test('cooler never more than doubles it', () => {
    expect(bestBy(0.15, 4, true).months).toBe(36);
    expect(bestBy(0.15, -18, true).months).toBe(36);
  });
  test('nothing is planned beyond 60 months', () => {
    expect(bestBy(0, 4, true).months).toBe(60);
    expect(bestBy(0, 4, true).highMonths).toBe(60);
  });
});

describe('without an absorber', () => {
  test.each([
    [0.05, 6],
    [0.15, 4.5],
    [0.275, 2.25],
    [0.5, 1],
  ])('fat %f: %f months at 20 °C', (fatFraction, months) => {
    expect(bestBy(fatFraction, 20, false).months).toBe(months);
  });
  test('the cold does not lift it above six', () => {
    expect(bestBy(0.05, -18, false).months).toBe(6);
  });
});

test.each([
  [-0.1, 20, 'impossible-fat'],
  [1.01, 20, 'impossible-fat'],
  [NaN, 20, 'impossible-fat'],
  [0.1, 51, 'impossible-temperature'],
  [0.1, NaN, 'impossible-temperature'],
])('fat %s at %s °C is refused', (fatFraction, storageC, code) => {
  expect(() => bestBy(fatFraction, storageC, true)).toThrow(expect.objectContaining({ code }));
});

test('kinetics refuse what cannot be', () => {
  expect(() => q10(20, 20, 10, 20)).toThrow(expect.objectContaining({ code: 'same-temperature' }));
  expect(() => q10(0, 20, 10, 30)).toThrow(expect.objectContaining({ code: 'impossible-life' }));
  expect(() => shelfMonths(12, 20, 30, 0.5)).toThrow(expect.objectContaining({ code: 'impossible-q10' }));
  expect(() => q10FromArrhenius(-1, 20)).toThrow(expect.objectContaining({ code: 'impossible-energy' }));
  expect(() => q10FromArrhenius(85, -300)).toThrow(
    expect.objectContaining({ code: 'impossible-temperature' }),
  );
  expect(() => lifeUsedFraction([{ months: -1, tempC: 20 }], { months: 24, tempC: 20 })).toThrow(
    expect.objectContaining({ code: 'impossible-time' }),
  );
});

describe('laws', () => {
  const fat = fc.double({ min: 0, max: 1, noNaN: true });
  const degC = fc.double({ min: -30, max: 50, noNaN: true });
  test('fatter, warmer or without absorber never keeps longer; the band holds the plan', () => {
    fc.assert(
      fc.property(fat, fat, degC, degC, fc.boolean(), (f1, f2, t1, t2, absorber) => {
        const best = bestBy(Math.min(f1, f2), Math.min(t1, t2), absorber);
        const worst = bestBy(Math.max(f1, f2), Math.max(t1, t2), absorber);
        expect(worst.months).toBeLessThanOrEqual(best.months);
        expect(bestBy(f1, t1, false).months).toBeLessThanOrEqual(bestBy(f1, t1, true).months);
        expect(best.lowMonths).toBeLessThanOrEqual(best.months);
        expect(best.highMonths).toBeGreaterThanOrEqual(best.months);
        expect(best.months).toBeLessThanOrEqual(60);
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
  test('kept its whole rated life at the rated temperature, all of it is used', () => {
    expect(lifeUsedFraction([{ months: 24, tempC: 20 }], { months: 24, tempC: 20 })).toBeCloseTo(1, 12);
  });
});
