import { calledAs } from './calling.ts';
import type { Found } from './find.ts';
import { stripped } from './said.ts';
import type { FoodTable } from './food.ts';
import { kitchen } from './kitchen.ts';
import type { ReadLine } from './read.ts';
import { foldedWords } from './words.ts';

export interface Choice {
  readonly label: string;
  /** A line that, in place of this one, resolves without a question. */
  readonly typed: string;
}

/** Up to three foods the words may mean, each as a line that resolves by itself. @param except what it was read as */
export function foodChoices(
  found: readonly Found[],
  line: ReadLine,
  table: FoodTable,
  resolves: (typed: string) => boolean,
  except = '',
): Choice[] {
  const out: Choice[] = [];
  const own = new Set(stripped(line.words).split(' '));
  // A weight from brackets stays with the line.
  const { statedG, each, amountText } = line;
  const eachText =
    each && !amountText.includes(String(each.value)) ? ` (${each.value} ${each.unit?.name} each)` : '';
  const weight = statedG === null ? eachText : ` (${statedG} g)`;
  const add = (called: string) => {
    const typed = `${amountText} ${called}${weight}`.trim();
    if (!foldedWords(called).some((word) => own.has(word))) return;
    if (called === except || out.length >= 3 || out.some((choice) => choice.label === called)) return;
    if (resolves(typed)) out.push({ label: called, typed });
  };
  for (const { called, scale } of found) if (scale.entry) add(called);
  const words = stripped(line.words);
  if (words !== '')
    for (const food of table.search(words, 8)) {
      const entry = kitchen().find((one) => one.ndb === food.ndb && !one.standsIn);
      if (entry) add(calledAs(entry));
    }
  return out;
}

/** The line without the words that nobody understood: what a person taps who knows that they bring no food. */
export function withoutWords(
  typed: string,
  unknown: readonly string[],
  resolves: (typed: string) => boolean,
): Choice[] {
  const left = typed
    .replace(/\p{L}[\p{L}\p{N}\p{M}'’]*/gu, (word) =>
      foldedWords(word).some((one) => unknown.includes(one)) ? '' : word,
    )
    .replace(/\( *\)/g, ' ')
    .replace(/\s+([,)])/g, '$1')
    .replace(/\s+/g, ' ')
    .trim();
  return left !== typed && resolves(left)
    ? [{ label: `"${unknown.join(' ')}" brings no food`, typed: left }]
    : [];
}
