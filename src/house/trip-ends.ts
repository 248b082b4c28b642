import type { Trip } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import { sayCodes, sayCount } from '#words/say.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';
import { todayOf } from './today.ts';
import { sayDayOf } from './trips.ts';

/** Takes a trip off the list; its pouches are stock again, its wishes stay with it. @throws Refusal 'no-trip' */
export function endTrip(house: House, trip: Trip | undefined, name: string): { line: string; did: string } {
  if (!trip) throw new Refusal('no-trip', `There is no trip called ${name}.`);
  const held = house.trips.held(trip.id).filter((h) => h.came === null);
  for (const one of held) house.trips.came(one.id, 'returned');
  house.trips.end(trip.id, true);
  const back = held.length === 0 ? '' : ` ${sayCount(held.length, 'pouch is', 'pouches are')} stock again.`;
  return { line: `${trip.place} is off the list.${back}`, did: `ended the trip ${trip.place}` };
}

/**
 * Takes up a trip again that was cancelled, with its wishes and with those of its pouches that are still free.
 * @throws Refusal 'no-trip' when none of that name is off the list; 'long-gone' when its days have passed
 */
export function takeUpAgain(house: House, name: string): { trip: Trip; remarks: string[] } {
  const trip = house.trips.all().findLast((one) => one.isOver && nameKey(one.place) === nameKey(name));
  if (!trip)
    throw new Refusal(
      'no-trip',
      `No trip called ${name} is off the list, so there is none to take up again.`,
    );
  if (trip.endsOn < todayOf(house))
    throw new Refusal(
      'long-gone',
      `${trip.place} was from ${sayDayOf(trip.startsOn)} to ${sayDayOf(trip.endsOn)}, and that has passed. Plan it anew with its new days.`,
    );
  house.trips.end(trip.id, false);
  const taken = new Set(house.trips.held(null).map(({ pouch }) => pouch));
  const stock = house.pouches.inStock();
  const came = house.trips.held(trip.id).filter((h) => h.came === 'returned');
  const again = came.flatMap((h) => {
    const pouch = stock.find(({ id }) => id === h.pouch);
    return pouch && !taken.has(pouch.id) ? [{ h, pouch }] : [];
  });
  for (const { h } of again) house.trips.hold(trip.id, h.slot, h.pouch, h.eaters);
  const wishes = house.trips.wishes(trip.id).length;
  const gone = came.length - again.length;
  return {
    trip: house.trips.all().find(({ id }) => id === trip.id)!,
    remarks: [
      `On again${wishes > 0 ? `, with ${sayCount(wishes, 'wish', 'wishes')}` : ''}.`,
      ...(again.length > 0 ? [`Kept for it again: ${sayCodes(again.map(({ pouch }) => pouch))}.`] : []),
      ...(gone > 0
        ? [
            `No longer free: ${sayCount(gone, 'pouch', 'pouches')} that ${gone > 1 ? 'were' : 'was'} kept for it.`,
          ]
        : []),
    ],
  };
}
