import type { Grid } from './grid.ts';

/**
 * What does not change while one slot is solved again and again: for every set of its eaters (a bit mask over
 * `eaters`) what they need at least and at most. Few different pairs occur; `pair` numbers them.
 */
export interface Table {
  readonly eaters: readonly number[];
  readonly full: number;
  readonly pair: Int32Array;
  readonly pairLow: readonly number[];
  readonly pairHigh: readonly number[];
  readonly lowOf: Int32Array;
  readonly bits: Uint8Array;
}

/** What is offered at one slot, as far as it never changes. */
export interface SlotTable extends Table {
  /** Meals some eater here may have and whose pouches are still good that day. */
  readonly meals: readonly number[];
  /** Eaters (mask) who may have it, one for each of `meals`. */
  readonly allowed: readonly number[];
  /** Greatest total worth opening: one pouch less would leave the largest party of this meal short. */
  readonly most: readonly number[];
}

function makeTable(grid: Grid, eaters: readonly number[]): Table {
  const size = 1 << eaters.length;
  const pair = new Int32Array(size);
  const bits = new Uint8Array(size);
  const [low, high] = [new Int32Array(size), new Int32Array(size)];
  const found = new Map<string, number>();
  const [pairLow, pairHigh]: [number[], number[]] = [[], []];
  for (let mask = 0; mask < size; mask += 1) {
    if (mask > 0) {
      const lowest = 31 - Math.clz32(mask & -mask);
      const rest = mask & (mask - 1);
      low[mask] = low[rest]! + grid.low[eaters[lowest]!]!;
      high[mask] = high[rest]! + grid.high[eaters[lowest]!]!;
      bits[mask] = bits[rest]! + 1;
    }
    const key = `${low[mask]!}/${high[mask]!}`;
    let id = found.get(key);
    if (id === undefined) {
      id = pairLow.length;
      found.set(key, id);
      pairLow.push(low[mask]!);
      pairHigh.push(high[mask]!);
    }
    pair[mask] = id;
  }
  return { eaters, full: size - 1, pair, pairLow, pairHigh, lowOf: low, bits };
}

/** One table a slot; slots with the same eaters share the costly part. */
export function makeTables(grid: Grid): SlotTable[] {
  const shared = new Map<string, Table>();
  return grid.slotEaters.map((eaters, s) => {
    const key = eaters.join(',');
    const table = shared.get(key) ?? makeTable(grid, eaters);
    shared.set(key, table);
    const meals: number[] = [];
    const allowed: number[] = [];
    const most: number[] = [];
    grid.mealKeys.forEach((_, m) => {
      const mask = eaters.reduce((sum, e, i) => sum + (mayEat(grid, e, m) ? 1 << i : 0), 0);
      const good = grid.mealClasses[m]!.filter((c) => goodUntil(grid, c) >= grid.slotDay[s]!);
      if (mask === 0 || good.length === 0 || grid.barred[s]![m]) return;
      meals.push(m);
      allowed.push(mask);
      most.push(table.lowOf[mask]! - 1 + Math.max(...good.map((c) => grid.classes[c]!.size)));
    });
    return { ...table, meals, allowed, most };
  });
}

const mayEat = (grid: Grid, e: number, m: number): boolean =>
  grid.safe[e]![m]! && grid.hardMg[e]![m]! <= grid.hardLimitMg[e]!;

const goodUntil = (grid: Grid, c: number): number => grid.classes[c]!.groups.at(-1)!.bestBy;
