import type { Batch, Recipe } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { type PotLoad, isLoadBefore, mayBeRest, sharedPotG } from '#core/pot.ts';
import { Ambiguous } from '#words/ambiguous.ts';
import { sayG } from '#words/say.ts';
import { factsOfRecipe } from './figures.ts';
import type { House } from './house.ts';

/** More than the pot by rounding and what clings to a ladle. Chosen. */
const mostOfPotFraction = 1.02;

const wetOf = (batch: Pick<Batch, 'trays'>): number => batch.trays.reduce((sum, tray) => sum + tray.wetG, 0);
const asLoad = (batch: Pick<Batch, 'trays' | 'potG' | 'factor' | 'loadedAtMs'>): PotLoad => ({
  wetG: wetOf(batch),
  potG: batch.potG,
  factor: batch.factor,
  loadedAtMs: batch.loadedAtMs,
});

type NewLoad = Pick<Batch, 'trays' | 'potG' | 'factor' | 'loadedAtMs'>;

/** The same weights in the same minute are one message sent twice, which is asked about elsewhere. */
const isSentAgain = (before: NewLoad, load: NewLoad): boolean =>
  load.loadedAtMs - before.loadedAtMs < 60_000 &&
  before.trays.map(({ wetG }) => wetG).join() === load.trays.map(({ wetG }) => wetG).join();

/** The loads before that came from the same pot as the last of them, oldest first. */
function loadsOfPot(house: House, recipe: Recipe, load: NewLoad): Batch[] {
  const before = house.batches
    .ofMeal(recipe.id)
    .filter((batch) => batch.recipe.id === recipe.id && isLoadBefore(asLoad(batch), asLoad(load)))
    .toReversed();
  const last = before.at(-1);
  return last === undefined
    ? []
    : before.filter((batch) => batch === last || (last.potG !== null && batch.potG === last.potG));
}

/**
 * What the pot of a new load weighed, where it is the rest of one that was loaded before; those loads are put right with
 * it, as they were taken for all of their pot.
 * @returns g; as told where nothing was said and nothing can be meant
 * @throws Ambiguous where it may be the rest and nobody said so; Refusal 'no-load-before', 'more-than-the-pot'
 */
export function potOf(
  house: House,
  recipe: Recipe,
  load: NewLoad,
  told: 'same' | 'anew' | undefined,
  request: (told: string) => string,
): number | null {
  if (told === 'anew') return load.potG;
  const before = loadsOfPot(house, recipe, load);
  const last = before.at(-1);
  if (told === undefined) {
    const madeG = factsOfRecipe(house, recipe).finishedG * load.factor;
    if (last !== undefined && !isSentAgain(last, load) && mayBeRest(asLoad(last), asLoad(load), madeG))
      throw new Ambiguous(
        `Is this the rest of the pot that B${last.no} came from, or was ${recipe.name} cooked anew?`,
        [
          { label: `The rest of B${last.no}'s pot`, request: request('same pot') },
          { label: 'Cooked anew', request: request('anew') },
        ],
      );
    return load.potG;
  }
  if (last === undefined)
    throw new Refusal(
      'no-load-before',
      `No ${recipe.name} was loaded in the three days before: there is no pot that this could be the rest of.`,
    );
  const wetG = wetOf(load);
  const potG = load.potG ?? sharedPotG(before.map(asLoad), wetG);
  const allG = before.reduce((sum, batch) => sum + wetOf(batch), 0) + wetG;
  if (allG > potG * mostOfPotFraction)
    throw new Refusal(
      'more-than-the-pot',
      `The pot weighed ${sayG(potG)}, and with this load ${sayG(allG)} came out of it. One of the weights is wrong.`,
    );
  for (const batch of before) if (batch.potG !== potG) house.batches.weighPot(batch.id, potG);
  return potG;
}
