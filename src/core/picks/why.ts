import { fitsTo } from './fits.ts';
import { dishFigures, helpingAt, lotsOfDish } from './helpings.ts';
import type { Linear } from './linear.ts';
import { byText } from './order.ts';
import { pickPouches, type PickLimits, usualLimits } from './pick.ts';
import {
  type LevelName,
  levelNames,
  type Lot,
  type PicksPlan,
  type PicksProblem,
  type Slot,
} from './problem.ts';

/** Why somebody goes short: the first of these that alone explains it. */
export type Reason =
  /** No meal in stock is clear of the eater's list; `food` blocks most meals, null when nothing is recorded of it. */
  | { readonly is: 'nothing clear'; readonly food: string | null; readonly unknown: readonly string[] }
  | { readonly is: 'nothing in stock' }
  /** What would be clear is for other meals of the day, or goes beside a meal and is none: those that are meals. */
  | { readonly is: 'for other meals'; readonly meals: readonly string[] }
  /** Somebody said that it is not to be there. */
  | { readonly is: 'not wanted'; readonly meals: readonly string[] }
  /** What would be clear must not be near somebody who sits at this slot. */
  | { readonly is: 'kept apart'; readonly near: readonly string[]; readonly meals: readonly string[] }
  /** Every dish that is clear would break the eater's hard sodium limit on that day. */
  | { readonly is: 'too much sodium'; readonly meals: readonly string[] }
  | {
      readonly is: 'past best-by';
      readonly lots: readonly { readonly lot: string; readonly meal: string; readonly bestBy: number }[];
    }
  | { readonly is: 'promised'; readonly trips: readonly string[]; readonly lots: readonly string[] }
  /** Opened at other slots of this trip: which ones take how many pouches that would have suited. */
  | { readonly is: 'used up'; readonly slots: readonly { readonly slot: string; readonly pouches: number }[] }
  /** Something suitable is left, but too little to make half a dish. */
  | { readonly is: 'too little left'; readonly leftTwentieths: number };

export interface Shortage {
  readonly eater: string;
  readonly slot: string;
  /** True: nothing at all (v); false: a dish that falls short (h), shared by several. */
  readonly unfed: boolean;
  /** What is missing of nine tenths of the portion, or, for a dish, of all its eaters' together. */
  readonly shortTwentieths: number;
  /** The dish that falls short; null when unfed. */
  readonly meal: string | null;
  readonly reason: Reason;
}

/**
 * Who goes short, when, by how much and why, in the order of slots and eaters.
 * @param plan a plan for this very problem
 */
export function shortages(problem: PicksProblem, plan: PicksPlan): Shortage[] {
  const found: Shortage[] = [];
  const slots = problem.slots
    .filter(({ isSpare }) => isSpare !== true)
    .sort((a, b) => a.day - b.day || a.order - b.order || byText(a.key, b.key));
  for (const slot of slots) {
    const picked = plan.slots.find((s) => s.slot === slot.key);
    if (!picked) continue;
    for (const { eater, shortTwentieths } of picked.unfed) {
      const reason = reasonFor(problem, plan, slot, eater);
      found.push({ eater, slot: slot.key, unfed: true, shortTwentieths, meal: null, reason });
    }
    for (const dish of picked.dishes) {
      if (dish.shortTwentieths === 0) continue;
      for (const eater of dish.eaters) {
        const reason = reasonFor(problem, plan, slot, eater);
        const { shortTwentieths, meal } = dish;
        found.push({ eater, slot: slot.key, unfed: false, shortTwentieths, meal, reason });
      }
    }
  }
  return found;
}

/** Tries each reason alone, from the one nothing can be done about on this trip to the one a swap could mend. */
function reasonFor(problem: PicksProblem, plan: PicksPlan, slot: Slot, eaterKey: string): Reason {
  const safeMeals = new Set(problem.safe.filter((p) => p.eater === eaterKey).map((p) => p.meal));
  const stocked = problem.lots.filter((l) => l.steady && l.pouches.length > 0);
  const promised = (problem.promised ?? []).filter((p) => p.lot.steady && p.lot.pouches.length > 0);
  if (stocked.length === 0 && promised.length === 0) return { is: 'nothing in stock' };

  const good = (lot: Lot): boolean => lot.bestBy === null || lot.bestBy >= slot.day;
  const suits = (lot: Lot): boolean => safeMeals.has(lot.meal);
  if (![...stocked, ...promised.map((p) => p.lot)].some(suits))
    return nothingClear(
      problem,
      eaterKey,
      stocked,
      promised.map((p) => p.lot),
    );

  const fits = fitsTo({ ...problem, barred: [], banned: [] });
  const forThis = (lot: Lot): boolean => suits(lot) && fits(slot, eaterKey, lot.meal);
  if (![...stocked, ...promised.map((p) => p.lot)].some(forThis))
    return {
      is: 'for other meals',
      meals: [
        ...new Set(stocked.filter((lot) => suits(lot) && isMeal(problem, lot.meal)).map((l) => l.meal)),
      ].sort(byText),
    };

  const banned = (problem.banned ?? []).filter((b) => b.slot === slot.key && safeMeals.has(b.meal));
  const apart = (problem.barred ?? []).filter((b) => b.slot === slot.key && safeMeals.has(b.meal));
  const isBarred = (lot: Lot): boolean => [...apart, ...banned].some((b) => b.meal === lot.meal);
  const free = stocked.filter((lot) => forThis(lot) && !isBarred(lot));
  if (free.length === 0 && stocked.some(forThis) && banned.length > 0)
    return { is: 'not wanted', meals: [...new Set(banned.map((b) => b.meal))].sort(byText) };
  if (free.length === 0 && stocked.some(forThis))
    return {
      is: 'kept apart',
      near: [...new Set(apart.flatMap((b) => b.near))].sort(byText),
      meals: [...new Set(apart.map((b) => b.meal))].sort(byText),
    };

  const suitable = free;
  const today = suitable.filter(good);
  if (today.length === 0) {
    const held = promised.filter((p) => forThis(p.lot) && good(p.lot));
    if (held.length > 0) {
      return {
        is: 'promised',
        trips: [...new Set(held.map((p) => p.trip))].sort(byText),
        lots: [...new Set(held.map((p) => p.lot.code))].sort(byText),
      };
    }
    const past = [...suitable, ...promised.map((p) => p.lot).filter(forThis)];
    return {
      is: 'past best-by',
      lots: past
        .map(({ code, meal, bestBy }) => ({ lot: code, meal, bestBy: bestBy! }))
        .sort((a, b) => byText(a.lot, b.lot)),
    };
  }
  const salty = tooSalty(problem, plan, slot, eaterKey, today);
  if (salty) return salty;

  const lotOf = new Map(today.flatMap((lot) => lot.pouches.map((code) => [code, lot] as const)));
  const users: { slot: string; pouches: number }[] = [];
  const gone = new Set<string>();
  for (const other of plan.slots) {
    const taken = other.dishes.flatMap((d) => d.pouches).filter((code) => lotOf.has(code));
    for (const code of taken) gone.add(code);
    if (other.slot !== slot.key && taken.length > 0) users.push({ slot: other.slot, pouches: taken.length });
  }
  const left = [...lotOf].filter(([code]) => !gone.has(code));
  const leftTwentieths = left.reduce((sum, [, lot]) => sum + lot.servingsTwentieths, 0);
  if (users.length === 0 || left.length > 0) return { is: 'too little left', leftTwentieths };
  return { is: 'used up', slots: users };
}

/** Whether a meal carries some meal of the day. */
const isMeal = (problem: PicksProblem, meal: string): boolean =>
  problem.uses?.find((use) => use.meal === meal)?.is.some((one) => one === 'main' || one === 'breakfast') ??
  true;

function nothingClear(
  problem: PicksProblem,
  eater: string,
  stocked: readonly Lot[],
  held: readonly Lot[],
): Reason {
  const meals = [...new Set([...stocked, ...held].map((l) => l.meal))];
  const blocks = (problem.blocked ?? []).filter((b) => b.eater === eater && meals.includes(b.meal));
  const counts = new Map<string, number>();
  for (const { foods, unknown } of blocks) {
    if (!unknown) for (const food of new Set(foods)) counts.set(food, (counts.get(food) ?? 0) + 1);
  }
  const most = [...counts].sort((a, b) => b[1] - a[1] || byText(a[0], b[0]))[0];
  const unknown = blocks.filter((b) => b.unknown).map((b) => b.meal);
  return { is: 'nothing clear', food: most?.[0] ?? null, unknown: [...new Set(unknown)].sort(byText) };
}

/** The hard limit alone stands in the way of every dish that is left to this eater. */
function tooSalty(
  problem: PicksProblem,
  plan: PicksPlan,
  slot: Slot,
  eaterKey: string,
  today: readonly Lot[],
): Reason | undefined {
  const eater = problem.eaters.find((e) => e.key === eaterKey)!;
  if (eater.sodiumHard !== true || eater.sodiumLimitMg === null) return undefined;
  const saltOf = (at: Slot, meal: string): number => {
    const sodiumMg = dishFigures(lotsOfDish(problem, meal)).sodiumMg ?? Infinity;
    return (sodiumMg * helpingAt(problem, at, eaterKey, meal).helping) / 20;
  };
  const eaten = problem.slots
    .filter((s) => s.day === slot.day && s.key !== slot.key)
    .flatMap((s) => {
      const dishes = plan.slots.find((pick) => pick.slot === s.key)?.dishes ?? [];
      return dishes.filter((d) => d.eaters.includes(eaterKey)).map((d) => saltOf(s, d.meal));
    })
    .reduce((a, b) => a + b, 0);
  const meals = [...new Set(today.map((l) => l.meal))].sort(byText);
  return meals.every((meal) => eaten + saltOf(slot, meal) > eater.sodiumLimitMg!)
    ? { is: 'too much sodium', meals }
    : undefined;
}

export interface PouchReason {
  /** The first level that gets worse without the pouch; null: another would do as well. */
  readonly level: LevelName | null;
  readonly withIt: number | null;
  readonly without: number | null;
  /** Whether that level and those before it are proven in both plans; otherwise it is what the search found. */
  readonly proven: boolean;
}

/**
 * Why this pouch: the first level at which the best plan without it gets worse.
 * @param result the plan that opens the pouch, as answered for this problem
 * @param pouch its code
 */
export function whyPouch(
  problem: PicksProblem,
  result: { readonly vector: readonly number[]; readonly levels: readonly { readonly proven: boolean }[] },
  pouch: string,
  linear: Linear | undefined,
  limits: PickLimits = usualLimits,
  secondsLeft: () => number = () => Infinity,
): PouchReason {
  const lots = problem.lots.map((lot) => ({ ...lot, pouches: lot.pouches.filter((code) => code !== pouch) }));
  const other = pickPouches({ ...problem, lots }, linear, limits, secondsLeft);
  const at = other.vector.findIndex((value, k) => value !== result.vector[k]!);
  const upTo = at < 0 ? levelNames.length : at + 1;
  const proven = [...result.levels.slice(0, upTo), ...other.levels.slice(0, upTo)].every((l) => l.proven);
  // A better plan without it can only mean that a count ran out before the first plan was as good.
  if (at < 0 || other.vector[at]! < result.vector[at]!)
    return { level: null, withIt: null, without: null, proven };
  return { level: levelNames[at]!, withIt: result.vector[at]!, without: other.vector[at]!, proven };
}
