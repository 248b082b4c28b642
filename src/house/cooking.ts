import { DateTime } from 'luxon';
import { loadHours as hoursOfLoads } from '#core/load-hours.ts';
import { loads } from '#core/scaling.ts';
import { carriers, type Occasion } from '#core/occasions.ts';
import type { Recipe, Trip } from '#core/records.ts';
import type { Shortage } from '#core/picks/why.ts';
import type { House } from './house.ts';
import { dryOf } from './dryness.ts';
import { factsOfRecipe, nameKey } from './figures.ts';
import { usesOf } from './occasions.ts';
import { mealOfRecipe, verdictOn } from './verdicts.ts';

export interface ToCook {
  readonly recipe: Recipe;
  readonly servings: number;
  /** Meals it is for. */
  readonly slots: readonly number[];
  readonly wished: boolean;
  /** Times the recipe, rounded up to whole loads where the dryer's limit is known. */
  readonly factor: number;
  readonly loads: number;
}

export interface CookingPlan {
  readonly cook: readonly ToCook[];
  /** Eaters for whom no recipe is clear, with their meals. */
  readonly nobodyCan: readonly { readonly eater: number; readonly slots: readonly number[] }[];
  readonly loadHours: { readonly hours: number; readonly recorded: number };
  readonly latestStart: string;
}

/** Sealing and packing take a day, and a seal is looked at again after 48 hours. Common practice, no source. */
const daysAfterDrying = 3;

/** How long a load takes in this house, from its latest loads that were shown to be dry. */
export function loadHours(house: House): CookingPlan['loadHours'] {
  return hoursOfLoads(
    house.batches
      .latest(20)
      .filter((batch) => batch.weighings.length > 0 && dryOf(house, batch).is === 'dry')
      .map((batch) => ({ loadedAtMs: batch.loadedAtMs, driedAtMs: batch.weighings.at(-1)!.atMs })),
  );
}

/**
 * What to cook for the meals that stock cannot cover: recipes clear for those short, wishes first, then whichever
 * feeds most of them and was chosen least.
 */
export function cookingPlan(house: House, trip: Trip, short: readonly Shortage[]): CookingPlan {
  const eaters = house.eaters.all();
  const recipes = house.recipes.names().map((name) => house.recipes.find(nameKey(name))!);
  const meals = recipes.map((recipe) => ({
    recipe,
    shown: mealOfRecipe(recipe, factsOfRecipe(house, recipe)),
    uses: usesOf(house, recipe).is,
  }));
  const wishes = house.trips.wishes(trip.id);
  const chosen = new Map<number, { recipe: Recipe; servings: number; slots: Set<number>; wished: boolean }>();
  const nobody = new Map<number, number[]>();
  for (const slot of trip.slots) {
    const ofSlot = short.filter((s) => Number(s.slot) === slot.id);
    let open = [...new Set(ofSlot.map((s) => Number(s.eater)))];
    while (open.length > 0) {
      const carry: readonly Occasion[] = carriers[slot.meal];
      const ranked = meals
        .filter(({ uses }) => uses.some((use) => carry.includes(use)))
        .map(({ recipe, shown }) => {
          const fed = open.filter(
            (id) =>
              verdictOn(
                eaters.find((e) => e.id === id)!,
                shown,
              ).is === 'clear',
          );
          const wished = wishes.some(
            (w) =>
              w.mealKey === nameKey(recipe.name) &&
              fed.includes(w.eater) &&
              (w.slot === null || w.slot === slot.id),
          );
          return { recipe, fed, wished, used: chosen.get(recipe.id)?.slots.size ?? 0 };
        })
        .filter(({ fed }) => fed.length > 0)
        .sort(
          (a, b) =>
            b.fed.length - a.fed.length ||
            Number(b.wished) - Number(a.wished) ||
            a.used - b.used ||
            a.recipe.name.localeCompare(b.recipe.name),
        );
      const best = ranked[0];
      if (!best) {
        for (const id of open) nobody.set(id, [...(nobody.get(id) ?? []), slot.id]);
        break;
      }
      const entry = chosen.get(best.recipe.id) ?? {
        recipe: best.recipe,
        servings: 0,
        slots: new Set<number>(),
        wished: false,
      };
      for (const id of best.fed)
        entry.servings += missing(ofSlot, id, eaters.find((e) => e.id === id)!.portion);
      entry.slots.add(slot.id);
      entry.wished ||= best.wished;
      chosen.set(best.recipe.id, entry);
      open = open.filter((id) => !best.fed.includes(id));
    }
  }
  const cook = [...chosen.values()].map((entry) => inLoads(house, entry));
  const time = loadHours(house);
  const allLoads = cook.reduce((sum, one) => sum + one.loads, 0);
  const days = Math.ceil((allLoads * time.hours) / 24) + daysAfterDrying;
  return {
    cook,
    nobodyCan: [...nobody].map(([eater, slots]) => ({ eater, slots })),
    loadHours: time,
    latestStart: DateTime.fromISO(trip.startsOn, { zone: 'UTC' }).minus({ days }).toISODate()!,
  };
}

/** Servings an eater misses at a slot: the whole portion, or an equal part of what a shared dish falls short by. */
function missing(ofSlot: readonly Shortage[], eater: number, portion: number): number {
  const own = ofSlot.filter((s) => Number(s.eater) === eater);
  if (own.some((s) => s.unfed)) return portion;
  const parts = own.map(
    (s) => s.shortTwentieths / 20 / ofSlot.filter((other) => !other.unfed && other.meal === s.meal).length,
  );
  return Math.min(portion, Math.max(...parts));
}

function inLoads(
  house: House,
  entry: { recipe: Recipe; servings: number; slots: Set<number>; wished: boolean },
): ToCook {
  const { recipe, servings, slots, wished } = entry;
  const finishedG = factsOfRecipe(house, recipe).finishedG;
  const need = servings / recipe.servings;
  const limitG = house.settings.loadLimitG;
  const count = limitG === null || finishedG <= 0 ? 1 : loads(need * finishedG, limitG);
  const factor = limitG === null || finishedG <= 0 ? need : (count * limitG) / finishedG;
  return { recipe, servings, slots: [...slots], wished, factor, loads: count };
}
