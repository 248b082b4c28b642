import type { PicksProblem, Seat } from '#core/picks/problem.ts';
import type { Trip } from '#core/records.ts';
import type { House } from './house.ts';

/**
 * Who was to eat what: by the pouches kept for the trip, else by the picks last shown.
 * @param dishOf the dish that a batch's pouches are, by its number; undefined for what only goes beside a meal
 */
export function planBefore(
  house: House,
  trip: Trip,
  dishOf: (batch: number) => string | undefined,
): Pick<PicksProblem, 'before'> {
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  if (held.length === 0) {
    const seats = house.trips.seatsShown(trip.id);
    return seats === undefined ? {} : { before: { was: 'shown', seats: once(seats) } };
  }
  const byId = new Map(house.pouches.inStock().map((pouch) => [pouch.id, pouch]));
  const seats = held.flatMap((h): Seat[] => {
    const pouch = byId.get(h.pouch);
    const meal = pouch && dishOf(pouch.batch);
    return meal === undefined
      ? []
      : h.eaters.map((eater) => ({ slot: String(h.slot), eater: String(eater), meal }));
  });
  return { before: { was: 'kept', seats: once(seats) } };
}

/** One seat an eater and slot, in a settled order. */
function once(seats: readonly Seat[]): Seat[] {
  const byPlace = new Map(seats.map((seat) => [`${seat.slot}/${seat.eater}`, seat]));
  return [...byPlace.keys()].sort().map((key) => byPlace.get(key)!);
}
