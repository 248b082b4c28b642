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
  readonly take: (option: number, set: (c: number, n: number) => void) => void;
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
  const steps: { c: number; from: number[]; taken: number[] }[] = [];
  for (const c of grid.mealClasses[m]!) {
    const cls = grid.classes[c]!;
    const inc = increments(grid, state, s, c, Math.floor(most / cls.size));
    inc.length = Math.max(0, inc.length - (back?.pouches[c] ?? 0));
    if (inc.length < 2) continue;
    const byTotal = new Map<number, { bucket: number; rest: number; from: number; taken: number }>();
    totals.forEach((total, from) => {
      for (let n = 0; n < inc.length && total + n * cls.size <= most; n += 1) {
        const way = {
          bucket: bucket[from]! + inc[n]!.bucket,
          rest: rest[from]! + restOf(inc[n]!.month, n * cls.dryTenths),
          from,
          taken: n,
        };
        const known = byTotal.get(total + n * cls.size);
        if (!known || way.bucket < known.bucket || (way.bucket === known.bucket && way.rest < known.rest)) {
          byTotal.set(total + n * cls.size, way);
        }
      }
    });
    const sorted = [...byTotal].sort((a, b) => a[0] - b[0]);
    totals = sorted.map(([total]) => total);
    bucket = sorted.map(([, way]) => way.bucket);
    rest = sorted.map(([, way]) => way.rest);
    steps.push({ c, from: sorted.map(([, w]) => w.from), taken: sorted.map(([, w]) => w.taken) });
  }
  if (totals.length < 2) return undefined;
  const best = new Int32Array(table.pairLow.length).fill(-1);
  for (let id = 0; id < best.length; id += 1) {
    let [short, waste, chosen] = [Infinity, Infinity, -1];
    for (let i = 1; i < totals.length; i += 1) {
      const thisShort = Math.max(0, table.pairLow[id]! - totals[i]!);
      const thisWaste = Math.max(0, totals[i]! - table.pairHigh[id]!);
      if (2 * thisShort > table.pairLow[id]! || thisShort > short) continue;
      if (thisShort === short && thisWaste > waste) continue;
      const same = thisShort === short && thisWaste === waste;
      if (
        same &&
        (bucket[i]! > bucket[chosen]! || (bucket[i] === bucket[chosen] && rest[i]! >= rest[chosen]!))
      )
        continue;
      [short, waste, chosen] = [thisShort, thisWaste, i];
    }
    best[id] = chosen;
  }
  const take: Offer['take'] = (option, set) => {
    let at = option;
    for (let i = steps.length - 1; i >= 0; i -= 1) {
      const step = steps[i]!;
      if (step.taken[at]! > 0) set(step.c, step.taken[at]!);
      at = step.from[at]!;
    }
  };
  return { totals, bucket, rest, best, take };
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
