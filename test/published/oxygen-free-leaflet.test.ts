import { expect, test } from 'vitest';
import { notForLong } from '#core/cautions.ts';
import { oxygenFreeMostMoistureFraction } from '#core/balance.ts';
import { isWet, waterLeft } from '#core/dry-verdict.ts';

// Home storage leaflet (2007) warning of botulism above about 10 % moisture in reduced-oxygen packs, read in a copy
// (row d-o2free-max: 10 % wet basis). Not a government figure.
test('the outer limit of moisture for food packed without oxygen is 10 %', () => {
  expect(oxygenFreeMostMoistureFraction * 100).toBe(10);
});

// Worked by hand: 100 g with 10 g of water and 35 g of fat hold 10 / 65 = 15.4 % in the part that holds water.
test('10 % of a meal that is 35 % fat is 15 % of the rest', () => {
  const left = waterLeft({ wetG: 300, dryG: 100, solidsG: 90, fatG: 35 }, 0);
  expect(left.fraction).toBeCloseTo(10 / 65, 12);
  expect(isWet(left)).toBe(true);
  // The same 10 g beside no fat are the limit itself, which is not passed.
  expect(isWet(waterLeft({ wetG: 300, dryG: 100, solidsG: 90, fatG: 0 }, 0))).toBe(false);
});

// The same leaflet (read): dried meat, eggs, nuts and pearled barley are kept out of long storage.
test.each([
  ['Beef, ground, 90% lean', 'Beef Products', true],
  ['Egg, whole, dried', 'Dairy and Egg Products', true],
  ['Nuts, walnuts, english', 'Nut and Seed Products', true],
  ['Barley, pearled, raw', 'Cereal Grains and Pasta', true],
  ['Barley flour or meal', 'Cereal Grains and Pasta', false],
  ['Milk, dry, nonfat', 'Dairy and Egg Products', false],
  ['Lentils, raw', 'Legumes and Legume Products', false],
])('%s in long storage: kept out %s', (tableName, group, isOut) => {
  const line = { called: tableName, typed: tableName, tableName, group, grams: 100, waterG: 5, fatG: 1 };
  expect(notForLong([line])).toHaveLength(isOut ? 1 : 0);
});
