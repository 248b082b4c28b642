import { Refusal } from './refusal.ts';
import { above, between, figure } from './within.ts';

/** What 100 g of a food hold; null where the table has no value, which is not zero. */
export interface Per100 {
  readonly waterG: number | null;
  readonly kcal: number | null;
  readonly proteinG: number | null;
  readonly fatG: number | null;
  readonly carbohydrateG: number | null;
  readonly fibreG: number | null;
  readonly ashG: number | null;
  readonly sodiumMg: number | null;
}

/** One ingredient as weighed. */
export interface Part {
  readonly grams: number;
  readonly food: string;
  readonly per100: Per100;
}

export const nutrients = [
  'waterG',
  'kcal',
  'proteinG',
  'fatG',
  'carbohydrateG',
  'fibreG',
  'ashG',
  'sodiumMg',
] as const satisfies readonly (keyof Per100)[];

export type Nutrient = (typeof nutrients)[number];

export interface Totals {
  readonly massG: number;
  readonly waterG: number;
  readonly solidsG: number;
  readonly kcal: number;
  readonly proteinG: number;
  readonly fatG: number;
  readonly carbohydrateG: number;
  readonly fibreG: number;
  readonly ashG: number;
  readonly sodiumMg: number;
  /** Values no table gave. They are counted as zero above, so every total they touch is too low. */
  readonly unknown: readonly { readonly nutrient: Nutrient; readonly food: string }[];
}

/** The most 100 g can hold: themselves, pure fat's energy (902 kcal in SR28), the sodium of pure salt. */
const most: Readonly<Record<Nutrient, number>> = {
  waterG: 100.5,
  kcal: 910,
  proteinG: 100.5,
  fatG: 100.5,
  carbohydrateG: 100.5,
  fibreG: 100.5,
  ashG: 100.5,
  sodiumMg: 39_400,
};

/**
 * What a list of ingredients holds together: Σ gᵢ·xᵢ/100. Solids are mass less water, so a food whose water
 * is unknown counts as all solids and is named in `unknown`.
 * @param parts ingredients, g ≥ 0, with their composition per 100 g
 * @returns g, kcal and mg of the whole
 * @throws Refusal 'impossible-weight' for a weight below 0, 'impossible-composition' for a value 100 g cannot hold
 * @source usda-sr28
 */
export function totalsOf(parts: readonly Part[]): Totals {
  const sums: Record<Nutrient, number> = {
    waterG: 0,
    kcal: 0,
    proteinG: 0,
    fatG: 0,
    carbohydrateG: 0,
    fibreG: 0,
    ashG: 0,
    sodiumMg: 0,
  };
  const unknown: { nutrient: Nutrient; food: string }[] = [];
  let massG = 0;
  for (const { grams, food, per100 } of parts) {
    massG += between('impossible-weight', `The weight of ${food}`, grams, 0, Infinity, 'g');
    for (const nutrient of nutrients) {
      const value = per100[nutrient];
      if (value === null) {
        unknown.push({ nutrient, food });
        continue;
      }
      between('impossible-composition', `${nutrient} in 100 g of ${food}`, value, 0, most[nutrient], '');
      sums[nutrient] += (grams * value) / 100;
    }
  }
  return { massG, ...sums, solidsG: massG - sums.waterG, unknown };
}

/**
 * The same food, more or less of it.
 * @param factor 0 or more, no unit
 * @returns totals, each times the factor; what is unknown stays unknown
 * @throws Refusal 'impossible-factor' below 0
 */
export function scaleTotals(totals: Totals, factor: number): Totals {
  between('impossible-factor', 'The factor', factor, 0, Infinity, '');
  return {
    massG: totals.massG * factor,
    waterG: totals.waterG * factor,
    solidsG: totals.solidsG * factor,
    kcal: totals.kcal * factor,
    proteinG: totals.proteinG * factor,
    fatG: totals.fatG * factor,
    carbohydrateG: totals.carbohydrateG * factor,
    fibreG: totals.fibreG * factor,
    ashG: totals.ashG * factor,
    sodiumMg: totals.sodiumMg * factor,
    unknown: totals.unknown,
  };
}

/** Two weighings of the same pot may disagree by this much before one of them must be wrong; chosen. */
const weighingSlackFraction = 0.02;

/**
 * The share of what was cooked that lies on the trays.
 * @param loadedWetG loaded on the trays, g, above 0
 * @param potG finished weight of the pot, g; undefined when nobody weighed it: the trays are taken as all of it
 * @returns fraction, 0 to 1
 * @throws Refusal 'more-than-the-pot' when the trays hold over 2 % more than the pot gave
 */
export function shareOnTrays(loadedWetG: number, potG: number | null | undefined): number {
  above('impossible-weight', 'The loaded weight', loadedWetG, 0, 'g');
  if (potG === null || potG === undefined) return 1;
  above('impossible-weight', 'The weight of the pot', potG, 0, 'g');
  if (loadedWetG > potG * (1 + weighingSlackFraction)) {
    throw new Refusal(
      'more-than-the-pot',
      `The trays hold ${figure(loadedWetG)} g, but the pot gave ${figure(potG)} g.`,
    );
  }
  return Math.min(1, loadedWetG / potG);
}
