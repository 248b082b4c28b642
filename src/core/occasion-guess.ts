import type { Occasion } from './occasions.ts';

/** One food of a recipe, as far as the guess looks at it. */
export interface OccasionPart {
  /** Food group as the table names it. */
  readonly group: string;
  /** Without its water, g. */
  readonly solidsG: number;
}

/**
 * Heads of names that tell what a meal is for: the last word before 'with' and the like. Closed lists, common usage,
 * no source; whatever they do not tell is read off the ingredients.
 */
const heads: readonly (readonly [RegExp, readonly Occasion[]])[] = [
  [
    /^(?:porridge|oatmeal|oats|muesli|granola|pancakes?|waffles?|breakfast|congee|bircher|cereal)$/,
    ['breakfast'],
  ],
  [
    /^(?:soup|stew|curry|chill?i|goulash|risotto|casserole|hash|dal|dahl|pilaf|chowder|bolognese|lasagne?|paella)$/,
    ['main'],
  ],
  [/^(?:tea|coffee|cocoa|latte|juice|smoothie|lemonade|drink|shake|chai)$/, ['drink']],
  [/^(?:crisps?|chips|jerky|leather|bars?|crackers|bites|nuts|gorp|mix)$/, ['snack']],
  [
    /^(?:pudding|crumble|cake|cookies?|brownies?|compote|custard|dessert|mousse|trifle|fudge|sweets?)$/,
    ['sweet'],
  ],
  [
    /^(?:sauce|gravy|pesto|dip|relish|chutney|mash|salad|coleslaw|bread|flatbread|tortillas?|dumplings)$/,
    ['side'],
  ],
];

const behind = /^(?:with|in|on|and|or|for|without|from|a)$/;
/** Snacks of fruit are sweets as well. */
const sweetToo: readonly Occasion[] = ['snack', 'sweet'];
const most = 0.8;

/**
 * What a meal is likely for, by its name and else by what it is made of. A guess: it is said back, and a word changes
 * it. Where nothing speaks against it, a meal is a main.
 * @param words of the name, folded
 */
export function guessOccasions(
  words: readonly string[],
  parts: readonly OccasionPart[],
): readonly Occasion[] {
  const cut = words.findIndex((word, i) => i > 0 && behind.test(word));
  const [head, company] = cut < 0 ? [words, []] : [words.slice(0, cut), words.slice(cut + 1)];
  const byName = heads.find(([word]) => word.test(head.at(-1) ?? ''))?.[1];
  const share = shares(parts);
  // A mash or a salad that something hearty comes with is a meal.
  const hearty = share('Poultry', 'Sausages', 'Pork', 'Beef', 'Finfish', 'Lamb', 'Legumes');
  if (byName && !(byName[0] === 'side' && company.length > 0 && hearty > 0.15))
    return byName[0] === 'snack' && share('Fruits', 'Sweets') > most ? sweetToo : byName;
  if (parts.length === 0) return ['main'];
  if (share('Fruits', 'Sweets') > most) return sweetToo;
  if (share('Beverages') > most / 2) return ['drink'];
  if (share('Nut and Seed', 'Snacks') > most) return ['snack'];
  const savoury = hearty + share('Vegetables', 'Soups', 'Meals');
  if (share('Breakfast Cereals') > 0.3 && savoury < 0.1) return ['breakfast'];
  if (share('Sweets') > 0.15 && savoury < 0.1) return ['sweet'];
  if (
    share('Cereal Grains', 'Baked', 'Vegetables') > most &&
    (share('Vegetables') > most || share('Vegetables') < 0.1)
  )
    return ['side'];
  return ['main'];
}

/** Shares of groups in the solids; fats and spices are in every dish and tell nothing. */
function shares(parts: readonly OccasionPart[]): (...groups: readonly string[]) => number {
  const telling = parts.filter(({ group }) => !/^(?:Fats|Spices)/.test(group));
  const all = telling.reduce((sum, { solidsG }) => sum + solidsG, 0);
  return (...groups) =>
    all === 0
      ? 0
      : telling
          .filter(({ group }) => groups.some((start) => group.startsWith(start)))
          .reduce((sum, { solidsG }) => sum + solidsG, 0) / all;
}
