import type { Grid } from './grid.ts';
import { shortKcal } from './helpings.ts';
import { unfed, type State } from './measure.ts';
import { type Bent, isLess, type KeptBack, makeOffer, type Offer, openWay, strict } from './offer.ts';
import { joinIn, keepCheaper, makeKeys, never, type Served, splitInTables, tablesOf } from './seating.ts';
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
   * @param table how its eaters are served this time, if not as usual
   */
  fill(state: State, s: number, bent?: Bent, back?: KeptBack, table?: SlotTable): void;
  clear(state: State, s: number): void;
}

/** A meal as it may be served at the slot this time. */
interface Dish {
  readonly m: number;
  /** Of the meal in the slot's table. */
  readonly place: number;
  /** Parties (mask) who may have it. */
  readonly mask: number;
  readonly offer: Offer;
  /** What each party's seats cost. */
  readonly costs: readonly Cost[];
}

export function makeSlotSolver(grid: Grid, tables: readonly SlotTable[]): SlotSolver {
  const eaterCount = grid.eaterKeys.length;
  const classCount = grid.classes.length;
  const widest = Math.max(1 << 10, ...tables.map((t) => t.full + 1));
  const [f, g, best] = [makeKeys(widest), makeKeys(widest), makeKeys(widest)];
  const [tableOf, dishOf] = [new Int32Array(widest), new Int32Array(widest)];
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
    parties: SlotTable['parties'],
    m: number,
    mask: number,
    others: readonly Elsewhere[][],
    { grain }: Bent,
  ): Cost[] =>
    parties.map((party, i) => {
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

  const fill = (
    state: State,
    s: number,
    bent: Bent = strict,
    back?: KeptBack,
    table: SlotTable = tables[s]!,
  ): void => {
    const { full } = table;
    const others = table.parties.map((party) => party.map((e) => elsewhere(grid, state, s, e)));
    const dishes = table.meals.flatMap((m, place): Dish[] => {
      const mask = table.allowed[place]! & ~(back?.from[place] ?? 0);
      const offer = mask === 0 ? undefined : makeOffer(grid, state, s, table, place, back, bent, restOf);
      return offer
        ? [{ m, place, mask, offer, costs: seats(state, s, table.parties, m, mask, others, bent) }]
        : [];
    });
    const price = (dish: Dish): void => priceDish(table, dish.place, dish.offer, dish.costs, bent);
    const fed = (): number => bestFed(state, s, table, others, bent);
    best[0].fill(never, 0, full + 1);
    dishes.forEach((dish, i) => {
      price(dish);
      keepCheaper(best, g, dish.mask, dishOf, i);
    });
    splitInTables(f, best, full, tableOf);
    const served = tablesOf(fed(), tableOf, dishOf) ?? oneTableADish(full, dishes, price, fed);
    for (const { sub, dish } of served) {
      const { m, place, offer } = dishes[dish]!;
      table.parties.forEach((party, i) => {
        if (sub & (1 << i)) for (const e of party) state.eat[s * eaterCount + e] = m;
      });
      openWay(offer.best[table.needs[place]!.pair[sub]!]!, state.open, s * classCount);
    }
  };

  /** The same where each dish joins in once: for the few times that one would be served at two tables. */
  const oneTableADish = (
    full: number,
    dishes: readonly Dish[],
    price: (dish: Dish) => void,
    fed: () => number,
  ): Served[] => {
    f[0].fill(never, 0, full + 1);
    for (const key of f) key[0] = 0;
    const choices = dishes.map((dish) => {
      price(dish);
      return joinIn(f, g, full, dish.mask);
    });
    const served: Served[] = [];
    let left = fed();
    for (let dish = dishes.length - 1; dish >= 0; dish -= 1) {
      const sub = choices[dish]![left]!;
      if (sub > 0) served.push({ sub, dish });
      left ^= sub;
    }
    return served;
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
    let found: number[] | undefined;
    let fed = 0;
    for (let out = 0; out <= full; out += 1) {
      const inside = full ^ out;
      if (f[0][inside] === never || (found && table.heads[out]! > found[0]!)) continue;
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
      if (found && !isLess(ranked, found)) continue;
      found = ranked;
      fed = inside;
    }
    return fed;
  };

  return { fill, clear };
}
