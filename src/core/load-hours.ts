import { type Forecast, fewestLoads, leastSpread, mostSpread } from './forecast.ts';
import { above, between } from './within.ts';

/** A load of the past, as the next one is compared with it. */
export interface PastLoad {
  /** Water that left, g. */
  readonly waterG: number;
  readonly hours: number;
  /** On its deepest tray; null where it is not known. */
  readonly depthMm: number | null;
}

/** A load's time where nobody has recorded three yet, h. Common practice, no source. */
export const usualLoadHours = 24;

/**
 * How long a load takes in this house, whatever lies in it: the mean once three are recorded, a day until then.
 * @returns h, and how many loads it rests on
 */
export function loadHours(past: readonly Pick<PastLoad, 'hours'>[]): {
  readonly hours: number;
  readonly recorded: number;
} {
  if (past.length < fewestLoads) return { hours: usualLoadHours, recorded: past.length };
  return { hours: past.reduce((sum, { hours }) => sum + hours, 0) / past.length, recorded: past.length };
}

/** Up to this depth the dryer sets the pace, mm; from there the hours grow with the square of the depth. */
const slabMm = 12.5;
/** A slab of that depth, h: 14 to 18. */
const slabHours = 16;
/** What makers say of loads at home, h, and a day as people say it. Common practice, no source. */
const home = { readyHours: usualLoadHours, earliestHours: 20, latestHours: 48 };

/** Where nobody has dried three loads yet. @source slab-copy */
function usualForecast(depthMm: number | null): Forecast {
  if (depthMm === null) return home;
  const bySlab = slabHours * Math.max(1, depthMm / slabMm) ** 2;
  const readyHours = Math.min(home.latestHours, Math.max(home.earliestHours, bySlab));
  return {
    readyHours,
    earliestHours: Math.min(home.earliestHours, readyHours * 0.8),
    latestHours: Math.max(home.latestHours / 1.5, readyHours * 1.3),
  };
}

/** What the house's loads say of hours against water: a base, and hours for each g. */
function hoursByWater(past: readonly PastLoad[]): { readonly baseHours: number; readonly hoursPerG: number } {
  const mean = (of: (load: PastLoad) => number) =>
    past.reduce((sum, load) => sum + of(load), 0) / past.length;
  const [water, hours] = [mean(({ waterG }) => waterG), mean((load) => load.hours)];
  const spread = mean(({ waterG }) => (waterG - water) ** 2);
  const together = mean((load) => (load.waterG - water) * (load.hours - hours));
  // Loads all alike say nothing of a slope; more water never takes less time, and even an empty dryer takes some.
  const slope = spread < (alikeFraction * water) ** 2 ? 0 : together / spread;
  const hoursPerG = Math.min(hours / water, Math.max(0, slope));
  return { baseHours: hours - hoursPerG * water, hoursPerG };
}

/** Loads whose water differs by less than this share are alike. Chosen. */
const alikeFraction = 0.05;

/** How much longer a load takes for lying deeper than those before it, no unit. @source slab-copy */
function byDepth(depthMm: number | null, past: readonly PastLoad[]): number {
  const known = past.flatMap((load) => (load.depthMm === null ? [] : [load.depthMm]));
  if (depthMm === null || known.length === 0) return 1;
  const usualMm = known.reduce((sum, mm) => sum + mm, 0) / known.length;
  return (Math.max(slabMm, depthMm) / Math.max(slabMm, usualMm)) ** 2;
}

/**
 * When a load will be dry, before it was weighed for the first time: from the water on its trays by a straight line
 * through what the house's own loads took, and by how deep it lies. Before three loads are known: a day, or what a slab
 * of that depth takes.
 * @param waterG to remove, g, above 0
 * @param depthMm on the deepest tray, 0 to 500; null where it is not known
 * @throws Refusal 'impossible-weight', 'impossible-depth'
 * @source slab-copy
 */
export function forecastBeforeLoading(
  waterG: number,
  depthMm: number | null,
  past: readonly PastLoad[],
): Forecast & { readonly loads: number } {
  above('impossible-weight', 'The water to remove', waterG, 0, 'g');
  if (depthMm !== null) between('impossible-depth', 'The depth', depthMm, 0, 500, 'mm');
  if (past.length < fewestLoads) return { ...usualForecast(depthMm), loads: past.length };
  const { baseHours, hoursPerG } = hoursByWater(past);
  const of = (g: number) => baseHours + hoursPerG * g;
  const farthest = Math.max(...past.map((load) => Math.abs(load.hours / of(load.waterG) - 1)));
  const spread = Math.min(mostSpread, Math.max(leastSpread, farthest));
  const readyHours = of(waterG) * byDepth(depthMm, past);
  return {
    readyHours,
    earliestHours: readyHours * (1 - spread),
    latestHours: readyHours * (1 + spread),
    loads: past.length,
  };
}

/**
 * How much water a load may hold to end after so many hours, laid as deep as the loads before.
 * @returns g; undefined where the house's loads say nothing of it, or where even an empty dryer takes longer
 */
export function waterForHours(hours: number, past: readonly PastLoad[]): number | undefined {
  if (past.length < fewestLoads) return undefined;
  const { baseHours, hoursPerG } = hoursByWater(past);
  return hoursPerG > 0 && hours > baseHours ? (hours - baseHours) / hoursPerG : undefined;
}
