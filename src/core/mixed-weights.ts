import type { Mix, RecipeLine } from './records.ts';

/** What comes from the cupboard into one pouch, g. */
export const goodsG = (goods: readonly RecipeLine[]): number =>
  goods.reduce((sum, { grams }) => sum + (grams ?? 0), 0);

/** Dry food in one pouch of a mixture, g: of the batches and from the cupboard. */
export const mixedDryG = ({ parts, goods }: Mix): number =>
  parts.reduce((sum, { eachG }) => sum + eachG, 0) + goodsG(goods);

/**
 * The same before it was dried, g; of what was bought, with the water its packet asks for. What comes from the cupboard
 * weighed no more: no water is reckoned for it.
 */
export const mixedWetG = ({ parts, goods, bought }: Mix): number =>
  parts.reduce((sum, { wetG }) => sum + wetG, 0) + goodsG(goods) + (bought?.waterMl ?? 0);
