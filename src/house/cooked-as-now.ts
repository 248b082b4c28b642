import type { Batch } from '#core/records.ts';
import type { Choice } from '#core/talk.ts';
import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from '#words/ambiguous.ts';
import { loadedBatch, nameKey, recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { isChild, selfOf } from './lifting.ts';
import { type Changed, cookedFrom } from './recipe-changes.ts';

/** More batches than these are not asked about one by one. Chosen: each is a button. */
const mostAsked = 2;

const label = (no: number): string => `B${no} was cooked this way too`;
const request = (no: number): string => `/fix B${no} cooked as now sure`;

/** Batches that keep what they were cooked from before a change: one tap says that they were cooked the new way. */
export function askHowCooked(house: House, { before, after }: Pick<Changed, 'before' | 'after'>): Choice[] {
  if (before.id === after.id) return [];
  return cookedFrom(house, before)
    .toSorted((a, b) => b.no - a.no)
    .slice(0, mostAsked)
    .map(({ no }) => ({ label: label(no), request: request(no) }));
}

/**
 * A batch was cooked by its recipe as it stands now: the recipe was wrong, not the pot. It may take an allergen off what
 * is sealed, so it is for a grown-up's tap, as a bar is lifted.
 * @returns the batch as it was
 * @throws Refusal 'as-now-already', 'for-a-grown-up'; Ambiguous with the button where nothing was tapped
 */
export function cookedAsNow(house: House, no: number, isSure: boolean): Batch {
  const batch = loadedBatch(house, no);
  const { name } = batch.recipe;
  if (house.recipes.find(nameKey(name)) === undefined)
    throw new Refusal(
      'no-such-recipe',
      `The recipe ${name} was deleted; B${no} keeps what it was cooked from.`,
    );
  const now = recipeNamed(house, name);
  if (now.id === batch.recipe.id)
    throw new Refusal('as-now-already', `B${no} counts by the recipe as it stands now already.`);
  const self = selfOf(house);
  if (self !== undefined && isChild(self))
    throw new Refusal(
      'for-a-grown-up',
      `What is in B${no} is for a grown-up to say: ${self.name} is recorded as a child. Nothing was recorded.`,
    );
  if (!house.tapped || !isSure)
    throw new Ambiguous(
      `B${no} keeps what was on record when it was cooked. Nothing is changed yet: a grown-up who cooked it taps.`,
      [{ label: label(no), request: request(no) }],
    );
  house.batches.cookedBy(batch.id, now.id);
  return batch;
}
