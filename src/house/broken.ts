import { groupBy } from '#core/groups.ts';
import type { Pouch, Trip } from '#core/records.ts';
import { sayCodes, sayList } from '#words/say.ts';
import { marksOf } from './marks.ts';
import type { House } from './house.ts';
import { saySlot, tripsAhead } from './trips.ts';
import { becauseWords, mayBeNear, mealOfBatch, verdictOn } from './verdicts.ts';

/** Kept pouches that no longer fit: somebody's list or a recipe changed. What is kept is never changed silently. */
function unfitFor(house: House, trip: Trip): string[] {
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  if (held.length === 0) return [];
  const eaters = house.eaters.all();
  const stock = house.pouches.inStock();
  const lines: string[] = [];
  const unfit = new Map<string, { codes: Pouch[]; says: string }>();
  for (const { pouch: id, slot: slotId, eaters: for_ } of held) {
    const pouch = stock.find((p) => p.id === id);
    const slot = trip.slots.find((s) => s.id === slotId);
    if (!pouch || !slot) continue;
    const meal = mealOfBatch(house, pouch.batch);
    const note = (says: string) => {
      const entry = unfit.get(says) ?? { codes: [], says };
      entry.codes.push(pouch);
      unfit.set(says, entry);
    };
    for (const eater of eaters.filter((e) => slot.eaters.includes(e.id) && !mayBeNear(e, meal)))
      note(`kept for ${saySlot(slot)}: must not be near ${eater.name}.`);
    for (const eater of eaters.filter((e) => for_.includes(e.id) && slot.eaters.includes(e.id))) {
      const verdict = verdictOn(eater, meal);
      if (verdict.is === 'clear') continue;
      const reason =
        verdict.is === 'blocked' ? becauseWords(verdict.by) : `unknown, ${becauseWords(verdict.because)}`;
      note(`kept for ${eater.name}: not clear, ${reason}.`);
    }
  }
  const damp = stock.filter((pouch) => !pouch.checked && held.some((h) => h.pouch === pouch.id));
  if (damp.length > 0)
    lines.push(
      `${sayCodes(damp)}: ${[...new Set(damp.flatMap((pouch) => marksOf(house, pouch)))].join(', ')}; not for a trip.`,
    );
  for (const { codes, says } of unfit.values()) lines.push(`${sayCodes(codes)}, ${says}`);
  return lines;
}

/** Meals for which nothing is kept, of a trip for which something is. */
function missingMeals(house: House, trip: Trip): string[] {
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  // Single meals that stay as they are leave the others open on purpose.
  const isKept = (id: number) => trip.slots.find((slot) => slot.id === id)?.marks.includes('kept');
  if (held.every(({ slot }) => isKept(slot))) return [];
  const eaters = house.eaters.all();
  const missing = trip.slots.flatMap((slot) => {
    const fed = new Set(held.filter((h) => h.slot === slot.id).flatMap((h) => h.eaters));
    const missed = eaters.filter((e) => slot.eaters.includes(e.id) && !fed.has(e.id)).map((e) => e.name);
    const isAll = missed.length === slot.eaters.length;
    return missed.length === 0 ? [] : [{ at: saySlot(slot), who: isAll ? '' : `${sayList(missed)} at ` }];
  });
  return [...groupBy(missing, (one) => one.who)].map(
    ([who, alike]) => `Nothing is kept for ${who}${sayList(alike.map(({ at }) => at))}.`,
  );
}

/** All that is wrong with what is kept for a trip. */
export const brokenPromises = (house: House, trip: Trip): string[] => [
  ...unfitFor(house, trip),
  ...missingMeals(house, trip),
];

/** What no longer fits, for every trip ahead, with what mends it. */
export function brokenAnywhere(house: House): string[] {
  return tripsAhead(house).flatMap((trip) => {
    const broken = unfitFor(house, trip);
    return broken.length === 0 ? [] : [...broken, `/pick for ${trip.place} again, then /pick keep.`];
  });
}
