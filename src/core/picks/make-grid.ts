import { type Class, makeClasses } from './classes.ts';
import { fitsTo } from './fits.ts';
import { type Grid, type GridWish, notBefore } from './grid.ts';
import { dishFigures, type DishFigures, type Helping, helpingOf, missesAll, worthKcal } from './helpings.ts';
import { byText, settleOrder } from './order.ts';
import {
  type Eater,
  type Pair,
  type PicksProblem,
  shortStepKcal,
  type Slot,
  wasteAllowed,
} from './problem.ts';
import { grantable, wishWeights } from './wishes.ts';

/** Meals of a full day; a day with fewer is measured against its share of the need. Chosen. */
const mealsOfADay = 3;
/** Names turned into places, in the settled order. */
interface Places {
  readonly eaters: ReadonlyMap<string, number>;
  readonly meals: ReadonlyMap<string, number>;
  readonly slots: ReadonlyMap<string, number>;
}

/** The parts of the question in the settled order, and what follows from them for eater and meal alone. */
interface Settled {
  readonly problem: PicksProblem;
  readonly slots: readonly Slot[];
  readonly days: readonly number[];
  readonly eaters: readonly Eater[];
  readonly meals: readonly string[];
  readonly classes: readonly Class[];
  readonly places: Places;
  /** Sodium and energy of a serving of each meal. */
  readonly figures: readonly DishFigures[];
  readonly hard: readonly boolean[];
  readonly attends: (s: number, e: number) => boolean;
  readonly table: <T>(cell: (e: number, m: number) => T) => T[][];
  readonly pairs: (list: readonly Pair[]) => Set<string>;
}

function settle(problem: PicksProblem): Settled {
  const order = settleOrder(problem);
  const slots = [...problem.slots].sort((a, b) => a.day - b.day || a.order - b.order || byText(a.key, b.key));
  const days = [...new Set(slots.map((s) => s.day))];
  const lots = problem.lots.filter((l) => l.steady && l.pouches.length > 0 && l.servingsTwentieths > 0);
  const eaters = order.eaters.map((key) => problem.eaters.find((e) => e.key === key)!);
  const place = (keys: readonly string[]): Map<string, number> => new Map(keys.map((key, i) => [key, i]));
  const places = {
    eaters: place(order.eaters),
    meals: place(order.meals),
    slots: place(slots.map((s) => s.key)),
  };
  return {
    problem,
    slots,
    days,
    eaters,
    meals: order.meals,
    classes: makeClasses(lots, order.meals, days[0] ?? 0, days.at(-1) ?? 0),
    places,
    figures: order.meals.map((meal) => dishFigures(lots.filter((l) => l.meal === meal))),
    hard: eaters.map((e) => e.sodiumHard === true && e.sodiumLimitMg !== null),
    attends: (s, e) => slots[s]!.eaters.includes(order.eaters[e]!),
    table: (cell) => eaters.map((_, e) => order.meals.map((__, m) => cell(e, m))),
    pairs: (list) =>
      new Set(list.map((p) => `${places.eaters.get(p.eater) ?? '?'}/${places.meals.get(p.meal) ?? '?'}`)),
  };
}

/** may[slot][eater][meal]; what must never happen is left out here for good. */
function mayEat({ problem, slots, eaters, meals, figures, hard, table, pairs }: Settled): boolean[][][] {
  const safeSet = pairs(problem.safe);
  const safe = table((e, m) => safeSet.has(`${e}/${m}`) && !(hard[e] && figures[m]!.sodiumMg === null));
  const fits = fitsTo(problem);
  return slots.map((slot) => table((e, m) => safe[e]![m]! && fits(slot, eaters[e]!.key, meals[m]!)));
}

/** The wishes that can come true, those for the same thing together. */
function gridWishes(
  { problem, classes, places, attends }: Settled,
  may: readonly (readonly (readonly boolean[])[])[],
): GridWish[] {
  const stocked = (m: number, day: number): boolean =>
    classes.some((c) => c.meal === m && c.groups.at(-1)!.bestBy >= day);
  const ranked = grantable(problem, (wish, slot) => {
    const s = places.slots.get(slot.key)!;
    const e = places.eaters.get(wish.eater) ?? -1;
    const m = places.meals.get(wish.meal) ?? -1;
    return e >= 0 && m >= 0 && attends(s, e) && may[s]![e]![m]! && stocked(m, slot.day);
  });
  const weights = wishWeights(ranked);
  const merged = new Map<string, GridWish>();
  for (const { wish, rank } of ranked) {
    const [eater, meal] = [places.eaters.get(wish.eater)!, places.meals.get(wish.meal)!];
    const slot = wish.slot === null ? -1 : places.slots.get(wish.slot)!;
    const key = [eater, meal, slot].map((n) => String(n + 1).padStart(6, '0')).join('/');
    const weight = weights[rank - 1]! + (merged.get(key)?.weight ?? 0);
    merged.set(key, { eater, meal, slot, weight });
  }
  return [...merged].sort((a, b) => byText(a[0], b[0])).map(([, wish]) => wish);
}

/** What each eater's helping of each meal is at each slot, and what having nothing counts. */
function gridHelpings({ slots, eaters, figures, table }: Settled) {
  const floors = slots.map((slot) =>
    eaters.map(({ key }) => slot.floors?.find((f) => f.eater === key)?.kcal ?? null),
  );
  const helpings = floors.map((ofSlot) =>
    table((e, m) => helpingOf(eaters[e]!.portionTwentieths, ofSlot[e]!, figures[m]!.kcal)),
  );
  const of = (pick: 'low' | 'high' | 'thin'): number[][][] =>
    helpings.map((ofSlot) => ofSlot.map((ofEater) => ofEater.map((h) => h[pick])));
  return {
    helpings,
    low: of('low'),
    high: of('high'),
    thin: of('thin'),
    nothing: floors.map((ofSlot) => ofSlot.map((floor, e) => missesAll(eaters[e]!.portionTwentieths, floor))),
    worth: figures.map((f) => worthKcal(f.kcal)),
    shortStep: shortStepKcal(slots.flatMap((slot) => (slot.floors ?? []).map(({ kcal }) => kcal))),
  };
}

/** Slots of an eater within a day and a slot before and after each. */
function neighbours({ slots, eaters, attends }: Settled): Pick<Grid, 'earlier' | 'later'> {
  const inWindow = (i: number, j: number): boolean =>
    slots[j]!.day < slots[i]!.day + 1 ||
    (slots[j]!.day === slots[i]!.day + 1 && slots[j]!.order <= slots[i]!.order);
  const near = (pick: (s: number, other: number) => boolean): number[][][] =>
    slots.map((_, s) =>
      eaters.map((__, e) =>
        attends(s, e) ? slots.map((___, i) => i).filter((i) => attends(i, e) && pick(s, i)) : [],
      ),
    );
  return { earlier: near((s, i) => i < s && inWindow(i, s)), later: near((s, i) => i > s && inWindow(s, i)) };
}

/** Sodium and energy of helpings against what is advised for a day. */
function guidance(
  { slots, days, eaters, figures, hard, table, attends }: Settled,
  helpings: readonly (readonly (readonly Helping[])[])[],
): Pick<Grid, 'sodium' | 'hardMg' | 'hardLimitMg' | 'energy' | 'energyLow' | 'energyHigh' | 'limited'> {
  const perMille = (helping: number, per: number | null, whole: number | null): number =>
    per === null || whole === null || whole <= 0
      ? 0
      : Math.min(9999, Math.round((helping * per * 50) / whole));
  const shareOn = (e: number, day: number): number =>
    Math.min(1, slots.filter((s, i) => s.day === day && attends(i, e)).length / mealsOfADay);
  const needs = (e: number): boolean => (eaters[e]!.energyKcal ?? 0) > 0;
  return {
    sodium: helpings.map((ofSlot) =>
      table((e, m) => perMille(ofSlot[e]![m]!.helping, figures[m]!.sodiumMg, eaters[e]!.sodiumLimitMg)),
    ),
    hardMg: helpings.map((ofSlot) =>
      table((e, m) => (hard[e] ? ofSlot[e]![m]!.helping * (figures[m]!.sodiumMg ?? 0) : 0)),
    ),
    hardLimitMg: eaters.map((e, i) => (hard[i] ? e.sodiumLimitMg! * 20 : Infinity)),
    // An unknown energy is taken as just this meal's share of the need, so that it neither mends nor breaks a day.
    energy: helpings.map((ofSlot) =>
      table((e, m) =>
        !needs(e)
          ? 0
          : figures[m]!.kcal === null
            ? Math.round(1000 / mealsOfADay)
            : perMille(ofSlot[e]![m]!.helping, figures[m]!.kcal, eaters[e]!.energyKcal),
      ),
    ),
    energyLow: eaters.map((_, e) => days.map((d) => (needs(e) ? Math.round(850 * shareOn(e, d)) : 0))),
    energyHigh: eaters.map((_, e) =>
      days.map((d) => (needs(e) ? Math.round(1250 * shareOn(e, d)) : Infinity)),
    ),
    limited: eaters.map((e) => (e.sodiumLimitMg ?? 0) > 0),
  };
}

/**
 * Turns the question into indices and whole numbers, and leaves out for good what must never happen:
 * pairs that are not safe, batches that are not steady, unknown sodium under a hard limit.
 */
export function makeGrid(problem: PicksProblem): Grid {
  const settled = settle(problem);
  const { slots, days, eaters, meals, classes, places, table, pairs } = settled;
  const may = mayEat(settled);
  const dislikeSet = pairs(problem.dislikes);
  const wishes = gridWishes(settled, may);
  const { helpings, ...helped } = gridHelpings(settled);
  const slotEaters = slots.map((s) =>
    [...new Set(s.eaters)].flatMap((key) => places.eaters.get(key) ?? []).sort((a, b) => a - b),
  );
  const portion = eaters.map((e) => e.portionTwentieths);
  return {
    eaterKeys: eaters.map(({ key }) => key),
    mealKeys: meals,
    slotKeys: slots.map((s) => s.key),
    portion,
    ...helped,
    slotDay: slots.map((s) => s.day),
    slotDayPlace: slots.map((s) => days.indexOf(s.day)),
    dayCount: days.length,
    slotEaters,
    classes,
    mealClasses: meals.map((_, m) => classes.map((__, c) => c).filter((c) => classes[c]!.meal === m)),
    may,
    dislike: table((e, m) => dislikeSet.has(`${e}/${m}`)),
    wishes,
    wishesOf: eaters.map((_, e) => wishes.map((__, w) => w).filter((w) => wishes[w]!.eater === e)),
    wishTotal: wishes.reduce((sum, w) => sum + w.weight, 0),
    before: placesBefore(problem, places),
    beforeKept: problem.before?.was === 'kept',
    wasteAllowed: wasteAllowed(slotEaters.flat().reduce((sum, e) => sum + portion[e]!, 0)),
    expiring: -classes.reduce((sum, c) => sum + c.expiringSums.at(-1)!, 0),
    ...neighbours(settled),
    often: Math.max(1, Math.floor(days.length / 3)),
    ...guidance(settled, helpings),
  };
}

function placesBefore(problem: PicksProblem, { slots, eaters, meals }: Places): number[][] {
  const places = Array.from(slots, () => Array.from(eaters, () => notBefore));
  for (const { slot, eater, meal } of problem.before?.seats ?? []) {
    const [s, e] = [slots.get(slot), eaters.get(eater)];
    if (s !== undefined && e !== undefined)
      places[s]![e] = meal === null ? -1 : (meals.get(meal) ?? notBefore);
  }
  return places;
}
