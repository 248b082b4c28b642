import { oxygenFreeMostMoistureFraction } from './balance.ts';
import { latestDryG } from './meal.ts';
import type { Batch, Bought, Mix, Recipe, RecipeLine } from './records.ts';
import { Refusal } from './refusal.ts';
import { type Per100, shareOnTrays } from './solids.ts';
import { above } from './within.ts';

/** So much of a batch, in each pouch. */
export interface Taken {
  readonly batch: Batch;
  readonly eachG: number;
}

/**
 * A mixture as a meal of its own. Its recipe is of one pouch: what came from the cupboard, and every line of every
 * batch in it by its share, so that whatever looks at a recipe (contents, sodium, energy, what nobody understood) sees
 * the whole pouch.
 * @param own the mixture's own recipe: name, servings of one pouch, lines of the goods
 * @throws Refusal 'no-dry-weight' for a batch that was not weighed dry, 'impossible-weight'
 */
export function mixture(
  own: Recipe,
  parts: readonly Taken[],
  bought: Bought | null = null,
): { recipe: Recipe; mix: Mix } {
  const shares = parts.map(({ batch, eachG }) => ({ batch, eachG, ...shareOf(batch, eachG) }));
  return {
    recipe: {
      ...own,
      potG: null,
      lines: [...own.lines, ...shares.flatMap(({ batch, share }) => linesOf(batch, share))],
      mentions: [...own.mentions, ...shares.flatMap(({ batch }) => batch.recipe.mentions)],
    },
    mix: {
      goods: own.lines,
      bought,
      parts: shares.map(({ batch, eachG, wetG }) => ({
        batch: batch.no,
        meal: batch.recipe.name,
        eachG,
        wetG,
      })),
    },
  };
}

/** How much of a batch's recipe, and of what lay on the trays, is in so much of it dry. */
function shareOf(batch: Batch, eachG: number): { share: number; wetG: number } {
  above('impossible-weight', 'What is taken of a batch', eachG, 0, 'g');
  const dryG = latestDryG(batch);
  if (dryG === null) throw new Refusal('no-dry-weight', `B${batch.no} has no dry weight yet.`);
  const loadedG = batch.trays.reduce((sum, { wetG }) => sum + wetG, 0);
  const part = eachG / dryG;
  return { share: part * batch.factor * shareOnTrays(loadedG, batch.potG), wetG: part * loadedG };
}

const linesOf = ({ recipe }: Batch, share: number): RecipeLine[] =>
  recipe.lines.map((line) => ({ ...line, grams: line.grams === null ? null : line.grams * share }));

/**
 * Whether food from the cupboard is dry enough to lie beside dried food without oxygen: its water is known and within
 * the limit, meant of the food without its fat.
 * @param per100 of the food; undefined where nobody knows what it is
 * @source oxygen-free-leaflet
 */
export function isDryGood(per100: Per100 | undefined): boolean {
  if (per100 === undefined || per100.waterG === null) return false;
  const fatlessG = 100 - (per100.fatG ?? 0);
  return fatlessG <= 0 || per100.waterG <= oxygenFreeMostMoistureFraction * fatlessG + 1e-9;
}
