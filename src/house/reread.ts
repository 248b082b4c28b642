import type { Contents } from '#core/allergens.ts';
import { nothing, together, widened } from '#core/contents.ts';
import type { RecipeLine } from '#core/records.ts';
import type { FoodTable } from '#foods/food.ts';
import { type LineResult, resolveLine } from '#foods/line.ts';
import type { Stores } from '#store/house.ts';

/** What a line holds by its record and by a closer reading together: nothing that was known is lost. */
function widerContents(old: RecipeLine, read: LineResult): Contents | null {
  if (old.contents === null) return null;
  const isSame = read.food !== null && read.food.ndb === old.ndb;
  return together([old.contents, (isSame ? read.own : read.contents) ?? widened(nothing)]);
}

/**
 * Reads the lines again that an older reader read, which let words go that name food. Grams and food stay as they are;
 * what a line holds only grows, and a word that nobody understood is asked about.
 * @returns how many lines were read
 */
export function rereadLines(stores: Stores, foods: FoodTable): number {
  const old = stores.oldLines.all();
  for (const { household, id, line } of old) {
    const { learnt } = stores.of(household);
    const measures = learnt.measures().map(({ unit, food, grams, ml }) => ({
      unit,
      food,
      ...(grams === null ? {} : { grams }),
      ...(ml === null ? {} : { ml }),
    }));
    const read = resolveLine(line.typed, foods, { foods: learnt.foods(), measures });
    const named = read.food === null ? [] : read.named.map(({ called, contents }) => ({ called, contents }));
    const question = line.question ?? (line.state === 'asked' ? null : read.question);
    stores.oldLines.keep(household, id, { ...line, contents: widerContents(line, read), named, question });
  }
  return old.length;
}
