import { todayOf } from './today.ts';
import type { HeldPouch, Pouch, Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { PouchCode } from '#words/parts.ts';
import { sayCode, sayCodes } from '#words/say.ts';
import type { House } from './house.ts';
import { pouchCoded } from './figures.ts';
import { tripsOpen } from './trips.ts';

export interface HeldWithPouch {
  readonly held: HeldPouch;
  readonly pouch: Pouch;
}

/** What is held for a trip and has not come back, by slot. @throws Refusal 'nothing-kept' */
export function heldFor(house: House, trip: Trip): HeldWithPouch[] {
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  if (held.length === 0)
    throw new Refusal('nothing-kept', `Nothing is kept for ${trip.place} yet: /pick, then /pick keep.`);
  const stock = house.pouches.inStock();
  return trip.slots.flatMap((slot) =>
    held
      .filter((h) => h.slot === slot.id)
      .map((h) => ({ held: h, pouch: stock.find((pouch) => pouch.id === h.pouch)! }))
      .filter(({ pouch }) => pouch !== undefined),
  );
}

/** Pouches packed for a trip that has begun: they may be eaten before anybody says so. */
export function takenAlong(house: House): ReadonlySet<number> {
  const today = todayOf(house);
  const begun = new Set(tripsOpen(house).flatMap(({ id, startsOn }) => (startsOn <= today ? [id] : [])));
  return new Set(
    house.trips.held(null).flatMap((one) => (one.packed && begun.has(one.trip) ? [one.pouch] : [])),
  );
}

/** The held pouches that codes name. @throws Refusal 'not-kept' for one that is not held for this trip */
export function heldByCode(
  house: House,
  trip: Trip,
  all: readonly HeldWithPouch[],
  codes: readonly PouchCode[],
): HeldWithPouch[] {
  return codes.map((code) => {
    const pouch = pouchCoded(house, code);
    const found = all.find((one) => one.pouch.id === pouch.id);
    if (!found && pouch.state !== 'stock')
      throw new Refusal(
        'gone',
        `${sayCode(code)} was ${pouch.state === 'used' ? 'eaten' : 'thrown away'} already.`,
      );
    if (!found)
      throw new Refusal(
        'not-kept',
        `${sayCode(code)} is not kept for ${trip.place}. Kept are ${sayCodes(all.map((one) => one.pouch))}.`,
      );
    return found;
  });
}
