import { massG } from './units.ts';
import { above, between } from './within.ts';

/** Pounds of food a person-day and the energy they stand for, by what the days ask. @source ration-method */
export const trailRations = [
  { days: 'hot days, warm nights', lb: 1.5, lowKcal: 2500, highKcal: 3000 },
  { days: 'full packs, cool or warm', lb: 1.75, lowKcal: 3000, highKcal: 3500 },
  { days: 'cold days, very cold nights', lb: 2.5, lowKcal: 4000, highKcal: 5000 },
] as const;

/**
 * Food to carry by weight per person and day, a check on what the pouches add up to.
 * @param lbPerPersonDay pounds, above 0
 * @returns g
 * @throws Refusal 'impossible-trip'
 * @source ration-method
 */
export function trailFoodG(people: number, days: number, lbPerPersonDay: number): number {
  above('impossible-trip', 'The number of people', people, 0, '');
  above('impossible-trip', 'The number of days', days, 0, '');
  return people * days * above('impossible-trip', 'The ration', lbPerPersonDay, 0, 'lb') * massG('lb');
}

/**
 * Energy in each gram carried.
 * @param kcal 0 or more
 * @param grams above 0
 * @returns kcal/g; under about 4 the food still holds a good deal of water
 * @throws Refusal 'impossible-energy' or 'impossible-weight'
 * @source ration-method
 */
export function kcalPerG(kcal: number, grams: number): number {
  between('impossible-energy', 'The energy', kcal, 0, Infinity, 'kcal');
  return kcal / above('impossible-weight', 'The food', grams, 0, 'g');
}
