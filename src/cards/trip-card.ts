import type { Choice } from '#core/talk.ts';
import type { Trip } from '#core/records.ts';
import { boilingPointC } from '#core/boiling.ts';
import { brokenPromises } from '#house/broken.ts';
import { mealNames, nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { missingOf } from '#house/missing.ts';
import { altitudeOf, effortLines, headingOf, slotLines, whoComes } from '#house/trips.ts';
import { sayNumber } from '#words/say.ts';

/** What may come next, and wishes already made, for others to join. */
export function wishButtons(house: House, trip: Trip, isShort: boolean): Choice[] {
  const byKey = new Map(mealNames(house).map((name) => [nameKey(name), name]));
  const wished = [...new Set(house.trips.wishes(trip.id).map((wish) => wish.mealKey))];
  return [
    ...wished.slice(0, 5).map((key) => ({
      label: `I want ${byKey.get(key) ?? key} too`,
      request: `/want "${byKey.get(key) ?? key}" "${trip.place}" for me`,
    })),
    ...(isShort ? [{ label: 'What to cook', request: `/cook "${trip.place}"` }] : []),
    { label: 'Plan the meals', request: `/pick "${trip.place}"` },
  ];
}

/** The trips ahead, or how to plan one. */
export function tripList(trips: readonly Trip[]): string[] {
  if (trips.length > 0) return trips.map(headingOf);
  return ['No trip is planned.', 'For example: /trip Heron Lake 12-14 June dinner breakfast for all'];
}

/** What somebody must know of a trip now; its days, who is there and where it lies are folded. */
export function tripCard(house: House, trip: Trip, remarks: readonly string[]) {
  const metres = altitudeOf(trip, house);
  const told = trip.altitudeM === null ? "Altitude not told, so home's is taken: " : '';
  const water = trip.fromSnow ? 'water from snow' : `water starts at ${sayNumber(trip.startWaterC)} °C`;
  const eaters = house.eaters.all();
  const missing = missingOf(house, trip);
  return {
    isShort: missing.isShort,
    lines: [
      headingOf(trip),
      whoComes(trip, eaters),
      ...effortLines(trip),
      ...remarks,
      ...missing.lines,
      ...brokenPromises(house, trip),
    ],
    why: [
      ...missing.why,
      ...slotLines(trip.slots, eaters),
      `${told}${Math.round(metres)} m, water boils at ${boilingPointC(metres).toFixed(1)} °C; ${water}.`,
    ],
  };
}
