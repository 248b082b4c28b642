// Questions about what is on record. Each names the question that answers it and hands over what it is about; no
// question here ever records.

import type { Look, Meaning } from './look.ts';

// Questions about what is on record. Each names the question that answers it and hands over what it is about; no
// question here ever records.

export const ask = (means: string, words: string, score: number): Meaning => ({
  means,
  words: words.trim(),
  score,
  left: [],
  holds: null,
  looks: true,
});

/** What a question is about, as the questions take it: codes, a batch, a meal. */
export function about(look: Look): string {
  const codes = look.codes();
  if (codes !== '') return codes;
  const [batch] = look.said.batches;
  return batch ? `B${batch.batch}` : (look.mealTyped() ?? '');
}

export const isAsking = (look: Look): boolean => look.said.mood.asks;

export const diets =
  /\b(vegan|vegetarian|pescatarian|gluten[- ]free|dairy[- ]free|nut[- ]free|halal|kosher)\b/iu;

const free =
  /\b(?:without|no|free of|free from)\s+((?:any\s+)?[\p{L}]{3,15}(?:\s+(?:or|and)\s+[\p{L}]{3,15})?)/iu;

export function dietWords(look: Look): string {
  const diet = diets.exec(look.said.text)?.[1];
  if (diet !== undefined) return diet.replace(' ', '-');
  const without = free.exec(look.said.text)?.[1];
  return without === undefined ? '' : `no ${without.replace(/^any\s+/iu, '')}`;
}

const avoidable =
  /\b(gluten|wheat|barley|rye|oats?|milk|dairy|lactose|butter|cheese|cream|eggs?|nuts?|peanuts?|almonds?|walnuts?|cashews?|hazelnuts?|soya?|fish|shellfish|crustaceans?|prawns?|shrimps?|mussels?|molluscs?|sesame|celery|mustard|lupin|sulphites?|sulfites?|pork|beef|meat|chicken|lamb|bacon|honey|mushrooms?|onions?|garlic|tomato(?:es)?|chil(?:l)?i(?:es)?|pepper|alcohol|wine|gelatine?|coriander|coconut|allergens?)\b/giu;

/** The foods that are asked about, in one of their forms. */
export const avoidableWords: readonly string[] = avoidable.source
  .replace(/^\\b\(|\)\\b$/gu, '')
  .split('|')
  .map((one) => one.replaceAll('?', '').replace(/\(:([^)]*)\)/gu, '$1'))
  .filter((one) => /^[a-z]+$/u.test(one));

/** 'Does anything here have peanuts': a word of a meal's name that is a food itself, where foods are asked about. */
export function isFoodNotMeal(look: Look): boolean {
  const [meal, another] = look.said.meals;
  if (!meal || another || meal.whole || meal.at.length !== 1) return false;
  const { typed } = look.said.all[meal.at[0]!]!;
  // Another food is named: 'sulphites in the oats'.
  const others = look.said.all.some(
    ({ is, typed: word }, i) =>
      is === 'word' && !meal.at.includes(i) && new RegExp(`^(?:${avoidable.source})$`, 'iu').test(word),
  );
  if (others) return false;
  const isFood = new RegExp(`^(?:${avoidable.source})$`, 'iu').test(typed);
  const isOfSome =
    look.said.people.length > 0 ||
    look.says(
      / (?:anything|any of|something|which|what|everything|meals?|dishes|all (?:the )?(?:meals|pouches|food)|one|ones) /,
    );
  return isFood && isOfSome && !look.says(/ (?:soup|stew|curry|chili|pot) /);
}

export function avoided(look: Look): string | undefined {
  const inMeals = new Set(look.said.meals.filter(({ whole }) => whole).flatMap(({ at }) => at));
  const words = look.said.all
    .flatMap((token, i) => (token.is === 'word' && !inMeals.has(i) ? [token.typed] : []))
    .join(' ');
  const found = [...words.matchAll(avoidable)]
    .map((m) => m[1]!)
    .filter((word) => !look.said.meals.some(({ at }) => at.some((i) => look.said.all[i]!.typed === word)));
  const diet = diets.exec(words)?.[1]?.replace(' ', '-');
  return found[0] ?? diet;
}
