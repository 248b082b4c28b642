import type { Contents } from '#core/allergens.ts';
import { isWithin, nothing, oneOf, together } from '#core/contents.ts';
import type { NamedFood } from '#core/records.ts';
import { makesIn } from './frame.ts';
import type { LineResult } from './line-result.ts';
import type { Naming } from './namings.ts';
import { spansOf } from './spans.ts';
import { type Token, tokensOf } from './tokens.ts';
import { foldedWords } from './words.ts';

/** What every kitchen adds without a line for it, and what brings nothing. */
const basics = new Set(['water', 'salt', 'pepper', 'ice', 'salt pepper', 'black pepper', 'ice cube', 'egg wash', 'boiling water', 'hot water', 'cold water', 'warm water']); // prettier-ignore

/** Deeds first of all: 'roll into balls', 'toast the spices'. They are food behind 'the', 'a' and 'with' only. */
const mostlyDeeds = new Set(['toast', 'roll', 'mash', 'squash', 'mince', 'crumble', 'date', 'stew', 'crisp', 'hash', 'bake', 'sprout', 'kid', 'ball', 'wrap', 'clove', 'kit', 'seed', 'chip', 'bitter', 'sweet', 'mix', 'rub', 'steak', 'rib', 'grain', 'orange', 'swiss', 'danish', 'fudge', 'bun', 'fry']); // prettier-ignore
/** Foods first of all, deeds where a sentence opens with them: 'cream the butter', 'flour a board'. */
const alsoDeeds = new Set(['cream', 'butter', 'flour', 'oil', 'sugar', 'rice', 'juice', 'bread', 'pickle', 'ham', 'batter', 'cake', 'sandwich', 'skin', 'bone', 'milk', 'egg', 'pepper', 'stock', 'jam', 'sauce', 'dust']); // prettier-ignore

/** Sentences of a method, so that no name reaches over a full stop; 'makes 12 muffins' names the dish itself. */
const sentences = (text: string) =>
  text
    .split(/\n+/)
    .flatMap((line) => (makesIn(line) ? [line.replace(/\p{L}+[^\p{L}]*$/u, '')] : line.split(/[.!?;:]+/)))
    .filter((one) => /\p{L}/u.test(one));

/** 'cream the butter', 'then toast': the word is what is done. */
function isDeed(tokens: readonly Token[], from: number, to: number): boolean {
  const [{ word }, before, after] = [tokens[from]!, tokens[from - 1], tokens[from + 1]];
  if (to - from > 1) return false;
  const opens = before === undefined || before.word === '&' || before.word === 'then' || before.word === ',';
  if (mostlyDeeds.has(word)) return opens || before?.breaks === null;
  return alsoDeeds.has(word) && opens && after?.word === 'a';
}

function namedIn(sentence: string): Naming[] {
  const tokens = tokensOf(sentence);
  return spansOf(tokens, new Map()).flatMap(({ from, to, namings, isMended }) =>
    isMended || isDeed(tokens, from, to) || tokens[to]?.word === 'free' ? [] : namings.slice(0, 1),
  );
}

/** Whether the lines account for a food: one says its words, or all that it holds is in them already. */
function isTold(
  { called, contents, isKind }: Naming,
  words: ReadonlySet<string>,
  inLines: Contents,
): boolean {
  const own = foldedWords(called);
  if (isKind || basics.has(own.join(' '))) return true;
  // 'The oil' is the olive oil of a line; 'the butter' beside peanut butter is asked about.
  if (own.some((word) => words.has(word)))
    return isWithin({ ...contents, check: [], checkKinds: [] }, inLines);
  return !isWithin(contents, nothing) && isWithin(contents, inLines);
}

/**
 * The foods that a recipe's headings and method name and none of its lines accounts for, each once.
 * @param texts headings and method, as typed
 * @param lines as resolved; what they hold, named foods too, is accounted for
 */
export function untold(texts: readonly string[], lines: readonly LineResult[]): NamedFood[] {
  const words = new Set(
    lines.flatMap(({ typed, called }) => [...foldedWords(typed), ...foldedWords(called)]),
  );
  const inLines = together(lines.flatMap(({ contents }) => (contents === null ? [] : [contents])));
  const found = new Map<string, NamedFood>();
  for (const naming of texts.flatMap(sentences).flatMap(namedIn)) {
    const { called } = naming;
    if (!isTold(naming, words, inLines)) found.set(called, { called, contents: oneOf([naming.contents]) });
  }
  return [...found.values()];
}
