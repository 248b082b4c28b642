import type { Account, Named } from './account.ts';
import { short } from './amount-of.ts';
import type { Choice } from './choices.ts';
import { together, widened } from '#core/contents.ts';
import type { Found } from './find.ts';
import type { LineResult } from './line-result.ts';
import type { ReadLine } from './read.ts';

/** A line whose food is asked for: what it names is certain all the same, the rest is open. */
export function asking(result: LineResult, { named, unknown }: Account): LineResult {
  const known = together(named.map(({ contents }) => contents));
  const isTold = unknown.length === 0 && named.some(({ isDish }) => isDish);
  const isList = unknown.length === 0 && named.length > 1 && !named.some(({ isBeside }) => isBeside);
  const contents = named.length === 0 ? null : isTold || isList ? known : widened(known);
  return {
    ...result,
    contents,
    own: contents,
    named,
    unknown,
  };
}

export const askedAsDish = (result: LineResult, words: string, dish: Named): LineResult => ({
  ...result,
  is: 'asked',
  wanted: 'food',
  food: null,
  called: short(words),
  question: dish.isKind
    ? `Which food is "${short(words)}"?`
    : `"${dish.called}" is a dish: give its ingredients a line each, or say which food is meant.`,
  choices: [],
  confidence: 0,
});

/** A weight is a weight whatever the food: it is kept, though nothing is counted until the food is settled. */
export function askFood(
  base: LineResult,
  line: ReadLine,
  top: Found | undefined,
  choices: Choice[],
): LineResult {
  const isMass =
    line.amounts.length > 0 &&
    !line.readings &&
    line.amounts.every(({ unit, value }) => unit?.grams !== undefined && value > 0);
  const sum = line.amounts.reduce((total, { value, unit }) => total + value * (unit?.grams ?? 0), 0);
  return {
    ...base,
    is: 'asked',
    wanted: 'food',
    question: `Which food is "${short(base.called)}"?`,
    choices: choices.slice(0, 3),
    confidence: top?.confidence ?? 0,
    grams: line.statedG ?? (isMass ? sum * line.factor : null),
  };
}
