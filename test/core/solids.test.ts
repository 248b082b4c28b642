import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scaleTotals, shareOnTrays, totalsOf, type Part, type Per100 } from '#core/solids.ts';

// USDA SR28, read: per 100 g. Lentils 16069, table salt 02047 (fibre and ash of lentils: SR28 prints 10.7 and 2.71).
const lentils: Per100 = {
  waterG: 8.26,
  kcal: 352,
  proteinG: 24.63,
  fatG: 1.06,
  carbohydrateG: 63.35,
  fibreG: 10.7,
  ashG: 2.71,
  sodiumMg: 6,
};
const salt: Per100 = {
  waterG: 0.2,
  kcal: 0,
  proteinG: 0,
  fatG: 0,
  carbohydrateG: 0,
  fibreG: 0,
  ashG: 99.8,
  sodiumMg: 38758,
};
const water: Per100 = {
  waterG: 100,
  kcal: 0,
  proteinG: 0,
  fatG: 0,
  carbohydrateG: 0,
  fibreG: 0,
  ashG: 0,
  sodiumMg: 0,
};
const unheardOf: Per100 = {
  waterG: null,
  kcal: null,
  proteinG: null,
  fatG: null,
  carbohydrateG: null,
  fibreG: null,
  ashG: null,
  sodiumMg: null,
};

test('a pot of lentils, summed by hand from SR28', () => {
  const totals = totalsOf([
    { grams: 200, food: 'lentils', per100: lentils },
    { grams: 600, food: 'water', per100: water },
    { grams: 5, food: 'salt', per100: salt },
  ]);
  expect(totals.massG).toBe(805);
  expect(totals.waterG).toBeCloseTo(16.52 + 600 + 0.01, 9);
  expect(totals.solidsG).toBeCloseTo(183.48 + 4.99, 9);
  expect(totals.kcal).toBeCloseTo(704, 9);
  expect(totals.sodiumMg).toBeCloseTo(12 + 1937.9, 9);
  expect(totals.unknown).toEqual([]);
});

test('what no table gives is named, never passed over as zero', () => {
  const totals = totalsOf([
    { grams: 100, food: 'lentils', per100: lentils },
    { grams: 10, food: 'moon dust', per100: { ...unheardOf, waterG: 1 } },
  ]);
  expect(totals.unknown).toContainEqual({ nutrient: 'sodiumMg', food: 'moon dust' });
  expect(totals.unknown).not.toContainEqual({ nutrient: 'waterG', food: 'moon dust' });
  expect(totals.unknown).toHaveLength(7);
});

test('a food of unknown water counts as all solids, and says so', () => {
  const totals = totalsOf([{ grams: 10, food: 'moon dust', per100: unheardOf }]);
  expect(totals.solidsG).toBe(10);
  expect(totals.unknown).toContainEqual({ nutrient: 'waterG', food: 'moon dust' });
});

describe('refusals', () => {
  test.each([-1, NaN, Infinity, -Infinity])('%s g of lentils', (grams) => {
    expect(() => totalsOf([{ grams, food: 'lentils', per100: lentils }])).toThrow(
      expect.objectContaining({ code: 'impossible-weight' }),
    );
  });
  test.each([-0.1, 101, NaN])('%s g of water in 100 g', (waterG) => {
    expect(() => totalsOf([{ grams: 1, food: 'soup', per100: { ...water, waterG } }])).toThrow(
      expect.objectContaining({ code: 'impossible-composition' }),
    );
  });
  test('a factor below 0', () => {
    expect(() => scaleTotals(totalsOf([]), -1)).toThrow(
      expect.objectContaining({ code: 'impossible-factor' }),
    );
  });
});

describe('the share on the trays', () => {
  test('3200 g of a pot of 4000 g', () => expect(shareOnTrays(3200, 4000)).toBe(0.8));
  test('a pot nobody weighed is taken as all on the trays', () => {
    expect(shareOnTrays(3200, undefined)).toBe(1);
    expect(shareOnTrays(3200, null)).toBe(1);
  });
  test('two weighings of one pot may differ a little, not much', () => {
    expect(shareOnTrays(4010, 4000)).toBe(1);
    expect(() => shareOnTrays(4100, 4000)).toThrow(/4100 g, but the pot gave 4000 g/);
  });
  test.each([0, -5, NaN])('%s g on the trays is refused', (g) => {
    expect(() => shareOnTrays(g, 4000)).toThrow(expect.objectContaining({ code: 'impossible-weight' }));
    expect(() => shareOnTrays(100, g)).toThrow(expect.objectContaining({ code: 'impossible-weight' }));
  });
});

describe('laws', () => {
  const part = fc.record({
    grams: fc.double({ min: 0, max: 5000, noNaN: true }),
    food: fc.constant('food'),
    per100: fc.constantFrom(lentils, salt, water),
  });
  test('mass is water and solids; order and grouping do not matter', () => {
    fc.assert(
      fc.property(fc.array(part), fc.array(part), (one: Part[], other: Part[]) => {
        const both = totalsOf([...one, ...other]);
        const swapped = totalsOf([...other, ...one]);
        expect(both.waterG + both.solidsG).toBeCloseTo(both.massG, 6);
        expect(swapped.sodiumMg).toBeCloseTo(both.sodiumMg, 3);
        expect(totalsOf(one).kcal + totalsOf(other).kcal).toBeCloseTo(both.kcal, 3);
      }),
    );
  });
  test('there and back is the same pot', () => {
    fc.assert(
      fc.property(fc.array(part), fc.double({ min: 0.01, max: 100, noNaN: true }), (parts, factor) => {
        const totals = totalsOf(parts);
        const back = scaleTotals(scaleTotals(totals, factor), 1 / factor);
        expect(back.massG).toBeCloseTo(totals.massG, 6);
        expect(back.sodiumMg).toBeCloseTo(totals.sodiumMg, 3);
        expect(back.solidsG).toBeCloseTo(totals.solidsG, 6);
      }),
    );
  });
});
