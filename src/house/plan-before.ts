import type { PicksProblem, Seat } from '#core/picks/problem.ts';
import type { HeldPouch, Trip } from '#core/records.ts';
import { sayCode } from '#words/say.ts';
import type { House } from './house.ts';

/**
 * Who was to eat what: by the pouches kept for the trip, else by the picks last shown. Where only some meals are kept as
 * they are, the others go by what was shown.
 * @param dishOf the dish that a batch's pouches are, by its number; undefined for what only goes beside a meal
 */
export function planBefore(
  house: House,
  trip: Trip,
  dishOf: (batch: number) => string | undefined,
): Pick<PicksProblem, 'before'> {
  const held = heldNow(house, trip).filter(({ slot }) => !isKept(trip, slot));
  if (held.length > 0) return { before: { was: 'kept', seats: once(seatsOf(house, held, dishOf)) } };
  const seats = house.trips.seatsShown(trip.id);
  return seats === undefined ? {} : { before: { was: 'shown', seats: once(seats) } };
}

/**
 * What stays as it is planned, with the pouches kept for it. What somebody may not have there any more does not stay:
 * then that eater's meal is planned anew.
 * @param may whether the dish is clear for the eater, by their keys, and not kept away from the slot
 */
export function fixedPlan(
  house: House,
  trip: Trip,
  dishOf: (batch: number) => string | undefined,
  may: (slot: string, eater: string, meal: string) => boolean,
): Required<Pick<PicksProblem, 'fixed' | 'pinned'>> {
  const held = heldNow(house, trip).filter(({ slot }) => isKept(trip, slot));
  const byId = new Map(house.pouches.inStock().map((pouch) => [pouch.id, pouch]));
  return {
    fixed: once(
      seatsOf(house, held, dishOf).filter(({ slot, eater, meal }) => meal !== null && may(slot, eater, meal)),
    ),
    pinned: held.flatMap(({ slot, pouch }) => {
      const found = byId.get(pouch);
      return found ? [{ slot: String(slot), pouch: sayCode(found) }] : [];
    }),
  };
}

const heldNow = (house: House, trip: Trip): HeldPouch[] =>
  house.trips.held(trip.id).filter((h) => h.came === null);

const isKept = (trip: Trip, slot: number): boolean =>
  trip.slots.find(({ id }) => id === slot)?.marks.includes('kept') ?? false;

function seatsOf(
  house: House,
  held: readonly HeldPouch[],
  dishOf: (batch: number) => string | undefined,
): Seat[] {
  const byId = new Map(house.pouches.inStock().map((pouch) => [pouch.id, pouch]));
  return held.flatMap((h): Seat[] => {
    const pouch = byId.get(h.pouch);
    const meal = pouch && dishOf(pouch.batch);
    return meal === undefined
      ? []
      : h.eaters.map((eater) => ({ slot: String(h.slot), eater: String(eater), meal }));
  });
}

/** One seat an eater and slot, in a settled order. */
function once(seats: readonly Seat[]): Seat[] {
  const byPlace = new Map(seats.map((seat) => [`${seat.slot}/${seat.eater}`, seat]));
  return [...byPlace.keys()].sort().map((key) => byPlace.get(key)!);
}
