import type { Grid } from './grid.ts';
import { type State, unfed } from './measure.ts';
import { byText } from './order.ts';
import type { DishPick, PicksProblem, SlotPick } from './problem.ts';

/** 'B4-2' before 'B4-10': runs of digits compare as numbers. */
export function byCode(a: string, b: string): number {
  const [left, right] = [a.split(/(\d+)/), b.split(/(\d+)/)];
  for (let i = 0; i < Math.min(left.length, right.length); i += 1) {
    const difference = i % 2 === 1 ? Number(left[i]) - Number(right[i]) : byText(left[i]!, right[i]!);
    if (difference !== 0) return difference;
  }
  return left.length - right.length || byText(a, b);
}

/**
 * The pouch to open: one pinned to this slot, else the oldest that is pinned to no other, else the oldest. Only among
 * those with the oldest date that is still good, so that there is always one for later.
 */
function nextOf(
  pile: readonly { code: string; bestBy: number }[],
  day: number,
  slot: string,
  pinnedTo: ReadonlyMap<string, string>,
): number {
  const first = pile.findIndex((p) => p.bestBy >= day);
  const alike = [...pile.keys()].filter((i) => pile[i]!.bestBy === pile[first]!.bestBy);
  return (
    alike.find((i) => pinnedTo.get(pile[i]!.code) === slot) ??
    alike.find((i) => !pinnedTo.has(pile[i]!.code)) ??
    first
  );
}

/** Turns counts into pouches with codes, slot by slot, the oldest best-by that is still good first. */
export function handOut(grid: Grid, state: State, pinned: PicksProblem['pinned'] = []): SlotPick[] {
  const pinnedTo = new Map(pinned.map(({ slot, pouch }) => [pouch, slot]));
  const [eaters, classes] = [grid.eaterKeys.length, grid.classes.length];
  const piles = grid.classes.map((cls) =>
    cls.lots.flatMap((lot) =>
      [...lot.pouches].sort(byCode).map((code) => ({ code, bestBy: lot.bestBy ?? Infinity })),
    ),
  );
  return grid.slotKeys.map((slot, s): SlotPick => {
    const byMeal = new Map<number, { pouches: { code: string; bestBy: number }[]; opened: number }>();
    for (let c = 0; c < classes; c += 1) {
      const { meal, size } = grid.classes[c]!;
      for (let n = state.open[s * classes + c]!; n > 0; n -= 1) {
        const at = nextOf(piles[c]!, grid.slotDay[s]!, slot, pinnedTo);
        const dish = byMeal.get(meal) ?? { pouches: [], opened: 0 };
        dish.pouches.push(...piles[c]!.splice(at, 1));
        byMeal.set(meal, { ...dish, opened: dish.opened + size });
      }
    }
    const dishes = [...byMeal].map(([meal, { pouches, opened }]): DishPick => {
      const at = grid.slotEaters[s]!.filter((e) => state.eat[s * eaters + e] === meal);
      const low = at.reduce((sum, e) => sum + grid.low[s]![e]![meal]!, 0);
      const high = at.reduce((sum, e) => sum + grid.high[s]![e]![meal]!, 0);
      return {
        meal: grid.mealKeys[meal]!,
        pouches: pouches
          .sort((a, b) => (a.bestBy === b.bestBy ? byCode(a.code, b.code) : a.bestBy - b.bestBy))
          .map((p) => p.code),
        eaters: at.map((e) => grid.eaterKeys[e]!).sort(byText),
        openedTwentieths: opened,
        shortTwentieths: Math.max(0, low - opened),
        wasteTwentieths: Math.max(0, opened - high),
      };
    });
    return {
      slot,
      dishes: dishes.sort((a, b) => byText(a.meal, b.meal)),
      unfed: grid.slotEaters[s]!.filter((e) => state.eat[s * eaters + e] === unfed)
        .map((e) => ({ eater: grid.eaterKeys[e]!, shortTwentieths: Math.ceil((grid.portion[e]! * 9) / 10) }))
        .sort((a, b) => byText(a.eater, b.eater)),
    };
  });
}
