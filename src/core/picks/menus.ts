import { type Grid, notBefore } from './grid.ts';
import { shortKcal } from './helpings.ts';
import { classCost, unfed, type State } from './measure.ts';
import type { SlotTable } from './table.ts';

/** One complete menu of one slot: who eats what from which pouches, and what that counts at the levels. */
export interface Menu {
  readonly slot: number;
  /** Meal or `unfed`, one for each eater of the slot. */
  readonly eat: readonly number[];
  readonly open: readonly { readonly c: number; readonly n: number }[];
  /** kcal. */
  readonly short: number;
  /** Weight of the wishes for this very slot that come true. */
  readonly wish: number;
  /** Wishes for any time that this menu grants. */
  readonly gives: readonly number[];
  readonly dislikes: number;
  /** Seats that are not as they were kept. */
  readonly moved: number;
  readonly waste: number;
}

/** 1 when this seat would not be as it was kept. */
export function movedBy(grid: Grid, s: number, e: number, m: number): number {
  const before = grid.before[s]![e]!;
  return grid.beforeKept && before !== notBefore && before !== m ? 1 : 0;
}

/** What the master program would pay or charge for each thing a menu does. */
export interface Prices {
  /** A kcal short. */
  readonly short: number;
  /** All that having nothing costs, by eater. */
  readonly unfed: readonly number[];
  /** By eater and meal at this slot, all that depends on who eats what: price(e, m). */
  readonly eats: (eater: number, meal: number) => number;
  readonly waste: number;
  /** By class at this slot. */
  readonly pouch: (c: number) => number;
  /** What the levels held at nothing rule out altogether. */
  readonly noUnfed: boolean;
  readonly noDislike: boolean;
}

export function makeMenu(grid: Grid, slot: number, eat: readonly number[], open: Menu['open']): Menu {
  const eaters = grid.slotEaters[slot]!;
  const need = new Map<number, { low: number; high: number; opened: number }>();
  let [short, wish, dislikes, moved, waste] = [0, 0, 0, 0, 0];
  const gives: number[] = [];
  eaters.forEach((e, i) => {
    const m = eat[i]!;
    moved += movedBy(grid, slot, e, m);
    if (m < 0) return void (short += grid.nothing[slot]![e]!);
    short += grid.thin[slot]![e]![m]!;
    const dish = need.get(m) ?? { low: 0, high: 0, opened: 0 };
    need.set(m, {
      ...dish,
      low: dish.low + grid.low[slot]![e]![m]!,
      high: dish.high + grid.high[slot]![e]![m]!,
    });
    if (grid.dislike[e]![m]) dislikes += 1;
    for (const w of grid.wishesOf[e]!) {
      if (grid.wishes[w]!.meal !== m) continue;
      if (grid.wishes[w]!.slot === slot) wish += grid.wishes[w]!.weight;
      if (grid.wishes[w]!.slot === -1) gives.push(w);
    }
  });
  for (const { c, n } of open) {
    const { meal, size } = grid.classes[c]!;
    const dish = need.get(meal) ?? { low: 0, high: 0, opened: 0 };
    need.set(meal, { ...dish, opened: dish.opened + n * size });
  }
  for (const [m, { low, high, opened }] of need) {
    short += shortKcal(low, opened, grid.worth[m]!);
    waste += Math.max(0, opened - high);
  }
  return { slot, eat, open, short, wish, gives, dislikes, moved, waste };
}

export const menuKey = (menu: Menu): string =>
  `${menu.slot}:${menu.eat.join(',')}:${menu.open.map(({ c, n }) => `${c}x${n}`).join(',')}`;

/** The menu a plan has at a slot. */
export function menuOf(grid: Grid, state: State, slot: number): Menu {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const open: { c: number; n: number }[] = [];
  for (let c = 0; c < classes; c += 1) {
    const n = state.open[slot * classes + c]!;
    if (n > 0) open.push({ c, n });
  }
  return makeMenu(
    grid,
    slot,
    grid.slotEaters[slot]!.map((e) => state.eat[slot * eaters + e]!),
    open,
  );
}

/** Writes a menu into a plan whose slot is empty. */
export function putMenu(grid: Grid, state: State, menu: Menu): void {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  grid.slotEaters[menu.slot]!.forEach((e, i) => (state.eat[menu.slot * eaters + e] = menu.eat[i]!));
  for (const { c, n } of menu.open) state.open[menu.slot * classes + c] = n;
}

/** Whether what the plan leaves of the stock holds this menu as well, and no hard sodium limit breaks. */
export function fits(grid: Grid, state: State, menu: Menu): boolean {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const stocked = menu.open.every(
    ({ c, n }) =>
      classCost(grid, grid.classes[c]!, (s) => state.open[s * classes + c]! + (s === menu.slot ? n : 0)) !==
      undefined,
  );
  return (
    stocked &&
    grid.slotEaters[menu.slot]!.every((e, i) => {
      if (grid.hardLimitMg[e] === Infinity) return true;
      let salt = menu.eat[i]! < 0 ? 0 : grid.hardMg[menu.slot]![e]![menu.eat[i]!]!;
      for (let s = 0; s < grid.slotKeys.length; s += 1) {
        const m = state.eat[s * eaters + e]!;
        if (m >= 0 && grid.slotDayPlace[s] === grid.slotDayPlace[menu.slot]) salt += grid.hardMg[s]![e]![m]!;
      }
      return salt <= grid.hardLimitMg[e]!;
    })
  );
}

export interface Pricer {
  /** The cheapest menu of the slot at these prices, and its price. */
  readonly cheapest: (slot: number, prices: Prices) => { readonly price: number; readonly menu: Menu };
}

/** The same dynamic programme as the slot search, with one price in place of the levels. */
export function makePricer(grid: Grid, tables: readonly SlotTable[]): Pricer {
  const widest = Math.max(1, ...tables.map((t) => t.full + 1));
  const f = new Float64Array(widest);
  const g = new Float64Array(widest);
  const longest = Math.max(1, ...tables.map((t) => t.meals.length));
  const choices = Array.from({ length: longest }, () => new Int32Array(widest));
  const bests = Array.from({ length: longest }, () => new Int32Array(widest));
  const larders = tables.map((t, s) => t.meals.map((m, place) => makeLarder(grid, s, m, t.most[place]!)));
  const byPair = new Float64Array(widest);

  const priceDish = (s: number, place: number, prices: Prices): void => {
    const table = tables[s]!;
    const { pairLow, pairHigh } = table.needs[place]!;
    const worth = grid.worth[table.meals[place]!]!;
    const larder = larders[s]![place]!;
    const best = bests[place]!;
    const byTotal = priceTotals(larder, prices.pouch);
    for (let id = 0; id < pairLow.length; id += 1) {
      const [low, high] = [pairLow[id]!, pairHigh[id]!];
      let [cheapest, chosen] = [Infinity, -1];
      for (let i = 1; i < byTotal.length; i += 1) {
        if (byTotal[i] === Infinity) continue;
        const short = Math.max(0, low - i * larder.step);
        const waste = Math.max(0, i * larder.step - high);
        const kcal = shortKcal(low, i * larder.step, worth);
        if (2 * short > low) continue;
        const price = byTotal[i]! + kcal * prices.short + waste * prices.waste;
        if (price < cheapest) [cheapest, chosen] = [price, i];
      }
      byPair[id] = cheapest;
      best[id] = chosen;
    }
  };

  const mayHave = (e: number, m: number, prices: Prices): boolean =>
    !(prices.noDislike && grid.dislike[e]![m]);

  const cheapest: Pricer['cheapest'] = (s, prices) => {
    const table = tables[s]!;
    const { parties, full } = table;
    const sumOf = (party: number, price: (e: number) => number): number =>
      parties[party]!.reduce((sum, e) => sum + price(e), 0);
    // Everybody starts unfed; each dish then takes some of them over.
    f[0] = 0;
    for (let mask = 1; mask <= full; mask += 1) {
      const party = 31 - Math.clz32(mask & -mask);
      const miss = prices.noUnfed ? Infinity : sumOf(party, (e) => prices.unfed[e]!);
      f[mask] = f[mask & (mask - 1)]! + miss;
    }
    table.meals.forEach((m, place) => {
      priceDish(s, place, prices);
      const choice = choices[place]!;
      const allowed = table.allowed[place]!;
      const { pair } = table.needs[place]!;
      const seated = parties.map((party, i) =>
        allowed & (1 << i) && party.every((e) => mayHave(e, m, prices))
          ? sumOf(i, (e) => prices.eats(e, m))
          : Infinity,
      );
      g[0] = 0;
      for (let sub = 1; sub <= full; sub += 1)
        g[sub] = g[sub & (sub - 1)]! + seated[31 - Math.clz32(sub & -sub)]!;
      for (let sub = 1; sub <= full; sub += 1) g[sub]! += byPair[pair[sub]!]!;
      for (let mask = full; mask > 0; mask -= 1) {
        const reach = mask & allowed;
        let [low, chosen] = [f[mask]!, 0];
        for (let sub = reach; sub > 0; sub = (sub - 1) & reach) {
          const price = f[mask ^ sub]! + g[sub]!;
          if (price < low - 1e-12) [low, chosen] = [price, sub];
        }
        f[mask] = low;
        choice[mask] = chosen;
      }
    });
    const eaten = new Map<number, number>();
    const open: { c: number; n: number }[] = [];
    let left = full;
    for (let place = table.meals.length - 1; place >= 0 && left > 0; place -= 1) {
      const sub = choices[place]![left]!;
      if (sub === 0) continue;
      parties.forEach((party, i) => {
        if (sub & (1 << i)) for (const e of party) eaten.set(e, table.meals[place]!);
      });
      takeTotal(larders[s]![place]!, bests[place]![table.needs[place]!.pair[sub]!]!, (c, n) =>
        open.push({ c, n }),
      );
      left ^= sub;
    }
    open.sort((a, b) => a.c - b.c);
    const eat = grid.slotEaters[s]!.map((e) => eaten.get(e) ?? unfed);
    return { price: f[full]!, menu: makeMenu(grid, s, eat, open) };
  };

  return { cheapest };
}

/** What may be opened of one meal at one slot; totals are counted in steps, the sizes' common divisor. */
interface Larder {
  readonly step: number;
  readonly classes: readonly { readonly c: number; readonly steps: number; readonly good: number }[];
  /** For each class: how many of it the cheapest way to each total opens. */
  readonly taken: readonly Int16Array[];
  readonly price: Float64Array;
  readonly before: Float64Array;
}

function makeLarder(grid: Grid, slot: number, m: number, most: number): Larder {
  const classes = grid.mealClasses[m]!.map((c) => {
    const { groups, size } = grid.classes[c]!;
    const good = groups.filter((g) => g.bestBy >= grid.slotDay[slot]!).reduce((sum, g) => sum + g.count, 0);
    return { c, size, good };
  }).filter(({ good }) => good > 0);
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  const step = classes.reduce((d, { size }) => divisor(size, d), 0) || 1;
  const length = Math.floor(most / step) + 1;
  return {
    step,
    classes: classes.map(({ c, size, good }) => ({ c, steps: size / step, good })),
    taken: classes.map(() => new Int16Array(length)),
    price: new Float64Array(length),
    before: new Float64Array(length),
  };
}

/** The cheapest price of each total, Infinity where it cannot be reached. */
function priceTotals(larder: Larder, pouch: (c: number) => number): Float64Array {
  const { price, before } = larder;
  price.fill(Infinity);
  price[0] = 0;
  larder.classes.forEach(({ c, steps, good }, k) => {
    before.set(price);
    const taken = larder.taken[k]!.fill(0);
    const each = pouch(c);
    for (let total = steps; total < price.length; total += 1) {
      for (let n = 1; n <= good && n * steps <= total; n += 1) {
        const way = before[total - n * steps]! + n * each;
        if (way < price[total]!) {
          price[total] = way;
          taken[total] = n;
        }
      }
    }
  });
  return price;
}

function takeTotal(larder: Larder, total: number, take: (c: number, n: number) => void): void {
  let left = total;
  for (let k = larder.classes.length - 1; k >= 0; k -= 1) {
    const n = larder.taken[k]![left]!;
    if (n > 0) take(larder.classes[k]!.c, n);
    left -= n * larder.classes[k]!.steps;
  }
}
