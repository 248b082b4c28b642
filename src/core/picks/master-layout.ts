import type { Grid } from './grid.ts';
import type { LinearColumn, LinearRow } from './linear.ts';
import { unfed } from './measure.ts';
import { type Menu, movedBy, type Prices } from './menus.ts';
import { at as level, levelNames } from './problem.ts';

/** A column of the program over menus. */
export interface Column {
  /** Adds this much to each level for each unit. */
  readonly counts: readonly number[];
  readonly menu: Menu | undefined;
  readonly rows: readonly number[];
  readonly values: readonly number[];
  readonly lower: number;
  upper: number;
}

type Extra = LinearColumn & { readonly counts: number[] };

/** Where everything stands in the program over menus: one menu a slot, within the stock of every class and best-by. */
export interface Layout {
  readonly rows: readonly LinearRow[];
  /** Columns that are no menus. */
  readonly extras: readonly Extra[];
  /** The row that asks for one menu: choose[slot]. */
  readonly choose: readonly number[];
  readonly stockRow: (c: number, slot: number) => number | undefined;
  readonly worstRow: readonly number[];
  readonly worstColumn: number;
  /** −1 for a wish for one slot, which its menus count themselves. */
  readonly wishRow: readonly number[];
  /** By eater and day; −1 without a hard limit. */
  readonly hardRow: readonly (readonly number[])[];
  /** The row that holds each level. */
  readonly holdRow: readonly number[];
}

/** Nothing at any level. */
export const nothingCounted = (): number[] => levelNames.map(() => 0);

type AddRow = (lower: number, upper: number) => number;

export function layOut(grid: Grid): Layout {
  const rows: LinearRow[] = [];
  const row: AddRow = (lower, upper) => rows.push({ lower, upper }) - 1;
  const extras: Extra[] = [];
  const choose = grid.slotKeys.map(() => row(1, 1));
  const stockRow = layStock(grid, row, extras);
  const worstRow = grid.eaterKeys.map(() => row(-Infinity, 0));
  const worstColumn = extras.length;
  extras.push({
    cost: 0,
    lower: 0,
    upper: grid.slotKeys.length,
    rows: worstRow,
    values: worstRow.map(() => -1),
    counts: nothingCounted().with(level['worst off'], 1),
  });
  // Wishes for any time count once, however often the meal is eaten.
  const wishRow = grid.wishes.map((wish) => {
    if (wish.slot >= 0) return -1;
    const at = row(-Infinity, 0);
    const counts = nothingCounted().with(level.wishes, -wish.weight);
    extras.push({ cost: 0, lower: 0, upper: 1, rows: [at], values: [1], counts });
    return at;
  });
  const hardRow = grid.eaterKeys.map((_, e) =>
    Array.from({ length: grid.dayCount }, () =>
      grid.hardLimitMg[e]! < Infinity ? row(-Infinity, grid.hardLimitMg[e]!) : -1,
    ),
  );
  const holdRow = levelNames.map(() => row(-Infinity, Infinity));
  return { rows, extras, choose, stockRow, worstRow, worstColumn, wishRow, hardRow, holdRow };
}

/** Rows of the stock. Row (class, first group still good): what is opened then comes from groups still good then. */
function layStock(grid: Grid, row: AddRow, extras: Extra[]): Layout['stockRow'] {
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
          counts: nothingCounted(),
        });
      }
    });
    return byPeriod;
  });
  return (c, s) => stock[c]!.get(firstGood[c]![s]!);
}

/** A menu as a column: what it takes of the stock, whom it feeds, what it counts. */
export function menuColumn(grid: Grid, layout: Layout, menu: Menu): Column {
  const { choose, worstRow, hardRow, wishRow, stockRow } = layout;
  const at = new Map<number, number>([[choose[menu.slot]!, 1]]);
  const plus = (r: number, value: number): void => void at.set(r, (at.get(r) ?? 0) + value);
  const counts = nothingCounted();
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
}

/** Which levels are held at nothing, so that menus against them need not be looked at. */
export type Ruled = Pick<Prices, 'noUnfed' | 'noDislike'>;

/**
 * Prices at slot s from the rows' duals.
 * @param weights what a unit of each level costs
 */
export function pricesAt(
  grid: Grid,
  { worstRow, hardRow, wishRow, holdRow, stockRow }: Layout,
  s: number,
  duals: Float64Array,
  weights: readonly number[],
  ruled: Ruled,
): Prices {
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
}
