import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { roleOf } from './eater-words.ts';
import type { Reading } from './reading.ts';

/** What is known of foods and diets that may be kept from somebody. */
export interface Larder {
  /** Whether the words name an allergen, a kind, a diet or a food. */
  readonly knows: (words: string) => boolean;
  /** Whether they name a way of eating, such as vegan. */
  readonly isDiet: (words: string) => boolean;
  /** What mistyped words may mean, each another thing. */
  readonly near: (words: string) => readonly string[];
}

/** A food as it stands in the message. */
export interface Thing {
  readonly words: string;
  readonly indexes: readonly number[];
}

/** Words of other parts of a request: a note ends where one begins. */
export const stops = new Set(
  `portion portions sodium energy age aged child kid guest visitor adult grown-up male female boy girl man woman active moderately
  moderate sedentary gone left leave kcal calories calorie year years yr yrs old yo y before until baby toddler`.split(
    /\s+/,
  ),
);
const separators = new Set(
  ', & + / and or nor plus also any all the a an of incl including especially'.split(' '),
);
const longestPhrase = 5;

/** A food and a word about it in one: 'dairy-free'. */
export const withWord = /^(.+)-(free|intolerant|intolerance|allergic|allergy|sensitive)$/u;

/** Small words that may be the last of a food's or a diet's name. */
const mayEnd = /^(?:products?|foods?|dish(?:es)?|diet|disease|ingredients?|family)$/u;

/** The longest known food or diet that begins at a word. */
export function thingAt(reading: Reading, start: number, larder: Larder): Thing | undefined {
  const words: string[] = [];
  let found: Thing | undefined;
  for (let i = start; i < reading.all.length && words.length < longestPhrase; i++) {
    const token = reading.at(i);
    if (token?.is !== 'word' || stops.has(token.plain)) break;
    // 'Dill and pickle' are two, though there is a dill pickle; 'half and half' is one.
    if (found !== undefined && /^(?:and|or|nor|plus|also)$/u.test(token.plain)) break;
    words.push(token.plain);
    // 'Peanut allergy' and 'nuts and' are a food and a word about it; 'milk products' is one.
    if (roleOf(token.plain) !== undefined && !mayEnd.test(token.plain)) continue;
    const phrase = words.join(' ');
    const bare = words.length === 1 ? withWord.exec(phrase)?.[1] : undefined;
    if (larder.knows(phrase) || (bare !== undefined && larder.knows(bare)))
      found = { words: phrase, indexes: words.map((_, k) => start + k) };
  }
  return found;
}

/** A food a typing slip away, the longest stretch of words first. @throws Ambiguous for two of them */
export function mended(reading: Reading, start: number, larder: Larder): Thing | undefined {
  const indexes: number[] = [];
  for (let i = start; i < reading.all.length && indexes.length < 3; i++) {
    const token = reading.at(i);
    if (token?.is !== 'word' || stops.has(token.plain) || (i > start && separators.has(token.plain))) break;
    indexes.push(i);
  }
  for (; indexes.length > 0; indexes.pop()) {
    const tokens = indexes.map((i) => reading.all[i]!);
    const typed = reading.text.slice(tokens[0]!.from, tokens.at(-1)!.to);
    const found = larder.near(typed.toLowerCase());
    if (found.length > 1)
      throw new Ambiguous(
        `"${typed}" may be ${found.slice(0, 4).join(' or ')}. Which is meant?`,
        found.slice(0, 4).map((one) => ({
          label: one,
          request: reading.rewritten([{ from: tokens[0]!.from, to: tokens.at(-1)!.to, into: one }]),
        })),
      );
    if (found.length === 1) {
      reading.remarks.push(`read "${typed}" as ${found[0]!}`);
      return { words: found[0]!, indexes: [...indexes] };
    }
  }
  return undefined;
}

/** All foods of a list: 'eggs, peanuts and milk'; behind a word that asks for foods each of them must be understood. */
export function listFrom(reading: Reading, first: Thing, larder: Larder, isAsked: boolean): Thing[] {
  const things = [first];
  for (;;) {
    let at = things.at(-1)!.indexes.at(-1)! + 1;
    const start = at;
    while (separators.has(reading.at(at)?.plain ?? '')) at += 1;
    const token = reading.at(at);
    if (token?.is !== 'word' || stops.has(token.plain) || roleOf(token.plain) !== undefined) return things;
    const isParted = at > start;
    const next =
      thingAt(reading, at, larder) ?? (isAsked && isParted ? mended(reading, at, larder) : undefined);
    if (next !== undefined) things.push(next);
    else if (isAsked && isParted && /^\p{Ll}/u.test(token.typed))
      throw notUnderstood(reading, first.indexes, at);
    else return things;
  }
}

/** What was read of a note and what was not. */
export function notUnderstood(reading: Reading, before: readonly number[], at: number | undefined): Refusal {
  const said = before.map((i) => reading.all[i]!.typed).join(' ');
  const word = at === undefined ? undefined : reading.all[at]!.typed;
  return new Refusal(
    'not-understood',
    word === undefined
      ? `I read "${said}", but not of which food. Nothing was recorded.`
      : `I know no food, allergen or diet called "${word}" (after "${said}"). Nothing was recorded.`,
  );
}
