import type { PicksProblem } from '#core/picks/problem.ts';
import type { Eater, Pouch, Trip } from '#core/records.ts';
import { sayCode } from '#words/say.ts';
import { nameKey } from './figures.ts';
import type { House } from './house.ts';

type Dishes = ReadonlyMap<string, { readonly shown: { readonly name: string } }>;

const dishesOf = (dishes: Dishes, mealKey: string): string[] =>
  [...dishes].filter(([, { shown }]) => nameKey(shown.name) === mealKey).map(([meal]) => meal);

/** What people said of a trip's meals: wishes, what is not to be there, which pouch is to be opened where. */
export function saidOf(
  house: House,
  trip: Trip,
  eaters: readonly Eater[],
  dishes: Dishes,
  stocked: readonly { readonly pouch: Pouch }[],
): Required<Pick<PicksProblem, 'wishes' | 'banned' | 'pinned'>> {
  return {
    wishes: wishesOf(house, trip, eaters, dishes),
    banned: house.slotRules
      .bans(trip.id)
      .flatMap(({ slot, mealKey }) =>
        dishesOf(dishes, mealKey).map((meal) => ({ slot: String(slot), meal })),
      ),
    pinned: house.slotRules
      .pins(trip.id)
      .flatMap(({ slot, pouch: id }) =>
        stocked
          .filter(({ pouch }) => pouch.id === id)
          .map(({ pouch }) => ({ slot: String(slot), pouch: sayCode(pouch) })),
      ),
  };
}

/** Wishes in the order in which each eater made them. */
function wishesOf(
  house: House,
  trip: Trip,
  eaters: readonly Eater[],
  dishes: Dishes,
): PicksProblem['wishes'] {
  const rank = new Map<number, number>();
  return house.trips.wishes(trip.id).flatMap((wish) => {
    if (!eaters.some((eater) => eater.id === wish.eater)) return [];
    const next = (rank.get(wish.eater) ?? 0) + 1;
    rank.set(wish.eater, next);
    return [...dishes]
      .filter(([, { shown }]) => nameKey(shown.name) === wish.mealKey)
      .map(([meal]) => ({
        eater: String(wish.eater),
        meal,
        slot: wish.slot === null ? null : String(wish.slot),
        rank: next,
      }));
  });
}
