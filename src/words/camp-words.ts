import { type CampGood, goodsOf, scaledGoods } from '#core/camp.ts';
import type { Recipe } from '#core/records.ts';
import type { Settings } from '#core/settings.ts';
import { sayG, sayList } from './say.ts';

/** 'butter 5 g and parmesan'; without a weight where none was told. */
export const sayGoods = (goods: readonly CampGood[], units: Settings['units']): string =>
  sayList(goods.map(({ called, grams }) => (grams === null ? called : `${called} ${sayG(grams, units)}`)));

/** What is added to one serving. */
export const campInShort = ({ lines, servings }: Recipe, units: Settings['units']): string =>
  sayGoods(scaledGoods(goodsOf(lines), 1 / servings), units);

/** 'Added at camp to each serving: butter 5 g.' */
export function campLines(recipe: Recipe, units: Settings['units']): string[] {
  const said = campInShort(recipe, units);
  return said === '' ? [] : [`Added at camp to each serving: ${said}; not in the pot, but in these figures.`];
}

/** What is added to the portions at hand. */
export const addAtCamp = (goods: readonly CampGood[], units: Settings['units']): string[] =>
  goods.length === 0 ? [] : [`At camp add ${sayGoods(goods, units)}.`];
