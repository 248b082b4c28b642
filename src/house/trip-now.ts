import type { Trip } from '#core/records.ts';
import { Ambiguous } from '#words/ambiguous.ts';
import type { House } from './house.ts';
import { ownEater } from './self.ts';
import { todayOf } from './today.ts';
import { tripMeant, tripsOpen } from './trips.ts';

const isOn = (trip: Trip, eater: number | undefined): boolean =>
  trip.slots.some(({ eaters }) => eaters.some((id) => id === eater));

/**
 * The trip that is meant by somebody on the way: the one named, else the one that runs today, of two the one they are on;
 * else the next.
 * @param request how the request goes on for a trip, for the buttons
 * @throws Ambiguous where two run and it cannot be told; Refusal 'no-trip'
 */
export function tripNow(house: House, place: string | undefined, request: (place: string) => string): Trip {
  if (place !== undefined) return tripMeant(house, place);
  const today = todayOf(house);
  const running = tripsOpen(house).filter(({ startsOn, endsOn }) => startsOn <= today && today <= endsOn);
  const own = running.filter((trip) => isOn(trip, ownEater(house)?.id));
  const [meant, other] = own.length > 0 ? own : running;
  if (meant === undefined) return tripMeant(house, undefined);
  if (other === undefined) return meant;
  throw new Ambiguous(
    'Which trip is meant?',
    running.map((trip) => ({ label: trip.place, request: request(trip.place) })),
  );
}
