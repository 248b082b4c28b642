import { expect, test } from 'vitest';
import type { Per100 } from '#foods/food.ts';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';
import { composition, dishes, householdWeights } from './published-rows.ts';

const table = openFoods(':memory:');
const fields = ['waterG', 'kcal', 'proteinG', 'fatG', 'carbohydrateG', 'sodiumMg'] as const;

// Witness: SR28 (2015), ABBREV file, as printed; half of the last printed digit is far more than a parse may lose.
test.each(composition)('%s %s per 100 g', (ndb, name, ...values) => {
  const food = table.byNdb(ndb)!;
  expect(food.name.replace(/\s+/g, ' ')).toBe(name.replace(/\s+/g, ' '));
  expect(fields.map((field) => food.per100[field])).toEqual([...values]);
});

// Witness: SR28 (2015), ABBREV file. The file keeps two measures a food.
test.each(householdWeights)('%s: %s weighs %d g', (ndb, label, grams) => {
  const measure = table.byNdb(ndb)!.measures.find((one) => one.label === label.replace(/\s+/g, ' '));
  expect(measure?.grams).toBeCloseTo(grams, 1);
});

/** Kitchen words for the foods of the worked dishes; the grams are theirs. */
const words: Readonly<Record<string, string>> = {
  '23565': 'cooked lean ground beef', '16033': 'cooked kidney beans', '11549': 'tomato sauce', '11282': 'onion, chopped', '11821': 'red bell pepper',
  '02047': 'salt', '02009': 'chili powder', '05064': 'cooked chicken breast', '20045': 'cooked white rice', '11125': 'cooked carrots', '11312': 'frozen peas',
  '01001': 'butter', '16070': 'cooked lentils', '12118': 'coconut milk', '11215': 'garlic', '11529': 'tomatoes, chopped', '04053': 'olive oil', '20121': 'cooked macaroni',
  '01009': 'cheddar, grated', '01077': 'whole milk', '20081': 'plain flour', '08120': 'rolled oats', '19334': 'brown sugar', '11657': 'mashed potato', '01032': 'grated parmesan',
  '01123': 'eggs, beaten', '23572': 'ground beef', '16015': 'cooked black beans', '11178': 'frozen corn', '20137': 'cooked quinoa', '11090': 'broccoli', '11124': 'carrots',
  '11457': 'spinach', '16123': 'soy sauce', '20029': 'cooked couscous', '06179': 'fish sauce', '19335': 'sugar', '11352': 'potatoes, diced',
}; // prettier-ignore

// Witness: worked from the same file; tolerance is the rounding of the printed sums.
test.each(dishes)('%s through typed lines', (_, gramsByNdb, waterG, solidsG, sodiumMg, kcal) => {
  const total = { grams: 0, waterG: 0, sodiumMg: 0, kcal: 0 };
  for (const [ndb, grams] of Object.entries(gramsByNdb)) {
    const result = resolveLine(`${grams} g ${words[ndb]}`, table);
    expect([result.is, result.food?.ndb, result.grams]).toEqual(['weighed', ndb, grams]);
    const per100: Per100 = result.food!.per100;
    total.grams += result.grams!;
    for (const field of ['waterG', 'sodiumMg', 'kcal'] as const)
      total[field] += (per100[field]! * result.grams!) / 100;
  }
  expect(Math.abs(total.waterG - waterG)).toBeLessThan(0.5);
  expect(Math.abs(total.grams - total.waterG - solidsG)).toBeLessThan(0.5);
  expect(Math.abs(total.sodiumMg - sodiumMg)).toBeLessThan(1);
  expect(Math.abs(total.kcal - kcal)).toBeLessThan(1);
});
