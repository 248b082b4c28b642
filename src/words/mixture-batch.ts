import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { isFiller } from './fillers.ts';
import { batchNamed } from './named.ts';
import { fold } from './near.ts';
import { type Names, takeMeal } from './part.ts';
import type { Reading } from './reading.ts';

/** Words round what lies in a pouch that say no more. */
export const around = new Set(
  'each every in into a i we per one together mixed mix combined both apiece all pouch pouches bag bags from of the x × batch ( ) : , ; . !'.split(
    ' ',
  ),
);

/** What these tokens say, as typed, with all between them. */
export const textOf = (reading: Reading, at: readonly number[]): string =>
  reading.text.slice(reading.all[at[0]!]!.from, reading.all[at.at(-1)!]!.to);

/** A batch by its code or by the name of its meal, and only where that leaves no word over. */
export function batchIn(
  view: Reading,
  at: readonly number[],
  alone: Reading,
  names: Names,
): number | undefined {
  if (at.some((index) => view.all[index]!.is === 'batch')) {
    const batch = batchNamed('any').read(alone, names)!;
    // The meal's name may stand beside its batch's code.
    const meal = takeMeal(alone, names.meals, names.otherNames);
    if (meal !== undefined && !names.batchesOf(meal, false).includes(batch))
      throw new Refusal('other-meal', `B${batch} is not ${meal}. Nothing was recorded.`);
    const stray = strayIn(alone);
    if (stray !== undefined)
      throw new Refusal('leftover', `I could not place "${stray}" beside B${batch}. Nothing was recorded.`);
    return batch;
  }
  const tried = alone.without([]);
  const meal = takeMeal(alone.without([]), names.meals, names.otherNames);
  const batch = meal === undefined ? undefined : batchOrNone(tried, names);
  if (meal === undefined || batch === undefined || strayIn(tried) !== undefined) return undefined;
  const left = new Set(tried.left());
  const named = [...alone.left()].filter((index) => !left.has(index));
  const isWhole = [meal, ...names.otherNames.keys()].some((name) => fold(name) === fold(textOf(view, named)));
  if (!isWhole) throw whichOfTwo(view, named, batch, meal);
  view.remarks.push(...tried.remarks, `"${textOf(view, named)}" is B${batch} here`);
  return batch;
}

/** A word that neither names nor counts nor merely stands round what is named. */
const strayIn = (reading: Reading): string | undefined =>
  [...reading.left()]
    .map((index) => reading.all[index]!)
    .find(({ is, plain }) => is !== 'mark' && !around.has(plain) && !(is === 'word' && isFiller(plain)))
    ?.typed;

/** 'Rice' is perhaps the batch of rice and beans, perhaps rice from the cupboard. */
function whichOfTwo(view: Reading, named: readonly number[], batch: number, meal: string): Ambiguous {
  const typed = textOf(view, named);
  const span = { from: view.all[named[0]!]!.from, to: view.all[named.at(-1)!]!.to };
  const option = (label: string, into: string) => ({ label, request: view.rewritten([{ ...span, into }]) });
  return new Ambiguous(`Is "${typed}" of B${batch}, ${meal}, or food from the cupboard?`, [
    option(`B${batch} ${meal}`, `B${batch}`),
    option(`"${typed}" from the cupboard`, `"${typed}"`),
  ]);
}

function batchOrNone(tried: Reading, names: Names): number | undefined {
  try {
    return batchNamed('any').read(tried, names);
  } catch (error) {
    if (error instanceof Refusal && error.code === 'no-batch-of') return undefined;
    throw error;
  }
}
