import type { Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { restG } from '#core/rest.ts';
import { isSealedFrom, partlySealed } from './dryness.ts';
import { batchNumbered, factsOfBatch, nameKey, recipeNamed } from './figures.ts';
import { Reading } from '#words/reading.ts';
import type { House } from './house.ts';
import { type Changed, codes } from './recipe-changes.ts';
import { longestName } from './recipe-text.ts';

/** Calls a recipe something else, with all that goes by its name. @throws Refusal 'name-taken', 'long-name', 'no-name' */
export function renameRecipe(house: House, before: Recipe, typed: string): Changed {
  // Without signs that turn the writing round; a name of pictures alone is a name.
  const newName = new Reading(typed).rest() || typed;
  if (/\b(?:serv(?:es|ings?)|portions?)\b/iu.test(newName) && /\d/.test(newName))
    throw new Refusal(
      'servings-in-name',
      `"${newName}" tells servings: say them apart, as in /recipe barley soup serves 6`,
    );
  const [from, to] = [nameKey(before.name), nameKey(newName)];
  if (to === '') throw new Refusal('no-name', `"${newName}" is no name that I can keep.`);
  if (newName.length > longestName)
    throw new Refusal(
      'long-name',
      `A name of ${newName.length} characters does not fit on a pouch; up to ${longestName} do.`,
    );
  if (newName === before.name) throw new Refusal('same-name', `${before.name} is called that already.`);
  if (from !== to && house.recipes.everNamed(to))
    throw new Refusal(
      'name-taken',
      `There ${house.recipes.find(to) ? 'is' : 'was'} a recipe called ${newName}: two meals must not go by one name.`,
    );
  house.recipes.rename(from, to, newName);
  // People go on saying the old name for a while; where the new one was another name of it, it no longer is.
  for (const words of house.learnt.aliases().keys())
    if (nameKey(words) === to) house.learnt.forgetAlias(words);
  if (from !== to) house.learnt.learnAlias(before.name, to);
  const pouches = house.pouches.inStockOf(newName);
  return {
    before,
    after: recipeNamed(house, newName),
    remarks:
      pouches.length > 0
        ? [
            `${pouches.length === 1 ? 'A pouch' : `${pouches.length} pouches`} in stock may still say ${before.name} on the label; the codes hold.`,
          ]
        : [],
  };
}

/** Less than this of an unsealed rest is crumbs, g. Chosen. */
const crumbsG = 2;

/**
 * A recipe leaves the lists when nothing of it is left: people ask by its name what is in a pouch.
 * @throws Refusal 'still-there' while a batch of it is drying, unsealed or in stock
 */
export function refuseWhileThere(house: House, recipe: Recipe): void {
  const mixed = new Set(
    house.pouches.mixes().flatMap((no) => batchNumbered(house, no).mix!.parts.map(({ batch }) => batch)),
  );
  const there = house.batches.ofMeal(recipe.id).filter((batch) => {
    const pouches = house.pouches.ofBatch(batch.no);
    if (pouches.some(({ state }) => state === 'stock') || mixed.has(batch.no)) return true;
    const { dryG } = factsOfBatch(house, batch);
    if (dryG === null)
      return batch.rest.every(({ what }) => what === 'weighed') && !isSealedFrom(house, batch.no);
    return restG(partlySealed(house, batch, dryG)) >= crumbsG;
  });
  if (there.length > 0)
    throw new Refusal(
      'still-there',
      `${codes(there)} of ${recipe.name} ${there.length === 1 ? 'is' : 'are'} still there: its recipe says what is in ${there.length === 1 ? 'it' : 'them'}. It can go when nothing of it is left.`,
    );
}
