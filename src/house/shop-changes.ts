import { Refusal } from '#core/refusal.ts';
import { foldName } from '#foods/line.ts';
import type { ShopItem, ShoppingList } from '#store/shopping.ts';
import { fold, stem } from '#words/near.ts';
import { sayList } from '#words/say.ts';
import type { House } from './house.ts';
import { resolver } from './recipe-text.ts';

export type { ShopItem, ShoppingList } from '#store/shopping.ts';

/** @throws Refusal 'no-list' */
export function listOfNow(house: House): ShoppingList {
  const list = house.shopping.current();
  if (!list)
    throw new Refusal(
      'no-list',
      'There is no shopping list. /shop makes one for the next trip, /shop barley soup x2 for a meal.',
    );
  return list;
}

/** The foods of a list that words name. @throws Refusal 'not-on-list' */
export function itemsNamed({ items }: ShoppingList, foods: readonly string[]): ShopItem[] {
  if (foods.length === 1 && /^(?:all|everything)$/iu.test(foods[0]!)) return [...items];
  return foods.map((food) => {
    const wanted = fold(food).split(' ').filter(Boolean).map(stem);
    const found = items.find(({ called, key }) => {
      const words = fold(`${called} ${key}`).split(' ').map(stem);
      return wanted.length > 0 && wanted.every((word) => words.includes(word));
    });
    if (found) return found;
    throw new Refusal(
      'not-on-list',
      `"${food}" is not on the list: it has ${sayList(items.slice(0, 12).map(({ called }) => called))}.`,
    );
  });
}

/** The foods of a list by their numbers. @throws Refusal 'not-on-list' */
export const itemsNumbered = ({ items }: ShoppingList, nos: readonly number[]): ShopItem[] =>
  nos.map((no) => {
    const found = items.find(({ position }) => position === no);
    if (!found)
      throw new Refusal('not-on-list', `The list has ${items.length} foods; there is no number ${no}.`);
    return found;
  });

/**
 * What is at home of a list's foods: '500 g red lentils'; without an amount all of it is.
 * @returns the foods in the list's words
 */
export function atHome(house: House, list: ShoppingList, lines: readonly string[]): string[] {
  return lines.map((typed) => {
    const read = resolver(house)(typed);
    const key = foldName(read.called);
    const item =
      list.items.find((one) => one.key === key) ?? itemsNamed(list, [read.called.split(',')[0]!])[0]!;
    const isAmount = read.is === 'weighed' || (read.grams !== null && read.grams > 0);
    if (!isAmount && /\d/u.test(typed))
      throw new Refusal(
        'how-much',
        `I read "${typed}", but not how many grams that is. Say so: home 300 g ${item.called}`,
      );
    const grams = isAmount ? read.grams! : (item.needG ?? 0);
    house.shopping.home(item.id, grams);
    if (item.needG === null) house.shopping.got(item.id, true);
    return item.called;
  });
}
