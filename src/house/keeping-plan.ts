import type { PicksPlan } from '#core/picks/problem.ts';
import type { Slot } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { sayList } from '#words/say.ts';
import type { House } from './house.ts';
import type { TripProblem } from './trip-problem.ts';
import { saySlot } from './trips.ts';

/**
 * Holds the pouches of a plan for their meals; earlier promises of these meals that are not packed make way.
 * @param only these meals, which then stay as they are when the trip is planned anew; undefined for the whole plan
 * @returns what was done; undefined when the plan has nothing for them
 */
export function holdPlan(
  house: House,
  { trip, pouches }: TripProblem,
  plan: PicksPlan,
  only?: readonly Slot[],
): string | undefined {
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  const isMeant = (slot: number) => only === undefined || only.some(({ id }) => id === slot);
  for (const one of held.filter(({ slot, packed }) => isMeant(slot) && !packed))
    house.trips.releaseOne(one.id);
  const packed = new Set(held.filter((h) => h.packed).map(({ pouch }) => pouch));
  const codes: string[] = [];
  for (const { slot, dishes, beside = [] } of plan.slots.filter((one) => isMeant(Number(one.slot)))) {
    for (const dish of [...dishes, ...beside]) {
      for (const code of dish.pouches) {
        const pouch = pouches.get(code)!;
        codes.push(code);
        if (!packed.has(pouch.id)) house.trips.hold(trip.id, Number(slot), pouch.id, dish.eaters.map(Number));
      }
    }
    if (only && dishes.length > 0) house.slotRules.mark(Number(slot), 'kept');
  }
  if (codes.length === 0) return undefined;
  return `kept ${codes.length} pouches for ${trip.place}${only ? `, ${sayList(only.map(saySlot))}` : ''}`;
}

/** Lets meals be planned anew that were to stay as they are; what is packed stays packed. @throws Refusal 'not-kept' */
export function freeSlots(house: House, slots: readonly Slot[]): Slot[] {
  const kept = slots.filter(({ marks }) => marks.includes('kept'));
  if (kept.length === 0)
    throw new Refusal(
      'not-kept',
      `${sayList(slots.map(saySlot))} ${slots.length > 1 ? 'are' : 'is'} not among the meals that stay as they are.`,
    );
  for (const { id } of kept) house.slotRules.unmark(id, 'kept');
  return kept;
}
