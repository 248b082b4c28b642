import type { RecipeLine } from './records.ts';

/** Something that is added at camp; grams null where no amount is told. */
export interface CampGood {
  readonly called: string;
  readonly grams: number | null;
}

/** What is added at camp by a recipe's lines, each food once. */
export const goodsOf = (lines: readonly Pick<RecipeLine, 'called' | 'grams' | 'camp'>[]): CampGood[] =>
  mergedGoods(lines.filter(({ camp }) => camp !== null));

/** The same, more or less of it. @param times no unit */
export const scaledGoods = (goods: readonly CampGood[], times: number): CampGood[] =>
  goods.map(({ called, grams }) => ({ called, grams: grams === null ? null : grams * times }));

/** Goods of several portions together, each food once. */
export function mergedGoods(goods: readonly CampGood[]): CampGood[] {
  const byFood = new Map<string, number | null>();
  for (const { called, grams } of goods) {
    const before = byFood.get(called);
    byFood.set(called, before == null ? grams : before + (grams ?? 0));
  }
  return [...byFood].map(([called, grams]) => ({ called, grams }));
}

/** What they weigh as far as that was told, g. */
export const goodsG = (goods: readonly CampGood[]): number =>
  goods.reduce((sum, { grams }) => sum + (grams ?? 0), 0);
