import { isAllFruit } from '#core/eaten-dry.ts';
import type { Batch, Recipe } from '#core/records.ts';
import { cautionLines } from './caution-lines.ts';
import { batchNumbered } from './figures.ts';
import type { House } from './house.ts';

/** Whether food is eaten as it is, without water; and whether somebody said so or it was guessed. */
export type HowEaten =
  | { readonly isDry: false }
  | { readonly isDry: true; readonly because: 'told' | 'all fruit'; readonly meal: string };

const soaked: HowEaten = { isDry: false };

/** A recipe with a line that nobody understood is never guessed to be eaten dry. */
export function howEaten(house: Pick<House, 'foods'>, recipe: Recipe): HowEaten {
  if (recipe.eaten === 'dry') return { isDry: true, because: 'told', meal: recipe.name };
  const mayGuess =
    recipe.eaten === null &&
    recipe.lines.every(({ state, question }) => state !== 'asked' && question === null);
  return mayGuess && isAllFruit(cautionLines(recipe, house.foods))
    ? { isDry: true, because: 'all fruit', meal: recipe.name }
    : soaked;
}

/** The same of what lies in a pouch. What was dried raw is cooked; a mixture is eaten dry where all its parts are. */
export function howBatchEaten(house: House, batch: Batch): HowEaten {
  if (batch.isRaw) return soaked;
  if (batch.mix?.bought)
    return batch.mix.bought.waterMl > 0 ? soaked : { isDry: true, because: 'told', meal: batch.recipe.name };
  if (!batch.mix) return howEaten(house, batch.recipe);
  const parts = batch.mix.parts.map((part) => howBatchEaten(house, batchNumbered(house, part.batch)));
  const guessed = parts.find((part) => part.isDry && part.because === 'all fruit');
  return parts.every(({ isDry }) => isDry) ? (guessed ?? parts[0]!) : soaked;
}

/** Meals of a mixture that are eaten dry alone, where the whole is soaked. */
export function soakedAlong(house: House, batch: Batch): string[] {
  if (!batch.mix || howBatchEaten(house, batch).isDry) return [];
  return batch.mix.parts.flatMap((part) => {
    const alone = howBatchEaten(house, batchNumbered(house, part.batch));
    return alone.isDry ? [alone.meal] : [];
  });
}
