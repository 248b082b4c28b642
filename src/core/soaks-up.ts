import type { RecipeLine } from './records.ts';

/**
 * Dry goods that are eaten once hot water has gone into them, by their number in the food table: water in 100 g dry and
 * in 100 g made up, g, and the row of what was made up. Only what is dry enough to be sealed beside dried food; what
 * merely dissolves (milk powder, stock) thickens the meal's own water and wants none.
 * @source usda-sr28
 */
export const madeUp: Readonly<Record<string, { dryWaterG: number; madeWaterG: number; made: string }>> = {
  '20028': { dryWaterG: 8.56, madeWaterG: 72.57, made: '20029' },
  '20012': { dryWaterG: 9.0, madeWaterG: 77.76, made: '20013' },
  '20048': { dryWaterG: 8.38, madeWaterG: 70.34, made: '20049' },
  '20114': { dryWaterG: 6.88, madeWaterG: 73.01, made: '20115' },
  '20116': { dryWaterG: 9.21, madeWaterG: 67.91, made: '20117' },
  '01133': { dryWaterG: 2.78, madeWaterG: 76.15, made: '01123' },
};

/**
 * Water that food from the cupboard takes up until it is what the food table calls made up, ml: what is dry in it stays,
 * so that d (1 − dry water) = m (1 − made water), and the water is m − d.
 * @returns null for food that is not known to take up any
 * @source usda-sr28
 */
export function soaksUpMl({ ndb, grams }: Pick<RecipeLine, 'ndb' | 'grams'>): number | null {
  const known = ndb !== null && Object.hasOwn(madeUp, ndb) ? madeUp[ndb] : undefined;
  if (known === undefined || grams === null) return null;
  return grams * ((100 - known.dryWaterG) / (100 - known.madeWaterG) - 1);
}
