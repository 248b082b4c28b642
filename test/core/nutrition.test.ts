import { describe, expect, test } from 'vitest';
import {
  energyNeedKcal,
  naClGOfSodium,
  percentDailyValue,
  sodiumClaim,
  sodiumLimitMg,
  sodiumMgOfNaCl,
  sodiumMgOfTableSalt,
} from '#core/nutrition.ts';

// Tables are held against print in test/published: iupac-weights, fda-daily-values, nasem-2019, cfr-101-61,
// dietary-guidelines-2015. Here: the years between rows, the edges, and what has no row.

describe('age', () => {
  // NASEM 2019: rows are 1-3, 4-8, 9-13, 14 and over; a child is in a row until the next birthday.
  test.each([
    [0.9, undefined],
    [1, 1200],
    [3.9, 1200],
    [4, 1500],
    [8.9, 1500],
    [13.9, 1800],
    [14, 2300],
  ])('%f years: %s mg', (age, mg) => expect(sodiumLimitMg(age)).toBe(mg));

  test.each([-1, NaN, 131])('%s years is refused', (age) => {
    expect(() => sodiumLimitMg(age)).toThrow(expect.objectContaining({ code: 'impossible-age' }));
    expect(() => energyNeedKcal('female', age, 'active')).toThrow(
      expect.objectContaining({ code: 'impossible-age' }),
    );
  });

  // Common knowledge of bodies, no source: more activity never needs less.
  test('every row rises with activity', () => {
    for (const sex of ['male', 'female'] as const) {
      for (let age = 2; age <= 100; age++) {
        const kcal = (activity: 'sedentary' | 'moderately active' | 'active') =>
          energyNeedKcal(sex, age, activity) ?? NaN;
        expect(kcal('moderately active')).toBeGreaterThanOrEqual(kcal('sedentary'));
        expect(kcal('active')).toBeGreaterThanOrEqual(kcal('moderately active'));
      }
    }
  });
});

test('kitchen salt holds less sodium than pure salt, whose sum turns back', () => {
  expect(sodiumMgOfTableSalt(10)).toBeLessThan(sodiumMgOfNaCl(10));
  expect(naClGOfSodium(sodiumMgOfNaCl(7))).toBeCloseTo(7, 12);
});

// 21 CFR 101.61, from the same table as the published rows: a small serving is judged per 50 g as well; salt added
// forbids 'sodium free'.
test('claims at the edges', () => {
  expect(sodiumClaim({ kind: 'food', sodiumMg: 100, massG: 30 })).toBe('no claim');
  expect(sodiumClaim({ kind: 'food', sodiumMg: 84, massG: 30 })).toBe('low sodium');
  expect(sodiumClaim({ kind: 'food', sodiumMg: 100, massG: 31 })).toBe('low sodium');
  expect(sodiumClaim({ kind: 'food', sodiumMg: 4.9, massG: 100, saltAdded: true })).toBe('very low sodium');
  expect(sodiumClaim({ kind: 'food', sodiumMg: 5, massG: 100 })).toBe('very low sodium');
});

test.each([-1, NaN, Infinity])('%s is no amount', (amount) => {
  const impossible = (code: string) => expect.objectContaining({ code });
  expect(() => percentDailyValue('sodiumMg', amount)).toThrow(impossible('impossible-amount'));
  expect(() => sodiumMgOfNaCl(amount)).toThrow(impossible('impossible-salt'));
  expect(() => sodiumMgOfTableSalt(amount)).toThrow(impossible('impossible-salt'));
  expect(() => naClGOfSodium(amount)).toThrow(impossible('impossible-sodium'));
  expect(() => sodiumClaim({ kind: 'meal', sodiumMg: 10, massG: amount })).toThrow(
    impossible('impossible-amount'),
  );
});
