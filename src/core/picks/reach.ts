import type { Grid } from './grid.ts';
import type { IntegerLimits } from './linear.ts';
import type { Master, Priced, Relaxed } from './master.ts';
import { emptyState, type State } from './measure.ts';
import { fits, menuOf, type Prices, putMenu } from './menus.ts';

/**
 * Goes down from the linear optimum by fixing menus one after the other, with new menus made for what is left.
 * Cheap, and often close.
 * @param skip of the first doubtful choices, take so many second best
 * @returns the plan, and the slots it found no menu for
 */
export function dive(
  grid: Grid,
  master: Master,
  cheapest: (s: number, prices: Prices) => Priced,
  skip: number,
): { state: State; left: readonly number[] } {
  const state = emptyState(grid);
  const open = new Set(grid.slotKeys.keys());
  const fixed: number[] = [];
  /** Fixes the menu if what is left of the stock still holds it. */
  const fix = (i: number): boolean => {
    const menu = master.menuAt(i);
    if (!menu || !open.has(menu.slot) || !fits(grid, state, menu)) return false;
    open.delete(menu.slot);
    fixed.push(i);
    putMenu(grid, state, menu);
    master.set(i, 'in');
    return true;
  };
  let skipped = 0;
  let renewed = false;
  while (open.size > 0) {
    const relaxed = master.solve(Infinity);
    if (!relaxed) break;
    // New menus for what is left, once after each choice.
    const before = master.count();
    if (!renewed) master.add(relaxed.fresh((s, prices) => (open.has(s) ? cheapest(s, prices) : undefined)));
    renewed = master.count() > before;
    if (renewed) continue;
    const { values } = relaxed;
    const likely = [...values.keys()]
      .filter((i) => values[i]! > 1e-6 && open.has(master.menuAt(i)?.slot ?? -1))
      .sort((a, b) => values[b]! - values[a]! || a - b);
    const sure = likely.filter((i) => values[i]! > 0.999 && fix(i));
    const doubtful = likely.filter((i) => values[i]! <= 0.999);
    if (doubtful.length > 1 && skipped < skip) {
      skipped += 1;
      doubtful.shift();
    }
    if (!doubtful.some(fix) && sure.length === 0) break;
  }
  for (const i of fixed) master.set(i, 'free');
  return { state, left: [...open] };
}

/**
 * Looks for a plan of whole menus, among those at hand, with the level aimed at no more than `target`.
 * @param root the linear optimum over the menus at hand; what cannot be part of such a plan is left out
 * @param most more menus than this are too many
 * @param around a plan to keep to at every slot but `free`
 */
export function reachWhole(
  grid: Grid,
  master: Master,
  root: Relaxed,
  target: number,
  most: number,
  limits: IntegerLimits,
  around?: { readonly state: State; readonly free: ReadonlySet<number> },
): State | undefined {
  const shut: number[] = [];
  let open = 0;
  for (let i = 0; i < master.count(); i += 1) {
    const menu = master.menuAt(i);
    if (!menu || master.isOut(i)) continue;
    // A menu whose reduced cost alone lifts the level above the target cannot be part of what is sought.
    if (root.value + root.reduced(i) > target + 1e-6 || (around && !around.free.has(menu.slot))) shut.push(i);
    else open += 1;
  }
  if (open > most) return undefined;
  for (const i of shut) master.set(i, 'out');
  const kept: number[] = [];
  if (around) {
    for (const s of grid.slotKeys.keys()) {
      const column = around.free.has(s) ? undefined : master.find(menuOf(grid, around.state, s));
      if (column !== undefined) kept.push(column);
    }
  }
  for (const i of kept) master.set(i, 'in');
  master.cap(target);
  const values = master.solveWhole(limits);
  master.cap(undefined);
  for (const i of [...shut, ...kept]) master.set(i, 'free');
  if (!values) return undefined;
  const state = emptyState(grid);
  values.forEach((value, i) => {
    const menu = master.menuAt(i);
    if (menu && value > 0.5) putMenu(grid, state, menu);
  });
  return state;
}
