import type { DayFed } from '#core/picks/fed.ts';
import { sayCount } from '#words/say.ts';
import type { House } from './house.ts';
import { factsOfRecipe, nameKey } from './figures.ts';
import { usesOf } from './occasions.ts';
import { mealOfRecipe, verdictOn } from './verdicts.ts';

/** What would mend what is short: servings of the household's richest main that all who are short may have. */
export function mendLines(house: House, fed: readonly DayFed[]): string[] {
  const short = fed.filter((one) => one.shortKcal > 0);
  const missing = fed.some((one) => one.missed.length > 0);
  if (short.length === 0) return missing ? ['/cook tells what to cook for it.'] : [];
  const eaters = house.eaters.all().filter(({ id }) => short.some((one) => Number(one.eater) === id));
  const [best] = house.recipes
    .names()
    .map((name) => house.recipes.find(nameKey(name))!)
    .filter((recipe) => usesOf(house, recipe).is.includes('main'))
    .map((recipe) => {
      const facts = factsOfRecipe(house, recipe);
      const isClear = eaters.every((eater) => verdictOn(eater, mealOfRecipe(recipe, facts)).is === 'clear');
      return { recipe, kcal: isClear ? facts.eaten.kcal / recipe.servings : 0 };
    })
    .toSorted((a, b) => b.kcal - a.kcal);
  const all = short.reduce((sum, one) => sum + one.shortKcal, 0);
  if (!best || best.kcal < 200) return ['/cook tells what to cook for it.'];
  return [
    `About ${sayCount(Math.ceil(all / best.kcal), 'serving')} more of ${best.recipe.name} would mend it: /cook.`,
  ];
}
