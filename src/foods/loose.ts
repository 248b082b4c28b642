import type { Contents } from '#core/allergens.ts';
import type { Food, FoodTable } from './food.ts';
import { foodWords, neutral } from './vocabulary.ts';
import { foldedWords } from './words.ts';

/** Groups of the table in which a plain raw food holds nothing but itself. */
const plainGroups: ReadonlySet<string> = new Set([
  'Fruits and Fruit Juices',
  'Vegetables and Vegetable Products',
]);
/** Groups of ready meals and makes, which no ingredient line means. */
const dishGroups: ReadonlySet<string> = new Set([
  'Baby Foods',
  'Fast Foods',
  'Restaurant Foods',
  'American Indian/Alaska Native Foods',
]);
/** Words that may stand in the description of a plain raw food beside its name. */
const plainWords: ReadonlySet<string> = new Set([
  'raw',
  'fresh',
  'all',
  'variety',
  'variet',
  'includes',
  'include',
  'with',
  'skin',
  'peel',
  'without',
  'flesh',
  'mature',
  'immature',
  'seed',
  'pod',
  'fruit',
  'root',
  'or',
  'and',
]);

/**
 * What is known of a food that no curated name leads to: nothing, unless it is one plain raw fruit or vegetable.
 * @returns null where nothing is known
 */
export function plainContents(food: Food): Contents | null {
  if (!plainGroups.has(food.group) || !/^[^,(]+(?:, ?\([^)]*\))?, raw$/i.test(food.name)) return null;
  const words = foldedWords(food.name.replace(/\([^)]*\)/g, ''));
  if (
    words.filter((word) => !plainWords.has(word)).length > 2 ||
    /bean|pea|soy|lupin|celer|seed|sprout|seaweed|nut/i.test(food.name)
  )
    return null;
  return { contains: [], check: [], kinds: [], checkKinds: [] };
}

/**
 * A food of the table that no curated name knows, when its description says hardly more than the line.
 * @param words of the line, without amount
 */
export function looseMatch(words: string, table: FoodTable): { food: Food; confidence: number } | undefined {
  const typed = foldedWords(words).filter((word) => !neutral.has(word));
  if (typed.length === 0 || typed.length > 6) return undefined;
  let best: { food: Food; confidence: number } | undefined;
  for (const food of table.search(typed.join(' '), 12)) {
    if (dishGroups.has(food.group) || /\b[A-Z]{4,}/.test(food.name)) continue;
    const own = new Set(foldedWords(food.name));
    const hits = typed.filter((word) => own.has(word)).length;
    const extra = [...own].filter(
      (word) => !typed.includes(word) && !neutral.has(word) && !plainWords.has(word),
    ).length;
    const missed = typed.filter((word) => !own.has(word));
    const confidence =
      (hits /
        (hits + 0.4 * extra + missed.reduce((sum, word) => sum + (foodWords().has(word) ? 1 : 0.5), 0))) *
      0.85;
    if (hits > 0 && missed.length === 0 && (!best || confidence > best.confidence))
      best = { food, confidence };
  }
  return best;
}
