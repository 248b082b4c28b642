import { expect, test } from 'vitest';
import { recipeFacts } from '#core/meal.ts';
import { dishes } from '../foods/published-rows.ts';
import { openTestHouse } from '../house.ts';

// Worked mixed examples: sums of raw USDA SR28 (2015) values, read (section b2 of the published values). Here they go
// the whole way a cook would go: typed lines, /recipe, the recorded rows, the sums.

/** How a cook names each food of the examples. */
const named: Readonly<Record<string, string>> = {
  '23565': 'cooked ground beef, 90% lean',
  '16033': 'cooked kidney beans',
  '11549': 'tomato sauce',
  '11282': 'onions, chopped',
  '11821': 'red bell pepper, diced',
  '02047': 'salt',
  '02009': 'chili powder',
  '05064': 'roasted chicken breast',
  '20045': 'cooked long grain rice',
  '11125': 'cooked carrots',
  '11312': 'frozen peas',
  '01001': 'salted butter',
  '16070': 'cooked lentils',
  '12118': 'coconut milk',
  '11215': 'garlic',
  '11529': 'tomatoes',
  '04053': 'olive oil',
  '20121': 'cooked pasta',
  '01009': 'cheddar',
  '01077': 'whole milk',
  '20081': 'plain flour',
  '08120': 'rolled oats',
  '19334': 'brown sugar',
  '11657': 'mashed potatoes',
  '01032': 'grated parmesan',
  '01123': 'eggs',
  '23572': 'ground beef, 80% lean',
  '16015': 'cooked black beans',
  '11178': 'frozen corn',
  '20137': 'cooked quinoa',
  '11090': 'broccoli',
  '11124': 'carrots',
  '11457': 'spinach',
  '16123': 'soy sauce',
  '20029': 'cooked couscous',
  '06179': 'fish sauce',
  '19335': 'sugar',
  '11352': 'potatoes',
};

test.each(dishes)(
  '%s, typed and recorded, gives the worked sums',
  (name, grams, waterG, solidsG, sodiumMg, kcal) => {
    const house = openTestHouse();
    const lines = Object.entries(grams).map(([ndb, g]) => `${g} g ${named[ndb]}`);
    const answer = house.say(`/recipe ${name}, 4 servings\n${lines.join('\n')}`);
    const recipe = house.house.stores.of(1).recipes.find(name.replace('-', ' '))!;
    expect(recipe.lines.map((line) => line.ndb)).toEqual(Object.keys(grams));
    const { totals } = recipeFacts(recipe, (ndb) => house.house.foods.byNdb(ndb)?.per100);
    expect(Math.abs(totals.waterG - waterG)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(totals.solidsG - solidsG)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(totals.sodiumMg - sodiumMg)).toBeLessThanOrEqual(1);
    expect(Math.abs(totals.kcal - kcal)).toBeLessThanOrEqual(1);
    expect(answer).toContain(`solids ${Math.round(solidsG)} g`);
    expect(answer).toContain(`${Math.round(kcal / 4)} kcal`);
  },
);
