import type { CautionLine } from '#core/cautions.ts';
import type { Recipe } from '#core/records.ts';
import type { FoodTable } from '#foods/food.ts';

/** What of a recipe is dried, as the cautions see it. */
export function cautionLines(recipe: Recipe, foods: FoodTable): CautionLine[] {
  return recipe.lines
    .filter(({ camp }) => camp === null)
    .map(({ called, typed, ndb, grams }) => {
      const food = ndb === null ? undefined : foods.byNdb(ndb);
      return {
        called,
        typed,
        tableName: food?.name ?? null,
        group: food?.group ?? null,
        grams,
        waterG: food?.per100.waterG ?? null,
        fatG: food?.per100.fatG ?? null,
      };
    });
}
