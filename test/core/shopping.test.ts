// Witness: by hand; laws for any amounts.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { mergedNeeds, type ShopNeed, toBuy } from '#core/shopping.ts';

const need = (more: Partial<ShopNeed>): ShopNeed => ({
  key: 'beans', called: 'beans', kind: 'Dry goods', needG: 100, unit: null, unitG: null, size: null, ...more,
}); // prettier-ignore

test.each([
  [960, 240, 0, { count: 4, grams: 960 }],
  [970, 240, 0, { count: 4, grams: 960 }],
  [1000, 240, 0, { count: 5, grams: 1200 }],
  [960, 240, 500, { count: 2, grams: 480 }],
  [960, 240, 960, undefined],
  [4.2, null, 0, { count: null, grams: 5 }],
  [42, null, 0, { count: null, grams: 50 }],
  [420, null, 0, { count: null, grams: 450 }],
  [1420, null, 0, { count: null, grams: 1500 }],
  [null, null, 0, { count: null, grams: 0 }],
])('%s g by %s with %s at home', (needG, unitG, homeG, bought) => {
  expect(toBuy({ needG, unitG }, homeG)).toEqual(bought);
});

test('what is bought and what is at home is enough, to a twentieth of a pack, and never a whole pack too much', () => {
  const g = fc.double({ min: 0.1, max: 20_000, noNaN: true });
  fc.assert(
    fc.property(
      g,
      fc.option(g, { nil: null }),
      fc.double({ min: 0, max: 20_000, noNaN: true }),
      (needG, unitG, homeG) => {
        const buy = toBuy({ needG, unitG }, homeG);
        if (!buy) {
          expect(homeG).toBeGreaterThanOrEqual(needG - 1e-6);
          return;
        }
        const slack = unitG === null ? 1e-6 : 0.05 * unitG + 1e-6;
        expect(buy.grams + homeG).toBeGreaterThanOrEqual(needG - slack);
        if (unitG !== null && buy.count! > 1) expect(buy.grams - unitG).toBeLessThan(needG - homeG);
      },
    ),
  );
});

test('one food of several meals is one food, in the form that tells most', () => {
  const all = mergedNeeds([
    need({ needG: 100 }),
    need({ needG: 480, unit: 'tin', unitG: 240, size: '400 g' }),
    need({ needG: null }),
    need({ key: 'rice', called: 'rice', needG: null }),
  ]);
  expect(all).toEqual([
    need({ needG: 580, unit: 'tin', unitG: 240, size: '400 g' }),
    need({ key: 'rice', called: 'rice', needG: null }),
  ]);
});
