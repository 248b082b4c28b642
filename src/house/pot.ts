import type { Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { sayG } from '#words/say.ts';
import { factsOfRecipe } from './figures.ts';
import type { House } from './house.ts';
import { isSealedFrom } from './dryness.ts';

/**
 * The pot was weighed: for the recipe, and for batches of it that are not sealed yet and had no pot.
 * @returns the numbers of those batches
 * @throws Refusal 'pot-below-solids', 'more-than-the-pot'
 */
export function keepPot(house: House, recipe: Recipe, potG: number): number[] {
  const { totals } = factsOfRecipe(house, recipe);
  if (potG < totals.solidsG) {
    throw new Refusal(
      'pot-below-solids',
      `A pot of ${sayG(potG)} cannot be: the lines of ${recipe.name} alone hold ${sayG(totals.solidsG)} of solids.`,
    );
  }
  house.recipes.weighPot(recipe.id, potG);
  const open = house.batches
    .ofMeal(recipe.id)
    .filter(
      (batch) => batch.recipe.id === recipe.id && batch.potG === null && !isSealedFrom(house, batch.no),
    );
  for (const batch of open) {
    const wetG = batch.trays.reduce((sum, tray) => sum + tray.wetG, 0);
    if (wetG > potG * batch.factor * 1.02) {
      throw new Refusal(
        'more-than-the-pot',
        `B${batch.no} holds ${sayG(wetG)}, more than a pot of ${sayG(potG * batch.factor)}. One of the two weights is wrong.`,
      );
    }
    house.batches.weighPot(batch.id, potG * batch.factor);
  }
  return open.map(({ no }) => no);
}
