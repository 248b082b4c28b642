import { DateTime } from 'luxon';
import { energyOfDayKcal, sodiumOfDayMg } from '#core/eaters.ts';
import { type BatchFacts, pouchFacts } from '#core/meal.ts';
import type { Barred, Blocked, Lot, Pair, PicksProblem } from '#core/picks/problem.ts';
import type { Batch, Eater, Pouch, Slot, Trip } from '#core/records.ts';
import { slotMeals } from '#core/records.ts';
import { correctionFor } from './corrections.ts';
import { mealFloorKcal } from '#core/meal-floors.ts';
import { besides, carriers, type Occasion } from '#core/occasions.ts';
import type { House } from './house.ts';
import { usesOf } from './occasions.ts';
import { fixedPlan, planBefore } from './plan-before.ts';
import { saidOf } from './trip-said.ts';
import { batchSeen, seeStock } from './figures.ts';
import { isDisliked, mayBeNear, type MealShown, verdictOn } from './verdicts.ts';
import { sayCode } from '#words/say.ts';

/** A trip's question for the picks, with what is needed to speak of the answer. */
export interface TripProblem {
  readonly trip: Trip;
  readonly problem: PicksProblem;
  /** Every pouch in the question by its code. */
  readonly pouches: ReadonlyMap<string, Pouch>;
  /** What each dish of the question is called, and what is in it. */
  readonly dishes: ReadonlyMap<string, MealShown>;
}

/** Whole days since 1970, so that slots and best-by dates compare. */
export function dayNumber(iso: string): number {
  return Math.round(DateTime.fromISO(iso, { zone: 'UTC' }).toMillis() / 86_400_000);
}

interface Stocked {
  readonly pouch: Pouch;
  readonly meal: MealUsed;
  readonly lot: Omit<Lot, 'pouches' | 'meal'>;
}

/** A meal with what it is for. */
interface MealUsed extends MealShown {
  readonly uses: readonly Occasion[];
}

/**
 * Builds the question from the records. Unchecked pouches are left out; pouches held for other trips are named only,
 * so that the answer can say so. Two batches of one meal whose contents suit different people are two dishes.
 */
export function tripProblem(house: House, trip: Trip): TripProblem {
  const there = new Set(trip.slots.flatMap((slot) => slot.eaters));
  const eaters = house.eaters.all().filter((eater) => there.has(eater.id));
  const places = new Map(house.trips.all().map((one) => [one.id, one.place]));
  const heldElsewhere = new Map(
    house.trips
      .held(null)
      .filter((held) => held.trip !== trip.id)
      .map((held) => [held.pouch, places.get(held.trip) ?? 'another trip']),
  );
  const stocked = stock(house);
  const dishes = nameDishes(stocked, eaters);
  const dishOf = new Map(
    [...dishes].flatMap(([key, { meals }]) => meals.map((meal) => [meal, key] as const)),
  );
  const dishOfBatch = new Map(
    stocked
      .filter(({ meal }) => meal.uses.some((use) => use === 'main' || use === 'breakfast'))
      .map(({ pouch, meal }) => [pouch.batch, dishOf.get(meal)!]),
  );
  const lots = new Map<string, { lot: Lot; pouches: string[]; trip: string | undefined }>();
  for (const { pouch, meal, lot } of stocked) {
    const other = heldElsewhere.get(pouch.id);
    const key = `${lot.code}${other === undefined ? '' : ` for ${other}`}`;
    const entry = lots.get(key) ?? {
      lot: { ...lot, meal: dishOf.get(meal)!, pouches: [] },
      pouches: [],
      trip: other,
    };
    entry.pouches.push(sayCode(pouch));
    lots.set(key, entry);
  }
  const whole = [...lots.values()].map(({ lot, pouches, trip: other }) => ({
    lot: { ...lot, pouches },
    trip: other,
  }));
  const verdicts = [...dishes].flatMap(([key, { shown }]) =>
    eaters.map((eater) => ({ eater: String(eater.id), meal: key, verdict: verdictOn(eater, shown) })),
  );
  const safe = verdicts.flatMap(({ eater, meal, verdict }): Pair[] =>
    verdict.is === 'clear' ? [{ eater, meal }] : [],
  );
  const barred = trip.slots.flatMap((slot) => barredAt(slot, eaters, dishes));
  const said = saidOf(house, trip, eaters, dishes, stocked);
  const fixed = fixedPlan(
    house,
    trip,
    (batch) => dishOfBatch.get(batch),
    (slot, eater, meal) =>
      safe.some((pair) => pair.eater === eater && pair.meal === meal) &&
      ![...barred, ...said.banned].some((one) => one.slot === slot && one.meal === meal),
  );
  const keptCodes = new Set(fixed.pinned.map(({ pouch }) => pouch));
  return {
    trip,
    problem: {
      lots: whole.filter((l) => l.trip === undefined).map((l) => l.lot),
      promised: whole.flatMap((l) => (l.trip === undefined ? [] : [{ lot: l.lot, trip: l.trip }])),
      eaters: eaters.map((eater) => ({
        key: String(eater.id),
        name: eater.name,
        portionTwentieths: Math.max(1, Math.round(eater.portion * 20)),
        sodiumLimitMg: sodiumOfDayMg(eater)?.value ?? null,
        energyKcal: energyOfDayKcal(eater)?.value ?? null,
      })),
      slots: trip.slots
        .filter((slot) => slot.eaters.length > 0)
        .map((slot) => ({
          key: String(slot.id),
          day: dayNumber(slot.onDay),
          order: slotMeals.indexOf(slot.meal),
          eaters: slot.eaters.map(String),
          carriedBy: carriers[slot.meal],
          beside: besides[slot.meal],
          floors: floorsAt(trip, slot, eaters),
          ...(slot.marks.includes('spare') ? { isSpare: true } : {}),
        })),
      uses: [...dishes].map(([meal, { uses }]) => ({ meal, is: uses })),
      ...planBefore(house, trip, (batch) => dishOfBatch.get(batch)),
      safe,
      blocked: verdicts.flatMap(({ eater, meal, verdict }): Blocked[] => {
        if (verdict.is === 'clear') return [];
        const why = verdict.is === 'blocked' ? verdict.by : verdict.because;
        return [
          { eater, meal, foods: [...new Set(why.map((b) => b.what))], unknown: verdict.is === 'unknown' },
        ];
      }),
      barred,
      dislikes: [...dishes].flatMap(([meal, { shown }]) =>
        eaters
          .filter((eater) => isDisliked(eater, shown))
          .map((eater) => ({ eater: String(eater.id), meal })),
      ),
      ...said,
      fixed: fixed.fixed,
      pinned: [...fixed.pinned, ...said.pinned.filter(({ pouch }) => !keptCodes.has(pouch))],
    },
    pouches: new Map(stocked.map(({ pouch }) => [sayCode(pouch), pouch])),
    dishes: new Map([...dishes].map(([key, { shown }]) => [key, shown])),
  };
}

/** Every pouch that was shown to be dry and is in stock, with what it is. */
function stock(house: House): Stocked[] {
  seeStock(house);
  const meals = new Map<number, MealUsed>();
  const corrections = new Map<number, number>();
  return house.pouches.inStock().flatMap((pouch): Stocked[] => {
    if (!pouch.checked) return [];
    const { batch, facts } = batchSeen(house, pouch.batch);
    if (facts.dryG === null) return [];
    const meal = meals.get(batch.no) ?? mealOf(house, batch, facts);
    meals.set(batch.no, meal);
    const correction = corrections.get(batch.no) ?? correctionFor(house, batch).correction;
    corrections.set(batch.no, correction);
    const figures = pouchFacts(pouch.dryG, { ...facts, dryG: facts.dryG }, correction);
    const servingsTwentieths = Math.round(figures.servings * 20);
    if (servingsTwentieths < 1) return [];
    return [
      {
        pouch,
        meal,
        lot: {
          code: `B${pouch.batch}/${pouch.dryG}/${pouch.bestByOn ?? ''}`,
          servingsTwentieths,
          dryG: pouch.dryG,
          waterMl: Math.round(figures.waterMl),
          sodiumMgPerServing: meal.sodiumMgPerServing,
          kcalPerServing:
            facts.recipe.unresolved.length === 0 && !facts.eaten.unknown.some((u) => u.nutrient === 'kcal')
              ? figures.kcal / figures.servings
              : null,
          bestBy: pouch.bestByOn === null ? null : dayNumber(pouch.bestByOn),
          steady: pouch.checked,
        },
      },
    ];
  });
}

/** Sodium that rests on a line nobody understood is not known. */
function mealOf(house: House, batch: Batch, facts: BatchFacts): MealUsed {
  const known =
    facts.recipe.unresolved.length === 0 && !facts.eaten.unknown.some((u) => u.nutrient === 'sodiumMg');
  return {
    name: batch.recipe.name,
    contents: facts.recipe.contents,
    uses: usesOf(house, batch.recipe).is,
    isSodiumLeast: facts.recipe.isSodiumLeast,
    sodiumMgPerServing: known && facts.servings > 0 ? facts.eaten.sodiumMg / facts.servings : null,
  };
}

interface Dish {
  readonly shown: MealShown;
  readonly uses: readonly Occasion[];
  readonly meals: readonly MealShown[];
}

/** Batches of one name that suit the same people are one dish. */
function nameDishes(stocked: readonly Stocked[], eaters: readonly Eater[]): Map<string, Dish> {
  const dishes = new Map<
    string,
    { shown: MealShown; uses: readonly Occasion[]; meals: MealShown[]; suits: string }
  >();
  for (const meal of new Set(stocked.map((s) => s.meal))) {
    const suits = eaters
      .map((eater) => `${verdictOn(eater, meal).is}${isDisliked(eater, meal)}${mayBeNear(eater, meal)}`)
      .concat(meal.uses)
      .join();
    let key = meal.name;
    for (let n = 2; dishes.has(key) && dishes.get(key)!.suits !== suits; n++) key = `${meal.name} (${n})`;
    const dish = dishes.get(key) ?? { shown: meal, uses: meal.uses, meals: [], suits };
    dish.meals.push(meal);
    dishes.set(key, dish);
  }
  return dishes;
}

/** What each eater's meal should give, by the day's need and how hard the day is. */
function floorsAt(trip: Trip, slot: Slot, eaters: readonly Eater[]): { eater: string; kcal: number }[] {
  const effort = trip.efforts.get(slot.onDay) ?? 'walk';
  return eaters
    .filter(({ id }) => slot.eaters.includes(id))
    .flatMap((eater) => {
      const need = energyOfDayKcal(eater);
      return need ? [{ eater: String(eater.id), kcal: mealFloorKcal(need.value, slot.meal, effort) }] : [];
    });
}

/** What must not be near somebody at a slot, certain or feared, is at that slot for nobody. */
function barredAt(slot: Slot, eaters: readonly Eater[], dishes: ReadonlyMap<string, Dish>): Barred[] {
  const there = eaters.filter(({ id, apart }) => apart.length > 0 && slot.eaters.includes(id));
  return [...dishes].flatMap(([meal, { shown }]) => {
    const near = there.filter((eater) => !mayBeNear(eater, shown)).map(({ name }) => name);
    return near.length > 0 ? [{ slot: String(slot.id), meal, near }] : [];
  });
}
