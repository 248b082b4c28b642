import type { Pouch } from '#core/records.ts';
import type { PouchCode } from '#words/parts.ts';
import { sayCode, sayCodes, sayDay, sayList, sayPieces } from '#words/say.ts';
import type { House } from './house.ts';
import { freeStock, pouchesInStock } from './figures.ts';
import { todayOf } from './today.ts';
import { saySlot } from './trips.ts';
import { type MealShown, mealOfBatch } from './verdicts.ts';

/** Pouches that left the stock, and what of their meals is still there. */
export interface Left {
  /** The meals that were taken, for the notes. */
  readonly meals: readonly MealShown[];
  readonly gone: readonly Pouch[];
  readonly remaining: readonly { readonly meal: string; readonly pouches: readonly Pouch[] }[];
  /** The day it was, said; null where it is today. */
  readonly on: string | null;
  /** Meals of trips that lost a pouch by it. */
  readonly missed: readonly string[];
}

/** Takes pouches out of stock. @throws Refusal when one is not there; then none is taken */
export function takeOut(
  house: House,
  codes: readonly PouchCode[],
  state: 'used' | 'discarded',
  why: string | null,
  atMs: number = house.nowMs,
): Left {
  const gone = pouchesInStock(house, codes);
  const heldNow = house.trips.held(null);
  const trips = heldNow.length === 0 ? [] : house.trips.all();
  const missed: string[] = [];
  const today = todayOf(house);
  for (const pouch of gone) {
    const held = heldNow.find((h) => h.pouch === pouch.id);
    if (held) {
      const trip = trips.find((t) => t.id === held.trip)!;
      const slot = trip.slots.find((s) => s.id === held.slot)!;
      // Eaten on the way when its meal had come: that is what it was kept for.
      if (state === 'used' && slot.onDay <= today) house.trips.came(held.id, 'eaten');
      else {
        missed.push(`${saySlot(slot)} at ${trip.place} (${sayCode(pouch)})`);
        house.trips.releaseOne(held.id);
      }
    }
    // Nothing is gone before it is sealed.
    house.pouches.leave(pouch.id, state, why, Math.max(atMs, pouch.sealedAtMs));
  }
  const day = sayDay(Math.max(atMs, ...gone.map(({ sealedAtMs }) => sealedAtMs)), house.settings.zone);
  return {
    gone,
    missed,
    on: day === sayDay(house.nowMs, house.settings.zone) ? null : day,
    remaining: [...new Set(gone.map((pouch) => pouch.meal))].map((meal) => ({
      meal,
      pouches: freeStock(house, meal),
    })),
    meals: [...new Set(gone.map((pouch) => pouch.batch))].map((no) => mealOfBatch(house, no)),
  };
}

/** 'Left of barley soup: 4 pouches, B4-3 to B4-6.' and what a trip lost. */
export function remainingLines({ remaining, missed }: Left): string[] {
  const left = remaining.map(({ meal, pouches }) =>
    pouches.length === 0
      ? `No free pouch of ${meal} is left.`
      : `Left of ${meal}: ${sayPieces(pouches)}, ${sayCodes(pouches)}.`,
  );
  return missed.length === 0
    ? left
    : [...left, `It was kept for ${sayList(missed)}: /pick again for that trip.`];
}

/** 'B4-2 and B4-3 (barley soup)'. */
export function goneWords({ gone }: Left): string {
  return `${sayCodes(gone)} (${sayList([...new Set(gone.map((pouch) => pouch.meal))])})`;
}
