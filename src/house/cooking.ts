import { DateTime } from 'luxon';
import { loadHours as hoursOfLoads } from '#core/load-hours.ts';
import { carriers, type Occasion } from '#core/occasions.ts';
import { fedByDay } from '#core/picks/fed.ts';
import type { PicksPlan } from '#core/picks/problem.ts';
import { loads } from '#core/scaling.ts';
import type { Eater, Recipe, Trip } from '#core/records.ts';
import type { House } from './house.ts';
import { factsOfRecipe, freeStock, nameKey } from './figures.ts';
import { loadsKnown } from './forecast.ts';
import { usesOf } from './occasions.ts';
import type { TripProblem } from './trip-problem.ts';
import { type MealShown, mealOfRecipe, verdictOn } from './verdicts.ts';

export interface ToCook {
  readonly recipe: Recipe;
  /** What is short, in servings of it. */
  readonly servings: number;
  /** Meals it is for. */
  readonly slots: readonly number[];
  readonly wished: boolean;
  /** Times the recipe, in halves. */
  readonly factor: number;
  /** Dryer loads; the share of the last one that it fills is null where the dryer's limit is not known. */
  readonly loads: number;
  readonly fills: number | null;
}

export interface CookingPlan {
  readonly cook: readonly ToCook[];
  /** Eaters for whom no recipe is clear, with their meals. */
  readonly nobodyCan: readonly {
    readonly eater: number;
    readonly slots: readonly number[];
    /** A meal that is clear for them, but for something else than these meals; null: none. */
    readonly other: string | null;
  }[];
  readonly loadHours: { readonly hours: number; readonly recorded: number };
  readonly latestStart: string;
}

/** Sealing and packing take a day, and a seal is looked at again after 48 hours. Common practice, no source. */
export const daysAfterDrying = 3;
/** So many servings of one meal, then another one is cooked as well. Chosen: a family's pot. */
const servingsOfOne = 6;
/** Less than this is no reason to cook. Chosen. */
const leastServings = 0.5;
/** A serving of a meal whose energy is not known. Chosen, as in the picks. */
const usualKcal = 500;

/** How long a load takes in this house until it is shown to be dry, which takes a second weighing. */
export const loadHours = (house: House): CookingPlan['loadHours'] =>
  hoursOfLoads(
    loadsKnown(house).loads.map(({ hours }) => ({ hours: hours + house.settings.steadyGapHours })),
  );

/** What somebody misses at a slot, kcal: a whole meal, or what the day's meals lack. */
interface Need {
  readonly eater: Eater;
  readonly slot: Trip['slots'][number];
  readonly kcal: number;
}

interface Candidate {
  readonly recipe: Recipe;
  readonly shown: MealShown;
  readonly uses: readonly Occasion[];
  readonly kcal: number;
}

/**
 * What to cook for what stock cannot cover: mains for lunches and dinners, breakfasts for breakfasts, what people wished
 * for first, then what is not in stock, several meals where much is short, and no whole load for a spoonful.
 */
export function cookingPlan(house: House, { trip, problem }: TripProblem, plan: PicksPlan): CookingPlan {
  const candidates = house.recipes.names().map((name): Candidate => {
    const recipe = house.recipes.find(nameKey(name))!;
    const facts = factsOfRecipe(house, recipe);
    const kcal = facts.unresolved.length === 0 ? facts.eaten.kcal / recipe.servings : 0;
    return {
      recipe,
      shown: mealOfRecipe(recipe, facts),
      uses: usesOf(house, recipe).is,
      kcal: kcal || usualKcal,
    };
  });
  const needs = needsOf(house, trip, problem, plan);
  const chosen = new Map<
    number,
    { recipe: Recipe; kcal: number; per: number; slots: Set<number>; wished: boolean }
  >();
  const nobody = new Map<number, number[]>();
  for (const meals of [['breakfast'], ['lunch', 'dinner']] as const) {
    const carry: readonly Occasion[] = meals.flatMap((meal) => carriers[meal]);
    const fitting = candidates.filter(({ uses }) => uses.some((use) => carry.includes(use)));
    const open = needs.filter(({ slot }) => (meals as readonly string[]).includes(slot.meal));
    for (const { need, best } of shareOut(house, trip, open, fitting)) {
      if (!best) {
        nobody.set(need.eater.id, [...(nobody.get(need.eater.id) ?? []), need.slot.id]);
        continue;
      }
      const entry = chosen.get(best.recipe.id) ?? {
        recipe: best.recipe,
        kcal: 0,
        per: best.kcal,
        slots: new Set<number>(),
        wished: false,
      };
      entry.kcal += need.kcal;
      entry.slots.add(need.slot.id);
      entry.wished ||= wishesFor(house, trip, best.recipe, need);
      chosen.set(best.recipe.id, entry);
    }
  }
  const cook = [...chosen.values()]
    .map(({ recipe, kcal, per, slots, wished }) => inLoads(house, recipe, kcal / per, [...slots], wished))
    .filter(({ servings }) => servings >= leastServings);
  const time = loadHours(house);
  const allLoads = cook.reduce((sum, one) => sum + one.loads, 0);
  const days = Math.ceil((allLoads * time.hours) / 24) + daysAfterDrying;
  return {
    cook,
    nobodyCan: [...nobody].map(([id, slots]) => {
      const eater = house.eaters.all().find((one) => one.id === id)!;
      const other = candidates.find(({ shown }) => verdictOn(eater, shown).is === 'clear');
      return { eater: id, slots: [...new Set(slots)], other: other?.recipe.name ?? null };
    }),
    loadHours: time,
    latestStart: DateTime.fromISO(trip.startsOn, { zone: 'UTC' }).minus({ days }).toISODate()!,
  };
}

/** Meals nobody is fed at, and what a day lacks besides, at its last meal but breakfast. */
function needsOf(house: House, trip: Trip, problem: TripProblem['problem'], plan: PicksPlan): Need[] {
  const eaters = new Map(house.eaters.all().map((eater) => [String(eater.id), eater]));
  const slotOf = new Map(trip.slots.map((slot) => [String(slot.id), slot]));
  return fedByDay(problem, plan).flatMap((fed): Need[] => {
    const eater = eaters.get(fed.eater)!;
    const whole = (key: string): number =>
      problem.slots.find((s) => s.key === key)!.floors?.find((f) => f.eater === fed.eater)?.kcal ??
      usualKcal * eater.portion;
    const missed = fed.missed.map((key) => ({ eater, slot: slotOf.get(key)!, kcal: whole(key) }));
    const rest = fed.shortKcal - missed.reduce((sum, need) => sum + need.kcal, 0);
    if (fed.shortKcal === 0 || rest <= 0) return missed;
    const today = problem.slots.filter((s) => s.day === fed.day && s.eaters.includes(fed.eater));
    const last = today.findLast((s) => slotOf.get(s.key)!.meal !== 'breakfast') ?? today.at(-1)!;
    return [...missed, { eater, slot: slotOf.get(last.key)!, kcal: rest }];
  });
}

const wishesFor = (house: House, trip: Trip, recipe: Recipe, { eater, slot }: Need): boolean =>
  house.trips
    .wishes(trip.id)
    .some(
      (w) =>
        w.mealKey === nameKey(recipe.name) && w.eater === eater.id && (w.slot === null || w.slot === slot.id),
    );

/** Gives every need a recipe that is clear for that eater: few recipes, in turn from meal to meal. */
function shareOut(
  house: House,
  trip: Trip,
  needs: readonly Need[],
  candidates: readonly Candidate[],
): { need: Need; best: Candidate | undefined }[] {
  const isClear = (candidate: Candidate, { eater }: Need): boolean =>
    verdictOn(eater, candidate.shown).is === 'clear';
  const ranked = candidates
    .map((candidate) => ({
      candidate,
      clear: new Set(needs.filter((need) => isClear(candidate, need)).map(({ eater }) => eater.id)).size,
      wished: needs.filter((need) => wishesFor(house, trip, candidate.recipe, need)).length,
      there: freeStock(house, candidate.recipe.name).length,
    }))
    .toSorted(
      (a, b) =>
        b.clear - a.clear ||
        b.wished - a.wished ||
        a.there - b.there ||
        b.candidate.kcal - a.candidate.kcal ||
        a.candidate.recipe.name.localeCompare(b.candidate.recipe.name),
    )
    .map(({ candidate }) => candidate);
  const per = ranked[0]?.kcal ?? usualKcal;
  const servings = needs.reduce((sum, { kcal }) => sum + kcal / per, 0);
  const few = ranked.slice(0, Math.max(1, Math.round(servings / servingsOfOne)));
  const slots = [...new Set(needs.map(({ slot }) => slot.id))];
  return needs.map((need) => {
    const turn = slots.indexOf(need.slot.id) % few.length;
    const inTurn = [...few.slice(turn), ...few.slice(0, turn), ...ranked.slice(few.length)];
    const wished = ranked.find((one) => wishesFor(house, trip, one.recipe, need) && isClear(one, need));
    return { need, best: wished ?? inTurn.find((one) => isClear(one, need)) };
  });
}

/** In halves of the recipe, so that a cook can halve the lines. */
function inLoads(
  house: House,
  recipe: Recipe,
  servings: number,
  slots: readonly number[],
  wished: boolean,
): ToCook {
  const finishedG = factsOfRecipe(house, recipe).finishedG;
  const factor = Math.max(0.5, Math.ceil((2 * servings) / recipe.servings - 0.1) / 2);
  const limitG = house.settings.loadLimitG;
  const known = limitG !== null && finishedG > 0;
  const count = known ? loads(factor * finishedG, limitG) : 1;
  const fills = known ? (factor * finishedG) / (count * limitG) : null;
  return { recipe, servings, slots, wished, factor, loads: count, fills };
}
