import type { Grid } from './grid.ts';
import { classCost, type State } from './measure.ts';
import type { SlotTable } from './table.ts';

/** Eaters (mask) to keep from each of the slot's meals, and pouches of each class to leave in stock. */
export interface KeptBack {
  readonly from: readonly number[];
  readonly pouches: readonly number[];
}

export interface Offer {
  readonly totals: readonly number[];
  readonly bucket: readonly number[];
  readonly rest: readonly number[];
  /** The option for each pair of needs; −1 when even half of it is out of reach. */
  readonly best: Int32Array;
  /** How each option is put together, class by class. */
  readonly steps: readonly Step[];
}

/**
 * The best pouches for each total worth opening of one meal, and from them for each need.
 * @param place of the meal in the slot's table
 * @param restOf the key for months and dry weight
 */
export function makeOffer(
  grid: Grid,
  state: State,
  s: number,
  table: SlotTable,
  place: number,
  back: KeptBack | undefined,
  restOf: (month: number, dry: number) => number,
): Offer | undefined {
  const m = table.meals[place]!;
  const most = table.most[place]!;
  let totals = [0];
  let bucket = [0];
  let rest = [0];
  const steps: Step[] = [];
  for (const c of grid.mealClasses[m]!) {
    const cls = grid.classes[c]!;
    const inc = increments(grid, state, s, c, Math.floor(most / cls.size));
    inc.length = Math.max(0, inc.length - (back?.pouches[c] ?? 0));
    if (inc.length < 2) continue;
    // By total: the best way there, if any.
    const bestBucket = new Float64Array(most + 1).fill(Infinity);
    const bestRest = new Float64Array(most + 1);
    const from = new Int32Array(most + 1);
    const taken = new Int32Array(most + 1);
    for (let option = 0; option < totals.length; option += 1) {
      for (let n = 0; n < inc.length; n += 1) {
        const total = totals[option]! + n * cls.size;
        if (total > most) break;
        const wayBucket = bucket[option]! + inc[n]!.bucket;
        if (wayBucket > bestBucket[total]!) continue;
        const wayRest = rest[option]! + restOf(inc[n]!.month, n * cls.dryTenths);
        if (wayBucket === bestBucket[total] && wayRest >= bestRest[total]!) continue;
        bestBucket[total] = wayBucket;
        bestRest[total] = wayRest;
        from[total] = option;
        taken[total] = n;
      }
    }
    totals = [];
    for (let total = 0; total <= most; total += 1) if (bestBucket[total]! < Infinity) totals.push(total);
    bucket = totals.map((total) => bestBucket[total]!);
    rest = totals.map((total) => bestRest[total]!);
    steps.push({ c, from: totals.map((total) => from[total]!), taken: totals.map((total) => taken[total]!) });
  }
  if (totals.length < 2) return undefined;
  const best = new Int32Array(table.pairLow.length).fill(-1);
  for (let id = 0; id < best.length; id += 1) {
    const low = table.pairLow[id]!;
    const high = table.pairHigh[id]!;
    let short = Infinity;
    let waste = Infinity;
    let chosen = -1;
    for (let i = 1; i < totals.length; i += 1) {
      const thisShort = Math.max(0, low - totals[i]!);
      const thisWaste = Math.max(0, totals[i]! - high);
      if (2 * thisShort > low || thisShort > short) continue;
      if (thisShort === short) {
        if (thisWaste > waste) continue;
        const older = bucket[i]! - bucket[Math.max(0, chosen)]!;
        if (thisWaste === waste && (older > 0 || (older === 0 && rest[i]! >= rest[chosen]!))) continue;
      }
      short = thisShort;
      waste = thisWaste;
      chosen = i;
    }
    best[id] = chosen;
  }
  return { totals, bucket, rest, best, steps };
}

interface Step {
  readonly c: number;
  /** For each option: the option before this class joined in, and how many of the class it opens. */
  readonly from: readonly number[];
  readonly taken: readonly number[];
}

/** Writes what an option opens into a plan. */
export function takeOption(offer: Offer, option: number, open: Int16Array, base: number): void {
  let at = option;
  for (let i = offer.steps.length - 1; i >= 0; i -= 1) {
    const step = offer.steps[i]!;
    if (step.taken[at]! > 0) open[base + step.c] = step.taken[at]!;
    at = step.from[at]!;
  }
}

/** What the first, second, … pouch of class c opened here adds; as many as stock and `limit` allow. */
function increments(
  grid: Grid,
  state: State,
  s: number,
  c: number,
  limit: number,
): { bucket: number; month: number }[] {
  const cls = grid.classes[c]!;
  const classes = grid.classes.length;
  if (cls.groups.at(-1)!.bestBy < grid.slotDay[s]!) return [];
  if (!cls.dated) {
    let used = 0;
    for (let i = c; i < state.open.length; i += classes) used += state.open[i]!;
    const count = Math.min(limit, cls.stock - used);
    const [b0, m0] = [cls.bucketSums[used]!, cls.monthSums[used]!];
    return Array.from({ length: count + 1 }, (_, n) => ({
      bucket: cls.bucketSums[used + n]! - b0,
      month: cls.monthSums[used + n]! - m0,
    }));
  }
  const base = classCost(grid, cls, (i) => (i === s ? 0 : state.open[i * classes + c]!));
  const found: { bucket: number; month: number }[] = [];
  for (let n = 0; base && n <= limit; n += 1) {
    const cost = classCost(grid, cls, (i) => (i === s ? n : state.open[i * classes + c]!));
    if (!cost) break;
    found.push({ bucket: cost.bucket - base.bucket, month: cost.month - base.month });
  }
  return found;
}
