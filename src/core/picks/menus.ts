import { type Grid, notBefore } from './grid.ts';
import { shortKcal } from './helpings.ts';
import { classCost, type State } from './measure.ts';

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
