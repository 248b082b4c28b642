import { table } from './table.ts';
import { type Occasion, occasions } from '#core/occasions.ts';
import { sayList } from './say.ts';

/** How people name what a meal is for. */
const named = table<Occasion>({
  breakfast: 'breakfast', breakfasts: 'breakfast', mornings: 'breakfast',
  main: 'main', mains: 'main', meal: 'main', dinner: 'main', dinners: 'main', lunch: 'main', lunches: 'main', supper: 'main',
  side: 'side', sides: 'side', sauce: 'side', accompaniment: 'side',
  snack: 'snack', snacks: 'snack', nibble: 'snack',
  sweet: 'sweet', sweets: 'sweet', dessert: 'sweet', desserts: 'sweet', afters: 'sweet', treat: 'sweet',
  drink: 'drink', drinks: 'drink', beverage: 'drink',
}); // prettier-ignore

const filler = new Set([
  'a',
  'an',
  'the',
  'or',
  'and',
  'for',
  'as',
  'course',
  'courses',
  'dish',
  'dishes',
  'meals',
  'only',
  'just',
  'also',
  'too',
  ',',
]);

/**
 * The occasions that words name, every word accounted for: 'breakfast and lunch', 'a side dish'.
 * @returns undefined where a word is none, or none is named
 */
export function occasionsNamed(text: string): Occasion[] | undefined {
  const words = text
    .toLowerCase()
    .split(/[\s,/&+]+/u)
    .filter((word) => word !== '' && !filler.has(word));
  const found = words.map((word) => named[word]);
  if (found.length === 0 || found.includes(undefined)) return undefined;
  return occasions.filter((one) => found.includes(one));
}

const said: Readonly<Record<Occasion, string>> = {
  breakfast: 'breakfast',
  main: 'lunch and dinner',
  side: 'beside a main',
  snack: 'a snack',
  sweet: 'a sweet beside',
  drink: 'a drink',
};

/** 'breakfast, lunch and dinner'. */
export const sayOccasions = (list: readonly Occasion[]): string =>
  list.includes('breakfast') && list.includes('main')
    ? [
        'breakfast, lunch and dinner',
        ...list.filter((one) => one !== 'breakfast' && one !== 'main').map((one) => said[one]),
      ].join(', ')
    : sayList(list.map((one) => said[one]));
