import { type Amount, weightIn } from './amount.ts';

/** What is done to a food before the second weight on its packet is true. */
const after =
  '(?:drained|peeled|net|prepared|trimmed|cleaned|shelled|podded|pitted|stoned|boned|boneless|meat|flesh|edible)';
const weight = String.raw`(?:about |approx\.? |ca\.? |~|=)*\d+(?:[.,]\d+)? ?(?:k?g|grams?|oz|ounces?|lbs?|pounds?)\b`;
const weightFirst = new RegExp(`(${weight})(?: weight)?(?: when| once| after)? ?${after}\\b`, 'i');
const wordFirst = new RegExp(`${after}(?: weight)? ?:?(?: of)? ?(${weight})`, 'i');

/**
 * The weight in a note that is true of what is eaten: '240 g drained', 'about 1 kg peeled', 'drained weight 240 g',
 * '112 g net'; of two weights the one that says so.
 */
export function edibleWeight(text: string): Amount | undefined {
  if (text.length > 80) return undefined;
  const found = weightFirst.exec(text)?.[1] ?? wordFirst.exec(text)?.[1];
  return found === undefined ? undefined : weightIn(found);
}
