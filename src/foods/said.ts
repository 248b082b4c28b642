import type { ReadLine } from './read.ts';
import { neutral, stateWords } from './vocabulary.ts';
import { foldedWords } from './words.ts';

/** The words that name a food, without those that do not. */
export const stripped = (words: string) =>
  foldedWords(words)
    .filter((word) => !neutral.has(word))
    .join(' ');

/** 'washed and dried' says nothing of the food's state. */
const asState = (text: string) =>
  /\b(?:wash|rins|pat|spun|spin|blot|towel|soak|scrub|clean|not)/i.test(text)
    ? text.replace(/\bdr(?:y|ied)\b/gi, ' ')
    : text;

/** What the line says of the food's state; brackets ('canned is fine') speak only where nothing else does. */
export function statesSaid(line: ReadLine): Set<string> {
  // Behind a comma 'roasted' or 'fried' is what is done to the raw amount, not how it is bought.
  const later = line.aside.map((text) =>
    text.replace(/\b(?:pan-?|deep-?)?(?:fried|saut[eé]ed|roasted|grilled|toasted|browned)\b/gi, ' '),
  );
  const outside = [line.words, ...later].flatMap((text) => foldedWords(asState(text)));
  const has = outside.some((word) => Object.hasOwn(stateWords, word) && word !== 'drained');
  return new Set(
    has ? outside : [...outside, ...line.brackets.flatMap((text) => foldedWords(asState(text)))],
  );
}

/** Everything a line's words say, for manners of cutting and measuring. */
export function saidOf(line: ReadLine): Set<string> {
  return new Set(
    [line.words, ...line.aside, ...line.brackets, line.amountText].flatMap((text) => foldedWords(text)),
  );
}

const alternative = / +(?:and\/)?or +|(?<=\p{L}) *\/ *(?=\p{L})/iu;

/** 'beef or chicken stock' → 'beef stock'; 'butter or oil' → 'butter'; what was left out, to be said. */
export function firstOf(line: ReadLine): { words: string; other: string | null; shared: string | null }[] {
  const [first = '', second = ''] = line.words.split(alternative);
  if (second === '') return [{ words: line.words, other: null, shared: null }];
  const rest = line.words.slice(first.length).replace(/^ *(?:or|\/|and\/or) */i, '');
  const others = foldedWords(second).filter((word) => !/^\d/.test(word));
  const out: { words: string; other: string | null; shared: string | null }[] = [];
  const plainSecond = second.replace(/[\d½¼¾⅓⅔].*$/, '').trim();
  const tokens = plainSecond.split(/\s+/);
  if (others.filter((word) => !neutral.has(word)).length > 1 || tokens.length > 1)
    for (let take = Math.min(3, tokens.length - 1); take >= 1; take--)
      out.push({
        words: `${first} ${tokens.slice(-take).join(' ')}`,
        other: rest,
        shared: tokens.slice(-take).join(' '),
      });
  out.push({ words: first, other: rest, shared: null });
  if (stripped(first) === '')
    out.push({ words: `${first} ${plainSecond}`, other: rest, shared: plainSecond });
  return out;
}
