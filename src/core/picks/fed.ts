import { helpingAt } from './helpings.ts';
import type { Lot, PicksPlan, PicksProblem, Slot } from './problem.ts';

/** What somebody eats on one day of a plan, against what the day's meals should give. */
export interface DayFed {
  readonly eater: string;
  readonly day: number;
  /** Of all meals of that day together; null when no need is known. */
  readonly floorKcal: number | null;
  /** Of what is planned; at least this much where some energies are not known. */
  readonly kcal: number;
  /** Meals whose energy is not known. */
  readonly unknown: readonly string[];
  /** Slots at which there is nothing to carry the meal. */
  readonly missed: readonly string[];
  /** The whole difference to the floor, kcal, where it is more than a tenth of it and than 100; 0: fed, as far as known. */
  readonly shortKcal: number;
}

/** Less is no shortage of a day: a fifth of a serving. Chosen. */
const leastShortKcal = 100;

const lotsByPouch = (problem: PicksProblem): ReadonlyMap<string, Lot> =>
  new Map(problem.lots.flatMap((lot) => lot.pouches.map((code) => [code, lot] as const)));

/** kcal that each eater gets at a slot, dish by dish; null where it is not known. */
export function eatenAt(
  problem: PicksProblem,
  plan: PicksPlan,
  slot: Slot,
  lotOf = lotsByPouch(problem),
): { eater: string; meal: string; kcal: number | null }[] {
  const pick = plan.slots.find((s) => s.slot === slot.key);
  const energy = (pouches: readonly string[]): number | null =>
    pouches.reduce<number | null>((sum, code) => {
      const lot = lotOf.get(code)!;
      return sum === null || lot.kcalPerServing === null
        ? null
        : sum + (lot.kcalPerServing * lot.servingsTwentieths) / 20;
    }, 0);
  const carried = (pick?.dishes ?? []).flatMap((dish) => {
    const helpings = dish.eaters.map((e) => helpingAt(problem, slot, e, dish.meal));
    const all = helpings.reduce((sum, h) => sum + h.helping, 0);
    const eaten = dish.openedTwentieths - dish.wasteTwentieths;
    const kcal = energy(dish.pouches);
    return dish.eaters.map((eater, i) => ({
      eater,
      meal: dish.meal,
      kcal: kcal === null ? null : (kcal * (eaten / dish.openedTwentieths) * helpings[i]!.helping) / all,
    }));
  });
  const portion = (key: string): number => problem.eaters.find((e) => e.key === key)!.portionTwentieths;
  const beside = (pick?.beside ?? []).flatMap((dish) => {
    const all = dish.eaters.reduce((sum, e) => sum + portion(e), 0);
    const kcal = energy(dish.pouches);
    const eaten = Math.min(1, (1.1 * all) / dish.openedTwentieths);
    return dish.eaters.map((eater) => ({
      eater,
      meal: dish.meal,
      kcal: kcal === null ? null : (kcal * eaten * portion(eater)) / all,
    }));
  });
  return [...carried, ...beside];
}

/**
 * Day by day what everybody gets, in the order of eaters and days. 'Fed' is said only of somebody with nothing missed
 * and nothing short: a serving is not food because it is a serving.
 */
export function fedByDay(problem: PicksProblem, plan: PicksPlan): DayFed[] {
  const lotOf = lotsByPouch(problem);
  const asked = problem.slots.filter(({ isSpare }) => isSpare !== true);
  const eaten = asked.map((slot) => ({ slot, all: eatenAt(problem, plan, slot, lotOf) }));
  return problem.eaters.flatMap(({ key }) => {
    const own = eaten.filter(({ slot }) => slot.eaters.includes(key));
    const days = [...new Set(own.map(({ slot }) => slot.day))].sort((a, b) => a - b);
    return days.map((day): DayFed => {
      const today = own.filter(({ slot }) => slot.day === day);
      const floors = today.map(({ slot }) => slot.floors?.find((f) => f.eater === key)?.kcal);
      const floorKcal = floors.includes(undefined)
        ? null
        : floors.reduce<number>((sum, kcal) => sum + kcal!, 0);
      const meals = today.flatMap(({ all }) => all.filter(({ eater }) => eater === key));
      const kcal = meals.reduce((sum, one) => sum + (one.kcal ?? 0), 0);
      const unknown = [...new Set(meals.filter((one) => one.kcal === null).map((one) => one.meal))];
      const missed = today
        .filter(({ slot }) => plan.slots.find((s) => s.slot === slot.key)?.unfed.some((u) => u.eater === key))
        .map(({ slot }) => slot.key);
      // What is not known may fill the gap, or not: it is told apart and not called short.
      const short = floorKcal === null || unknown.length > 0 ? 0 : floorKcal - kcal;
      return {
        eater: key,
        day,
        floorKcal,
        kcal,
        unknown,
        missed,
        shortKcal: floorKcal !== null && short > Math.max(leastShortKcal, floorKcal / 10) + 1e-6 ? short : 0,
      };
    });
  });
}
