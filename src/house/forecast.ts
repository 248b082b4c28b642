import { sumThresholdG } from '#core/dryness.ts';
import {
  type Forecast,
  type LoadWeight,
  type OwnPace,
  type PastForecast,
  forecastByWeights,
  hasStalled,
  ownPace,
} from '#core/forecast.ts';
import { type PastLoad, forecastBeforeLoading } from '#core/load-hours.ts';
import { type BatchFacts, wholeWeights } from '#core/meal.ts';
import type { Batch } from '#core/records.ts';
import { besideInRun, momentOf, runningMs, stopsOf } from '#core/running.ts';
import { depthMm } from '#core/scaling.ts';
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

/** The batches that dry in one run with one, of those loaded lately. */
export const besideNow = (house: House, batch: Batch): Batch[] =>
  besideInRun(batch, house.batches.latest(latestLoads), house.settings.dryer?.trays ?? null);

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
  const dried = new Map<number, Dried>();
  const batches = house.batches.latest(latestLoads);
  for (const batch of batches) {
    const known = driedLoad(house, batch);
    if (known) dried.set(batch.no, known);
  }
  const counted = new Set<number>();
  const loads = batches.flatMap((batch): PastLoad[] => {
    const load = dried.get(batch.no)?.load;
    if (load === undefined || counted.has(batch.no)) return [];
    const run = [batch.no, ...besideNow(house, batch).map(({ no }) => no)];
    for (const no of run) counted.add(no);
    return [together(run.flatMap((no) => dried.get(no)?.load ?? []))];
  });
  return { pace: ownPace([...dried.values()].flatMap(({ forecast }) => forecast ?? [])), loads };
}

/** Several meals in one run: all their water, until the last of them was dry. */
const together = (loads: readonly PastLoad[]): PastLoad => {
  const depths = loads.flatMap(({ depthMm: mm }) => mm ?? []);
  return {
    waterG: loads.reduce((sum, { waterG }) => sum + waterG, 0),
    hours: Math.max(...loads.map(({ hours }) => hours)),
    depthMm: depths.length === 0 ? null : Math.max(...depths),
  };
};

/** The water that a batch and all that dries with it still have to give when they are loaded, g. */
export function waterOfRun(house: House, batch: Batch, waterG: number): number {
  return besideNow(house, batch).reduce((sum, beside) => {
    const { wetG, expectedDryG } = factsOfBatch(house, beside);
    return sum + (expectedDryG === null ? 0 : Math.max(0, wetG - expectedDryG));
  }, waterG);
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
  const depths = [batch, ...besideNow(house, batch)].flatMap((one) => deepestMm(house, one) ?? []);
  const { loads, ...before } = forecastBeforeLoading(
    waterOfRun(house, batch, facts.wetG - expectedDryG),
    depths.length === 0 ? null : Math.max(...depths),
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
