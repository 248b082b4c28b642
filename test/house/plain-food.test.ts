import { expect, test } from 'vitest';
import { verdictOn } from '#house/verdicts.ts';
import { recipeIngredients } from '#core/meal.ts';
import { openTestHouse } from '../house.ts';

// A plain food has no tag that a verdict could find it by: every place where a line names it counts.
test.each([
  ['coriander', '400 g chicken breast with coriander'],
  ['coriander', '400 g chicken breast with corriander'],
  ['coriander', '200 g rice, garnished with cilantro'],
  ['strawberries', '200 g yogurt with strawberries'],
  ['chilli', '500 g beef mince with chillies'],
  ['onion', '500 g beef mince with onions'],
  ['onion', '500 g beef mince and a chopped shallot'],
  ['garlic', '100 g butter mixed with garlic'],
  ['capers', '200 g salmon with capers'],
  ['potatoes', '300 g lamb with chips and potato wedges'],
  ['mushrooms', '300 g beef in mushroom sauce'],
])('no %s: %s is not clear', (word, line) => {
  const house = openTestHouse();
  house.say(`/eater Pip no ${word}`);
  house.say(`/recipe Meal, 2 servings: ${line}`);
  const of = house.house.stores.of(1);
  const contents = recipeIngredients(of.recipes.find('meal')!);
  expect(verdictOn(of.eaters.find('pip')!, { contents }).is).not.toBe('clear');
});
