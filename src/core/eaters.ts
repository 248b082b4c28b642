import { energyNeedKcal, sodiumLimitMg } from './nutrition.ts';
import type { Eater } from './records.ts';

/** A figure for a person and where it comes from. */
export interface DayFigure {
  readonly value: number;
  readonly from: 'their own' | 'their age' | 'adults';
}

/** Adults' figures hold where no age is told. */
const adultAge = 30;

/**
 * Sodium a day for an eater, mg: their own limit, else the published intake above which less is advised for the age.
 * @returns undefined under 1 year, where none is published
 * @source nasem-2019
 */
export function sodiumOfDayMg(eater: Pick<Eater, 'sodiumMg' | 'ageYears' | 'kind'>): DayFigure | undefined {
  if (eater.sodiumMg !== null) return { value: eater.sodiumMg, from: 'their own' };
  if (eater.ageYears === null && eater.kind === 'child') return undefined;
  const value = sodiumLimitMg(eater.ageYears ?? adultAge);
  return value === undefined ? undefined : { value, from: eater.ageYears === null ? 'adults' : 'their age' };
}

/**
 * Energy a day for an eater, kcal: their own, else the published need for age, sex and activity. A person whose sex is
 * not told gets the mean of both rows; activity is taken as active, as days on foot are.
 * @returns undefined where the table has no row
 * @source dietary-guidelines-2015
 */
export function energyOfDayKcal(
  eater: Pick<Eater, 'energyKcal' | 'ageYears' | 'kind' | 'sex' | 'activity'>,
): DayFigure | undefined {
  if (eater.energyKcal !== null) return { value: eater.energyKcal, from: 'their own' };
  if (eater.ageYears === null && eater.kind === 'child') return undefined;
  const age = eater.ageYears ?? adultAge;
  const sexes = eater.sex === null ? (['female', 'male'] as const) : [eater.sex];
  const needs = sexes.map((sex) => energyNeedKcal(sex, age, eater.activity ?? 'active'));
  if (needs.some((kcal) => kcal === undefined)) return undefined;
  const value = needs.reduce<number>((sum, kcal) => sum + kcal!, 0) / needs.length;
  return { value, from: eater.ageYears === null ? 'adults' : 'their age' };
}
