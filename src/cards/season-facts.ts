import { Refusal } from '#core/refusal.ts';
import { runningOut, seasonOf, type SeasonRow } from '#core/season.ts';
import type { SeasonFacts } from '#draw/facts.ts';
import type { House } from '#house/house.ts';
import { tripsAhead } from '#house/trips.ts';
import { sayCount, sayDay, sayList } from '#words/say.ts';

const yearMs = 365 * 24 * 3_600_000;
/** As many meals as anybody cooks soon. Chosen. */
const mostNext = 3;

/** Twelve months at a glance: what was sealed, eaten and thrown away, what is left, what to cook next. */
export function seasonFacts(house: House): SeasonFacts {
  const sinceMs = house.nowMs - yearMs;
  const own = house.pouches.ever().filter(({ isBought }) => !isBought);
  const rows = seasonOf(own, sinceMs);
  if (rows.length === 0)
    throw new Refusal('no-season', 'Nothing was sealed yet, so there is no season to draw.');
  const sum = (of: (row: SeasonRow) => number) => rows.reduce((all, row) => all + of(row), 0);
  return {
    is: 'season',
    title: 'A season at a glance',
    caption: [
      `Since ${sayDay(sinceMs, house.settings.zone)}, in pouches: ${sum(({ sealed }) => sealed)} sealed, ${sum(({ eaten }) => eaten)} eaten, ${sum(({ wasted }) => wasted)} thrown away; ${sum(({ left }) => left)} left now.`,
      ...nextLines(house, rows),
    ],
    rows,
  };
}

/** By what was eaten and what is left; a trip's own sums stand in /cook. */
function nextLines(house: House, rows: readonly SeasonRow[]): string[] {
  const next = runningOut(rows).slice(0, mostNext);
  const said = next.map(
    ({ meal, eaten, left }) => `${meal} (${sayCount(eaten, 'pouch', 'pouches')} eaten, ${left} left)`,
  );
  const [trip] = tripsAhead(house);
  return [
    ...(said.length === 0 ? [] : [`Cook next: ${sayList(said)}.`]),
    ...(trip ? [`For ${trip.place}: /cook says what.`] : []),
  ];
}
