import { groupBy } from '#core/groups.ts';
import type { PicksPlan } from '#core/picks/problem.ts';
import { nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import type { TripProblem } from '#house/trip-problem.ts';
import { sayWhen } from '#house/wishing.ts';
import { sayList } from '#words/say.ts';

/** Wishes that the plan does not grant, each with its reason; people with the same wish and reason share it. */
export function ungranted(house: House, { trip, problem, dishes }: TripProblem, plan: PicksPlan): string[] {
  const eaters = house.eaters.all();
  const names = new Map(house.recipes.names().map((name) => [nameKey(name), name]));
  const keyOf = (dish: string) => nameKey(dishes.get(dish)?.name ?? dish);
  const missed = house.trips
    .wishes(trip.id)
    .filter(
      (wish) =>
        !plan.slots.some(
          (slot) =>
            (wish.slot === null || String(wish.slot) === slot.slot) &&
            [...slot.dishes, ...(slot.beside ?? [])].some(
              (dish) => keyOf(dish.meal) === wish.mealKey && dish.eaters.includes(String(wish.eater)),
            ),
        ),
    );
  const told = missed.map((wish) => {
    const stocked = [...dishes.keys()].filter((dish) => keyOf(dish) === wish.mealKey);
    const isSafe = problem.safe.some((p) => p.eater === String(wish.eater) && stocked.includes(p.meal));
    const isThere = problem.slots.some(
      (s) => (wish.slot === null || s.key === String(wish.slot)) && s.eaters.includes(String(wish.eater)),
    );
    const why = !isThere
      ? 'not there then'
      : stocked.length === 0
        ? 'none in stock'
        : isSafe
          ? 'somebody would get less to eat, or a wish before it fail'
          : 'not clear for them';
    const when = wish.slot === null ? '' : `, ${sayWhen(trip, wish.slot)}`;
    const name = eaters.find((e) => e.id === wish.eater)?.name ?? '?';
    return { name, key: `${names.get(wish.mealKey) ?? wish.mealKey}|${when} (${why})` };
  });
  const alike = [...groupBy(told, ({ key }) => key).entries()].map(([key, those]) => {
    const [meal, rest] = key.split('|') as [string, string];
    return `${meal} for ${sayList(those.map(({ name }) => name))}${rest}`;
  });
  return alike.length === 0 ? [] : [`Wishes not granted: ${alike.join('; ')}.`];
}
