import { groupBy } from '#core/groups.ts';
import type { CalendarEntry } from '#draw/calendar.ts';
import { daysAfterDrying, loadHours } from '#house/cooking.ts';
import { dryOf, isSealedFrom } from '#house/dryness.ts';
import { factsOfBatch } from '#house/figures.ts';
import { dryingAhead, isHourKnown, loadsKnown } from '#house/forecast.ts';
import type { House } from '#house/house.ts';
import { tripsAhead } from '#house/trips.ts';
import { localDays } from '#words/local-days.ts';
import { sayCodes, sayMonth } from '#words/say.ts';

/** What a household has before it: trips, when to start drying for them, loads to weigh, pouches to eat first. */
export function calendarEntries(house: House): CalendarEntry[] {
  return [...trips(house), ...loads(house), ...eatFirst(house)];
}

const day = (id: string, onDay: string, says: string, more: string): CalendarEntry => ({
  id,
  says,
  more,
  when: { is: 'days', fromDay: onDay, toDay: onDay },
});

function trips(house: House): CalendarEntry[] {
  const days = localDays(house.settings.zone);
  const loadDays = Math.ceil(loadHours(house).hours / 24);
  return tripsAhead(house).flatMap((trip): CalendarEntry[] => [
    {
      id: `h${house.household}-trip-${trip.id}`,
      says: trip.place,
      more: `${trip.slots.length} meals. What to take: /pick ${trip.place}`,
      when: { is: 'days', fromDay: trip.startsOn, toDay: trip.endsOn },
    },
    day(
      `h${house.household}-trip-${trip.id}-dry`,
      days.plusDays(trip.startsOn, -(loadDays + daysAfterDrying)),
      `Start drying for ${trip.place}`,
      `The last day for one load: ${loadDays === 1 ? 'a day' : `${loadDays} days`} to dry, a day to seal and pack, two until the seals are checked. For more loads sooner: /cook ${trip.place}`,
    ),
  ]);
}

function loads(house: House): CalendarEntry[] {
  const drying = house.batches.latest(20).filter(({ no }) => !isSealedFrom(house, no));
  const known = drying.length === 0 ? undefined : loadsKnown(house);
  return drying.flatMap((batch): CalendarEntry[] => {
    const facts = factsOfBatch(house, batch);
    if (batch.weighings.length > 0 && dryOf(house, batch, facts).is === 'dry') return [];
    const ahead = dryingAhead(house, batch, facts, known);
    if (!isHourKnown(ahead)) return [];
    return [
      {
        id: `h${house.household}-weigh-B${batch.no}`,
        says: `Weigh B${batch.no}, ${batch.recipe.name}`,
        more: `/weigh B${batch.no} and its weights`,
        when: { is: 'moment', atMs: ahead.readyMs },
      },
    ];
  });
}

function eatFirst(house: House): CalendarEntry[] {
  const days = localDays(house.settings.zone);
  const dated = house.pouches
    .inStock()
    .flatMap((pouch) => (pouch.bestByOn === null ? [] : [{ ...pouch, bestByOn: pouch.bestByOn }]));
  return [...groupBy(dated, ({ batch, bestByOn }) => `${batch} ${bestByOn}`).values()].map((pouches) => {
    const { batch, bestByOn, meal } = pouches[0]!;
    return day(
      `h${house.household}-eat-B${batch}-${bestByOn}`,
      days.plusDays(bestByOn, -house.settings.horizonDays),
      `Eat first: ${meal}`,
      `${sayCodes(pouches)}, best by ${sayMonth(bestByOn)} (a planning date).`,
    );
  });
}
