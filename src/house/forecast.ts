import { sumThresholdG } from '#core/dryness.ts';
import {
  type Forecast,
  type LoadWeight,
  type OwnPace,
  type PastForecast,
  type PastLoad,
  forecastBeforeLoading,
  forecastByWeights,
  hasStalled,
  ownPace,
  waterForHours,
} from '#core/forecast.ts';
import { type BatchFacts, wholeWeights } from '#core/meal.ts';
import type { Batch } from '#core/records.ts';
import { momentOf, runningMs, stopsOf } from '#core/running.ts';
import { depthMm } from '#core/scaling.ts';
import { localDays } from '#words/local-days.ts';
import { sayClock, sayG, sayMoment, sayNumber } from '#words/say.ts';
import { dryOf } from './dryness.ts';
import { factsOfBatch } from './figures.ts';
import type { House } from './house.ts';

const hourMs = 3_600_000;
/** Loads that are looked back on. */
const latestLoads = 20;

/** When a batch will be dry, ms. */
export interface ReadyAt {
  readonly readyMs: number;
  readonly earliestMs: number;
  readonly latestMs: number;
  /** Own loads it rests on; 0 for none. */
  readonly loads: number;
  readonly by: 'weights' | 'loading';
}

/** It stands still: how long it has to run yet, h. */
export interface Standing {
  readonly sinceMs: number;
  readonly leftHours: number;
}

export type DryingAhead = ReadyAt | Standing | 'stalled' | undefined;

/** Whether an hour can be said. */
export const isHourKnown = (ahead: DryingAhead): ahead is ReadyAt =>
  typeof ahead === 'object' && 'readyMs' in ahead;

/** How a batch lay in the dryer, for the next one to be compared with. */
interface Dried {
  readonly load: PastLoad;
  readonly forecast: PastForecast | undefined;
}

/** Hours on the dryer's own clock; what was weighed before a move to another dryer says nothing of its pace. */
function loadWeights(batch: Batch, wetG: number): LoadWeight[] {
  const moved = batch.events.findLast(({ what }) => what === 'moved');
  const movedMs = moved ? runningMs(moved.atMs, stopsOf(batch.events)) : 0;
  const all = [{ atMs: batch.loadedAtMs, massG: wetG }, ...wholeWeights(batch)];
  const from = Math.max(
    0,
    all.findLastIndex(({ atMs }) => atMs <= movedMs),
  );
  return all.slice(from).map(({ atMs, massG }) => ({ hours: (atMs - batch.loadedAtMs) / hourMs, massG }));
}

/** The food of the fullest tray, mm deep; null until the trays' size is known. */
export function deepestMm(house: House, batch: Pick<Batch, 'trays'>): number | null {
  const { dryer } = house.settings;
  if (!dryer?.widthMm || !dryer.lengthMm) return null;
  return depthMm(Math.max(...batch.trays.map(({ wetG }) => wetG)), (dryer.widthMm * dryer.lengthMm) / 100);
}

/** A load that was shown to be dry: the first weight that already was the last one tells when. */
function driedLoad(house: House, batch: Batch): Dried | undefined {
  if (batch.mix !== null || batch.weighings.length === 0) return undefined;
  if (batch.events.some(({ what }) => what === 'moved')) return undefined;
  const facts = factsOfBatch(house, batch);
  if (dryOf(house, batch, facts).is !== 'dry') return undefined;
  const weights = loadWeights(batch, facts.wetG);
  const dryG = weights.at(-1)!.massG;
  const at = weights.findIndex(({ massG }) => Math.abs(massG - dryG) <= sumThresholdG(dryG));
  const tookHours = weights[at]!.hours;
  if (tookHours <= 0) return undefined;
  const line = { factor: 1, spreadFraction: 0, loads: 0 };
  const before =
    facts.expectedDryG === null
      ? undefined
      : forecastByWeights(weights.slice(0, at), facts.expectedDryG, line);
  return {
    load: { waterG: facts.wetG - dryG, hours: tookHours, depthMm: deepestMm(house, batch) },
    forecast: before && { saidHours: before.readyHours, tookHours },
  };
}

/** What this house's loads have shown. */
export interface LoadsKnown {
  readonly pace: OwnPace;
  readonly loads: readonly PastLoad[];
}

export function loadsKnown(house: House): LoadsKnown {
  const dried = house.batches.latest(latestLoads).flatMap((batch) => driedLoad(house, batch) ?? []);
  return {
    pace: ownPace(dried.flatMap(({ forecast }) => forecast ?? [])),
    loads: dried.map(({ load }) => load),
  };
}

/**
 * When a batch that is drying will be dry: by its weights, else by its water and the house's loads.
 * @returns 'stalled' where it hardly loses water though much is left; undefined where nothing can be said
 */
export function dryingAhead(
  house: House,
  batch: Batch,
  facts: BatchFacts,
  known = loadsKnown(house),
): DryingAhead {
  const { expectedDryG } = facts;
  if (expectedDryG === null || expectedDryG >= facts.wetG) return undefined;
  const weights = loadWeights(batch, facts.wetG);
  if (hasStalled(weights, expectedDryG)) return 'stalled';
  const byWeights = forecastByWeights(weights, expectedDryG, known.pace);
  if (weights.length > 1) {
    if (byWeights === undefined) return undefined;
    // It takes a second weighing to show it dry, so it is never sooner than that.
    const soonest = weights.at(-1)!.hours + house.settings.steadyGapHours;
    const readyHours = Math.max(soonest, byWeights.readyHours);
    return at(
      batch,
      {
        readyHours,
        earliestHours: Math.max(soonest, byWeights.earliestHours),
        latestHours: Math.max(readyHours, byWeights.latestHours),
      },
      known.pace.loads,
      'weights',
    );
  }
  const { loads, ...before } = forecastBeforeLoading(
    facts.wetG - expectedDryG,
    deepestMm(house, batch),
    known.loads,
  );
  return at(batch, before, loads < 3 ? 0 : loads, 'loading');
}

function at(
  { loadedAtMs, events }: Batch,
  { readyHours, earliestHours, latestHours }: Forecast,
  loads: number,
  by: ReadyAt['by'],
): ReadyAt | Standing {
  const stops = stopsOf(events);
  const moment = (hours: number) => momentOf(loadedAtMs + hours * hourMs, stops);
  const [readyMs, earliestMs, latestMs] = [moment(readyHours), moment(earliestHours), moment(latestHours)];
  if (readyMs !== null && earliestMs !== null && latestMs !== null)
    return { readyMs, earliestMs, latestMs, loads, by };
  const sinceMs = stops.at(-1)!.fromMs;
  return { sinceMs, leftHours: readyHours - (runningMs(sinceMs, stops) - loadedAtMs) / hourMs };
}

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

/** What the hour rests on. */
export function aheadWhy(ahead: DryingAhead): string[] {
  if (!isHourKnown(ahead)) return [];
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
  const waterG = waterForHours((eveningMs - batch.loadedAtMs) / hourMs, known.loads);
  const wetG = waterG === undefined ? undefined : (waterG * facts.wetG) / (facts.wetG - facts.expectedDryG);
  return [
    wetG === undefined
      ? 'That is in the night: it may wait under vacuum till morning.'
      : `That is in the night: about ${sayG(Math.round(wetG / 50) * 50, units)} would be ready at ${sayClock(eveningMs, zone)}. Or it waits under vacuum.`,
  ];
}
