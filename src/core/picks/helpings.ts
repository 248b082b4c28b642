import type { Lot, PicksProblem, Slot } from './problem.ts';

/**
 * How much somebody needs at a meal. A serving is not food because it is a serving: the helping is the portion, more
 * of it where that gives too little energy, and never more than twice the portion, for nobody eats a bucket of soup.
 * Everything is a whole number: twentieths of a serving, or kcal.
 */
export interface Helping {
  /** What is put on the plate when there is enough, twentieths of a serving. */
  readonly helping: number;
  /** The least and the most that counts as fed, twentieths of a serving: 90 and 110 % of the helping. */
  readonly low: number;
  readonly high: number;
  /** What is missing of nine tenths of the floor even with `low` eaten, kcal. */
  readonly thin: number;
}

/** A serving of unknown energy counts as this much: a small meal. Chosen. */
const usualKcalPerServing = 500;
const usualKcal = usualKcalPerServing / 20;
/** Nobody eats more of one thing than this many portions. Chosen. */
const mostPortions = 2;

/**
 * @param portion twentieths of a serving, > 0
 * @param floorKcal what the meal should give; null when not known: then the portion alone counts
 * @param kcalPerServing of the dish; null when not known: then the portion is taken as enough
 */
export function helpingOf(portion: number, floorKcal: number | null, kcalPerServing: number | null): Helping {
  const known = floorKcal !== null && kcalPerServing !== null;
  const wanted = !known
    ? portion
    : kcalPerServing > 0
      ? Math.ceil((20 * floorKcal) / kcalPerServing - 1e-9)
      : Infinity;
  const helping = Math.min(mostPortions * portion, Math.max(portion, wanted));
  const low = Math.ceil((helping * 9) / 10);
  const missing = known ? (9 * floorKcal) / 10 - (low * kcalPerServing) / 20 : 0;
  return {
    helping,
    low,
    high: Math.floor((helping * 11) / 10),
    thin: Math.max(0, Math.ceil(missing - 1e-9)),
  };
}

/** What somebody misses who has nothing at all, kcal: nine tenths of the floor, or of a usual portion. */
export function missesAll(portion: number, floorKcal: number | null): number {
  return Math.ceil(((floorKcal ?? usualKcal * portion) * 9) / 10 - 1e-9);
}

/** What a missing twentieth of a serving counts, kcal; a rich dish no more than a usual one. */
export function worthKcal(kcalPerServing: number | null): number {
  return kcalPerServing === null
    ? usualKcal
    : Math.min(usualKcal, Math.max(1, Math.round(kcalPerServing / 20)));
}

/**
 * What a dish counts that falls short, kcal; what is missing beyond a quarter counts twice, so that two meals are cut a
 * little before one is cut by half.
 * @param low what its eaters need at least, twentieths of a serving
 */
export function shortKcal(low: number, opened: number, worth: number): number {
  const short = Math.max(0, low - opened);
  return worth * (short + Math.max(0, Math.floor((4 * short - low) / 4)));
}

/** Sodium and energy of a serving; null when not known. */
export interface DishFigures {
  readonly sodiumMg: number | null;
  readonly kcal: number | null;
}

/** The figures of a dish: the highest sodium of its lots, so that a limit holds; mean energy of its lots. */
export function dishFigures(lots: readonly Lot[]): DishFigures {
  const sodium = lots.map((l) => l.sodiumMgPerServing);
  const kcal = lots.map((l) => l.kcalPerServing).filter((k) => k !== null);
  return {
    sodiumMg: sodium.includes(null) ? null : Math.max(...(sodium as number[])),
    kcal: kcal.length === 0 ? null : kcal.reduce((a, b) => a + b, 0) / kcal.length,
  };
}

/** The lots that count for a dish's figures. */
export const lotsOfDish = (problem: PicksProblem, meal: string): Lot[] =>
  problem.lots.filter((l) => l.meal === meal && l.steady && l.pouches.length > 0 && l.servingsTwentieths > 0);

/** What an eater's helping of a meal at a slot is. */
export function helpingAt(problem: PicksProblem, slot: Slot, eater: string, meal: string): Helping {
  const portion = problem.eaters.find((e) => e.key === eater)!.portionTwentieths;
  const floor = slot.floors?.find((f) => f.eater === eater)?.kcal ?? null;
  return helpingOf(portion, floor, dishFigures(lotsOfDish(problem, meal)).kcal);
}
