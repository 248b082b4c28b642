import type { RecipeFacts } from '#core/meal.ts';
import type { Batch, Recipe } from '#core/records.ts';
import { expectedDryG } from '#core/balance.ts';
import { ingredientsCost, sayMoney } from '#house/costs.ts';
import { factsOfBatch, factsOfRecipe, nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { usesOf } from '#house/occasions.ts';
import { fold } from '#words/near.ts';
import { sayG } from '#words/say.ts';

interface Serving {
  readonly sodiumMg: number;
  readonly isLeast: boolean;
  readonly kcal: number;
  readonly dryG: number;
}

const least = (one: Serving) => (one.isLeast ? 'at least ' : '');
const thousands = (mg: number) => Math.round(mg).toLocaleString('en-GB');

/** A serving of a house's meal, by its recipe. */
function servingOf(house: House, recipe: Recipe, facts: RecipeFacts): Serving {
  const { solidsG } = facts.totals;
  return {
    sodiumMg: facts.eaten.sodiumMg / recipe.servings,
    isLeast: facts.isSodiumLeast,
    kcal: facts.eaten.kcal / recipe.servings,
    dryG: (solidsG > 0 ? expectedDryG(solidsG, house.settings.residualMoisture) : 0) / recipe.servings,
  };
}

/** What a serving of either costs, where all of both is priced: '; 0.85 against 6.90 EUR'. */
function money(house: House, own: Recipe, bought: Recipe): string {
  const [yours, theirs] = [own, bought].map((recipe) => ({
    ...ingredientsCost(house, recipe.lines),
    servings: recipe.servings,
  }));
  if (yours!.unpriced.length + theirs!.unpriced.length > 0) return '';
  const currency = house.prices.all().find((price) => price.currency !== '')?.currency ?? '';
  const each = ({ sum, servings }: { sum: number; servings: number }) => sayMoney(sum / servings, currency);
  return `; ${each(yours!)} of ingredients against ${each(theirs!)}`;
}

/** A bought meal and one of the house's own, figure beside figure; nothing where either has none. */
export function besideLine(house: House, bought: Batch, recipe: Recipe): string[] {
  const [facts, own] = [factsOfBatch(house, bought), factsOfRecipe(house, recipe)];
  if (facts.recipe.unresolved.length > 0 || !(own.totals.massG > 0)) return [];
  const servings = bought.recipe.servings;
  const theirs: Serving = {
    sodiumMg: facts.eaten.sodiumMg / servings,
    isLeast: facts.recipe.isSodiumLeast,
    kcal: facts.eaten.kcal / servings,
    dryG: facts.dryG! / servings,
  };
  const yours = servingOf(house, recipe, own);
  const g = (value: number) => sayG(value, house.settings.units);
  const { unknown } = facts.eaten;
  const isTold = (nutrient: 'sodiumMg' | 'kcal') => !unknown.some((one) => one.nutrient === nutrient);
  const salt = isTold('sodiumMg') ? `${least(theirs)}${thousands(theirs.sodiumMg)} mg` : 'not told';
  const energy = isTold('kcal') ? String(Math.round(theirs.kcal)) : 'not told';
  return [
    `A serving beside your ${recipe.name}: yours ${least(yours)}${thousands(yours.sodiumMg)} mg sodium, the bought one ${salt}; ${Math.round(yours.kcal)} kcal against ${energy}; ${g(yours.dryG)} to carry against ${g(theirs.dryG)}${money(house, recipe, bought.recipe)}.`,
  ];
}

/** The house's meal that a bought main is likest to: by a word of its name, else the one of which most is in stock. */
export function likeMeal(house: House, { recipe: bought, mix }: Batch): Recipe | undefined {
  const uses = usesOf(house, bought);
  // Salami is no meal; what takes hot water or was called one is.
  const isMeal = uses.from === 'told' || (mix?.bought?.waterMl ?? 0) > 0;
  if (!isMeal || !uses.is.includes('main')) return undefined;
  const words = new Set(fold(bought.name).split(' '));
  const mains = house.recipes
    .names()
    .map((name) => house.recipes.find(nameKey(name))!)
    .filter((recipe) => usesOf(house, recipe).is.includes('main'));
  const named = mains.find(({ name }) =>
    fold(name)
      .split(' ')
      .some((word) => word.length > 3 && words.has(word)),
  );
  return (
    named ??
    mains.toSorted(
      (a, b) => house.pouches.inStockOf(b.name).length - house.pouches.inStockOf(a.name).length,
    )[0]
  );
}
