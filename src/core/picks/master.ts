import type { Grid } from './grid.ts';
import type { IntegerLimits, Linear, LinearProgram } from './linear.ts';
import { type Column, layOut, menuColumn, nothingCounted, pricesAt, type Ruled } from './master-layout.ts';
import { unfed } from './measure.ts';
import { type Menu, menuKey, type Prices } from './menus.ts';
import { at as level } from './problem.ts';

/**
 * The program over menus: one menu a slot, within the stock of every class and best-by. Its linear form bounds
 * every plan; its whole form over the menus at hand finds plans.
 */
export interface Master {
  add(menus: readonly Menu[]): void;
  /** How many columns there are; some are no menus. */
  count(): number;
  menuAt(column: number): Menu | undefined;
  /** The column of a menu that was added. */
  find(menu: Menu): number | undefined;
  /** Sets what is minimised: one level, and with `tail` the two after it, too lightly to outweigh it. */
  aim(level: number, tail: boolean): void;
  /** Keeps a level at most at this value from now on. */
  hold(level: number, value: number): void;
  /** Keeps the level aimed at at most at this value for the time being; undefined lifts it. */
  cap(value: number | undefined): void;
  /** Fixes a menu, shuts it out, or gives it back its freedom. */
  set(column: number, to: 'in' | 'out' | 'free'): void;
  isOut(column: number): boolean;
  /** The most of the level aimed at that a plan of this value may have, in what menus count. */
  most(value: number): number;
  /** Solves the linear form. */
  solve(seconds: number): Relaxed | undefined;
  /** Looks for whole menus among those at hand: the value of every column; 'none' when there certainly are none. */
  solveWhole(limits: IntegerLimits): Float64Array | 'none' | undefined;
  dispose(): void;
}

/** An optimum of the linear form over the menus at hand. */
export interface Relaxed {
  readonly value: number;
  /** By how much the value rises at least when the column is taken. */
  readonly reduced: (column: number) => number;
  /** What a menu of slot s must cost less than, to be worth adding. */
  readonly worth: (s: number) => number;
  /** A bound on every plan, from the price of the cheapest menu there is at each slot. */
  readonly bound: (cheapest: (s: number, prices: Prices) => number) => number;
  /** Those of the cheapest menus that are worth adding. */
  readonly fresh: (cheapest: (s: number, prices: Prices) => Priced | undefined) => Menu[];
  readonly values: Float64Array;
}

export interface Priced {
  readonly price: number;
  readonly menu: Menu;
}

export function makeMaster(grid: Grid, linear: Linear): Master {
  const layout = layOut(grid);
  const { rows, extras, worstColumn, holdRow } = layout;
  const slots = grid.slotKeys.length;
  const program: LinearProgram = linear.open(rows);
  const bounds = rows.map((r) => ({ ...r }));
  const columns: Column[] = [];
  const known = new Map<string, number>();
  let goal = 0;
  /** What a unit of each level costs: 1 for the one aimed at, next to nothing for the two after it. */
  let weights = nothingCounted();

  const costOf = (column: Column): number =>
    column.counts.reduce((sum, count, k) => sum + count * weights[k]!, 0);

  const addColumns = (list: readonly Column[]): void => {
    const added = list.map((item) => {
      const at = [...item.rows];
      const values = [...item.values];
      item.counts.forEach((count, k) => {
        if (count === 0 || k === level['worst off']) return;
        at.push(holdRow[k]!);
        values.push(count);
      });
      columns.push(item);
      return { cost: costOf(item), lower: item.lower, upper: item.upper, rows: at, values };
    });
    program.add(added);
  };
  addColumns(extras.map((x) => ({ ...x, menu: undefined })));

  let ruled: Ruled = { noUnfed: false, noDislike: false };
  const prices = (s: number, duals: Float64Array): Prices => pricesAt(grid, layout, s, duals, weights, ruled);
  const against = (menu: Menu): boolean =>
    (ruled.noUnfed && menu.eat.includes(unfed)) || (ruled.noDislike && menu.dislikes > 0);

  const reduced = (i: number, duals: Float64Array): number => {
    const c = columns[i]!;
    let rest = costOf(c);
    c.rows.forEach((r, k) => (rest -= duals[r]! * c.values[k]!));
    c.counts.forEach((count, k) => {
      if (k !== level['worst off']) rest -= duals[holdRow[k]!]! * count;
    });
    return rest;
  };

  /** The most of a level in what menus count: some levels count in steps of the whole trip. */
  const inUnits = (k: number, value: number): number =>
    k === level.waste
      ? grid.wasteAllowed + 20 * value
      : k === level['energy short']
        ? grid.shortStep * (value + 1) - 1
        : value;

  return {
    count: () => columns.length,
    menuAt: (i) => columns[i]!.menu,
    find: (menu) => known.get(menuKey(menu)),
    add(menus) {
      const fresh = menus.filter((menu) => !known.has(menuKey(menu)) && !against(menu));
      fresh.forEach((menu, i) => known.set(menuKey(menu), columns.length + i));
      if (fresh.length > 0) addColumns(fresh.map((menu) => menuColumn(grid, layout, menu)));
    },
    aim(aimed, tail) {
      goal = aimed;
      weights = nothingCounted();
      weights[aimed] = 1;
      const eaterSlots = grid.slotEaters.reduce((sum, eaters) => sum + eaters.length, 0);
      const most = new Map([
        [level.unfed, eaterSlots],
        [level.wishes, grid.wishTotal],
        [level.dislikes, eaterSlots],
        [level.waste, 40 * eaterSlots],
      ]);
      let light = 1;
      for (const k of tail ? [...most.keys()].filter((next) => next > aimed).slice(0, 2) : []) {
        light /= most.get(k)! + 1;
        weights[k] = light;
      }
      program.setCosts(columns.map(costOf));
    },
    cap(value) {
      const most = value === undefined ? Infinity : inUnits(goal, value);
      if (goal === level['worst off'])
        program.setColumn(worstColumn, 0, value ?? columns[worstColumn]!.upper);
      else program.setRow(holdRow[goal]!, -Infinity, most);
      bounds[holdRow[goal]!] = { lower: -Infinity, upper: goal === level['worst off'] ? Infinity : most };
    },
    set(i, to) {
      program.setColumn(i, to === 'in' ? 1 : 0, to === 'in' ? 1 : to === 'out' ? 0 : columns[i]!.upper);
    },
    most: (value) => inUnits(goal, value),
    isOut: (i) => columns[i]!.upper === 0,
    hold(held, value) {
      if (held === level['worst off'])
        return program.setColumn(worstColumn, 0, (columns[worstColumn]!.upper = value));
      const most = inUnits(held, value);
      bounds[holdRow[held]!] = { lower: -Infinity, upper: most };
      program.setRow(holdRow[held]!, -Infinity, most);
      if (value > 0) return;
      if (held === level.unfed) ruled = { ...ruled, noUnfed: true };
      if (held === level.dislikes) ruled = { ...ruled, noDislike: true };
      columns.forEach((c, i) => {
        if (c.menu && c.upper > 0 && against(c.menu)) program.setColumn(i, 0, (c.upper = 0));
      });
    },
    solve(seconds) {
      const solution = program.solve(seconds);
      if (solution.status !== 'optimal') return undefined;
      const duals = solution.duals.map((y, i) => {
        const { lower, upper } = bounds[i]!;
        return (y > 0 && lower === -Infinity) || (y < 0 && upper === Infinity) ? 0 : y;
      });
      // Weak duality, counted here: it holds whatever the solver's tolerances, for any prices of the right sign.
      const bound = (cheapest: (s: number, prices: Prices) => number): number => {
        let sum = 0;
        duals.forEach((y, i) => {
          if (y !== 0 && i >= slots) sum += y * (y > 0 ? bounds[i]!.lower : bounds[i]!.upper);
        });
        for (let i = 0; i < extras.length; i += 1) {
          const rest = reduced(i, duals);
          sum += rest < 0 ? rest * columns[i]!.upper : 0;
        }
        for (let s = 0; s < slots; s += 1) sum += cheapest(s, prices(s, duals));
        return sum;
      };
      const fresh: Relaxed['fresh'] = (cheapest) =>
        grid.slotKeys.flatMap((_, s) => {
          const found = cheapest(s, prices(s, duals));
          return found && found.price < duals[s]! - 1e-7 ? [found.menu] : [];
        });
      return {
        value: solution.value,
        reduced: (i) => reduced(i, duals),
        worth: (s) => duals[s]!,
        bound,
        fresh,
        values: solution.columns,
      };
    },
    solveWhole(limits) {
      const whole = [...columns.keys()].filter((i) => columns[i]!.menu || i === worstColumn);
      const solution = program.solveWhole(whole, undefined, limits);
      if (solution.columns.length > 0) return solution.columns;
      return solution.status === 'infeasible' ? 'none' : undefined;
    },
    dispose: () => program.dispose(),
  };
}
