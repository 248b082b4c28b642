import type { Mix, RecipeLine } from './records.ts';
import { soaksUpMl } from './soaks-up.ts';

/** What comes from the cupboard into one pouch, g. */
export const goodsG = (goods: readonly RecipeLine[]): number =>
  goods.reduce((sum, { grams }) => sum + (grams ?? 0), 0);

/** Dry food in one pouch of a mixture, g: of the batches and from the cupboard. */
export const mixedDryG = ({ parts, goods }: Mix): number =>
  parts.reduce((sum, { eachG }) => sum + eachG, 0) + goodsG(goods);

/**
 * The same with the water it wants, g: batches as they were before drying, what was bought with what its packet asks
 * for, food from the cupboard with what it takes up; what is not known to take up any counts as it is.
 */
export const mixedWetG = ({ parts, goods, bought }: Mix): number =>
  parts.reduce((sum, { wetG }) => sum + wetG, 0) +
  goods.reduce((sum, good) => sum + (good.grams ?? 0) + (soaksUpMl(good) ?? 0), 0) +
  (bought?.waterMl ?? 0);
