import { byText, settleOrder } from './order.ts';
import { fitsTo } from './fits.ts';
import { dishFigures, helpingOf, missesAll, worthKcal } from './helpings.ts';
import { type Lot, type PicksProblem, shortStepKcal, wasteAllowed } from './problem.ts';
import { grantable, wishWeights } from './wishes.ts';

/** Pouches of one class with the same best-by; the cost figures are per pouch. */
export interface Group {
  /** Infinity when there is no date. */
  readonly bestBy: number;
  readonly count: number;
  /** Its twentieths with a minus when it will not keep long after the trip, else 0; and servings × months left. */
  readonly expiringCost: number;
  readonly monthCost: number;
}

/** Lots that are the same to eat and to carry, counted together. */
export interface Class {
  readonly meal: number;
  readonly size: number;
  /** Dry weight of a pouch, tenths of a gram. */
  readonly dryTenths: number;
  /** Ascending by best-by; only those that outlive the first day. */
  readonly groups: readonly Group[];
  readonly lots: readonly Lot[];
  readonly stock: number;
  /** Whether some best-by falls inside the trip. */
  readonly dated: boolean;
  /** Cost of the oldest n pouches, for classes that are not dated. */
  readonly expiringSums: readonly number[];
  readonly monthSums: readonly number[];
}

export interface GridWish {
  readonly eater: number;
  readonly meal: number;
  /** −1: any time. */
  readonly slot: number;
  readonly weight: number;
}

/** The question with indices for names, in the settled order. Sums are whole numbers throughout. */
export interface Grid {
  readonly eaterKeys: readonly string[];
  readonly mealKeys: readonly string[];
  readonly slotKeys: readonly string[];
  readonly portion: readonly number[];
  /** What counts as fed, twentieths: low[slot][eater][meal]; and the kcal missing even then. */
  readonly low: readonly (readonly (readonly number[])[])[];
  readonly high: readonly (readonly (readonly number[])[])[];
  readonly thin: readonly (readonly (readonly number[])[])[];
  /** What having nothing counts, kcal: nothing[slot][eater]; what a missing twentieth of a meal counts. */
  readonly nothing: readonly (readonly number[])[];
  readonly worth: readonly number[];
  readonly slotDay: readonly number[];
  /** Place of the slot's day among the days. */
  readonly slotDayPlace: readonly number[];
  readonly dayCount: number;
  readonly slotEaters: readonly (readonly number[])[];
  readonly classes: readonly Class[];
  readonly mealClasses: readonly (readonly number[])[];
  /** may[slot][eater][meal]: safe, nobody to be kept from it sits there, and it is for such a meal of the day. */
  readonly may: readonly (readonly (readonly boolean[])[])[];
  readonly dislike: readonly (readonly boolean[])[];
  readonly wishes: readonly GridWish[];
  readonly wishesOf: readonly (readonly number[])[];
  readonly wishTotal: number;
  /** The plan before: before[slot][eater] is a meal, `unfed`, or `notBefore`; and at which level leaving it counts. */
  readonly before: readonly (readonly number[])[];
  readonly beforeKept: boolean;
  /** In steps of so many kcal what is short counts. */
  readonly shortStep: number;
  /** Twentieths that may be left over without counting. */
  readonly wasteAllowed: number;
  /** Twentieths in stock that will not keep long after the trip. */
  readonly expiring: number;
  /** Earlier slots of this eater within a day and a slot: earlier[slot][eater]. */
  readonly earlier: readonly (readonly (readonly number[])[])[];
  readonly later: readonly (readonly (readonly number[])[])[];
  /** How often an eater may have one meal before it counts as too often. */
  readonly often: number;
  /** Sodium of a helping, thousandths of the eater's day limit: sodium[slot][eater][meal]; 0 without limit. */
  readonly sodium: readonly (readonly (readonly number[])[])[];
  /** The same in mg × 20, unrounded, with the limit: for hard limits only. */
  readonly hardMg: readonly (readonly (readonly number[])[])[];
  readonly hardLimitMg: readonly number[];
  /** Energy of a helping, thousandths of the eater's day need. */
  readonly energy: readonly (readonly (readonly number[])[])[];
  /** Energy bounds by eater and day place, thousandths; high is Infinity without a need. */
  readonly energyLow: readonly (readonly number[])[];
  readonly energyHigh: readonly (readonly number[])[];
  readonly limited: readonly boolean[];
}

/** Meals of a full day; a day with fewer is measured against its share of the need. Chosen. */
const mealsOfADay = 3;
const monthDays = 30;
/** A pouch without a date stands behind every dated one. Chosen: a hundred years. */
const undatedDays = 36500;

/** A pouch that keeps no longer than this after the trip expires soon. Chosen. */
const soonDays = 60;

/** Days and months a pouch would still keep after the trip; never below 0. */
export function daysLeftAfter(bestBy: number | null, lastDay: number): number {
  return bestBy === null ? undatedDays : Math.max(0, Math.min(undatedDays, bestBy - lastDay));
}

export const monthsOf = (daysLeft: number): number => Math.floor(daysLeft / monthDays);

function makeClasses(
  lots: readonly Lot[],
  meals: readonly string[],
  firstDay: number,
  lastDay: number,
): Class[] {
  const byKey = new Map<string, Lot[]>();
  for (const lot of lots) {
    const key = JSON.stringify([lot.meal, lot.servingsTwentieths, lot.dryG, lot.waterMl]);
    byKey.set(key, [...(byKey.get(key) ?? []), lot]);
  }
  const classes = [...byKey.values()].map((members): Class => {
    const { meal, servingsTwentieths: size, dryG } = members[0]!;
    const kept = members.filter((l) => (l.bestBy ?? Infinity) >= firstDay);
    const sorted = [...kept].sort(
      (a, b) => (a.bestBy ?? Infinity) - (b.bestBy ?? Infinity) || byText(a.code, b.code),
    );
    const groups: Group[] = [];
    const expiringSums = [0];
    const monthSums = [0];
    for (const lot of sorted) {
      const left = daysLeftAfter(lot.bestBy, lastDay);
      const group = {
        bestBy: lot.bestBy ?? Infinity,
        count: lot.pouches.length,
        expiringCost: left <= soonDays ? -size : 0,
        monthCost: size * monthsOf(left),
      };
      const last = groups.at(-1);
      if (last && last.bestBy === group.bestBy)
        groups[groups.length - 1] = { ...last, count: last.count + group.count };
      else groups.push(group);
      for (let i = 0; i < group.count; i += 1) {
        expiringSums.push(expiringSums.at(-1)! + group.expiringCost);
        monthSums.push(monthSums.at(-1)! + group.monthCost);
      }
    }
    return {
      meal: meals.indexOf(meal),
      size,
      dryTenths: Math.round(dryG * 10),
      groups,
      lots: sorted,
      stock: groups.reduce((sum, g) => sum + g.count, 0),
      dated: groups.some((g) => g.bestBy < lastDay),
      expiringSums,
      monthSums,
    };
  });
  const water = (c: Class): number => c.lots[0]?.waterMl ?? -1;
  return classes
    .filter((c) => c.stock > 0)
    .sort((a, b) => a.meal - b.meal || a.size - b.size || a.dryTenths - b.dryTenths || water(a) - water(b));
}

/**
 * Turns the question into indices and whole numbers, and leaves out for good what must never happen:
 * pairs that are not safe, batches that are not steady, unknown sodium under a hard limit.
 */
export function makeGrid(problem: PicksProblem): Grid {
  const order = settleOrder(problem);
  const slots = [...problem.slots].sort((a, b) => a.day - b.day || a.order - b.order || byText(a.key, b.key));
  const days = [...new Set(slots.map((s) => s.day))];
  const lots = problem.lots.filter((l) => l.steady && l.pouches.length > 0 && l.servingsTwentieths > 0);
  const classes = makeClasses(lots, order.meals, days[0] ?? 0, days.at(-1) ?? 0);
  const eaters = order.eaters.map((key) => problem.eaters.find((e) => e.key === key)!);
  const eaterPlace = new Map(order.eaters.map((key, i) => [key, i]));
  const mealPlace = new Map(order.meals.map((key, i) => [key, i]));
  const slotPlace = new Map(slots.map((s, i) => [s.key, i]));
  const figures = order.meals.map((meal) => dishFigures(lots.filter((l) => l.meal === meal)));
  const pairs = (list: readonly { eater: string; meal: string }[]): Set<string> =>
    new Set(list.map((p) => `${eaterPlace.get(p.eater) ?? '?'}/${mealPlace.get(p.meal) ?? '?'}`));
  const table = <T>(cell: (e: number, m: number) => T): T[][] =>
    eaters.map((_, e) => order.meals.map((__, m) => cell(e, m)));

  const safeSet = pairs(problem.safe);
  const dislikeSet = pairs(problem.dislikes);
  const hard = eaters.map((e) => e.sodiumHard === true && e.sodiumLimitMg !== null);
  const safe = table((e, m) => safeSet.has(`${e}/${m}`) && !(hard[e] && figures[m]!.sodiumMg === null));
  const fits = fitsTo(problem);
  const may = slots.map((slot) =>
    table((e, m) => safe[e]![m]! && fits(slot, order.eaters[e]!, order.meals[m]!)),
  );
  const attends = (s: number, e: number): boolean => slots[s]!.eaters.includes(order.eaters[e]!);
  const inWindow = (i: number, j: number): boolean =>
    slots[j]!.day < slots[i]!.day + 1 ||
    (slots[j]!.day === slots[i]!.day + 1 && slots[j]!.order <= slots[i]!.order);
  const near = (pick: (s: number, other: number) => boolean): number[][][] =>
    slots.map((_, s) =>
      eaters.map((__, e) =>
        attends(s, e) ? slots.map((___, i) => i).filter((i) => attends(i, e) && pick(s, i)) : [],
      ),
    );

  const stocked = (meal: string, day: number): boolean =>
    classes.some((c) => c.meal === mealPlace.get(meal) && c.groups.at(-1)!.bestBy >= day);
  const ranked = grantable(problem, (wish, slot) => {
    const [s, e, m] = [
      slotPlace.get(slot.key)!,
      eaterPlace.get(wish.eater) ?? -1,
      mealPlace.get(wish.meal) ?? -1,
    ];
    return e >= 0 && m >= 0 && attends(s, e) && may[s]![e]![m]! && stocked(wish.meal, slot.day);
  });
  const weights = wishWeights(ranked);
  const merged = new Map<string, GridWish>();
  for (const { wish, rank } of ranked) {
    const [eater, meal] = [eaterPlace.get(wish.eater)!, mealPlace.get(wish.meal)!];
    const slot = wish.slot === null ? -1 : slotPlace.get(wish.slot)!;
    const key = [eater, meal, slot].map((n) => String(n + 1).padStart(6, '0')).join('/');
    const weight = weights[rank - 1]! + (merged.get(key)?.weight ?? 0);
    merged.set(key, { eater, meal, slot, weight });
  }
  const wishes = [...merged].sort((a, b) => byText(a[0], b[0])).map(([, wish]) => wish);
  const floorOf = (s: number, e: number): number | null =>
    slots[s]!.floors?.find((f) => f.eater === order.eaters[e])?.kcal ?? null;
  const helpings = slots.map((_, s) => {
    const floors = eaters.map((__, e) => floorOf(s, e));
    return table((e, m) => helpingOf(eaters[e]!.portionTwentieths, floors[e]!, figures[m]!.kcal));
  });
  const of = (pick: 'low' | 'high' | 'thin'): number[][][] =>
    helpings.map((ofSlot) => ofSlot.map((ofEater) => ofEater.map((h) => h[pick])));

  const perMille = (portion: number, per: number | null, whole: number | null): number =>
    per === null || whole === null || whole <= 0
      ? 0
      : Math.min(9999, Math.round((portion * per * 50) / whole));
  const mealsOn = (e: number, day: number): number =>
    slots.filter((s, i) => s.day === day && attends(i, e)).length;
  const shareOn = (e: number, day: number): number => Math.min(1, mealsOn(e, day) / mealsOfADay);
  const needs = (e: number): boolean => (eaters[e]!.energyKcal ?? 0) > 0;

  return {
    eaterKeys: order.eaters,
    mealKeys: order.meals,
    slotKeys: slots.map((s) => s.key),
    portion: eaters.map((e) => e.portionTwentieths),
    low: of('low'),
    high: of('high'),
    thin: of('thin'),
    nothing: slots.map((_, s) => eaters.map((e, i) => missesAll(e.portionTwentieths, floorOf(s, i)))),
    worth: figures.map((f) => worthKcal(f.kcal)),
    slotDay: slots.map((s) => s.day),
    slotDayPlace: slots.map((s) => days.indexOf(s.day)),
    dayCount: days.length,
    slotEaters: slots.map((s) =>
      [...new Set(s.eaters)]
        .map((k) => eaterPlace.get(k) ?? -1)
        .filter((e) => e >= 0)
        .sort((a, b) => a - b),
    ),
    classes,
    mealClasses: order.meals.map((_, m) => classes.map((__, c) => c).filter((c) => classes[c]!.meal === m)),
    may,
    dislike: table((e, m) => dislikeSet.has(`${e}/${m}`)),
    wishes,
    wishesOf: eaters.map((_, e) => wishes.map((__, w) => w).filter((w) => wishes[w]!.eater === e)),
    wishTotal: wishes.reduce((sum, w) => sum + w.weight, 0),
    before: placesBefore(problem, slotPlace, eaterPlace, mealPlace),
    beforeKept: problem.before?.was === 'kept',
    shortStep: shortStepKcal(slots.flatMap(({ floors }) => (floors ?? []).map(({ kcal }) => kcal))),
    wasteAllowed: wasteAllowed(
      slots.reduce(
        (sum, s) =>
          sum +
          [...new Set(s.eaters)].reduce(
            (n, k) => n + (eaters[eaterPlace.get(k) ?? -1]?.portionTwentieths ?? 0),
            0,
          ),
        0,
      ),
    ),
    expiring: -classes.reduce((sum, c) => sum + c.expiringSums.at(-1)!, 0),
    earlier: near((s, i) => i < s && inWindow(i, s)),
    later: near((s, i) => i > s && inWindow(s, i)),
    often: Math.max(1, Math.floor(days.length / 3)),
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

/** Not in the plan before: at that slot nothing can change. */
export const notBefore = -3;

function placesBefore(
  problem: PicksProblem,
  slots: ReadonlyMap<string, number>,
  eaters: ReadonlyMap<string, number>,
  meals: ReadonlyMap<string, number>,
): number[][] {
  const places = Array.from(slots, () => Array.from(eaters, () => notBefore));
  for (const { slot, eater, meal } of problem.before?.seats ?? []) {
    const [s, e] = [slots.get(slot), eaters.get(eater)];
    if (s !== undefined && e !== undefined)
      places[s]![e] = meal === null ? -1 : (meals.get(meal) ?? notBefore);
  }
  return places;
}
