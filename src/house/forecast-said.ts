import { waterForHours } from '#core/load-hours.ts';
import type { BatchFacts } from '#core/meal.ts';
import type { Batch } from '#core/records.ts';
import { localDays } from '#words/local-days.ts';
import { sayClock, sayG, sayMoment, sayNumber } from '#words/say.ts';
import { type DryingAhead, type LoadsKnown, type ReadyAt, isHourKnown, waterOfRun } from './forecast.ts';
import type { House } from './house.ts';

const hourMs = 3_600_000;
const halfHourMs = hourMs / 2;
/** To the half hour: a forecast is no clock. */
const rounded = (ms: number): number => Math.round(ms / halfHourMs) * halfHourMs;

/** 'about Sat 3 May 20:30, between 17:00 and 23:00'; 'about Sat 3 May 20:30, 23:00 at the latest'. */
export function sayReady({ readyMs, earliestMs, latestMs }: ReadyAt, zone: string): string {
  const days = localDays(zone);
  const [from, ready, to] = [rounded(earliestMs), rounded(readyMs), rounded(latestMs)];
  const near = (ms: number) =>
    days.dayOf(ms) === days.dayOf(ready) ? sayClock(ms, zone) : sayMoment(ms, zone);
  const about = `about ${sayMoment(ready, zone)}`;
  if (to <= ready) return about;
  return from >= ready
    ? `${about}, ${near(to)} at the latest`
    : `${about}, between ${near(from)} and ${near(to)}`;
}

/** What is said of a batch that is drying on, in a line or two; nothing where nothing can be said. */
export function aheadLines(house: House, ahead: DryingAhead): string[] {
  const { zone } = house.settings;
  if (ahead === undefined) return [];
  if (ahead === 'stalled')
    return [
      'It hardly loses water any more, and much is to go. Does the pump run, is the door tight? Weigh it again in 2 h.',
    ];
  if ('sinceMs' in ahead)
    return [
      `It stands still since ${sayMoment(ahead.sinceMs, zone)}; about ${sayNumber(Math.max(1, Math.round(ahead.leftHours)))} h more once it runs.`,
    ];
  return [`Dry ${sayReady(ahead, zone)}. Weigh it ${ahead.by === 'weights' ? 'again ' : ''}then.`];
}

/** The same in short, the hour alone: 'Dry about Sat 3 May 20:30; weigh it.' */
export const aheadInShort = (house: House, ahead: DryingAhead): string[] =>
  isHourKnown(ahead)
    ? [`Dry about ${sayMoment(rounded(ahead.readyMs), house.settings.zone)}; weigh it.`]
    : aheadLines(house, ahead);

/** How far the hour may be off, and what it rests on. */
export function aheadWhy(house: House, ahead: DryingAhead): string[] {
  if (!isHourKnown(ahead)) return [];
  return [...aheadLines(house, ahead), ...restsOn(ahead)];
}

function restsOn(ahead: ReadyAt): string[] {
  const own = ahead.loads > 0 ? `, as your last ${ahead.loads} loads went` : '';
  if (ahead.by === 'weights')
    return [`The hour: the root of the water to go falls in a straight line${own}.`];
  return [
    ahead.loads > 0
      ? `The hour: by the water on the trays${own}.`
      : 'The hour: a day is usual, 20 to 48 h at home (common practice).',
  ];
}

/** Where a load would be ready in the night: how much to load for the evening before, where the house's loads tell. */
export function nightLines(
  house: House,
  batch: Batch,
  facts: BatchFacts,
  known: LoadsKnown,
  ahead: DryingAhead,
): string[] {
  const { zone, units } = house.settings;
  if (!isHourKnown(ahead) || facts.expectedDryG === null) return [];
  const days = localDays(zone);
  const ready = rounded(ahead.readyMs);
  if (!days.isAsleep(ready)) return [];
  const eveningMs = days.eveningBefore(ready);
  // What lies beside it takes its part of the dryer.
  const ownG = facts.wetG - facts.expectedDryG;
  const runG = waterForHours((eveningMs - batch.loadedAtMs) / hourMs, known.loads);
  const waterG = runG === undefined ? undefined : (runG * ownG) / waterOfRun(house, batch, ownG);
  const wetG = waterG === undefined ? undefined : (waterG * facts.wetG) / (facts.wetG - facts.expectedDryG);
  return [
    wetG === undefined
      ? 'That is in the night: it may wait under vacuum till morning.'
      : `That is in the night: about ${sayG(Math.round(wetG / 50) * 50, units)} would be ready at ${sayClock(eveningMs, zone)}. Or it waits under vacuum.`,
  ];
}
