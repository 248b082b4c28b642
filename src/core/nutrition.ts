import { above, between } from './within.ts';

export { energyNeedKcal, type Activity, type Sex } from './energy-need.ts';

/** Sodium of pure salt, mg per g: 22.98977 / (22.98977 + 35.453). For sums on a label. @source iupac-weights */
export const sodiumOfNaClMgPerG = (1000 * 22.98977) / (22.98977 + 35.453);
/** Sodium of table salt, mg per g: 1.5 % less than pure. For sums in the kitchen. @source usda-sr28 */
export const sodiumOfTableSaltMgPerG = 387.58;

/** Pure salt gives so much sodium. @param saltG g, 0 or more. @returns mg. @source iupac-weights */
export function sodiumMgOfNaCl(saltG: number): number {
  return between('impossible-salt', 'The salt', saltG, 0, Infinity, 'g') * sodiumOfNaClMgPerG;
}

/** So much sodium written as salt, as labels do. @param sodiumMg mg, 0 or more. @returns g. @source iupac-weights */
export function naClGOfSodium(sodiumMg: number): number {
  return between('impossible-sodium', 'The sodium', sodiumMg, 0, Infinity, 'mg') / sodiumOfNaClMgPerG;
}

/** Table salt gives so much sodium. @param saltG g, 0 or more. @returns mg. @source usda-sr28 */
export function sodiumMgOfTableSalt(saltG: number): number {
  return between('impossible-salt', 'The salt', saltG, 0, Infinity, 'g') * sodiumOfTableSaltMgPerG;
}

/** Daily values for adults and children from 4 years, in the unit of the name. @source fda-daily-values */
export const dailyValue = {
  sodiumMg: 2300,
  fatG: 78,
  saturatedFatG: 20,
  carbohydrateG: 275,
  fibreG: 28,
  addedSugarsG: 50,
  proteinG: 50,
  potassiumMg: 4700,
} as const;

export type DailyValue = keyof typeof dailyValue;

/**
 * Share of the daily value.
 * @param amount 0 or more, in the unit of the name
 * @returns percent, 100 = the whole day
 * @throws Refusal 'impossible-amount'
 * @source fda-daily-values
 */
export function percentDailyValue(of: DailyValue, amount: number): number {
  return (between('impossible-amount', 'The amount', amount, 0, Infinity, '') / dailyValue[of]) * 100;
}

/**
 * Whether a serving is low or high in something: 5 % of the daily value or less, 20 % or more.
 * @source fda-daily-values
 */
export function levelOf(of: DailyValue, amount: number): 'low' | 'high' | 'neither' {
  const percent = percentDailyValue(of, amount);
  return percent <= 5 ? 'low' : percent >= 20 ? 'high' : 'neither';
}

type ByAge = readonly (readonly [fromYears: number, mg: number])[];
const reduceAbove: ByAge = [
  [14, 2300],
  [9, 1800],
  [4, 1500],
  [1, 1200],
];
const adequate: ByAge = [
  [14, 1500],
  [9, 1200],
  [4, 1000],
  [1, 800],
];

/**
 * Sodium a day above which less is advised for that age. General guidance: a doctor's figure comes first.
 * @param ageYears completed years, 0 to 130
 * @returns mg a day; undefined under 1 year, where none is published
 * @throws Refusal 'impossible-age'
 * @source nasem-2019
 */
export function sodiumLimitMg(ageYears: number): number | undefined {
  return byAge(reduceAbove, ageYears);
}

/**
 * Sodium a day that is enough for that age.
 * @param ageYears completed years, 0 to 130
 * @returns mg a day; undefined under 1 year, which is not in the table at hand
 * @throws Refusal 'impossible-age'
 * @source nasem-2019
 */
export function sodiumAdequateMg(ageYears: number): number | undefined {
  return byAge(adequate, ageYears);
}

function byAge(table: ByAge, ageYears: number): number | undefined {
  between('impossible-age', 'The age', ageYears, 0, 130, 'years');
  return table.find(([from]) => ageYears >= from)?.[1];
}

/** What a food's sodium could be called in the U.S. It tests arithmetic; a home label makes no legal claim. */
export type SodiumClaim = 'sodium free' | 'very low sodium' | 'low sodium' | 'no claim';

/**
 * A single food is judged by the serving (and per 50 g when the serving is 30 g or less), a meal per 100 g.
 * @param food kind, sodium mg and weight g of what is served, weight above 0, and whether salt was added
 * @throws Refusal 'impossible-amount'
 * @source cfr-101-61
 */
export function sodiumClaim(food: {
  readonly kind: 'food' | 'meal';
  readonly sodiumMg: number;
  readonly massG: number;
  readonly saltAdded?: boolean;
}): SodiumClaim {
  between('impossible-amount', 'The sodium', food.sodiumMg, 0, Infinity, 'mg');
  above('impossible-amount', 'The weight', food.massG, 0, 'g');
  if (food.sodiumMg < 5 && food.saltAdded !== true) return 'sodium free';
  const judgedMg =
    food.kind === 'meal'
      ? (food.sodiumMg * 100) / food.massG
      : food.massG <= 30
        ? Math.max(food.sodiumMg, (food.sodiumMg * 50) / food.massG)
        : food.sodiumMg;
  if (judgedMg <= 35) return 'very low sodium';
  return judgedMg <= 140 ? 'low sodium' : 'no claim';
}
