import type { Grid } from './grid.ts';
import { classCost, emptyState, type State, unfed } from './measure.ts';

/**
 * The plain list a person would make: slot by slot, the oldest pouch that suits somebody still hungry, shared in
 * the order of eaters as far as it reaches. The yardstick that the picks are never worse than.
 */
export function greedyState(grid: Grid): State {
  const state = emptyState(grid);
  grid.slotKeys.forEach((_, s) => {
    fillSlot(grid, state, s);
    closeSpare(grid, state, s);
  });
  return state;
}

/** Closes again what turned out not to be needed, the largest first. */
function closeSpare(grid: Grid, state: State, s: number): void {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  grid.mealKeys.forEach((_, m) => {
    const at = grid.slotEaters[s]!.filter((e) => state.eat[s * eaters + e] === m);
    const need = at.reduce((sum, e) => sum + grid.low[s]![e]![m]!, 0);
    for (const c of grid.mealClasses[m]!.toSorted((a, b) => grid.classes[b]!.size - grid.classes[a]!.size)) {
      const { size } = grid.classes[c]!;
      while (state.open[s * classes + c]! > 0 && openedOf(grid, state, s, m) - size >= need)
        state.open[s * classes + c]! -= 1;
    }
  });
}

function fillSlot(grid: Grid, state: State, s: number): void {
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const hungry = new Set(grid.slotEaters[s]);
  const tried = new Set<number>();
  while (hungry.size > 0) {
    const c = oldest(
      grid,
      state,
      s,
      (cls) => !tried.has(cls) && [...hungry].some((e) => suits(grid, state, s, e, grid.classes[cls]!.meal)),
    );
    if (c < 0) return;
    const { meal } = grid.classes[c]!;
    const atDish = grid.slotEaters[s]!.filter((e) => state.eat[s * eaters + e] === meal);
    const low = (e: number): number => grid.low[s]![e]![meal]!;
    let need = atDish.reduce((sum, e) => sum + low(e), 0);
    state.open[s * classes + c]! += 1;
    let fed = 0;
    for (const e of grid.slotEaters[s]!) {
      if (!hungry.has(e) || !suits(grid, state, s, e, meal)) continue;
      const opened = openedOf(grid, state, s, meal);
      // A dish may fall short by half at most; a person shares the last pouch only with one.
      const reaches =
        need + low(e) <= opened ||
        (fed === 0 && atDish.length === 0 && 2 * opened >= low(e) && !more(grid, state, s, c));
      if (!reaches) continue;
      need += low(e);
      fed += 1;
      hungry.delete(e);
      state.eat[s * eaters + e] = meal;
    }
    if (fed > 0) continue;
    if (more(grid, state, s, c) && openedOf(grid, state, s, meal) < need + Math.max(...[...hungry].map(low)))
      continue;
    // Nobody could be fed from it: put back what was opened in vain.
    while (
      state.open[s * classes + c]! > 0 &&
      openedOf(grid, state, s, meal) - grid.classes[c]!.size >= need
    ) {
      state.open[s * classes + c]! -= 1;
    }
    tried.add(c);
  }
}

const openedOf = (grid: Grid, state: State, s: number, meal: number): number =>
  grid.mealClasses[meal]!.reduce(
    (sum, c) => sum + state.open[s * grid.classes.length + c]! * grid.classes[c]!.size,
    0,
  );

function suits(grid: Grid, state: State, s: number, e: number, meal: number): boolean {
  if (!grid.may[s]![e]![meal]) return false;
  let salt = grid.hardMg[s]![e]![meal]!;
  for (let i = 0; i < grid.slotKeys.length; i += 1) {
    const other = state.eat[i * grid.eaterKeys.length + e]!;
    if (i !== s && other > unfed && grid.slotDayPlace[i] === grid.slotDayPlace[s])
      salt += grid.hardMg[i]![e]![other]!;
  }
  return salt <= grid.hardLimitMg[e]!;
}

/** Whether one pouch more of the class can be opened at the slot. */
function more(grid: Grid, state: State, s: number, c: number): boolean {
  const cls = grid.classes[c]!;
  if (cls.groups.at(-1)!.bestBy < grid.slotDay[s]!) return false;
  const n = grid.classes.length;
  return classCost(grid, cls, (i) => state.open[i * n + c]! + (i === s ? 1 : 0)) !== undefined;
}

/** The class whose next pouch has the earliest best-by; −1 when there is none. */
function oldest(grid: Grid, state: State, s: number, wanted: (c: number) => boolean): number {
  let [found, earliest] = [-1, Infinity];
  grid.classes.forEach((cls, c) => {
    if (!wanted(c) || !more(grid, state, s, c)) return;
    let left = 0;
    for (let i = c; i < state.open.length; i += grid.classes.length) left += state.open[i]!;
    const good = cls.groups.filter((g) => g.bestBy >= grid.slotDay[s]!);
    const next = good.find((g) => (left -= g.count) < 0) ?? good.at(-1)!;
    if (found < 0 || next.bestBy < earliest) [found, earliest] = [c, next.bestBy];
  });
  return found;
}
