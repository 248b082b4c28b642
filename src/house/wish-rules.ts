import type { Eater, Recipe, Slot, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { sayCode, sayCodes, sayList } from '#words/say.ts';
import { nameKey, pouchesInStock, recipeNamed } from './figures.ts';
import type { House } from './house.ts';
import { saySlot } from './trips.ts';
import { shownOf, verdictOn } from './verdicts.ts';
import { sayWhen, slotMeant, wishesMeant } from './wishing.ts';

/** Takes wishes back, each named; where a meal is named and nobody wished, the meal is kept away from it. */
export function takenBack(
  house: House,
  trip: Trip,
  recipes: readonly Recipe[],
  eaters: readonly Eater[],
  slots: readonly Slot[] | undefined,
  isForAll: boolean,
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
    if (!slots || !isForAll)
      throw new Refusal(
        'no-such-wish',
        `${sayList(eaters.map((e) => e.name))} has no wish for ${name} on ${trip.place}. To keep it away from a meal, say which: /want no ${name} ${trip.slots[0]!.onDay} ${trip.slots[0]!.meal}`,
      );
    const known = house.slotRules.bans(trip.id);
    const fresh = slots.filter(({ id }) => !known.some((b) => b.slot === id && b.mealKey === nameKey(name)));
    for (const { id } of fresh) house.slotRules.ban(id, nameKey(name));
    if (fresh.length === 0) throw new Refusal('kept-away', `${name} is kept away from there already.`);
    lines.push(`No ${name} at ${sayList(fresh.map(saySlot))}: /pick keeps it away.`);
  }
  return { lines, did: lines.join(' ').replace(/\.$/, '') };
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
