import type { Grid } from './grid.ts';
import { absent, emptyState, type State } from './measure.ts';

/** Sets of eaters at one slot grow as powers of two: beyond this many they are seated at several tables. Chosen. */
const seats = 10;

/**
 * A slot with more eaters than can be solved exactly becomes several with the same day and order. Dishes are then
 * not shared between tables, so what is proven of the split question is not proven of the whole one.
 */
export function splitTables(whole: Grid): { grid: Grid; split: boolean } {
  if (whole.slotEaters.every((eaters) => eaters.length <= seats)) return { grid: whole, split: false };
  const parts = whole.slotEaters.flatMap((eaters, s) => {
    const tables = Math.max(1, Math.ceil(eaters.length / seats));
    const each = Math.ceil(eaters.length / tables);
    return Array.from({ length: tables }, (_, t) => ({ s, eaters: eaters.slice(t * each, (t + 1) * each) }));
  });
  const partOf = (s: number, e: number): number => parts.findIndex((p) => p.s === s && p.eaters.includes(e));
  const near = (list: Grid['earlier']): number[][][] =>
    parts.map(({ s, eaters }) =>
      list[s]!.map((others, e) => (eaters.includes(e) ? others.map((i) => partOf(i, e)) : [])),
    );
  const by = <T>(list: readonly T[]): T[] => parts.map(({ s }) => list[s]!);
  const grid: Grid = {
    ...whole,
    slotKeys: by(whole.slotKeys),
    slotDay: by(whole.slotDay),
    slotDayPlace: by(whole.slotDayPlace),
    barred: by(whole.barred),
    slotEaters: parts.map((p) => p.eaters),
    earlier: near(whole.earlier),
    later: near(whole.later),
    wishes: whole.wishes.map((w) => (w.slot < 0 ? w : { ...w, slot: partOf(w.slot, w.eater) })),
  };
  return { grid, split: true };
}

/** The plan of the split question as a plan of the whole one. */
export function mergeTables(whole: Grid, grid: Grid, state: State): State {
  if (whole === grid) return state;
  const merged = emptyState(whole);
  const place = new Map(whole.slotKeys.map((key, s) => [key, s]));
  const [eaters, classes] = [whole.eaterKeys.length, whole.classes.length];
  grid.slotKeys.forEach((key, part) => {
    const s = place.get(key)!;
    for (let e = 0; e < eaters; e += 1) {
      const m = state.eat[part * eaters + e]!;
      if (m !== absent) merged.eat[s * eaters + e] = m;
    }
    for (let c = 0; c < classes; c += 1) merged.open[s * classes + c]! += state.open[part * classes + c]!;
  });
  return merged;
}
