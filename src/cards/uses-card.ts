import type { Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { changedUses, usesOf } from '#house/occasions.ts';
import { howEaten } from '#house/eating.ts';
import { eatenDryPhrase } from '#words/phrases.ts';
import { sayOccasions } from '#words/occasion-words.ts';
import type { Folded } from './recipe-card.ts';
import type { RecipeChange } from '#words/recipe-changes.ts';

/** How it is eaten, where that is not with water, and what for: 'For breakfast, as I guess; "… is a side" would change it.' */
export function usesLine(house: House, recipe: Recipe): Folded {
  const { is, from } = usesOf(house, recipe);
  const other = is.includes('breakfast') ? 'a sweet' : 'for breakfast';
  const eaten = howEaten(house, recipe);
  return {
    needs: eaten.isDry ? [eatenDryPhrase(eaten)] : [],
    why: [
      `For ${sayOccasions(is)}${from === 'told' ? '' : `, as I guess; "… is ${other}" would change it`}.`,
    ],
  };
}

/** Records what a recipe is for from now on. @throws Refusal 'no-use', 'same-use' */
export function tellUses(
  house: House,
  recipe: Recipe,
  change: Extract<RecipeChange, { is: 'use' }>,
): { lines: string[]; did: string } {
  const before = usesOf(house, recipe);
  const after = changedUses(before.is, change);
  if (after.length === 0)
    throw new Refusal(
      'no-use',
      `Then ${recipe.name} would be for nothing. Say what it is for: /recipe ${recipe.name} is a side`,
    );
  if (before.from === 'told' && sayOccasions(before.is) === sayOccasions(after))
    throw new Refusal('same-use', `${recipe.name} is for ${sayOccasions(after)} already.`);
  house.mealUses.put(nameKey(recipe.name), after);
  const changed = sayOccasions(before.is) !== sayOccasions(after);
  const lines = [
    `${recipe.name}: for ${sayOccasions(after)}${changed ? `, was for ${sayOccasions(before.is)}` : ''}. /pick goes by it.`,
  ];
  return { lines, did: `said what ${recipe.name} is for: ${sayOccasions(after)}` };
}
