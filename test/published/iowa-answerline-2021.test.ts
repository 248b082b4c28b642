import { expect, test } from 'vitest';
import { rawAnimals } from '#core/cautions.ts';

// Iowa State University Extension, AnswerLine, 27 July 2021 (row d-raw, read): freeze-dried raw meat, poultry, seafood
// or egg is not ready to eat as it is. One food of each kind, as SR28 names it.
test.each([
  ['meat', 'Pork, fresh, loin, whole, separable lean only, raw', 'Pork Products'],
  ['poultry', 'Chicken, broilers or fryers, breast, meat only, raw', 'Poultry Products'],
  ['seafood', 'Crustaceans, shrimp, mixed species, raw', 'Finfish and Shellfish Products'],
  ['egg', 'Egg, whole, raw, fresh', 'Dairy and Egg Products'],
])('raw %s is cooked first', (_, tableName, group) => {
  const line = { called: '', typed: '', tableName, group, grams: 1, waterG: null, fatG: null };
  expect(rawAnimals([line])).toEqual([line]);
});
