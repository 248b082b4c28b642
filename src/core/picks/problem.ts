/**
 * What the picks are asked and what they answer: plain records, no figures worked out here.
 * Servings and portions are whole twentieths of a serving, so that 0.6, 1 and 1.5 are integers.
 * Days are whole day numbers of any one count (such as days since 1970-01-01), the same for slots and best-by.
 */

/** The pouches of one batch with the same servings and weight that are free to be opened. */
export interface Lot {
  /** Such as 'B4/95': the batch and the dry weight. Unique within a problem. */
  readonly code: string;
  /** Lots of one meal are one dish: a pair is safe only when every lot of the meal is clear for the eater. */
  readonly meal: string;
  /** Codes of the pouches, any order; their number is the stock. Unique within a problem. */
  readonly pouches: readonly string[];
  /** Servings in one pouch, twentieths; > 0. */
  readonly servingsTwentieths: number;
  /** Dry food in one pouch, g. */
  readonly dryG: number;
  /** Water to pour on one pouch, ml; null when no figure is known. Only tells lots apart. */
  readonly waterMl: number | null;
  /** null: not known. Then nobody with a hard sodium limit is given it. */
  readonly sodiumMgPerServing: number | null;
  readonly kcalPerServing: number | null;
  /** Last day on which it may be opened; null when the policy gave no date. */
  readonly bestBy: number | null;
  /** Whether the batch was steady when sealed. Callers leave others out; the picks refuse them again. */
  readonly steady: boolean;
}

export interface Eater {
  readonly key: string;
  readonly name: string;
  /** Portion, twentieths of a serving; > 0. Fed means 90 to 110 % of it. */
  readonly portionTwentieths: number;
  readonly sodiumLimitMg: number | null;
  /** True: the day's portions never add up to more sodium than the limit. */
  readonly sodiumHard?: boolean;
  readonly energyKcal: number | null;
}

/** One meal of one day with its eaters. */
export interface Slot {
  readonly key: string;
  readonly day: number;
  /** Place within the day (breakfast before dinner). No two slots share day and order. */
  readonly order: number;
  /** Keys of eaters. */
  readonly eaters: readonly string[];
}

/** One eater's wish; the same wish by two people is two of these and counts twice. */
export interface Wish {
  /** Who is to get the meal. */
  readonly eater: string;
  readonly meal: string;
  /** Key of the slot; null: any time on the trip. */
  readonly slot: string | null;
  /** 1 for the first wish, 2, 3; anything beyond 3 counts as 3. */
  readonly rank: number;
}

export interface Pair {
  readonly eater: string;
  readonly meal: string;
}

/** A meal that is not to be at a slot at all: somebody who sits there must not even be near it. */
export interface Barred {
  readonly slot: string;
  readonly meal: string;
  /** Names of those whom it must not be near, for the sentence. */
  readonly near: readonly string[];
}

/** Why a pair is not among the safe ones: for the sentence, never for the sums. */
export interface Blocked extends Pair {
  /** The foods of the eater's list that are in the meal; or what could not be known. */
  readonly foods: readonly string[];
  readonly unknown: boolean;
}

/** A lot (or part of one) that is held for another trip: for the sentence, never for the sums. */
export interface PromisedLot {
  readonly lot: Lot;
  /** The name of the trip that holds it. */
  readonly trip: string;
}

export interface PicksProblem {
  readonly lots: readonly Lot[];
  readonly eaters: readonly Eater[];
  readonly slots: readonly Slot[];
  /** The pairs whose verdict is clear. A pair that is missing is not served: unknown is not safe. */
  readonly safe: readonly Pair[];
  readonly barred?: readonly Barred[];
  readonly dislikes: readonly Pair[];
  readonly wishes: readonly Wish[];
  readonly blocked?: readonly Blocked[];
  readonly promised?: readonly PromisedLot[];
}

/** What each level counts, first to last; smaller is better at every one. */
export const levelNames = [
  'units short', // twentieths of a serving
  'unfed', // eater-slots
  'worst off', // unfed slots of the eater with most of them
  'wishes', // granted, weighted by rank, with a minus
  'dislikes', // eater-slots
  'waste', // twentieths of a serving
  'oldest first', // opened twentieths × bucket 0 to 3 of what is left after the trip
  'variety', // repeats within a day and a slot, and servings of a meal beyond a third of the days
  'sodium and energy', // thousandths of a day's limit or need
  'oldest month first', // opened twentieths × months left after the trip
  'dry weight', // tenths of a gram
] as const;

export type LevelName = (typeof levelNames)[number];

export interface LevelResult {
  readonly level: LevelName;
  readonly value: number;
  /** No plan that keeps the levels before as they are can be below this. null: none was worked out. */
  readonly bound: number | null;
  readonly proven: boolean;
  /** value − bound; 0 when proven, null without a bound. */
  readonly gap: number | null;
}

export interface DishPick {
  readonly meal: string;
  /** Codes of the pouches to open, oldest best-by first. */
  readonly pouches: readonly string[];
  readonly eaters: readonly string[];
  readonly openedTwentieths: number;
  /** What its eaters miss of nine tenths of their portions, together. */
  readonly shortTwentieths: number;
  /** What is left when each has eaten eleven tenths of the portion. */
  readonly wasteTwentieths: number;
}

export interface SlotPick {
  readonly slot: string;
  readonly dishes: readonly DishPick[];
  /** Keys of eaters for whom there is nothing, with what they miss. */
  readonly unfed: readonly { readonly eater: string; readonly shortTwentieths: number }[];
}

export interface PicksPlan {
  /** In the order of day and meal. */
  readonly slots: readonly SlotPick[];
}

export interface PicksResult extends PicksPlan {
  /** One figure a level, in the order of `levelNames`. */
  readonly vector: readonly number[];
  readonly levels: readonly LevelResult[];
  /** 'proven' when every level is; 'best found' when a count ran out before. */
  readonly status: 'proven' | 'best found';
  /** Whether the safety clock, not a count, ended it: then the same question may be answered differently. */
  readonly clockEnded: boolean;
}

/** The least and the most that counts as fed, whole twentieths: 90 and 110 % of the portion. */
export function give(portionTwentieths: number): { low: number; high: number } {
  return {
    low: Math.ceil((portionTwentieths * 9) / 10),
    high: Math.floor((portionTwentieths * 11) / 10),
  };
}
