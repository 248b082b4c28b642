import { byText, settleOrder } from './order.ts';
import { give, type Lot, type PicksProblem } from './problem.ts';

/** Pouches of one class with the same best-by; the cost figures are per pouch. */
export interface Group {
  /** Infinity when there is no date. */
  readonly bestBy: number;
  readonly count: number;
  /** Servings × bucket, and servings × months left after the trip. */
  readonly bucketCost: number;
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
  readonly bucketSums: readonly number[];
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
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly slotDay: readonly number[];
  /** Place of the slot's day among the days. */
  readonly slotDayPlace: readonly number[];
  readonly dayCount: number;
  readonly slotEaters: readonly (readonly number[])[];
  readonly classes: readonly Class[];
  readonly mealClasses: readonly (readonly number[])[];
  /** safe[eater][meal] */
  readonly safe: readonly (readonly boolean[])[];
  /** barred[slot][meal]: not at that slot, for nobody. */
  readonly barred: readonly (readonly boolean[])[];
  readonly dislike: readonly (readonly boolean[])[];
  readonly wishes: readonly GridWish[];
  readonly wishesOf: readonly (readonly number[])[];
  readonly wishTotal: number;
  /** Earlier slots of this eater within a day and a slot: earlier[slot][eater]. */
  readonly earlier: readonly (readonly (readonly number[])[])[];
  readonly later: readonly (readonly (readonly number[])[])[];
  /** How often an eater may have one meal before it counts as too often. */
  readonly often: number;
  /** Sodium of a portion, thousandths of the eater's day limit: sodium[eater][meal]; 0 without limit. */
  readonly sodium: readonly (readonly number[])[];
  /** The same in mg × 20, unrounded, with the limit: for hard limits only. */
  readonly hardMg: readonly (readonly number[])[];
  readonly hardLimitMg: readonly number[];
  /** Energy of a portion, thousandths of the eater's day need. */
  readonly energy: readonly (readonly number[])[];
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

/** 0: 60 days at most are left after the trip; 1: a year; 2: three years; 3: more. */
export function bucketOf(daysLeft: number): number {
  return daysLeft <= 60 ? 0 : daysLeft <= 365 ? 1 : daysLeft <= 3 * 365 ? 2 : 3;
}

/** Days and months a pouch would still keep after the trip; never below 0. */
export function daysLeftAfter(bestBy: number | null, lastDay: number): number {
  return bestBy === null ? undatedDays : Math.max(0, Math.min(undatedDays, bestBy - lastDay));
}

export const monthsOf = (daysLeft: number): number => Math.floor(daysLeft / monthDays);

/** Weights by rank: a first wish outweighs all second ones together, a second one all third ones. */
function wishWeights(wishes: PicksProblem['wishes']): [number, number, number] {
  const counts = [0, 0, 0];
  for (const wish of wishes) counts[Math.min(3, Math.max(1, wish.rank)) - 1]! += 1;
  const n = Math.max(...counts);
  return [(n + 1) ** 2, n + 1, 1];
}

const wishWeight = (weights: readonly number[], rank: number): number =>
  weights[Math.min(3, Math.max(1, rank)) - 1]!;

/** The figures of a dish: the highest sodium of its lots, so that a limit holds; mean energy of its lots. */
function dishFigures(lots: readonly Lot[]): { sodiumMg: number | null; kcal: number | null } {
  const sodium = lots.map((l) => l.sodiumMgPerServing);
  const kcal = lots.map((l) => l.kcalPerServing).filter((k) => k !== null);
  return {
    sodiumMg: sodium.includes(null) ? null : Math.max(...(sodium as number[])),
    kcal: kcal.length === 0 ? null : kcal.reduce((a, b) => a + b, 0) / kcal.length,
  };
}

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
    const bucketSums = [0];
    const monthSums = [0];
    for (const lot of sorted) {
      const left = daysLeftAfter(lot.bestBy, lastDay);
      const group = {
        bestBy: lot.bestBy ?? Infinity,
        count: lot.pouches.length,
        bucketCost: size * bucketOf(left),
        monthCost: size * monthsOf(left),
      };
      const last = groups.at(-1);
      if (last && last.bestBy === group.bestBy)
        groups[groups.length - 1] = { ...last, count: last.count + group.count };
      else groups.push(group);
      for (let i = 0; i < group.count; i += 1) {
        bucketSums.push(bucketSums.at(-1)! + group.bucketCost);
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
      bucketSums,
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
  const barredSet = new Set(
    (problem.barred ?? []).map((b) => `${slotPlace.get(b.slot) ?? '?'}/${mealPlace.get(b.meal) ?? '?'}`),
  );
  const barred = slots.map((_, s) => order.meals.map((__, m) => barredSet.has(`${s}/${m}`)));
  const dislikeSet = pairs(problem.dislikes);
  const hard = eaters.map((e) => e.sodiumHard === true && e.sodiumLimitMg !== null);
  const safe = table((e, m) => safeSet.has(`${e}/${m}`) && !(hard[e] && figures[m]!.sodiumMg === null));
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

  const weights = wishWeights(problem.wishes);
  const merged = new Map<string, GridWish>();
  for (const wish of problem.wishes) {
    const eater = eaterPlace.get(wish.eater);
    const meal = mealPlace.get(wish.meal);
    const slot = wish.slot === null ? -1 : slotPlace.get(wish.slot);
    if (eater === undefined || meal === undefined || slot === undefined || !safe[eater]![meal]) continue;
    if (slot === -1 ? !slots.some((_, s) => attends(s, eater)) : !attends(slot, eater)) continue;
    const key = [eater, meal, slot].map((n) => String(n + 1).padStart(6, '0')).join('/');
    const weight = wishWeight(weights, wish.rank) + (merged.get(key)?.weight ?? 0);
    merged.set(key, { eater, meal, slot, weight });
  }
  const wishes = [...merged].sort((a, b) => byText(a[0], b[0])).map(([, wish]) => wish);

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
    low: eaters.map((e) => give(e.portionTwentieths).low),
    high: eaters.map((e) => give(e.portionTwentieths).high),
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
    safe,
    barred,
    dislike: table((e, m) => dislikeSet.has(`${e}/${m}`)),
    wishes,
    wishesOf: eaters.map((_, e) => wishes.map((__, w) => w).filter((w) => wishes[w]!.eater === e)),
    wishTotal: wishes.reduce((sum, w) => sum + w.weight, 0),
    earlier: near((s, i) => i < s && inWindow(i, s)),
    later: near((s, i) => i > s && inWindow(s, i)),
    often: Math.max(1, Math.floor(days.length / 3)),
    sodium: table((e, m) =>
      perMille(eaters[e]!.portionTwentieths, figures[m]!.sodiumMg, eaters[e]!.sodiumLimitMg),
    ),
    hardMg: table((e, m) => (hard[e] ? eaters[e]!.portionTwentieths * (figures[m]!.sodiumMg ?? 0) : 0)),
    hardLimitMg: eaters.map((e, i) => (hard[i] ? e.sodiumLimitMg! * 20 : Infinity)),
    // An unknown energy is taken as just this meal's share of the need, so that it neither mends nor breaks a day.
    energy: table((e, m) =>
      !needs(e)
        ? 0
        : figures[m]!.kcal === null
          ? Math.round(1000 / mealsOfADay)
          : perMille(eaters[e]!.portionTwentieths, figures[m]!.kcal, eaters[e]!.energyKcal),
    ),
    energyLow: eaters.map((_, e) => days.map((d) => (needs(e) ? Math.round(850 * shareOn(e, d)) : 0))),
    energyHigh: eaters.map((_, e) =>
      days.map((d) => (needs(e) ? Math.round(1250 * shareOn(e, d)) : Infinity)),
    ),
    limited: eaters.map((e) => (e.sodiumLimitMg ?? 0) > 0),
  };
}
