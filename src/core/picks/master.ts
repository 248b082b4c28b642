import type { Grid } from './grid.ts';
import type { IntegerLimits, Linear, LinearColumn, LinearProgram, LinearRow } from './linear.ts';
import { unfed } from './measure.ts';
import { type Menu, menuKey, type Prices } from './menus.ts';

/** Levels that the master can bound; the others (variety, day figures) it leaves out, which only loosens it. */
export const boundable = [0, 1, 2, 3, 4, 5, 6, 9, 10] as const;

/** Which levels are held at nothing, so that menus against them need not be looked at. */
export type Ruled = Pick<Prices, 'noShort' | 'noUnfed' | 'noDislike' | 'noWaste'>;

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

const levelCount = 11;

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
  const none = (): number[] => Array.from({ length: levelCount }, () => 0);

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
        const counts = none();
        counts[6] = group.bucketCost;
        counts[9] = group.monthCost;
        const at = [byPeriod.get(p)!, ...shared];
        extras.push({
          cost: 0,
          lower: 0,
          upper: group.count,
          rows: at,
          values: at.map((r) => (shared.includes(r) ? 1 : -1)),
          counts,
        });
      }
    });
    return byPeriod;
  });
  const stockRow = (c: number, s: number): number | undefined => stock[c]!.get(firstGood[c]![s]!);

  // The worst-off eater.
  const worstRow = grid.eaterKeys.map(() => row(-Infinity, 0));
  const worstCounts = none();
  worstCounts[2] = 1;
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
    counts[3] = -wish.weight;
    extras.push({ cost: 0, lower: 0, upper: 1, rows: [at], values: [1], counts });
    return at;
  });

  // Hard sodium limits, by eater and day.
  const hardRow = grid.eaterKeys.map((_, e) =>
    Array.from({ length: grid.dayCount }, () =>
      grid.hardLimitMg[e]! < Infinity ? row(-Infinity, grid.hardLimitMg[e]!) : -1,
    ),
  );

  const holdRow = Array.from({ length: levelCount }, () => row(-Infinity, Infinity));
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
        if (count === 0 || k === 2) return;
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
        counts[1]! += 1;
        plus(worstRow[e]!, 1);
      } else if (hardRow[e]![day]! >= 0 && grid.hardMg[e]![m]! > 0)
        plus(hardRow[e]![day]!, grid.hardMg[e]![m]!);
    });
    for (const { c, n } of menu.open) plus(stockRow(c, menu.slot)!, n);
    for (const w of menu.gives) plus(wishRow[w]!, -1);
    counts[0] = menu.short;
    counts[3] = -menu.wish;
    counts[4] = menu.dislikes;
    counts[5] = menu.waste;
    counts[10] = menu.dry;
    return { counts, menu, rows: [...at.keys()], values: [...at.values()], lower: 0, upper: Infinity };
  };

  /** Prices at slot s from the rows' duals. */
  const pricesAt = (s: number, duals: Float64Array): Prices => {
    const level = (k: number): number => weights[k]! - duals[holdRow[k]!]!;
    const day = grid.slotDayPlace[s]!;
    const eats = (e: number, m: number): number => {
      let price = grid.dislike[e]![m] ? level(4) : 0;
      for (const w of grid.wishesOf[e]!) {
        const wish = grid.wishes[w]!;
        if (wish.meal !== m) continue;
        if (wish.slot === s) price -= wish.weight * level(3);
        if (wish.slot === -1) price += duals[wishRow[w]!]!;
      }
      const hard = hardRow[e]![day]!;
      return hard < 0 ? price : price - duals[hard]! * grid.hardMg[e]![m]!;
    };
    const table = grid.eaterKeys.map((_, e) =>
      grid.mealKeys.map((__, m) => (grid.safe[e]![m] ? eats(e, m) : 0)),
    );
    const dry = level(10);
    const pouches = grid.classes.map((cls, c) => {
      const r = stockRow(c, s);
      return (r === undefined ? 0 : -duals[r]!) + dry * cls.dryTenths;
    });
    return {
      short: level(0),
      unfed: grid.eaterKeys.map((_, e) => level(1) - duals[worstRow[e]!]!),
      eats: (e, m) => table[e]![m]!,
      waste: level(5),
      pouch: (c) => pouches[c]!,
      ...ruled,
    };
  };

  let ruled: Ruled = { noShort: false, noUnfed: false, noDislike: false, noWaste: false };
  const against = (menu: Menu): boolean =>
    (ruled.noShort && menu.short > 0) ||
    (ruled.noUnfed && menu.eat.includes(unfed)) ||
    (ruled.noDislike && menu.dislikes > 0) ||
    (ruled.noWaste && menu.waste > 0);

  const reduced = (i: number, duals: Float64Array): number => {
    const c = columns[i]!;
    let rest = costOf(c);
    c.rows.forEach((r, k) => (rest -= duals[r]! * c.values[k]!));
    c.counts.forEach((count, k) => {
      if (k !== 2) rest -= duals[holdRow[k]!]! * count;
    });
    return rest;
  };

  return {
    count: () => columns.length,
    menuAt: (i) => columns[i]!.menu,
    find: (menu) => known.get(menuKey(menu)),
    add(menus) {
      const fresh = menus.filter((menu) => !known.has(menuKey(menu)) && !against(menu));
      fresh.forEach((menu, i) => known.set(menuKey(menu), columns.length + i));
      if (fresh.length > 0) addColumns(fresh.map(menuColumn));
    },
    aim(level, tail) {
      goal = level;
      weights = none();
      weights[level] = 1;
      const eaterSlots = grid.slotEaters.reduce((sum, eaters) => sum + eaters.length, 0);
      const most = [0, eaterSlots, 0, grid.wishTotal, eaterSlots, 40 * eaterSlots];
      let light = 1;
      for (const k of tail ? [1, 3, 4, 5].filter((next) => next > level).slice(0, 2) : []) {
        light /= most[k]! + 1;
        weights[k] = light;
      }
      program.setCosts(columns.map(costOf));
    },
    cap(value) {
      if (goal === 2) program.setColumn(worstColumn, 0, value ?? columns[worstColumn]!.upper);
      else program.setRow(holdRow[goal]!, -Infinity, value ?? Infinity);
      bounds[holdRow[goal]!] = { lower: -Infinity, upper: goal === 2 ? Infinity : (value ?? Infinity) };
    },
    set(i, to) {
      program.setColumn(i, to === 'in' ? 1 : 0, to === 'in' ? 1 : to === 'out' ? 0 : columns[i]!.upper);
    },
    isOut: (i) => columns[i]!.upper === 0,
    hold(level, value) {
      if (level === 2) return program.setColumn(worstColumn, 0, (columns[worstColumn]!.upper = value));
      bounds[holdRow[level]!] = { lower: -Infinity, upper: value };
      program.setRow(holdRow[level]!, -Infinity, value);
      if (value > 0) return;
      if (level === 0) ruled = { ...ruled, noShort: true, noUnfed: true };
      if (level === 1) ruled = { ...ruled, noUnfed: true };
      if (level === 4) ruled = { ...ruled, noDislike: true };
      if (level === 5) ruled = { ...ruled, noWaste: true };
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
