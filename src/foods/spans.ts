import { closedWords } from './manner.ts';
import { type Naming, namings, wordsOfNamings } from './namings.ts';
import type { Token } from './tokens.ts';
import { oneSlip } from './units.ts';
import { foldedWords, foldName } from './words.ts';

/** A run of tokens that names a food. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly namings: readonly Naming[];
  /** The name holds a word that was put right. */
  readonly isMended: boolean;
}

const slips = new Map<string, readonly string[]>();
/** The words of food names that a mistyped word may be: all of them a slip away, the word itself where it is known. */
export function mayBe(word: string): readonly string[] {
  const { words, glued } = wordsOfNamings();
  if (namings().has(word) || words.has(word) || closedWords.has(word) || word.length < 3 || word.length > 24)
    return [word];
  let found = slips.get(word);
  if (found === undefined) {
    const apart = glued.get(word);
    found = apart === undefined ? [...words].filter((one) => oneSlip(one, word)) : [apart];
    if (slips.size > 5000) slips.clear();
    slips.set(word, found);
  }
  return [word, ...found];
}

/**
 * Whether a word that was put right leaves a doubt: several words are a slip away, or it is so short that many a name
 * of its own would be.
 */
export function isDoubtful(word: string): boolean {
  const [, ...others] = mayBe(word);
  if (others.length === 0 || others[0]!.includes(' ')) return false;
  return others.length > 1 || word.length < 5 || others[0]![0] !== word[0];
}

/** The longest food names in the tokens, those inside longer ones left out. */
export function spansOf(tokens: readonly Token[], own: ReadonlyMap<string, Naming>): Span[] {
  const forms = tokens.map(({ word, breaks }) => (breaks === null ? mayBe(word) : [word]));
  const spans: Span[] = [];
  const { longest } = wordsOfNamings();
  for (let from = 0; from < tokens.length; from++) {
    if (tokens[from]!.breaks !== null) continue;
    for (let to = Math.min(tokens.length, from + longest); to > from; to--) {
      const found = namesIn(forms.slice(from, to), own);
      if (found.namings.length === 0) continue;
      const isInside = spans.some((span) => span.from <= from && to <= span.to);
      if (!isInside) spans.push({ from, to, ...found });
      break;
    }
  }
  return spans;
}

/** What a run of words names, with at most one of them put right. */
export function namesIn(forms: readonly (readonly string[])[], own: ReadonlyMap<string, Naming>) {
  const plain = forms.map(([word]) => word!);
  const named = (words: readonly string[]) => {
    const key = words.join(' ');
    return own.get(key) ?? namings().get(key);
  };
  const exact = named(plain);
  if (exact) return { namings: [exact], isMended: false };
  // A word put right may join its neighbour: 'stok cube' is 'stockcube' in the tables. Nothing is left out for that:
  // 'rice + nnoodle' is no rice noodle.
  const joined = (words: readonly string[]) => {
    const folded = foldedWords(words.join(' '));
    return folded.join('') === words.join('') ? named(folded) : undefined;
  };
  const mended = forms.flatMap((others, at) =>
    others.slice(1).flatMap((word) => {
      const words = plain.with(at, word);
      return named(words) ?? joined(words) ?? [];
    }),
  );
  return { namings: [...new Set(mended)], isMended: mended.length > 0 };
}

/** The places of the counted food's words: side by side where they stand so, else each where it first stands. */
export function placesOf(counted: readonly string[], tokens: readonly Token[]): number[] {
  if (counted.length === 0) return [];
  const is = (at: number, word: string) => isWord(tokens[at], word);
  for (let from = 0; from + counted.length <= tokens.length; from++)
    if (counted.every((word, i) => is(from + i, word))) return counted.map((_, i) => from + i);
  const free = new Set(tokens.keys());
  return counted.flatMap((word) => {
    const at = [...free].find((one) => is(one, word));
    if (at === undefined) return [];
    free.delete(at);
    return [at];
  });
}

/** Whether a run says the name in its own order: 'potato salad' is no salad potato. */
export function isInOrder(
  run: readonly number[],
  counted: readonly string[],
  tokens: readonly Token[],
): boolean {
  let next = 0;
  return run.every((at) => {
    next = counted.findIndex((word, i) => i >= next && isWord(tokens[at], word)) + 1;
    return next > 0;
  });
}

/** 'stick of celery' is celery: a longer name of what is counted anyway. */
export function isSameFood(span: Span, counted: readonly string[]): boolean {
  const own = namings().get(counted.join(' '))?.entries ?? [];
  return span.namings.every(
    ({ entries }) => entries.length > 0 && entries.every((entry) => own.includes(entry)),
  );
}

/** 'tuna in oil' is one name, the 'in' part of it. */
export const isNameItself = (span: Span, counted: readonly string[], tokens: readonly Token[]) =>
  foldName(
    tokens
      .slice(span.from, span.to)
      .map(({ word }) => word)
      .join(' '),
  ) === counted.join(' ');

const isWord = (token: Token | undefined, word: string) =>
  token?.breaks === null && mayBe(token.word).some((one) => one === word || one.split(' ').includes(word));

/** Places as runs of neighbours: [3, 4, 7] → [3, 4], [7]. */
export function runsOf(places: readonly number[]): number[][] {
  const runs: number[][] = [];
  for (const at of places.toSorted((a, b) => a - b))
    if (runs.at(-1)?.at(-1) === at - 1) runs.at(-1)!.push(at);
    else runs.push([at]);
  return runs;
}
