import type { Occasion } from '../occasions.ts';

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
  /** Portion, twentieths of a serving; > 0. Fed means 90 to 110 % of the helping that follows from it. */
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
  /** What may carry the meal and what goes beside it; undefined: anything carries it, nothing goes beside. */
  readonly carriedBy?: readonly Occasion[];
  readonly beside?: readonly Occasion[];
  /** What the meal should give, kcal, by eater; whoever is missing is fed by the portion alone. */
  readonly floors?: readonly { readonly eater: string; readonly kcal: number }[];
  /** Taken along to spare: planned from what the other slots leave, and short of nothing when it gets little. */
  readonly isSpare?: boolean;
}

/** What a meal is for; a meal that is not listed is for anything. */
export interface MealUse {
  readonly meal: string;
  readonly is: readonly Occasion[];
}

/** Who ate what in the plan last shown or kept; null: nothing. */
export interface Seat {
  readonly slot: string;
  readonly eater: string;
  readonly meal: string | null;
}

/** One eater's wish; the same wish by two people is two of these and counts twice. */
export interface Wish {
  /** Who is to get the meal. */
  readonly eater: string;
  readonly meal: string;
  /** Key of the slot; null: any time on the trip. */
  readonly slot: string | null;
  /**
   * 1 for the first wish, 2, 3 and so on. A wish that cannot be granted uses up no rank: the next one of that eater
   * moves up. What is then beyond the third counts as the third.
   */
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
  /** Meals that somebody said are not to be at a slot. */
  readonly banned?: readonly { readonly slot: string; readonly meal: string }[];
  /** Pouches that go to a slot when their meal is eaten there, and to no other while there are others. */
  readonly pinned?: readonly { readonly slot: string; readonly pouch: string }[];
  /** Who has what where, come what may, as long as it is clear for them and in stock. */
  readonly fixed?: readonly Seat[];
  /** A wish for a slot opens that slot for a breakfast or a main, whichever the slot usually asks for. */
  readonly wishes: readonly Wish[];
  readonly uses?: readonly MealUse[];
  /** The plan before; 'kept' ones are left as they are before thrift is thought of, 'shown' ones after. */
  readonly before?: { readonly was: 'shown' | 'kept'; readonly seats: readonly Seat[] };
  readonly blocked?: readonly Blocked[];
  readonly promised?: readonly PromisedLot[];
}

/** What each level counts, first to last; smaller is better at every one. */
export const levelNames = [
  'unfed', // eater-slots
  'worst off', // unfed slots of the eater with most of them
  'energy short', // steps of `shortStepKcal` below nine tenths of the floors; see `shortKcal`
  'wishes', // granted, weighted by rank, with a minus
  'dislikes', // eater-slots
  'moved', // eater-slots that are not as they were kept
  'waste', // whole servings left over beyond what is tolerated
  'expiring', // twentieths that will keep two months at most after the trip and stay at home
  'variety', // repeats within a day and a slot, twice at two meals running; a meal beyond a third of the days, dishes beyond one at a table
  'changes', // eater-slots that are not as they were shown
  'sodium and energy', // thousandths of a day's limit or need
  'exact waste', // twentieths of a serving
  'oldest month first', // opened twentieths × months left after the trip
  'dry weight', // tenths of a gram
] as const;

export type LevelName = (typeof levelNames)[number];

/** The place of each level in a vector. */
export const at = Object.fromEntries(levelNames.map((name, k) => [name, k])) as Record<LevelName, number>;

/**
 * The last level that is bounded. What comes after it is searched and said to be so: bounds on it cost four times the
 * time and bettered no plan (measured).
 */
export const lastBounded: LevelName = 'waste';

/**
 * What is short counts in whole steps of this: a spoonful less decides over nobody's wish. A fiftieth of all floors, and
 * never less than a fifth of a serving. Chosen.
 */
export function shortStepKcal(floors: readonly number[]): number {
  return Math.max(100, Math.floor(floors.reduce((sum, kcal) => sum + kcal, 0) / 50));
}

/** Servings that may be left over in a trip without a thought: one, or a twentieth of all portions. Chosen. */
export function wasteAllowed(portionsTwentieths: number): number {
  return Math.max(20, Math.floor(portionsTwentieths / 20));
}

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
  /** What its eaters miss of nine tenths of their helpings, together. */
  readonly shortTwentieths: number;
  /** What is left when each has eaten eleven tenths of the helping. */
  readonly wasteTwentieths: number;
}

/** What goes beside the dishes that carry a meal: a side, a sweet, something to drink. */
export interface BesidePick {
  readonly meal: string;
  readonly pouches: readonly string[];
  readonly eaters: readonly string[];
  readonly openedTwentieths: number;
}

export interface SlotPick {
  readonly slot: string;
  readonly dishes: readonly DishPick[];
  /** Keys of eaters for whom there is nothing, with what they miss. */
  readonly unfed: readonly { readonly eater: string; readonly shortTwentieths: number }[];
  readonly beside?: readonly BesidePick[];
}

export interface PicksPlan {
  /** In the order of day and meal. */
  readonly slots: readonly SlotPick[];
}

export interface PicksResult extends PicksPlan {
  /** One figure a level, in the order of `levelNames`. */
  readonly vector: readonly number[];
  readonly levels: readonly LevelResult[];
  /** 'proven' when every level that is bounded is; 'best found' when a count ran out before. */
  readonly status: 'proven' | 'best found';
  /** Whether the safety clock, not a count, ended it: then the same question may be answered differently. */
  readonly clockEnded: boolean;
}
