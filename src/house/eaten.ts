import { Lacking, Refusal } from '#core/refusal.ts';
import { restG } from '#core/rest.ts';
import { afterEatingG, mayFollow, unsound } from '#core/seal-check.ts';
import type { Eaten } from '#words/eaten-parts.ts';
import { foundMark } from '#words/found-words.ts';
import type { PouchCode } from '#words/parts.ts';
import { sayCode, sayG } from '#words/say.ts';
import { partlySealed } from './dryness.ts';
import { loadedBatch, driedFacts, pouchesInStock } from './figures.ts';
import type { House } from './house.ts';
import { type MealShown, mealOfBatch } from './verdicts.ts';

/** Less than this in a pouch is crumbs: the whole of it was eaten, g. Chosen. */
const crumbsG = 2;

export interface PartEaten {
  readonly group: string;
  readonly did: string;
  readonly meals: readonly MealShown[];
}

/**
 * Part of a pouch was eaten; the rest of it stays, opened.
 * @returns undefined when nothing of it is left: the whole pouch was used
 * @throws Refusal 'one-pouch' or 'more-than-there-is'
 */
export function eatPart(house: House, codes: readonly PouchCode[], eaten: Eaten): PartEaten | undefined {
  const [pouch, second] = pouchesInStock(house, codes);
  if (!pouch || second)
    throw new Refusal('one-pouch', 'A part is eaten of one pouch at a time: name one, such as B4-2 half.');
  const leftG = afterEatingG(pouch.dryG, eaten);
  if (!mayFollow(pouch.found, 'opened'))
    throw new Refusal(
      'unfit',
      `${sayCode(pouch)} was found so: ${foundMark[unsound(pouch.found)!]}. Throw the rest away, and no tasting: /discard ${sayCode(pouch)}`,
    );
  if (leftG < crumbsG) return undefined;
  house.pouches.note(pouch.id, 'opened', house.nowMs, pouch.dryG - leftG);
  const g = (value: number) => sayG(value, house.settings.units);
  const code = sayCode(pouch);
  return {
    group: `${code}, ${pouch.meal}: ${g(pouch.dryG - leftG)} eaten, ${g(leftG)} left in it, OPENED. Eat it within days, kept closed and dry (common practice), or seal it anew: /found ${code} resealed ${g(leftG)}. No best-by and no trip until then.`,
    did: `ate ${g(pouch.dryG - leftG)} of ${code}`,
    meals: [mealOfBatch(house, pouch.batch)],
  };
}

/** A batch was named where a pouch or its rest is wanted. */
export function noPouch(no: number): Refusal {
  return new Lacking(
    'which-of-it',
    `I could not place "B${no}" alone; I still need a pouch code such as B${no}-2, or "rest" for what was never sealed.`,
  );
}

/**
 * The part of a batch that was never sealed was eaten or thrown away.
 * @param much all that is left where nobody says how much
 * @throws Refusal 'nothing-left' or 'more-than-there-is'
 */
export function endRest(
  house: House,
  no: number,
  what: 'used' | 'discarded',
  much: Eaten | undefined,
  why: string | null,
): PartEaten {
  const batch = loadedBatch(house, no);
  const leftG = restG(partlySealed(house, batch, driedFacts(house, batch).dryG));
  if (leftG < crumbsG) throw new Refusal('nothing-left', `Nothing of B${no} is left unsealed.`);
  const afterG = afterEatingG(leftG, much ?? { share: 1 });
  house.batches.rest(batch.id, { atMs: house.nowMs, what, netG: leftG - afterG }, why);
  const g = (value: number) => sayG(value, house.settings.units);
  const word = what === 'used' ? 'eaten' : 'thrown away';
  return {
    group: `B${no}, ${batch.recipe.name}: ${g(leftG - afterG)} of the unsealed rest ${word}${why === null ? '' : `, because: ${why}`}; ${afterG < crumbsG ? 'nothing' : g(afterG)} of it is left.`,
    did: `${what} ${g(leftG - afterG)} of the rest of B${no}`,
    meals: [mealOfBatch(house, no)],
  };
}
