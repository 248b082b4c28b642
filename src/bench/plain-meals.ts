import type { Avoidance } from '#core/avoidance.ts';
import { type Ingredient, verdictFor } from '#core/verdict.ts';
import type { FoodTable } from '#foods/food.ts';
import { type LineResult, resolveLine } from '#foods/line.ts';

export interface EatenBy {
  readonly who: string;
  readonly clear: number;
  readonly of: number;
}

/** Meals of our own invention, as a household would type them: what caution costs is counted on them. */
const meals: readonly (readonly string[])[] = [
  ['500 g pasta', '2 tins chopped tomatoes', '1 onion, finely chopped', '2 cloves garlic, crushed', '2 tbsp olive oil', 'salt'],
  ['400 g rice', '200 g peas', '3 carrots, diced', '1 tbsp vegetable oil', '1 tsp turmeric'],
  ['1 kg potatoes, peeled', '300 g leeks, sliced', '1 l vegetable stock', '100 ml cream', 'black pepper'],
  ['600 g chicken thighs, diced', '400 ml coconut milk', '2 tbsp Thai red curry paste', '300 g green beans', '400 g jasmine rice'],
  ['500 g minced beef', '1 tin kidney beans, drained', '1 tin tomatoes', '1 red pepper', '2 tsp cumin', '1 tsp chilli powder'],
  ['300 g red lentils', '2 onions', '1 tbsp curry powder', '400 g spinach', '1 lemon, juiced'],
  ['400 g couscous', '1 tin chickpeas, drained', '2 courgettes, diced', '50 g raisins', '2 tbsp olive oil', '1 tsp cinnamon'],
  ['350 g pearl barley', '400 g mushrooms, sliced', '1 onion', '750 ml vegetable stock', '50 g parmesan, grated'],
  ['500 g salmon fillet', '600 g new potatoes', '1 bunch dill', '200 g peas', '50 g butter'],
  ['400 g tofu, cubed', '300 g broccoli', '3 tbsp soy sauce', '2 tbsp sesame oil', '300 g rice noodles', '1 thumb ginger, grated'],
  ['200 g porridge oats', '50 g raisins', '2 tbsp sugar', '60 g milk powder', '1 tsp cinnamon'],
  ['300 g quinoa', '1 tin black beans, drained', '1 tin sweetcorn', '2 limes, juiced', '1 bunch coriander', '1 avocado'],
  ['600 g pork shoulder, diced', '2 apples', '1 onion', '300 ml cider', '2 tbsp mustard', '500 g potatoes'],
  ['400 g macaroni', '300 g cheddar, grated', '500 ml milk', '50 g butter', '50 g flour'],
  ['500 g lamb shoulder, diced', '100 g dried apricots', '2 tsp ras el hanout', '1 tin tomatoes', '1 onion', '300 g couscous'],
  ['8 eggs', '200 g ham, diced', '1 green pepper', '1 onion', '2 tbsp butter'],
  ['1 butternut squash, peeled and cubed', '1 onion', '1 l chicken stock', '1 tsp nutmeg', '100 ml cream'],
  ['400 g turkey mince', '1 tin tomatoes', '2 carrots, grated', '1 courgette', '400 g spaghetti', '2 tsp oregano'],
  ['500 g beef stewing steak', '3 carrots', '2 sticks celery', '2 tbsp tomato puree', '500 ml beef stock', '300 ml red wine', '1 kg potatoes'],
  ['300 g polenta', '1 l water', '50 g butter', '80 g parmesan, grated', '1 tsp salt'],
]; // prettier-ignore

const eaters: readonly (readonly [string, Avoidance])[] = [
  ['no mushrooms', { is: 'kind', kinds: ['mushroom'] }],
  ['egg allergy', { is: 'allergen', tags: ['egg'] }],
];

/** A line as a meal's ingredients: what it counts, and what it only names. */
export const ingredientsOf = ({ called, contents, food, named }: LineResult): Ingredient[] => [
  { ingredient: called, contents, ndb: food?.ndb ?? null },
  ...named.map((one) => ({ ingredient: one.called, contents: one.contents })),
];

/** For each eater, of how many of these meals nothing is blocked and nothing unknown. */
export function plainMeals(table: FoodTable): EatenBy[] {
  const read = meals.map((lines) => lines.flatMap((line) => ingredientsOf(resolveLine(line, table))));
  return eaters.map(([who, avoid]) => ({
    who,
    clear: read.filter((meal) => verdictFor(meal, [avoid]).is === 'clear').length,
    of: meals.length,
  }));
}
