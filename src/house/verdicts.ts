import type { Avoidance } from '#core/avoidance.ts';
import { sodiumOfDayMg } from '#core/eaters.ts';
import type { RecipeFacts } from '#core/meal.ts';
import type { Eater, Recipe } from '#core/records.ts';
import type { Note } from '#core/talk.ts';
import { type Ingredient, type Verdict, verdictFor } from '#core/verdict.ts';
import { avoidanceNamed, foodByName } from '#foods/avoided.ts';
import { phoneLines } from '#words/phone.ts';
import { sayCount, sayList } from '#words/say.ts';
import type { House } from './house.ts';
import { batchNumbered, factsOfRecipe } from './figures.ts';

/** A meal as an answer names it: what its verdicts and its sodium rest on. */
export interface MealShown {
  readonly name: string;
  readonly contents: readonly Ingredient[];
  /** Of one serving, mg; null where it is not known. */
  readonly sodiumMgPerServing: number | null;
  /** Salt in it was not weighed. */
  readonly isSodiumLeast: boolean;
}

/** What recorded words keep away; a food that only the big table knows is looked for by its name. */
export function avoidancesOf(words: readonly string[]): Avoidance[] {
  return words.map((word) => avoidanceNamed(word) ?? foodByName(word));
}

/** What must be kept from somebody. */
export const barsOf = ({ never, exact }: Pick<Eater, 'never' | 'exact'>): Avoidance[] =>
  never.map((word) => avoidanceNamed(word, exact.includes(word)) ?? foodByName(word));

/** Whether a meal suits an eater by its recorded ingredients. */
export function verdictOn(eater: Pick<Eater, 'never' | 'exact'>, meal: Pick<MealShown, 'contents'>): Verdict {
  return verdictFor(meal.contents, barsOf(eater));
}

/** Whether a meal may stand on the table at which somebody sits who must not be near some foods. */
export function mayBeNear(
  { apart, exact }: Pick<Eater, 'apart' | 'exact'>,
  meal: Pick<MealShown, 'contents'>,
): boolean {
  return verdictOn({ never: apart, exact }, meal).is === 'clear';
}

/** Whether an eater would rather not have it. */
export function isDisliked(
  eater: Pick<Eater, 'dislikes'>,
  meal: Pick<MealShown, 'contents' | 'name'>,
): boolean {
  if (eater.dislikes.length === 0) return false;
  const named = [...meal.contents, { ingredient: meal.name, contents: null }];
  return verdictFor(named, avoidancesOf(eater.dislikes)).is === 'blocked';
}

/** 'egg (egg noodles), milk (cheddar, whole milk)': each thing once, with the ingredients that bring it. */
export function becauseWords(list: readonly { what: string; ingredient: string }[]): string {
  const bringers = new Map<string, Set<string>>();
  for (const { what, ingredient } of list)
    bringers.set(what, (bringers.get(what) ?? new Set()).add(ingredient));
  const said = [...bringers].map(([what, ingredients]) => {
    const others = [...ingredients].filter((ingredient) => ingredient !== what);
    return others.length === 0 ? what : `${what} (${others.join('; ')})`;
  });
  return said.length > 4 ? `${said.slice(0, 3).join(', ')} and ${said.length - 3} more` : sayList(said);
}

/** A share of the day's sodium from which it is worth a word to somebody with no limit of their own. Chosen. */
const noteworthyShare = 0.4;

/**
 * What is told of a meal to whom: what is kept from somebody or unknown to them; also that it is clear for somebody, where
 * that was the question; also its share of the day's sodium, where somebody is about to eat.
 */
export type NotesTold = 'barred' | 'verdicts' | 'shares';

function noteOn(eater: Eater, meal: MealShown, told: NotesTold): Note | undefined {
  const verdict = verdictOn(eater, meal);
  const bar = (text: string): Note => ({ who: eater.name, text, bars: true });
  if (verdict.is === 'blocked') return bar(`not for you: ${becauseWords(verdict.by)}`);
  if (verdict.is === 'unknown') return bar(`unknown, so not for you yet: ${becauseWords(verdict.because)}`);
  const text = told === 'barred' ? undefined : clearNote(eater, meal, told);
  return text === undefined ? undefined : { who: eater.name, text };
}

/** What is told of a meal that an eater may have. */
function clearNote(eater: Eater, meal: MealShown, told: Exclude<NotesTold, 'barred'>): string | undefined {
  if (told === 'verdicts') return eater.never.length > 0 ? 'clear' : undefined;
  const day = sodiumOfDayMg(eater);
  const share =
    day && meal.sodiumMgPerServing !== null
      ? (meal.sodiumMgPerServing * eater.portion) / day.value
      : undefined;
  const sodium =
    share === undefined
      ? undefined
      : `${meal.isSodiumLeast ? 'at least ' : ''}${Math.round(share * 100)} % of the day's sodium`;
  if (eater.never.length > 0) return ['clear', ...(sodium ? [sodium] : [])].join(', ');
  const hasLimit = eater.sodiumMg !== null || eater.kind === 'child';
  return share !== undefined && (hasLimit || share >= noteworthyShare) ? sodium : undefined;
}

/**
 * For each person for whom the meals of an answer change something, one short note: what they may not have.
 */
export function notesOn(
  eaters: readonly Eater[],
  meals: readonly MealShown[],
  told: NotesTold = 'barred',
): Note[] {
  if (meals.length === 0) return [];
  return eaters.flatMap((eater): Note[] => {
    if (meals.length === 1) {
      const note = noteOn(eater, meals[0]!, told);
      return note ? [note] : [];
    }
    if (eater.never.length === 0) return [];
    const text = severalMeals(eater, meals);
    return text === undefined ? [] : [{ who: eater.name, text, bars: true }];
  });
}

function severalMeals(eater: Eater, meals: readonly MealShown[]): string | undefined {
  const judged = meals.map((meal) => ({ meal, verdict: verdictOn(eater, meal) }));
  const blocked = judged.flatMap(({ meal, verdict }) =>
    verdict.is === 'blocked'
      ? [`${meal.name} (${sayList([...new Set(verdict.by.map((b) => b.what))])})`]
      : [],
  );
  const unknown = judged.flatMap(({ meal, verdict }) =>
    verdict.is === 'unknown'
      ? [`${meal.name} (${sayList([...new Set(verdict.because.map((b) => b.ingredient))].slice(0, 2))})`]
      : [],
  );
  if (blocked.length + unknown.length === 0) return undefined;
  return [
    ...(blocked.length > 0 ? [`not ${sayList(blocked)}`] : []),
    ...(unknown.length > 0 ? [`unknown: ${sayList(unknown)}`] : []),
    ...(blocked.length + unknown.length < meals.length ? ['the rest is clear'] : []),
  ].join('; ');
}

/** What of the stock suits an eater, a line for each verdict. */
export function stockVerdicts(
  house: House,
  eater: Eater,
): { readonly lines: string[]; readonly why: string[]; readonly heed: string[]; readonly isEmpty: boolean } {
  const meals = mealsInStock(house);
  const isEmpty = meals.length === 0;
  if (isEmpty) return { lines: ['Nothing is in stock yet.'], why: [], heed: [], isEmpty };
  const of = (is: Verdict['is']) => meals.filter((meal) => verdictOn(eater, meal).is === is);
  const reason = (meal: MealShown) => {
    const verdict = verdictOn(eater, meal);
    if (verdict.is === 'blocked') return `${meal.name} (${becauseWords(verdict.by)})`;
    return verdict.is === 'unknown' ? `${meal.name} (${becauseWords(verdict.because)})` : meal.name;
  };
  const clear = of('clear');
  const named = `Clear in stock: ${sayList(clear.map(reason))}.`;
  const isLong = clear.length > 1 && phoneLines(named) > mostLinesOfClear;
  const lines = [
    clear.length === 0
      ? 'Nothing in stock is clear.'
      : isLong
        ? `Clear in stock: ${clear.length} of ${sayCount(meals.length, 'meal')}.`
        : named,
    ...(of('blocked').length > 0 ? [`Blocked: ${sayList(of('blocked').map(reason))}.`] : []),
    ...(of('unknown').length > 0 ? [`Unknown, so not served: ${sayList(of('unknown').map(reason))}.`] : []),
  ];
  return { lines, why: isLong ? [named] : [], heed: eater.never.length > 0 ? [clearCaution] : [], isEmpty };
}

/** What 'clear' does not speak of. */
export const clearCaution = 'Clear by ingredients; traces unknown.';

/** What is clear is named where it takes no more phone lines. Chosen; what is not clear is always named. */
const mostLinesOfClear = 2;

/** Each meal in stock once, with the contents of every wording of it. */
export function mealsInStock(house: House): MealShown[] {
  const byMeal = new Map<string, MealShown>();
  for (const id of house.pouches.recipes()) {
    const meal = mealOfRecipeRow(house, id);
    const before = byMeal.get(meal.name);
    byMeal.set(meal.name, before ? { ...meal, contents: [...before.contents, ...meal.contents] } : meal);
  }
  for (const no of house.pouches.mixes()) {
    const meal = mealOfBatch(house, no);
    const before = byMeal.get(meal.name);
    byMeal.set(meal.name, before ? { ...meal, contents: [...before.contents, ...meal.contents] } : meal);
  }
  return [...byMeal.values()];
}

function mealOfRecipeRow(house: House, id: number): MealShown {
  const recipe = house.recipes.byId(id);
  return mealOfRecipe(recipe, factsOfRecipe(house, recipe));
}

/** A recipe's meal. */
export function mealOfRecipe(recipe: Recipe, facts: RecipeFacts): MealShown {
  return {
    name: recipe.name,
    contents: facts.contents,
    sodiumMgPerServing: facts.eaten.sodiumMg / recipe.servings,
    isSodiumLeast: facts.isSodiumLeast,
  };
}

/** A batch's meal, from the wording it was cooked from. */
export function mealOfBatch(house: House, no: number): MealShown {
  const { recipe } = batchNumbered(house, no);
  return mealOfRecipe(recipe, factsOfRecipe(house, recipe));
}

/** A meal as it is in stock, else as its recipe has it. */
export const shownOf = (house: House, recipe: Recipe): MealShown =>
  mealsInStock(house).find((m) => m.name === recipe.name) ??
  mealOfRecipe(recipe, factsOfRecipe(house, recipe));
