import { shortKcal } from './helpings.ts';
import type { Grid } from './grid.ts';
import { classCost, type State } from './measure.ts';
import type { SlotTable } from './table.ts';

/**
 * How a slot is filled this time. What is short and what is left over count in steps of the whole trip, which do not add
 * up by slot: so a slot is tried with some of it not counting.
 */
export interface Bent {
  /** Twentieths that each dish may leave over without counting. */
  readonly free: number;
  /** What is short counts in steps of so many kcal, dish by dish. */
  readonly grain: number;
}

export const strict: Bent = { free: 0, grain: 1 };

/** Parties (mask) to keep from each of the slot's meals, and pouches of each class to leave in stock. */
export interface KeptBack {
  readonly from: readonly number[];
  readonly pouches: readonly number[];
}

/** One way to open pouches of a meal: so many of a class more than in another way. */
interface Way {
  readonly total: number;
  /** Size of the smallest pouch in it: without that one less would be opened by so much. */
  readonly smallest: number;
  readonly expiring: number;
  readonly rest: number;
  readonly more: { readonly than: Way; readonly c: number; readonly n: number } | undefined;
}

export interface Offer {
  /** The way for each pair of needs; undefined when even half of it is out of reach. */
  readonly best: readonly (Way | undefined)[];
}

const nothing: Way = { total: 0, smallest: Infinity, expiring: 0, rest: 0, more: undefined };

/**
 * The best pouches for each need of one meal: enough, and none that could stay closed.
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
  bent: Bent,
  restOf: (month: number, dry: number) => number,
): Offer | undefined {
  const most = table.most[place]!;
  const ways: Way[] = [nothing];
  // Largest pouches first, so that those added last are the smallest.
  for (const { c, inc } of inReach(grid, state, s, grid.mealClasses[table.meals[place]!]!, most, back).sort(
    (a, b) => grid.classes[b.c]!.size - grid.classes[a.c]!.size,
  )) {
    const cls = grid.classes[c]!;
    const byTotal = new Map<number, Way>();
    for (const than of ways) {
      for (let n = 1; n < inc.length; n += 1) {
        const total = than.total + n * cls.size;
        if (total > most) break;
        const expiring = than.expiring + inc[n]!.expiring;
        const rest = than.rest + restOf(inc[n]!.month, n * cls.dryTenths);
        const known = byTotal.get(total);
        if (known && (expiring > known.expiring || (expiring === known.expiring && rest >= known.rest)))
          continue;
        byTotal.set(total, { total, smallest: cls.size, expiring, rest, more: { than, c, n } });
      }
    }
    ways.push(...byTotal.values());
  }
  if (ways.length < 2) return undefined;
  const { pairLow, pairHigh } = table.needs[place]!;
  ways.sort((a, b) => a.total - b.total);
  return {
    best: pairLow.map((low, id) => bestWay(ways, low, pairHigh[id]!, grid.worth[table.meals[place]!]!, bent)),
  };
}

/**
 * The way that leaves least short, then wastes least beyond what is free, takes what expires, wastes least at all.
 * @param ways ascending by total
 */
function bestWay(
  ways: readonly Way[],
  low: number,
  high: number,
  worth: number,
  { free, grain }: Bent,
): Way | undefined {
  let chosen: Way | undefined;
  let [k1, k2, k3, k4, k5] = [Infinity, 0, 0, 0, 0];
  for (let i = firstFrom(ways, low / 2); i < ways.length; i += 1) {
    const way = ways[i]!;
    if (way.total === 0 || way.total - way.smallest >= low) continue;
    // From here on more is only left over.
    if (chosen && k1 === 0 && way.total - high - free > k2 && way.total > high) break;
    const waste = Math.max(0, way.total - high);
    const kcal = way.total >= low ? 0 : Math.floor(shortKcal(low, way.total, worth) / grain);
    const beyond = Math.max(0, waste - free);
    if (kcal !== k1 ? kcal > k1 : beyond !== k2 ? beyond > k2 : isNoBetter(way, waste, k3, k4, k5)) continue;
    [k1, k2, k3, k4, k5] = [kcal, beyond, way.expiring, waste, way.rest];
    chosen = way;
  }
  return chosen;
}

const isNoBetter = (way: Way, waste: number, expiring: number, wasted: number, rest: number): boolean =>
  way.expiring !== expiring ? way.expiring > expiring : waste !== wasted ? waste > wasted : way.rest >= rest;

/** The place of the first way with at least this total. */
function firstFrom(ways: readonly Way[], total: number): number {
  let [from, to] = [0, ways.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (ways[middle]!.total < total) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** Whether the first of two rows that differs is smaller. */
export function isLess(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return false;
}

/** Writes what a way opens into a plan. */
export function openWay(way: Way, open: Int16Array, base: number): void {
  for (let at: Way = way; at.more; at = at.more.than) open[base + at.more.c]! += at.more.n;
}

/** Of a meal with more classes than this in stock, the oldest are looked at, as long as they are plenty. Chosen. */
const manyClasses = 8;

/** The classes to open from, with what each pouch more of them adds. */
function inReach(
  grid: Grid,
  state: State,
  s: number,
  classes: readonly number[],
  most: number,
  back: KeptBack | undefined,
): { c: number; inc: Added[] }[] {
  const oldest = (c: number): number => grid.classes[c]!.groups[0]!.bestBy;
  const inOrder = classes.length > manyClasses ? classes.toSorted((a, b) => oldest(a) - oldest(b)) : classes;
  const found: { c: number; inc: Added[] }[] = [];
  let plenty = 0;
  for (const c of inOrder) {
    if (found.length >= manyClasses && plenty >= 2 * most) break;
    const { size } = grid.classes[c]!;
    const inc = increments(grid, state, s, c, Math.floor(most / size));
    inc.length = Math.max(0, inc.length - (back?.pouches[c] ?? 0));
    if (inc.length < 2) continue;
    found.push({ c, inc });
    plenty += (inc.length - 1) * size;
  }
  return found;
}

interface Added {
  readonly expiring: number;
  readonly month: number;
}

/** What the first, second, … pouch of class c opened here adds; as many as stock and `limit` allow. */
function increments(grid: Grid, state: State, s: number, c: number, limit: number): Added[] {
  const cls = grid.classes[c]!;
  const classes = grid.classes.length;
  if (cls.groups.at(-1)!.bestBy < grid.slotDay[s]!) return [];
  if (!cls.dated) {
    let used = 0;
    for (let i = c; i < state.open.length; i += classes) used += state.open[i]!;
    const count = Math.min(limit, cls.stock - used);
    const [b0, m0] = [cls.expiringSums[used]!, cls.monthSums[used]!];
    return Array.from({ length: count + 1 }, (_, n) => ({
      expiring: cls.expiringSums[used + n]! - b0,
      month: cls.monthSums[used + n]! - m0,
    }));
  }
  const base = classCost(grid, cls, (i) => (i === s ? 0 : state.open[i * classes + c]!));
  const found: Added[] = [];
  for (let n = 0; base && n <= limit; n += 1) {
    const cost = classCost(grid, cls, (i) => (i === s ? n : state.open[i * classes + c]!));
    if (!cost) break;
    found.push({ expiring: cost.expiring - base.expiring, month: cost.month - base.month });
  }
  return found;
}
