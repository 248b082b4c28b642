import type { Grid } from './grid.ts';
import { shortKcal } from './helpings.ts';
import { unfed, type State } from './measure.ts';
import { type Bent, isLess, type KeptBack, makeOffer, type Offer, openWay, strict } from './offer.ts';
import { addSeat, type Cost, digits, type Elsewhere, elsewhere } from './slot-costs.ts';
import type { SlotTable } from './table.ts';

/**
 * Solves one slot, everything else held: the best of all ways to share its parties among the dishes and to open pouches
 * from what is left, by dynamic programming over sets of parties. Four whole-number keys stand for the levels. What is
 * short or left over counts in steps of the whole trip only, which do not add up: a slot is filled as bent, and the
 * trip is measured whole. Who stays unfed is chosen last, because the worst-off
 * eater is a maximum and does not add up either.
 */
export interface SlotSolver {
  /**
   * Fills slot s of the state, which must be cleared there.
   * @param back what to keep back this time, so that other slots may have it
   */
  fill(state: State, s: number, bent?: Bent, back?: KeptBack): void;
  clear(state: State, s: number): void;
}

const never = Infinity;

/** One key for each group of levels, by set of parties. */
type Keys = readonly [Float64Array, Float64Array, Float64Array, Float64Array];

export function makeSlotSolver(grid: Grid, tables: readonly SlotTable[]): SlotSolver {
  const eaterCount = grid.eaterKeys.length;
  const classCount = grid.classes.length;
  const widest = Math.max(1, ...tables.map((t) => t.full + 1));
  const keys = (): Keys => [0, 1, 2, 3].map(() => new Float64Array(widest)) as unknown as Keys;
  const [f, g] = [keys(), keys()];
  const sizes = digits(grid, tables);
  const restOf = (month: number, dry: number): number => month * sizes.month + dry;

  const clear = (state: State, s: number): void => {
    for (const e of grid.slotEaters[s]!) state.eat[s * eaterCount + e] = unfed;
    state.open.fill(0, s * classCount, (s + 1) * classCount);
  };

  /** What each party's seats cost when it has meal m; one that may not has an endless first key. */
  const seats = (
    state: State,
    s: number,
    m: number,
    mask: number,
    others: readonly Elsewhere[][],
    { grain }: Bent,
  ): Cost[] =>
    tables[s]!.parties.map((party, i) => {
      const cost: Cost = { first: mask & (1 << i) ? 0 : never, second: 0, third: 0 };
      if (cost.first === 0)
        party.forEach((e, k) => addSeat(grid, sizes, state, s, e, m, grain, others[i]![k]!, cost));
      return cost;
    });

  /** Fills g with what the dish costs for each set of parties. */
  const priceDish = (
    table: SlotTable,
    place: number,
    offer: Offer,
    costs: readonly Cost[],
    { free, grain }: Bent,
  ): void => {
    const { pair, pairLow, pairHigh } = table.needs[place]!;
    const worth = grid.worth[table.meals[place]!]!;
    for (const key of g) key[0] = 0;
    for (let sub = 1; sub <= table.full; sub += 1) {
      const cost = costs[31 - Math.clz32(sub & -sub)]!;
      const rest = sub & (sub - 1);
      g[0][sub] = g[0][rest]! + cost.first;
      g[1][sub] = g[1][rest]! + cost.second;
      g[2][sub] = g[2][rest]! + cost.third;
    }
    for (let sub = 1; sub <= table.full; sub += 1) {
      if (g[0][sub] === never) continue;
      const id = pair[sub]!;
      const way = offer.best[id];
      if (!way) {
        g[0][sub] = never;
        continue;
      }
      const waste = Math.max(0, way.total - pairHigh[id]!);
      g[0][sub]! += Math.floor(shortKcal(pairLow[id]!, way.total, worth) / grain) * sizes.short;
      // One dish more at the table counts as a repeat does.
      g[1][sub]! += Math.max(0, waste - free) * sizes.waste + way.expiring * sizes.expiring + sizes.variety;
      g[2][sub]! += waste;
      g[3][sub] = way.rest;
    }
  };

  const fill = (state: State, s: number, bent: Bent = strict, back?: KeptBack): void => {
    const table = tables[s]!;
    const { full } = table;
    const others = table.parties.map((party) => party.map((e) => elsewhere(grid, state, s, e)));
    f[0].fill(never, 0, full + 1);
    for (const key of f) key[0] = 0;
    const dishes = table.meals.map((m, place) => {
      const mask = table.allowed[place]! & ~(back?.from[place] ?? 0);
      const offer = mask === 0 ? undefined : makeOffer(grid, state, s, table, place, back, bent, restOf);
      if (!offer) return undefined;
      priceDish(table, place, offer, seats(state, s, m, mask, others, bent), bent);
      return { m, place, offer, choice: shareOut(f, g, full, mask) };
    });
    let left = bestFed(state, s, table, others, bent);
    for (const dish of dishes.toReversed()) {
      const sub = dish?.choice[left] ?? 0;
      if (!dish || sub === 0) continue;
      table.parties.forEach((party, i) => {
        if (sub & (1 << i)) for (const e of party) state.eat[s * eaterCount + e] = dish.m;
      });
      openWay(dish.offer.best[table.needs[dish.place]!.pair[sub]!]!, state.open, s * classCount);
      left ^= sub;
    }
  };

  /** The set of parties to feed: compares every choice of unfed ones, level by level. */
  const bestFed = (
    state: State,
    s: number,
    table: SlotTable,
    others: readonly Elsewhere[][],
    bent: Bent,
  ): number => {
    const { parties, full } = table;
    const there = new Set(grid.slotEaters[s]);
    let base = 0;
    grid.eaterKeys.forEach((_, e) => {
      if (!there.has(e)) base = Math.max(base, elsewhere(grid, state, s, e).missed);
    });
    for (const other of others.flat()) base = Math.max(base, other.missed);
    const without = parties.map((party, i) => {
      const cost: Cost = { first: 0, second: 0, third: 0 };
      party.forEach((e, k) => addSeat(grid, sizes, state, s, e, -1, bent.grain, others[i]![k]!, cost));
      return { ...cost, missed: Math.max(...others[i]!.map((o) => o.missed)) };
    });
    let best: number[] | undefined;
    let fed = 0;
    for (let out = 0; out <= full; out += 1) {
      const inside = full ^ out;
      if (f[0][inside] === never) continue;
      let [worst, first, second, third] = [base, f[0][inside]!, f[1][inside]!, f[2][inside]!];
      for (let bits = out; bits > 0; bits &= bits - 1) {
        const cost = without[31 - Math.clz32(bits & -bits)]!;
        worst = Math.max(worst, cost.missed + 1);
        first += cost.first;
        second += cost.second;
        third += cost.third;
      }
      const short = Math.floor(first / sizes.short);
      const ranked = [
        table.heads[out]!,
        worst,
        short,
        first - short * sizes.short,
        second,
        third,
        f[3][inside]!,
      ];
      if (best && !isLess(ranked, best)) continue;
      best = ranked;
      fed = inside;
    }
    return fed;
  };

  return { fill, clear };
}

/**
 * Lets one more dish join in: for every set of parties the best split into those at this dish (costs g) and those
 * at the dishes before (costs f, overwritten). Sets are gone through from the largest, so that f still holds the
 * costs before at every smaller one.
 * @returns who is at this dish, for every set
 */
function shareOut(f: Keys, g: Keys, full: number, allowed: number): Int32Array {
  const [f1, f2, f3, f4] = f;
  const [g1, g2, g3, g4] = g;
  const choice = new Int32Array(full + 1);
  for (let mask = full; mask > 0; mask -= 1) {
    const reach = mask & allowed;
    let [b1, b2, b3, b4] = [f1[mask]!, f2[mask]!, f3[mask]!, f4[mask]!];
    let chosen = 0;
    for (let sub = reach; sub > 0; sub = (sub - 1) & reach) {
      const rest = mask ^ sub;
      const k1 = f1[rest]! + g1[sub]!;
      if (k1 > b1 || k1 === never) continue;
      const k2 = f2[rest]! + g2[sub]!;
      if (k1 === b1) {
        if (k2 > b2) continue;
        if (k2 === b2) {
          const k3 = f3[rest]! + g3[sub]!;
          if (k3 > b3 || (k3 === b3 && f4[rest]! + g4[sub]! >= b4)) continue;
        }
      }
      b1 = k1;
      b2 = k2;
      b3 = f3[rest]! + g3[sub]!;
      b4 = f4[rest]! + g4[sub]!;
      chosen = sub;
    }
    f1[mask] = b1;
    f2[mask] = b2;
    f3[mask] = b3;
    f4[mask] = b4;
    choice[mask] = chosen;
  }
  return choice;
}
