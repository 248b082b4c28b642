import type { Grid } from './grid.ts';
import { at, levelNames } from './problem.ts';

/**
 * What no plan can be below, seen without any program: who has nothing in stock to eat somewhere, who gets too little of
 * whatever is there, who likes nothing of it; and no more wishes come true than there are.
 * @param vector of a plan: what is bounded under the values it has at the levels before
 * @returns one bound a level
 */
export function plainBounds(grid: Grid, vector: readonly number[]): number[] {
  const bounds = levelNames.map(() => 0);
  const missed = grid.eaterKeys.map(() => 0);
  let [kcal, disliked] = [0, 0];
  grid.slotEaters.forEach((eaters, s) => {
    const stocked = grid.mealKeys.flatMap((_, m) => (isStocked(grid, s, m) ? [m] : []));
    for (const e of eaters) {
      const open = stocked.filter(
        (m) => grid.may[s]![e]![m]! && grid.hardMg[s]![e]![m]! <= grid.hardLimitMg[e]!,
      );
      if (open.length === 0) missed[e]! += 1;
      else if (open.every((m) => grid.dislike[e]![m]!)) disliked += 1;
      kcal += Math.min(grid.nothing[s]![e]!, ...open.map((m) => grid.thin[s]![e]![m]!));
    }
  });
  bounds[at.unfed] = missed.reduce((sum, n) => sum + n, 0);
  bounds[at['worst off']] = Math.max(
    0,
    ...missed,
    Math.ceil(bounds[at.unfed]! / Math.max(1, grid.eaterKeys.length)),
  );
  bounds[at['energy short']] = Math.floor(kcal / grid.shortStep);
  bounds[at.wishes] = -grid.wishTotal;
  // Whoever could eat and goes without dislikes nothing there.
  bounds[at.dislikes] = Math.max(0, disliked - (vector[at.unfed]! - bounds[at.unfed]!));
  return bounds;
}

const isStocked = (grid: Grid, s: number, m: number): boolean =>
  grid.mealClasses[m]!.some((c) => grid.classes[c]!.groups.at(-1)!.bestBy >= grid.slotDay[s]!);
