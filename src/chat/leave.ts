import type { Pouch } from '#core/records.ts';
import type { PouchCode } from '#words/parts.ts';
import { sayCodes, sayCount, sayList } from '#words/say.ts';
import type { House } from './command.ts';
import { pouchesInStock } from './figures.ts';
import { type MealShown, mealOfBatch } from './verdicts.ts';

/** Pouches that left the stock, and what of their meals is still there. */
export interface Left {
  /** The meals that were taken, for the notes. */
  readonly meals: readonly MealShown[];
  readonly gone: readonly Pouch[];
  readonly remaining: readonly { readonly meal: string; readonly pouches: readonly Pouch[] }[];
}

/** Takes pouches out of stock. @throws Refusal when one is not there; then none is taken */
export function takeOut(
  house: House,
  codes: readonly PouchCode[],
  state: 'used' | 'discarded',
  why: string | null,
): Left {
  const gone = pouchesInStock(house, codes);
  for (const pouch of gone) house.pouches.leave(pouch.id, state, why, house.nowMs);
  const stock = house.pouches.inStock();
  const remaining = [...new Set(gone.map((pouch) => pouch.meal))].map((meal) => ({
    meal,
    pouches: stock.filter((pouch) => pouch.meal === meal),
  }));
  const meals = [...new Set(gone.map((pouch) => pouch.batch))].map((no) => mealOfBatch(house, no));
  return { gone, remaining, meals };
}

/** 'Left of barley soup: 4 pouches, B4-3 to B4-6.' */
export function remainingLines({ remaining }: Left): string[] {
  return remaining.map(({ meal, pouches }) =>
    pouches.length === 0
      ? `No ${meal} is left.`
      : `Left of ${meal}: ${sayCount(pouches.length, 'pouch', 'pouches')}, ${sayCodes(pouches)}.`,
  );
}

/** 'B4-2 and B4-3 (barley soup)'. */
export function goneWords({ gone }: Left): string {
  return `${sayCodes(gone)} (${sayList([...new Set(gone.map((pouch) => pouch.meal))])})`;
}
