import type { Class } from './classes.ts';

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

/** Not in the plan before: at that slot nothing can change. */
export const notBefore = -3;
