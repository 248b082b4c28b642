import { guessOccasions } from '#core/occasion-guess.ts';
import { type Occasion, occasions } from '#core/occasions.ts';
import type { Recipe } from '#core/records.ts';
import { fold } from '#words/near.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';

export interface MealUses {
  readonly is: readonly Occasion[];
  readonly from: 'told' | 'guessed';
}

/** What a recipe is for: as the household said, else as its name and ingredients let on. */
export function usesOf(house: Pick<House, 'mealUses' | 'foods'>, recipe: Recipe): MealUses {
  const told = house.mealUses.all().get(nameKey(recipe.name));
  if (told) return { is: told, from: 'told' };
  const parts = recipe.lines.flatMap(({ ndb, grams, camp }) => {
    const food = ndb === null || grams === null || camp !== null ? undefined : house.foods.byNdb(ndb);
    return food === undefined
      ? []
      : [{ group: food.group, solidsG: (grams! * (100 - (food.per100.waterG ?? 0))) / 100 }];
  });
  return { is: guessOccasions(fold(recipe.name).split(' '), parts), from: 'guessed' };
}

/** Occasions after a change: put in place, added, or taken away. */
export function changedUses(
  before: readonly Occasion[],
  change: { readonly how: 'is' | 'also' | 'not'; readonly uses: readonly Occasion[] },
): readonly Occasion[] {
  if (change.how === 'is') return change.uses;
  const isKept = (one: Occasion): boolean =>
    change.how === 'not'
      ? before.includes(one) && !change.uses.includes(one)
      : before.includes(one) || change.uses.includes(one);
  return occasions.filter(isKept);
}
