import type { Eater, Recipe, Slot, Trip, Wish } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { sayCode, sayCodes, sayList } from '#words/say.ts';
import { nameKey, pouchesInStock, recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { saySlot } from './trips.ts';
import { shownOf, verdictOn } from './verdicts.ts';
import { sayWhen, slotMeant, wishesMeant } from './wishing.ts';

/**
 * Takes wishes back, each named; where nobody wished for it, the meal is kept away from the slots that are named, or from
 * the whole trip.
 * @param isNo "no soup" rather than "not soup": it speaks of the meal, for everybody
 * @throws Refusal 'no-such-wish', 'kept-away'
 */
export function takenBack(
  house: House,
  trip: Trip,
  recipes: readonly Recipe[],
  eaters: readonly Eater[],
  slots: readonly Slot[] | undefined,
  isNo: boolean,
) {
  const lines: string[] = [];
  const all = house.trips.wishes(trip.id);
  for (const { name } of recipes) {
    const meant = wishesMeant(all, eaters, nameKey(name), slots);
    for (const wish of meant) {
      house.trips.dropWish(wish.id);
      const whose = eaters.find(({ id }) => id === wish.eater)!;
      lines.push(`Taken back: ${name} for ${whose.name}, ${trip.place}, ${sayWhen(trip, wish.slot)}.`);
    }
    if (meant.length > 0) continue;
    if (!isNo) throw noSuchWish(house, trip, eaters, name, all);
    const known = house.slotRules.bans(trip.id);
    const fresh = (slots ?? trip.slots).filter(
      ({ id }) => !known.some((b) => b.slot === id && b.mealKey === nameKey(name)),
    );
    for (const { id } of fresh) house.slotRules.ban(id, nameKey(name));
    if (fresh.length === 0) throw new Refusal('kept-away', `${name} is kept away from there already.`);
    const where = slots ? `at ${sayList(fresh.map(saySlot))}` : `at any meal of ${trip.place}`;
    lines.push(`No ${name} ${where}: /pick keeps it away.`);
  }
  return { lines, did: lines.join(' ').replace(/\.$/, '') };
}

function noSuchWish(
  house: House,
  trip: Trip,
  eaters: readonly Eater[],
  name: string,
  all: readonly Wish[],
): Refusal {
  const wishing = new Set(all.filter(({ mealKey }) => mealKey === nameKey(name)).map(({ eater }) => eater));
  const others = house.eaters
    .all()
    .filter(({ id }) => wishing.has(id))
    .map((one) => one.name);
  const way =
    others.length > 0
      ? `${sayList(others)} ${others.length > 1 ? 'do' : 'does'}: /want not ${name} for ${sayList(others)}`
      : `To keep it away from the whole trip: /want no ${name}`;
  return new Refusal(
    'no-such-wish',
    `${sayList(eaters.map((e) => e.name))} has no wish for ${name} on ${trip.place}. ${way}`,
  );
}

/** Says of pouches at which meal they are opened; everybody there who may have it wishes for it. */
export function pinned(
  house: House,
  trip: Trip,
  codes: Parameters<typeof pouchesInStock>[1],
  slots: readonly Slot[] | undefined,
) {
  const pouches = pouchesInStock(house, codes);
  if (!slots)
    throw new Refusal(
      'when',
      `I read ${sayCodes(pouches)}, but not for which meal, such as saturday dinner.`,
    );
  const eaters = house.eaters.all();
  const slot = slotMeant(
    slots,
    eaters,
    (one) => `/want ${pouches.map(sayCode).join(' ')} ${one ? `${one.onDay} ${one.meal}` : ''}`,
  );
  const before = house.trips.wishes(trip.id);
  const lines: string[] = [];
  for (const pouch of pouches) {
    house.slotRules.pin(slot.id, pouch.id);
    const recipe = recipeNamed(house, pouch.meal);
    const who = eaters.filter(
      ({ id, ...e }) => slot.eaters.includes(id) && verdictOn(e, shownOf(house, recipe)).is === 'clear',
    );
    for (const { id } of who.filter(
      ({ id: one }) =>
        !before.some((w) => w.eater === one && w.slot === slot.id && w.mealKey === nameKey(pouch.meal)),
    ))
      house.trips.wish(
        trip.id,
        { eater: id, mealKey: nameKey(pouch.meal), slot: slot.id, byMember: house.member.id },
        house.nowMs,
      );
    lines.push(
      who.length === 0
        ? `${sayCode(pouch)}, ${pouch.meal}, is clear for nobody at ${saySlot(slot)}.`
        : `${sayCode(pouch)}, ${pouch.meal}, is for ${saySlot(slot)}, for ${sayList(who.map(({ name }) => name))}: /pick goes by it.`,
    );
  }
  return {
    lines,
    did: `said that ${sayCodes(pouches)} ${pouches.length > 1 ? 'are' : 'is'} for ${saySlot(slot)}`,
  };
}
