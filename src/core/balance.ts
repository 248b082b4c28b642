import { Refusal } from './refusal.ts';
import { above, between, figure } from './within.ts';

/**
 * Water that left a batch.
 * @param wetG as loaded, g, above 0
 * @param dryG as it came off, g, above 0 and at most wetG
 * @returns g
 * @throws Refusal 'no-water-figure' when the two weights cannot be
 * @source irri-moisture
 */
export function waterRemovedG(wetG: number, dryG: number): number {
  above('no-water-figure', 'The dry weight', dryG, 0, 'g');
  above('no-water-figure', 'The wet weight', wetG, 0, 'g');
  if (dryG > wetG) {
    throw new Refusal(
      'no-water-figure',
      `The batch cannot weigh more dry (${figure(dryG)} g) than it did wet (${figure(wetG)} g).`,
    );
  }
  return wetG - dryG;
}

/**
 * Water a batch gave up for each gram that is left.
 * @returns ml per g dry (1 g of water taken as 1 ml)
 * @throws Refusal 'no-water-figure' when the two weights cannot be
 * @source irri-moisture
 */
export function mlPerDryG(wetG: number, dryG: number): number {
  return waterRemovedG(wetG, dryG) / dryG;
}

/**
 * Water to pour on one pouch: its share of what the batch gave up, times what the household has learnt.
 * @param pouchDryG food in the pouch, g, above 0
 * @param wetG batch as loaded on the trays, g
 * @param dryG batch as it came off, g; 0 < dryG ≤ wetG
 * @param correction learnt from ratings, no unit, 0.7 to 1.3; 1 until rated
 * @returns water, ml (1 g of water taken as 1 ml)
 * @throws Refusal 'no-water-figure' when the weights cannot be
 * @source irri-moisture
 */
export function pouchWaterMl(pouchDryG: number, wetG: number, dryG: number, correction = 1): number {
  above('no-water-figure', 'The food in the pouch', pouchDryG, 0, 'g');
  between('no-water-figure', 'The learnt correction', correction, leastCorrection, mostCorrection, '');
  return pouchDryG * mlPerDryG(wetG, dryG) * correction;
}

/**
 * What a batch will weigh when dry: its solids and the moisture that stays.
 * @param solidsG g, above 0
 * @param moistureFraction water left, g per g of dried food, 0 to below 1
 * @returns g
 * @throws Refusal 'impossible-moisture' or 'impossible-weight'
 * @source irri-moisture
 */
export function expectedDryG(solidsG: number, moistureFraction: number): number {
  above('impossible-weight', 'The weight of the solids', solidsG, 0, 'g');
  return solidsG / (1 - moisture('The moisture left', moistureFraction));
}

/**
 * Moisture the recipe's solids say is left in a dried batch. Below 0 when the batch weighs less than the
 * solids it should hold: then the recipe, the pot or a scale is wrong.
 * @param dryG as weighed, g, above 0
 * @param solidsG as the recipe predicts, g, above 0
 * @returns fraction, wet basis, below 1
 * @throws Refusal 'impossible-weight'
 * @source irri-moisture
 */
export function residualMoistureFraction(dryG: number, solidsG: number): number {
  above('impossible-weight', 'The dry weight', dryG, 0, 'g');
  above('impossible-weight', 'The weight of the solids', solidsG, 0, 'g');
  return 1 - solidsG / dryG;
}

/**
 * The outer limit of moisture that is quoted for food packed without oxygen, because of botulism.
 * @source oxygen-free-leaflet
 */
export const oxygenFreeMostMoistureFraction = 0.1;

/** Water in a cooked recipe is seldom known closer than this; chosen after the spread of the food table. */
export const usualSolidsErrorFraction = 0.05;

/**
 * The same moisture with what an error in the solids does to it: a few per cent there move it by as many
 * points, so the band catches gross errors and proves nothing finer.
 * @param solidsErrorFraction how far the solids may be out, 0 to 1
 * @returns fractions, wet basis; low is never below 0, so low > 0 means "not dry, whatever the error"
 * @throws Refusal 'impossible-weight' or 'impossible-error'
 * @source irri-moisture
 */
export function residualMoistureBand(
  dryG: number,
  solidsG: number,
  solidsErrorFraction = usualSolidsErrorFraction,
): { lowFraction: number; fraction: number; highFraction: number } {
  between('impossible-error', 'The error of the solids', solidsErrorFraction, 0, 1, '');
  const fraction = residualMoistureFraction(dryG, solidsG);
  const swing = (solidsG * solidsErrorFraction) / dryG;
  return {
    lowFraction: Math.max(0, fraction - swing),
    fraction,
    highFraction: Math.max(0, fraction + swing),
  };
}

/**
 * Wet basis to dry basis.
 * @param wetBasisFraction g water per g of food, 0 to below 1
 * @returns g water per g of solids
 * @throws Refusal 'impossible-moisture'
 * @source irri-moisture
 */
export function dryBasis(wetBasisFraction: number): number {
  const m = moisture('The moisture', wetBasisFraction);
  return m / (1 - m);
}

/**
 * Dry basis to wet basis.
 * @param dryBasisFraction g water per g of solids, 0 or more
 * @returns g water per g of food
 * @throws Refusal 'impossible-moisture'
 * @source irri-moisture
 */
export function wetBasis(dryBasisFraction: number): number {
  const x = between('impossible-moisture', 'The moisture (dry basis)', dryBasisFraction, 0, Infinity, '');
  return x / (1 + x);
}

/**
 * What food weighs after drying from one moisture to another: solids stay.
 * @param initialG g, above 0
 * @param initialFraction wet basis, 0 to below 1
 * @param finalFraction wet basis, 0 to initialFraction
 * @returns g
 * @throws Refusal 'impossible-weight' or 'impossible-moisture'
 * @source irri-moisture
 */
export function finalMassG(initialG: number, initialFraction: number, finalFraction: number): number {
  above('impossible-weight', 'The starting weight', initialG, 0, 'g');
  const start = moisture('The moisture at the start', initialFraction);
  const end = between('impossible-moisture', 'The moisture at the end', finalFraction, 0, start, '');
  return (initialG * (1 - start)) / (1 - end);
}

/**
 * Fresh weight for each gram dried.
 * @returns g per g
 * @throws Refusal 'impossible-moisture'
 * @source irri-moisture
 */
export function dryingRatio(initialFraction: number, finalFraction: number): number {
  return 1 / finalMassG(1, initialFraction, finalFraction);
}

/**
 * Moisture left when a share of the water has gone. "95 % of the water removed" is not a moisture of 5 %.
 * @param initialFraction wet basis, 0 to below 1
 * @param removedFraction share of the water that left, 0 to 1
 * @returns fraction, wet basis
 * @throws Refusal 'impossible-moisture'
 * @source irri-moisture
 */
export function moistureAfterRemoving(initialFraction: number, removedFraction: number): number {
  const x = dryBasis(initialFraction);
  return wetBasis(x * (1 - between('impossible-moisture', 'The water removed', removedFraction, 0, 1, '')));
}

function moisture(what: string, fraction: number): number {
  between('impossible-moisture', what, fraction, 0, 1, '');
  if (fraction === 1) throw new Refusal('impossible-moisture', `${what} was 1: that is water and no food.`);
  return fraction;
}

/** Limits of the learnt correction, chosen: beyond them the weights are wrong rather than the taste. */
const leastCorrection = 0.7;
const mostCorrection = 1.3;

/** What somebody said of the water in one pouch. */
export interface WaterRating {
  /** What the balance alone gave for that pouch (correction 1), ml. */
  readonly balanceMl: number;
  /** What was poured, ml. */
  readonly pouredMl: number;
  /** What it should have had besides: above 0 more, below 0 less, 0 just right, ml. */
  readonly moreMl: number;
}

/**
 * What a household's ratings of one meal make of its water figure. Each rating says which factor would have
 * been right; each counts twice as much as the one before it, so the figure follows taste without jumping
 * (chosen; common practice, no source).
 * @param ratings oldest first
 * @returns the correction, kept within 0.7 to 1.3; how many ratings made it; whether it was held back
 * @throws Refusal 'impossible-rating' when a pouch had no water or the rating takes away more than was poured
 */
export function learntCorrection(ratings: readonly WaterRating[]): {
  correction: number;
  ratings: number;
  held: boolean;
} {
  let weighted = 0;
  let weights = 0;
  for (const { balanceMl, pouredMl, moreMl } of ratings) {
    above('impossible-rating', 'The water by weight', balanceMl, 0, 'ml');
    between('impossible-rating', 'The water poured', pouredMl, 0, Infinity, 'ml');
    const rightMl = above(
      'impossible-rating',
      'Poured water and change together',
      pouredMl + moreMl,
      0,
      'ml',
    );
    // Halving what went before is the same as doubling each newer weight, without growing out of bounds.
    weighted = weighted / 2 + rightMl / balanceMl;
    weights = weights / 2 + 1;
  }
  const mean = weights === 0 ? 1 : weighted / weights;
  const correction = Math.min(mostCorrection, Math.max(leastCorrection, mean));
  return { correction, ratings: ratings.length, held: correction !== mean };
}
