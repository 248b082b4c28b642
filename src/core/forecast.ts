import { above } from './within.ts';

/** A load at one moment: hours since it was loaded, and all its food, g. */
export interface LoadWeight {
  readonly hours: number;
  readonly massG: number;
}

/** When a load will be dry, h since it was loaded. */
export interface Forecast {
  readonly readyHours: number;
  readonly earliestHours: number;
  readonly latestHours: number;
}

/** How this house's loads went against the straight line. */
export interface OwnPace {
  /** Hours it took for each hour the line said. */
  readonly factor: number;
  /** How far a single load lay beside that, as a share of its hours. */
  readonly spreadFraction: number;
  /** Loads it rests on; 0 for what simulations say. */
  readonly loads: number;
}

/**
 * Until three loads of one's own are known: the line ends a little late, as bound water leaves beside the ice, and nine
 * loads of ten lie within an eighth of it. Chosen by simulation (`npm run bench:dry`).
 */
export const simulatedPace: OwnPace = { factor: 0.96, spreadFraction: 0.13, loads: 0 };
export const fewestLoads = 3;
/** Nobody's loads are so even that the next one is known to the minute, nor so odd that nothing is. Chosen. */
export const leastSpread = 0.05;
export const mostSpread = 0.3;
/** A dryer may freeze its load for so long before water leaves, h. Common practice, no source. */
const mostFreezingHours = 4;

const rootOf = (massG: number, dryG: number): number => Math.sqrt(Math.max(0, massG - dryG));

/** Where the line through two weights meets nothing left to go, h; undefined where nothing left in between. */
function lineEndHours(from: LoadWeight, to: LoadWeight, dryG: number): number | undefined {
  const [before, after] = [rootOf(from.massG, dryG), rootOf(to.massG, dryG)];
  if (after === 0) return to.hours;
  return before <= after ? undefined : to.hours + (after * (to.hours - from.hours)) / (before - after);
}

/**
 * When a load will be dry, from what it weighed. While ice leaves, the root of the water still to go falls as a straight
 * line in time. Through two or more check weights the line needs no loading time, so a load that was frozen first is
 * forecast as well; with one it runs from the loading, and an earlier end is allowed for the freezing.
 * @param weights the loading first, then the check weights in order of time
 * @param dryG expected when dry, g
 * @returns undefined before the first check weight, and where it did not lose weight
 * @throws Refusal 'impossible-weight'
 * @source pilsworth-1972
 */
export function forecastByWeights(
  weights: readonly LoadWeight[],
  dryG: number,
  pace: OwnPace = simulatedPace,
): Forecast | undefined {
  above('impossible-weight', 'The dry weight', dryG, 0, 'g');
  for (const { massG } of weights) above('impossible-weight', 'A weight of the load', massG, 0, 'g');
  const [loaded, first] = weights;
  const last = weights.at(-1);
  if (loaded === undefined || first === undefined || last === undefined) return undefined;
  const isAlone = weights.length === 2;
  const endHours = lineEndHours(isAlone ? loaded : first, last, dryG);
  if (endHours === undefined) return undefined;
  const frozen = isAlone
    ? lineEndHours(
        { ...loaded, hours: loaded.hours + Math.min(mostFreezingHours, (last.hours - loaded.hours) / 2) },
        last,
        dryG,
      )
    : endHours;
  const readyHours = endHours * pace.factor;
  const swing = readyHours * pace.spreadFraction;
  const earliest = (frozen ?? endHours) * pace.factor - swing;
  return {
    readyHours: Math.max(last.hours, readyHours),
    earliestHours: Math.max(last.hours, pace.loads > 0 ? readyHours - swing : earliest),
    latestHours: Math.max(last.hours, readyHours + swing),
  };
}

/** Of the pace before it, what the last stretch has to keep for the dryer to count as running. Chosen by simulation. */
const leastPaceShare = 0.35;
/** Water to go, as a share of the dry weight, above which the pace may not fall yet: ice is left. Chosen by simulation. */
const stillIceFraction = 0.3;

/**
 * Whether a load hardly loses water any more though much is left: the pump stopped, the door leaks or the chamber is too
 * cold. The pace of the root of what is to go is held against that before.
 * @param weights as for `forecastByWeights`
 * @source pilsworth-1972
 */
export function hasStalled(weights: readonly LoadWeight[], dryG: number): boolean {
  const [before, last] = weights.slice(-2);
  const [loaded] = weights;
  if (weights.length < 3 || !before || !last || !loaded) return false;
  if (last.massG - dryG < stillIceFraction * dryG || last.hours <= before.hours) return false;
  const paceOf = (from: LoadWeight, to: LoadWeight) =>
    (rootOf(from.massG, dryG) - rootOf(to.massG, dryG)) / (to.hours - from.hours);
  return paceOf(before, last) < leastPaceShare * paceOf(loaded, before);
}

/** A load of the past: what the line said after its check weights, and the hour it was dry. */
export interface PastForecast {
  readonly saidHours: number;
  readonly tookHours: number;
}

/**
 * How this house's loads go against the line: the middle of what they took, and the farthest beside it.
 * @param past a load each; from three on they count
 */
export function ownPace(past: readonly PastForecast[]): OwnPace {
  const ratios = past.map(({ saidHours, tookHours }) => tookHours / saidHours).toSorted((a, b) => a - b);
  if (ratios.length < fewestLoads) return simulatedPace;
  const factor = middleOf(ratios);
  const farthest = Math.max(...ratios.map((ratio) => Math.abs(ratio / factor - 1)));
  return {
    factor,
    spreadFraction: Math.min(mostSpread, Math.max(leastSpread, farthest)),
    loads: ratios.length,
  };
}

const middleOf = (sorted: readonly number[]): number => {
  const half = (sorted.length - 1) / 2;
  return (sorted[Math.floor(half)]! + sorted[Math.ceil(half)]!) / 2;
};
