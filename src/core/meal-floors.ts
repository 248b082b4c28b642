import type { Effort, SlotMeal } from './records.ts';

/**
 * Share of the day's energy that a main meal should give: 400 kcal at breakfast, 600 at lunch and 600 at dinner of
 * 2,000 a day. The rest is for what is nibbled and drunk between them.
 * @source phe-400-600-600
 */
export const shareOfDay: Readonly<Record<SlotMeal, number>> = { breakfast: 0.2, lunch: 0.3, dinner: 0.3 };

/**
 * Energy of a day against one on the move ('active'): a day of rest as 'low active', a hard one, such as a long climb
 * with a pack, as 'very active'; means over the printed rows, men and women.
 * @source dri-energy-2002
 */
export const effortFactor: Readonly<Record<Effort, number>> = { rest: 0.9, walk: 1, hard: 1.15 };

/**
 * What a meal should give at least; the picks tolerate a tenth less.
 * @param dayKcal what the eater needs on a day on the move, kcal
 * @returns whole kcal
 */
export function mealFloorKcal(dayKcal: number, meal: SlotMeal, effort: Effort): number {
  return Math.round(dayKcal * effortFactor[effort] * shareOfDay[meal]);
}
