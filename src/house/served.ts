import { helpingAt } from '#core/picks/helpings.ts';
import type { PicksPlan } from '#core/picks/problem.ts';
import type { TripProblem } from './trip-problem.ts';
import type { Served } from './trip-sums.ts';

/** A plan as the sums take it: dish by dish, each eater's part by helping; what is left over is nobody's. */
export function servedBy({ trip, problem }: TripProblem, plan: PicksPlan): Served[] {
  return plan.slots.flatMap((pick) => {
    const slot = trip.slots.find((one) => one.id === Number(pick.slot))!;
    const asked = problem.slots.find((one) => one.key === pick.slot)!;
    const dishes = pick.dishes.map((dish): Served => {
      const helpings = dish.eaters.map((eater) => helpingAt(problem, asked, eater, dish.meal).helping);
      const all = helpings.reduce((sum, n) => sum + n, 0);
      const eaten = 1 - dish.wasteTwentieths / dish.openedTwentieths;
      return {
        slot,
        codes: dish.pouches,
        eaters: dish.eaters.map(Number),
        parts: new Map(dish.eaters.map((eater, i) => [Number(eater), (eaten * helpings[i]!) / all])),
      };
    });
    const beside = (pick.beside ?? []).map((dish) => ({
      slot,
      codes: dish.pouches,
      eaters: dish.eaters.map(Number),
    }));
    return [...dishes, ...beside];
  });
}
