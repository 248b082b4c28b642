import { fedByDay } from '#core/picks/fed.ts';
import { digestOf } from '#core/picks/digest.ts';
import { groupBy } from '#core/groups.ts';
import type { Trip } from '#core/records.ts';
import type { Reply } from '#core/talk.ts';
import { brokenPromises } from '#house/broken.ts';
import { nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { missingOf } from '#house/missing.ts';
import { tripProblem } from '#house/trip-problem.ts';
import { effortLines, headingOf, whoComes } from '#house/trips.ts';
import { localDays } from '#words/local-days.ts';
import { sayCount, sayList } from '#words/say.ts';
import { shortByPerson } from './plan-pages.ts';

/** A trip in a message that stays: days, who comes, wishes, who is short, what is packed. */
export function tripBoard(house: House, trip: Trip): Reply {
  const short = whoIsShort(house, trip);
  const broken = brokenPromises(house, trip);
  const place = `"${trip.place}"`;
  return {
    group: [
      headingOf(trip),
      whoComes(trip, house.eaters.all()),
      ...effortLines(trip),
      ...wishLines(house, trip),
      ...short,
      ...packedLine(house, trip),
      ...broken,
    ].join('\n'),
    buttons: [
      { label: 'Plan the meals', request: `/pick ${place}` },
      { label: 'Pack list', request: `/pack ${place}` },
      { label: 'What to cook', request: `/cook ${place}` },
    ],
    buttonsForAll: true,
    buttonsStay: true,
  };
}

/** By the plan that was shown last, where nothing changed since; else counted roughly. */
function whoIsShort(house: House, trip: Trip): string[] {
  const shown = house.trips.shown(trip.id);
  const { problem } = tripProblem(house, trip);
  if (shown && problem.slots.length > 0 && shown.asked === digestOf(problem)) {
    const short = shortByPerson(fedByDay(problem, shown.result), house.eaters.all());
    return short.length === 0 ? ['By the plan all are fed.'] : short;
  }
  return [...missingOf(house, trip).lines, 'Not planned as it stands: /pick.'];
}

function wishLines(house: House, trip: Trip): string[] {
  const wishes = house.trips.wishes(trip.id);
  if (wishes.length === 0) return ['No wishes yet.'];
  const names = new Map(house.recipes.names().map((name) => [nameKey(name), name]));
  const eaters = house.eaters.all();
  const said = [...groupBy(wishes, ({ mealKey }) => mealKey)].map(([key, those]) => {
    const who = [...new Set(those.map(({ eater }) => eaters.find(({ id }) => id === eater)?.name ?? '?'))];
    return `${names.get(key) ?? key} (${who.join(', ')})`;
  });
  return [`Wished for: ${sayList(said)}.`];
}

function packedLine(house: House, trip: Trip): string[] {
  const held = house.trips.held(trip.id).filter(({ came }) => came === null);
  if (held.length === 0) return ['Nothing is kept yet.'];
  const packed = held.filter((one) => one.packed).length;
  return [`${packed} of ${sayCount(held.length, 'pouch', 'pouches')} packed.`];
}

/** A trip that ended; for a few days that may be taken back. */
export function overNow(house: House, trip: Trip): { readonly said: Reply; readonly isOver: boolean } {
  const days = localDays(house.settings.zone);
  return {
    said: { group: `${trip.place}: the trip is over.` },
    isOver: trip.endsOn < days.plusDays(days.dayOf(house.nowMs), -2),
  };
}
