import type { Grid } from './grid.ts';
import type { IntegerLimits } from './linear.ts';
import type { Master, Priced, Relaxed } from './master.ts';
import { emptyState, type State } from './measure.ts';
import { fits, menuOf, type Prices, putMenu } from './menus.ts';

/**
 * Goes down from the linear optimum by fixing menus one after the other, with new menus made for what is left.
 * Cheap, and often close.
 * @param looks how often, at most, new menus are made after each choice
 * @param skip of the first doubtful choices, take so many second best
 * @param isLate whether the safety clock is up
 * @returns the plan, and the slots it found no menu for
 */
export function dive(
  grid: Grid,
  master: Master,
  cheapest: (s: number, prices: Prices) => Priced,
  skip: number,
  looks: number,
  isLate: () => boolean,
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
  let looked = 0;
  while (open.size > 0 && !isLate()) {
    const relaxed = master.solve(Infinity);
    if (!relaxed) break;
    const before = master.count();
    if (looked < looks)
      master.add(relaxed.fresh((s, prices) => (open.has(s) ? cheapest(s, prices) : undefined)));
    looked = master.count() > before ? looked + 1 : 0;
    if (looked > 0) continue;
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
 * @param around a plan to keep to, but for as many slots, in this order, as `most` menus allow
 * @returns 'none' when the menus at hand certainly hold none; undefined when none was found, or when all slots together
 * have too many menus
 */
export function reachWhole(
  grid: Grid,
  master: Master,
  root: Relaxed,
  target: number,
  most: number,
  limits: IntegerLimits,
  around?: { readonly state: State; readonly order: readonly number[] },
): State | 'none' | undefined {
  const shut: number[] = [];
  const perSlot = grid.slotKeys.map((): number[] => []);
  for (let i = 0; i < master.count(); i += 1) {
    const menu = master.menuAt(i);
    if (!menu || master.isOut(i)) continue;
    // A menu whose reduced cost alone lifts the level above the target cannot be part of what is sought.
    if (root.value + root.reduced(i) > master.most(target) + 1e-6) shut.push(i);
    else perSlot[menu.slot]!.push(i);
  }
  let open = 0;
  const free = (around?.order ?? [...perSlot.keys()]).filter((s) => (open += perSlot[s]!.length) <= most);
  if (!around && free.length < perSlot.length) return undefined;
  const kept: number[] = [];
  for (const s of perSlot.keys()) {
    if (!around || free.includes(s)) continue;
    shut.push(...perSlot[s]!);
    const column = master.find(menuOf(grid, around.state, s));
    if (column === undefined) return undefined;
    kept.push(column);
  }
  for (const i of shut) master.set(i, 'out');
  for (const i of kept) master.set(i, 'in');
  master.cap(target);
  const values = master.solveWhole(limits);
  master.cap(undefined);
  for (const i of [...shut, ...kept]) master.set(i, 'free');
  // What is kept as it is might be in the way: then others may still do.
  if (values === 'none') return kept.length === 0 ? 'none' : undefined;
  if (!values) return undefined;
  const state = emptyState(grid);
  values.forEach((value, i) => {
    const menu = master.menuAt(i);
    if (menu && value > 0.5) putMenu(grid, state, menu);
  });
  return state;
}
