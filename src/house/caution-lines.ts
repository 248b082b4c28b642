import type { CautionLine } from '#core/cautions.ts';
import type { Recipe } from '#core/records.ts';
import type { FoodTable } from '#foods/food.ts';

/** A recipe's lines as the cautions see them. */
export function cautionLines(recipe: Recipe, foods: FoodTable): CautionLine[] {
  return recipe.lines.map(({ called, typed, ndb, grams }) => {
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
