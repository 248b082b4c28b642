import type { DayFed } from '#core/picks/fed.ts';
import type { Eater } from '#core/records.ts';
import { groupBy } from '#core/groups.ts';
import { sayList } from '#words/say.ts';
import type { TripProblem } from '#house/trip-problem.ts';
import { dayNumber } from '#house/trip-problem.ts';
import { sayDayOf } from '#house/trips.ts';

const tens = (kcal: number): number => Math.round(kcal / 10) * 10;

/** Whether somebody misses a meal, or gets too little of a day's energy. */
export const isShort = ({ missed, shortKcal }: DayFed): boolean => missed.length > 0 || shortKcal > 0;

/**
 * Whether all are fed, in one line. It is said only of a meal at every slot that gives the energy it should; what is
 * not known is not called fed.
 */
export function fedHead({ dishes }: TripProblem, fed: readonly DayFed[], eaters: readonly Eater[]): string {
  const short = fed.filter(isShort);
  if (short.length > 0) {
    return 'NOT all are fed.';
  }
  const unknown = [...new Set(fed.flatMap((one) => one.unknown))].map(
    (meal) => dishes.get(meal)?.name ?? meal,
  );
  const needless = [
    ...new Set(fed.filter((one) => one.floorKcal === null).map((one) => nameOf(one.eater, eaters))),
  ];
  if (unknown.length === 0 && needless.length === 0) return 'All are fed.';
  const open = [
    ...(unknown.length > 0 ? [`the energy of ${sayList([...new Set(unknown)])} is not known`] : []),
    ...(needless.length > 0
      ? [
          `what ${sayList(needless)} need${needless.length === 1 ? 's' : ''} is not known (/eater ${needless[0]!} child 7)`,
        ]
      : []),
  ];
  return `A portion for all at every meal; enough is open: ${open.join('; ')}.`;
}

const nameOf = (key: string, eaters: readonly Eater[]): string =>
  eaters.find((eater) => eater.id === Number(key))?.name ?? '?';

/** Days told one by one; more than these are summed. Chosen for a phone. */
const mostDays = 3;

/** 'Ben: Sat 1450 of 2080 kcal, no lunch.' One line a person; those alike share it. */
export function shortLines(
  { trip }: TripProblem,
  fed: readonly DayFed[],
  eaters: readonly Eater[],
): string[] {
  const dayOf = new Map(trip.slots.map((slot) => [dayNumber(slot.onDay), slot.onDay]));
  const mealOf = new Map(trip.slots.map((slot) => [String(slot.id), slot.meal]));
  const said = [...groupBy(fed.filter(isShort), (one) => one.eater)].map(([eater, days]) => {
    const told = days.map((one) => {
      const day = sayDayOf(dayOf.get(one.day)!).slice(0, 3);
      const energy = one.shortKcal > 0 ? `${tens(one.kcal)} of ${tens(one.floorKcal!)} kcal` : '';
      const missed =
        one.missed.length > 0 ? `no ${sayList(one.missed.map((slot) => mealOf.get(slot)!))}` : '';
      return { one, text: `${day} ${[energy, missed].filter(Boolean).join(', ')}` };
    });
    const worst = told.toSorted((a, b) => b.one.shortKcal - a.one.shortKcal);
    const all = days.reduce((sum, one) => sum + one.shortKcal, 0);
    const text =
      told.length <= mostDays
        ? told.map(({ text: day }) => day).join('; ')
        : `${told.length} days${all > 0 ? `, ${tens(all)} kcal in all` : ''}, worst ${worst[0]!.text}`;
    return { name: nameOf(eater, eaters), text };
  });
  return [...groupBy(said, ({ text }) => text).values()].map(
    (alike) => `Short: ${sayList(alike.map(({ name }) => name))}: ${alike[0]!.text}.`,
  );
}
