import type { Grid } from './grid.ts';
import type { IntegerLimits, Linear, LinearColumn, LinearProgram, LinearRow } from './linear.ts';
import { unfed } from './measure.ts';
import { type Menu, menuKey, movedBy, type Prices } from './menus.ts';
import { at as level, levelNames } from './problem.ts';

/** Which levels are held at nothing, so that menus against them need not be looked at. */
export type Ruled = Pick<Prices, 'noUnfed' | 'noDislike'>;

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
  /** Looks for whole menus among those at hand: the value of every column. */
  solveWhole(limits: IntegerLimits): Float64Array | undefined;
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

interface Column {
  /** Adds this much to each level for each unit. */
  readonly counts: readonly number[];
  readonly menu: Menu | undefined;
  readonly rows: readonly number[];
  readonly values: readonly number[];
  readonly lower: number;
  upper: number;
}

export function makeMaster(grid: Grid, linear: Linear): Master {
  const rows: LinearRow[] = [];
  const row = (lower: number, upper: number): number => rows.push({ lower, upper }) - 1;
  const slots = grid.slotKeys.length;
  const choose = Array.from({ length: slots }, () => row(1, 1));
  const extras: (LinearColumn & { readonly counts: number[] })[] = [];
  const none = (): number[] => levelNames.map(() => 0);

  // Stock. Row (class, first group still good): what is opened then comes from groups still good then.
  const firstGood = grid.classes.map((cls) =>
    grid.slotDay.map((day) => cls.groups.filter((g) => g.bestBy < day).length),
  );
  const stock = grid.classes.map((cls, c) => {
    const periods = [...new Set(firstGood[c])].filter((p) => p < cls.groups.length).sort((a, b) => a - b);
    const byPeriod = new Map(periods.map((p) => [p, row(-Infinity, 0)]));
    cls.groups.forEach((group, g) => {
      const open = periods.filter((p) => p <= g);
      const shared = open.length > 1 ? [row(-Infinity, group.count)] : [];
      for (const p of open) {
        const at = [byPeriod.get(p)!, ...shared];
        extras.push({
          cost: 0,
          lower: 0,
          upper: group.count,
          rows: at,
          values: at.map((r) => (shared.includes(r) ? 1 : -1)),
          counts: none(),
        });
      }
    });
    return byPeriod;
  });
  const stockRow = (c: number, s: number): number | undefined => stock[c]!.get(firstGood[c]![s]!);

  // The worst-off eater.
  const worstRow = grid.eaterKeys.map(() => row(-Infinity, 0));
  const worstCounts = none();
  worstCounts[level['worst off']] = 1;
  const worstColumn = extras.length;
  extras.push({
    cost: 0,
    lower: 0,
    upper: slots,
    rows: worstRow,
    values: worstRow.map(() => -1),
    counts: worstCounts,
  });

  // Wishes for any time count once, however often the meal is eaten.
  const wishRow = grid.wishes.map((wish) => {
    if (wish.slot >= 0) return -1;
    const at = row(-Infinity, 0);
    const counts = none();
    counts[level.wishes] = -wish.weight;
    extras.push({ cost: 0, lower: 0, upper: 1, rows: [at], values: [1], counts });
    return at;
  });

  // Hard sodium limits, by eater and day.
  const hardRow = grid.eaterKeys.map((_, e) =>
    Array.from({ length: grid.dayCount }, () =>
      grid.hardLimitMg[e]! < Infinity ? row(-Infinity, grid.hardLimitMg[e]!) : -1,
    ),
  );

  const holdRow = levelNames.map(() => row(-Infinity, Infinity));
  const program: LinearProgram = linear.open(rows);
  const bounds = rows.map((r) => ({ ...r }));
  const columns: Column[] = [];
  const known = new Map<string, number>();
  let goal = 0;
  /** What a unit of each level costs: 1 for the one aimed at, next to nothing for the two after it. */
  let weights = none();

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

  const menuColumn = (menu: Menu): Column => {
    const at = new Map<number, number>([[choose[menu.slot]!, 1]]);
    const plus = (r: number, value: number): void => void at.set(r, (at.get(r) ?? 0) + value);
    const counts = none();
    const eaters = grid.slotEaters[menu.slot]!;
    const day = grid.slotDayPlace[menu.slot]!;
    menu.eat.forEach((m, i) => {
      const e = eaters[i]!;
      if (m === unfed) {
        counts[level.unfed]! += 1;
        plus(worstRow[e]!, 1);
      } else if (hardRow[e]![day]! >= 0 && grid.hardMg[menu.slot]![e]![m]! > 0)
        plus(hardRow[e]![day]!, grid.hardMg[menu.slot]![e]![m]!);
    });
    for (const { c, n } of menu.open) plus(stockRow(c, menu.slot)!, n);
    for (const w of menu.gives) plus(wishRow[w]!, -1);
    counts[level['energy short']] = menu.short;
    counts[level.wishes] = -menu.wish;
    counts[level.dislikes] = menu.dislikes;
    counts[level.moved] = menu.moved;
    counts[level.waste] = menu.waste;
    return { counts, menu, rows: [...at.keys()], values: [...at.values()], lower: 0, upper: Infinity };
  };

  /** Prices at slot s from the rows' duals. */
  const pricesAt = (s: number, duals: Float64Array): Prices => {
    const price = (k: number): number => weights[k]! - duals[holdRow[k]!]!;
    const day = grid.slotDayPlace[s]!;
    const eats = (e: number, m: number): number => {
      let sum =
        (grid.dislike[e]![m] ? price(level.dislikes) : 0) +
        grid.thin[s]![e]![m]! * price(level['energy short']);
      sum += movedBy(grid, s, e, m) * price(level.moved);
      for (const w of grid.wishesOf[e]!) {
        const wish = grid.wishes[w]!;
        if (wish.meal !== m) continue;
        if (wish.slot === s) sum -= wish.weight * price(level.wishes);
        if (wish.slot === -1) sum += duals[wishRow[w]!]!;
      }
      const hard = hardRow[e]![day]!;
      return hard < 0 ? sum : sum - duals[hard]! * grid.hardMg[s]![e]![m]!;
    };
    const table = grid.eaterKeys.map((_, e) =>
      grid.mealKeys.map((__, m) => (grid.may[s]![e]![m] ? eats(e, m) : 0)),
    );
    const pouches = grid.classes.map((_, c) => {
      const r = stockRow(c, s);
      return r === undefined ? 0 : -duals[r]!;
    });
    return {
      short: price(level['energy short']),
      unfed: grid.eaterKeys.map(
        (_, e) =>
          price(level.unfed) +
          grid.nothing[s]![e]! * price(level['energy short']) +
          movedBy(grid, s, e, unfed) * price(level.moved) -
          duals[worstRow[e]!]!,
      ),
      eats: (e, m) => table[e]![m]!,
      waste: price(level.waste),
      pouch: (c) => pouches[c]!,
      ...ruled,
    };
  };

  let ruled: Ruled = { noUnfed: false, noDislike: false };
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
      if (fresh.length > 0) addColumns(fresh.map(menuColumn));
    },
    aim(aimed, tail) {
      goal = aimed;
      weights = none();
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
        for (let s = 0; s < slots; s += 1) sum += cheapest(s, pricesAt(s, duals));
        return sum;
      };
      const fresh: Relaxed['fresh'] = (cheapest) =>
        grid.slotKeys.flatMap((_, s) => {
          const found = cheapest(s, pricesAt(s, duals));
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
      return solution.columns.length > 0 ? solution.columns : undefined;
    },
    dispose: () => program.dispose(),
  };
}
