// Witness: USDA SR28, the water of each food dry and made up, as the food table of this project has them; the sum by hand.
import { expect, test } from 'vitest';
import { madeUp, soaksUpMl } from '#core/soaks-up.ts';
import { openFoods } from '#store/foods.ts';
import { foodTablePath } from '../food-table.ts';

const foods = openFoods(foodTablePath);

test.each(Object.entries(madeUp))('%s has the water that the food table has', (ndb, known) => {
  expect(foods.byNdb(ndb)!.per100.waterG).toBe(known.dryWaterG);
  expect(foods.byNdb(known.made)!.per100.waterG).toBe(known.madeWaterG);
});

test('15 g couscous: 13.716 g dry matter are 50.0 g made up, so 35.0 ml', () => {
  expect(soaksUpMl({ ndb: '20028', grams: 15 })).toBeCloseTo(35.0, 1);
});

test('what dissolves, what is not known and what has no weight takes up nothing that is known', () => {
  expect(soaksUpMl({ ndb: '01154', grams: 15 })).toBeNull();
  expect(soaksUpMl({ ndb: null, grams: 15 })).toBeNull();
  expect(soaksUpMl({ ndb: '20028', grams: null })).toBeNull();
});
