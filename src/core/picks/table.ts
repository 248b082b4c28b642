import type { Grid } from './grid.ts';
import type { State } from './measure.ts';

/**
 * Sets of eaters at one slot grow as powers of two. When there are more eaters than `mostAlone`, those who may eat the
 * same are served as one party to begin with. From `large` on the search takes only some apart, others every time
 * (`apart`). Dishes are shared by all parties. Chosen.
 */
const mostAlone = 12;
const large = 11;
const mostParties = 8;

export const isLarge = (grid: Grid, s: number): boolean => grid.slotEaters[s]!.length >= large;

/** What a dish must hold for every set of parties (a bit mask). Few different pairs occur; `pair` numbers them. */
export interface Needs {
  readonly pair: Int32Array;
  readonly pairLow: readonly number[];
  readonly pairHigh: readonly number[];
  /** Least for all who may have it. */
  readonly lowOfAll: number;
}

/** What is offered at one slot, as far as it never changes while the slot is solved again and again. */
export interface SlotTable {
  /** Eaters who are served alike; mostly one each. */
  readonly parties: readonly (readonly number[])[];
  readonly full: number;
  /** Eaters in each set of parties. */
  readonly heads: Uint8Array;
  /** Meals some party here may have and whose pouches are still good that day. */
  readonly meals: readonly number[];
  /** Parties (mask) who may have it, one for each of `meals`; and what they need of it. */
  readonly allowed: readonly number[];
  readonly needs: readonly Needs[];
  /** Greatest total worth opening: one pouch less would leave the largest party of this meal short. */
  readonly most: readonly number[];
}

/** Puts eaters together who may have the same, alike ones side by side, until there are few enough parties. */
function partiesOf(grid: Grid, s: number): number[][] {
  const eaters = grid.slotEaters[s]!;
  if (eaters.length <= mostAlone) return eaters.map((e) => [e]);
  const kinds = new Map<string, number[]>();
  for (const e of eaters) {
    const kind = grid.may[s]![e]!.map(Number).join('');
    kinds.set(kind, [...(kinds.get(kind) ?? []), e]);
  }
  // Too many kinds: those who share most of what they may eat have it together.
  while (kinds.size > mostParties) joinTwo(kinds);
  // The largest kind is cut again and again while there is room for one more party.
  const cut = [...kinds.values()].map((members) => ({ members, into: 1 }));
  for (let parties = cut.length; parties < mostParties; parties += 1) {
    const largest = cut.reduce((a, b) => (b.members.length / b.into > a.members.length / a.into ? b : a));
    largest.into += 1;
  }
  return cut.flatMap(({ members, into }) =>
    Array.from({ length: Math.min(into, members.length) }, (_, k) => {
      const parts = Math.min(into, members.length);
      return members.slice(
        Math.floor((k * members.length) / parts),
        Math.floor(((k + 1) * members.length) / parts),
      );
    }),
  );
}

/** Joins the two kinds that share most; together they may have what both may. */
function joinTwo(kinds: Map<string, number[]>): void {
  const keys = [...kinds.keys()].sort((a, b) => kinds.get(a)!.length - kinds.get(b)!.length);
  const both = (a: string, b: string): string =>
    Array.from(a, (c, i) => (c === '1' && b[i] === '1' ? '1' : '0')).join('');
  const shared = (a: string, b: string): number => both(a, b).split('1').length;
  const [first, ...rest] = keys as [string, ...string[]];
  const other = rest.reduce((a, b) => (shared(first, b) > shared(first, a) ? b : a));
  const members = [...kinds.get(first)!, ...kinds.get(other)!];
  kinds.delete(first);
  kinds.delete(other);
  const key = both(first, other);
  kinds.set(key, [...(kinds.get(key) ?? []), ...members]);
}

function makeNeeds(lows: readonly number[], highs: readonly number[], allowed: number): Needs {
  const size = 1 << lows.length;
  const pair = new Int32Array(size);
  const [low, high] = [new Int32Array(size), new Int32Array(size)];
  const found = new Map<number, number>();
  const [pairLow, pairHigh]: [number[], number[]] = [[], []];
  for (let mask = 0; mask < size; mask += 1) {
    if (mask > 0) {
      const lowest = 31 - Math.clz32(mask & -mask);
      const rest = mask & (mask - 1);
      low[mask] = low[rest]! + lows[lowest]!;
      high[mask] = high[rest]! + highs[lowest]!;
    }
    const key = low[mask]! * 1e6 + high[mask]!;
    let id = found.get(key);
    if (id === undefined) {
      id = pairLow.length;
      found.set(key, id);
      pairLow.push(low[mask]!);
      pairHigh.push(high[mask]!);
    }
    pair[mask] = id;
  }
  return { pair, pairLow, pairHigh, lowOfAll: low[allowed]! };
}

/** One table a slot; dishes with the same needs share the costly part. */
export function makeTables(grid: Grid): SlotTable[] {
  const shared = new Map<string, Needs>();
  return grid.slotEaters.map((_, s) => tableFor(grid, s, partiesOf(grid, s), shared));
}

/**
 * The table of a slot where those who have the same dish in this plan stay together, but for a few, each for himself:
 * so nothing of the plan is lost, and everybody's turn to change comes.
 * @param below a whole number from 0 to below its argument
 */
export function apart(grid: Grid, state: State, s: number, below: (n: number) => number): SlotTable {
  const eaters = [...grid.slotEaters[s]!];
  const has = (e: number): number => state.eat[s * grid.eaterKeys.length + e]!;
  const dishes = new Set(eaters.map(has)).size;
  const parties: number[][] = [];
  while (parties.length + dishes < mostParties + 1 && eaters.length > 0)
    parties.push(eaters.splice(below(eaters.length), 1));
  for (const m of new Set(eaters.map(has))) parties.push(eaters.filter((e) => has(e) === m));
  return tableFor(grid, s, parties, new Map());
}

function tableFor(
  grid: Grid,
  s: number,
  parties: readonly (readonly number[])[],
  shared: Map<string, Needs>,
): SlotTable {
  const size = 1 << parties.length;
  const heads = new Uint8Array(size);
  for (let mask = 1; mask < size; mask += 1)
    heads[mask] = heads[mask & (mask - 1)]! + parties[31 - Math.clz32(mask & -mask)]!.length;
  const table = {
    meals: [] as number[],
    allowed: [] as number[],
    needs: [] as Needs[],
    most: [] as number[],
  };
  grid.mealKeys.forEach((_, m) => {
    const mask = parties.reduce(
      (sum, party, i) => sum + (party.every((e) => mayEat(grid, s, e, m)) ? 1 << i : 0),
      0,
    );
    const good = grid.mealClasses[m]!.filter((c) => goodUntil(grid, c) >= grid.slotDay[s]!);
    if (mask === 0 || good.length === 0) return;
    const sum = (of: Grid['low']): number[] =>
      parties.map((party) => party.reduce((n, e) => n + of[s]![e]![m]!, 0));
    const [lows, highs] = [sum(grid.low), sum(grid.high)];
    const key = `${lows.join()}/${highs.join()}/${mask}`;
    const needs = shared.get(key) ?? makeNeeds(lows, highs, mask);
    shared.set(key, needs);
    table.meals.push(m);
    table.allowed.push(mask);
    table.needs.push(needs);
    table.most.push(needs.lowOfAll - 1 + Math.max(...good.map((c) => grid.classes[c]!.size)));
  });
  return { parties, full: size - 1, heads, ...table };
}

/** Whether somebody at the slot is served together with another. */
export const isCoarse = ({ parties }: SlotTable): boolean => parties.some((party) => party.length > 1);

const mayEat = (grid: Grid, s: number, e: number, m: number): boolean =>
  grid.may[s]![e]![m]! && grid.hardMg[s]![e]![m]! <= grid.hardLimitMg[e]!;

const goodUntil = (grid: Grid, c: number): number => grid.classes[c]!.groups.at(-1)!.bestBy;
