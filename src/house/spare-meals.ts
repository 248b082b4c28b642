import { DateTime } from 'luxon';
import { type Slot, type SlotMeal, slotMeals, type Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { SpareMeal } from '#words/trip-told.ts';
import type { House } from './house.ts';
import { keepAway } from './kept-away.ts';
import { saySlot } from './trips.ts';

/**
 * Takes a meal along to spare, for everybody who is there at the last meal: on the last day where it would still be to come,
 * else on the day after. Or leaves it at home again.
 * @throws Refusal 'no-spare', 'no-one'
 */
export function takeSpare(
  house: House,
  trip: Trip,
  { meal, isGone }: SpareMeal,
): { line: string; did: string } {
  const spare = trip.slots.find((slot) => slot.marks.includes('spare') && slot.meal === meal);
  if (isGone) {
    if (!spare) throw new Refusal('no-spare', `No spare ${meal} is planned for ${trip.place}.`);
    for (const held of house.trips.held(trip.id).filter((h) => h.slot === spare.id && h.came === null))
      house.trips.releaseOne(held.id);
    house.trips.dropSlot(spare);
    return { line: `No spare ${meal} any more.`, did: `left the spare ${meal} of ${trip.place} at home` };
  }
  if (spare) throw new Refusal('spare-already', `A spare ${meal} is planned already: ${saySlot(spare)}.`);
  const last = trip.slots.at(-1);
  if (!last || last.eaters.length === 0)
    throw new Refusal('no-one', `Nobody is at the last meal of ${trip.place}, so nobody needs a spare one.`);
  const onDay = dayAfter(last, meal);
  const id = house.trips.addSlot(trip.id, { onDay, meal, eaters: last.eaters });
  keepAway(house, trip.id, trip.slots, id);
  house.slotRules.mark(id, 'spare');
  return {
    line: `A spare ${meal} comes along, for ${saySlot({ onDay, meal })}; what stays shut goes home again.`,
    did: `took a spare ${meal} along to ${trip.place}`,
  };
}

function dayAfter({ onDay, meal: last }: Slot, meal: SlotMeal): string {
  if (slotMeals.indexOf(meal) > slotMeals.indexOf(last)) return onDay;
  return DateTime.fromISO(onDay, { zone: 'UTC' }).plus({ days: 1 }).toISODate()!;
}
