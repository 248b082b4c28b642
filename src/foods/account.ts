import { type Contents, mayHoldAnything } from '#core/allergens.ts';
import { isWithin, nothing, oneOf, perhaps, together, widened } from '#core/contents.ts';
import { closedWords, isFigure } from './manner.ts';
import type { Naming } from './namings.ts';
import {
  isDoubtful, isInOrder, isNameItself, isSameFood, namesIn, placesOf, runsOf, type Span, spansOf,
} from './spans.ts'; // prettier-ignore
import type { Break, Token } from './tokens.ts';
import { unitOf } from './units.ts';

/** What a word of a line is taken for; each word has exactly one. */
export type WordClass = 'amount' | 'counted' | 'named' | 'manner' | 'not understood';

/** A food that the line names beside the one it counts. */
export interface Named {
  readonly called: string;
  readonly contents: Contents;
  /** Really in it; otherwise one of several that may be ('butter or oil', 'may contain nuts'). */
  readonly isSure: boolean;
  /** A dish or a made thing, which no row of the kitchen counts. */
  readonly isDish: boolean;
  /** No comma and no 'with' stands between it and another food: 'almond chicken'. */
  readonly isBeside: boolean;
  /** A sort of dish that may be made of anything: 'sauce', 'salad'. */
  readonly isKind: boolean;
}

export interface Account {
  readonly words: readonly { readonly word: string; readonly is: WordClass | Break }[];
  readonly named: readonly Named[];
  /** Words that are no amount, no food and no manner of preparing one, or that may be one of several foods. */
  readonly unknown: readonly string[];
}

/** The household's own words: for foods, by the key of their tokens, and for measures. */
export interface Own {
  readonly names: ReadonlyMap<string, Naming>;
  readonly measures: ReadonlySet<string>;
}

const opposite: ReadonlySet<Break> = new Set(['perhaps', 'without']);
/** What the breaks in front of a place make of what stands there: the nearest that says more than 'apart'. */
function linkBefore(tokens: readonly Token[], at: number): Break | null {
  for (let i = at - 1; i >= 0; i--) {
    const { breaks, word } = tokens[i]!;
    if (breaks === null) {
      // 'no added salt', 'without any nuts': a negation reaches over words of manner, not over another food.
      if (closedWords.has(word) || isFigure(word)) continue;
      return chosenBefore(tokens, i);
    }
    if (opposite.has(breaks) || breaks === 'purpose') return breaks;
    if (word === ',' || word === ')') return null;
    if (breaks === 'with') return chosenBefore(tokens, i) ?? 'with';
  }
  return null;
}

/** 'or' holds to the end of its phrase: 'oil or butter and lard'. */
function chosenBefore(tokens: readonly Token[], at: number): 'perhaps' | null {
  for (let i = at; i >= 0; i--) {
    const { breaks, word } = tokens[i]!;
    if (breaks === 'perhaps') return 'perhaps';
    if (word === ',' || word === ')') return null;
  }
  return null;
}

/** Words that promise another food: understood where the line names one. */
const promising = new Set(['stuffed', 'filled', 'topped', 'coated', 'crusted', 'glazed', 'marinated', 'seasoned', 'loaded', 'smothered', 'flavored', 'infused', 'dressed', 'layered', 'wrapped']); // prettier-ignore

/**
 * Accounts for every word of a line.
 * @param tokens the whole line, amount included
 * @param counted the folded words of the name under which the line's food is counted; none while it is asked for
 * @param own what the household calls its foods and measures
 */
export function account(
  tokens: readonly Token[],
  counted: readonly string[],
  own: Own = { names: new Map(), measures: new Set() },
): Account {
  const places = placesOf(counted, tokens);
  const runs = runsOf(places);
  const isCounted = new Set(places);
  const spans = spansOf(tokens, own.names);
  const named: { span: Span; one: Named }[] = [];
  const negated = new Set<number>();
  for (const span of spans) {
    const link = span.from > 0 ? linkBefore(tokens, span.from) : null;
    const isWithin = runs.some(
      (run) => run[0]! <= span.from && span.to - 1 <= run.at(-1)! && isInOrder(run, counted, tokens),
    );
    const isCountedRun = runs.some((run) => run[0]! <= span.from && span.to - 1 <= run.at(-1)!);
    if (isCountedRun && isSaidOf(runs, counted, tokens)) continue;
    if (isWithin && (runs.length === 1 || !isFoodByItself(runs, span, spans, tokens, own.names))) continue;
    const touches = places.some((at) => span.from <= at && at < span.to);
    if (touches && (isNameItself(span, counted, tokens) || isSameFood(span, counted))) {
      for (let at = span.from; at < span.to; at++) isCounted.add(at);
      // 'roast beef deli' is counted as a roast of beef, and may be the sliced one.
      if (!isNameItself(span, counted, tokens))
        named.push({ span, one: namedBy(span, spans, true, tokens, isCounted) });
      continue;
    }
    if (!touches && (link === 'without' || tokens[span.to]?.word === 'free')) {
      for (let at = span.from; at < span.to; at++) negated.add(at);
      continue;
    }
    const isPurpose = link === 'purpose' && span.namings.every(({ isKind }) => isKind);
    if (isPurpose) {
      for (let at = span.from; at < span.to; at++) negated.add(at);
      continue;
    }
    named.push({ span, one: namedBy(span, spans, link === 'perhaps' || isWithin, tokens, isCounted) });
  }
  return classed(tokens, isCounted, named, negated, own.measures);
}

/** 'juice of 1 lime' says 'lime juice' from behind: between its words stand 'of' or 'from' and how much of it. */
function isSaidOf(
  runs: readonly (readonly number[])[],
  counted: readonly string[],
  tokens: readonly Token[],
): boolean {
  const [part, whole] = runs;
  if (runs.length !== 2 || part!.length + whole!.length !== counted.length) return false;
  const turned = [...whole!, ...part!].every((at, i) => tokens[at]!.word === counted[i]);
  const between = tokens.slice(part!.at(-1)! + 1, whole![0]);
  return (
    turned &&
    between.some(({ word }) => word === 'of') &&
    between.every(
      ({ word, breaks }) =>
        /^(?:of|a|&)$/.test(word) || (breaks === null && (isFigure(word) || closedWords.has(word))),
    )
  );
}

/** 'butter, beans' is counted as butter beans, and may be butter and beans. */
function isFoodByItself(
  runs: readonly (readonly number[])[],
  span: Span,
  spans: readonly Span[],
  tokens: readonly Token[],
  own: ReadonlyMap<string, Naming>,
): boolean {
  const isName = (run: readonly number[]) =>
    namesIn(
      run.map((at) => [tokens[at]!.word]),
      own,
    ).namings.length > 0 || spans.some((one) => one.from <= run[0]! && run.at(-1)! < one.to);
  return (
    runs.every(isName) && !spans.some((one) => one !== span && one.from <= span.from && span.to <= one.to)
  );
}

function namedBy(
  span: Span,
  spans: readonly Span[],
  isPerhaps: boolean,
  tokens: readonly Token[],
  isCounted: ReadonlySet<number>,
): Named {
  // Of two names that share a word only one can be meant.
  const isShared = spans.some((one) => one !== span && one.from < span.from && span.from < one.to);
  const known = oneOf(span.namings.map(({ contents }) => contents));
  const isDish = span.namings.every(({ entries }) => entries.length === 0);
  const covers = [...isCounted].some((at) => span.from <= at && at < span.to);
  const others = neighbours(tokens, span, isDish);
  const isBeside =
    covers ||
    others.some(
      (at) => isCounted.has(at) || spans.some((one) => one !== span && one.from <= at && at < one.to),
    );
  return {
    called: span.namings.map(({ called }) => called).join(' or '),
    contents: isPerhaps || isShared ? perhaps(known) : known,
    isSure: !isPerhaps && !isShared,
    isDish,
    isBeside,
    isKind: span.namings.every(({ isKind }) => isKind),
  };
}

/** Places of one phrase with a name, no break between; a dish reaches over 'and': 'chicken and leek pie'. */
function neighbours(tokens: readonly Token[], span: Span, isDish: boolean): number[] {
  const isOpen = (at: number) => {
    const token = tokens[at];
    return token !== undefined && (token.breaks === null || (isDish && token.word === '&'));
  };
  let from = span.from;
  while (isOpen(from - 1)) from--;
  let to = span.to;
  while (tokens[to]?.breaks === null) to++;
  return [...tokens.keys()].slice(from, to).filter((at) => at < span.from || at >= span.to);
}

function classed(
  tokens: readonly Token[],
  isCounted: ReadonlySet<number>,
  named: readonly { span: Span; one: Named }[],
  negated: ReadonlySet<number>,
  measures: ReadonlySet<string>,
): Account {
  // 'Sauce' is a word that is known, and says nothing of what is in it.
  const isAnything = (at: number) =>
    named.some(({ span, one }) => span.from <= at && at < span.to && mayHoldAnything(one.contents));
  const isNamed = (at: number) => named.some(({ span }) => span.from <= at && at < span.to);
  const words = tokens.map(({ word, breaks }, at): { word: string; is: WordClass | Break } => {
    if (breaks !== null) return { word, is: breaks };
    if (isCounted.has(at)) return { word, is: 'counted' };
    if (isNamed(at)) return { word, is: 'named' };
    if (isFigure(word) || measures.has(word)) return { word, is: 'amount' };
    if (negated.has(at) || closedWords.has(word)) return { word, is: 'manner' };
    if (promising.has(word) && named.length > 0) return { word, is: 'manner' };
    if (unitOf(word)?.grams !== undefined || unitOf(word)?.ml !== undefined) return { word, is: 'amount' };
    return { word, is: 'not understood' };
  });
  return {
    words,
    named: named.map(({ one }) => one),
    unknown: words.flatMap(({ word, is }, at) =>
      is === 'not understood' || isAnything(at) || ((is === 'named' || is === 'counted') && isDoubtful(word))
        ? [word]
        : [],
    ),
  };
}

/**
 * What the counted food holds; with a word that nobody understood it may hold anything.
 * @param counted as the tables tell; null where nothing is known of it
 */
export function ownContents(counted: Contents | null, { named, unknown }: Account): Contents {
  const known = counted ?? nothing;
  // 'almond chicken' is a dish of its own: what else is in it, its two words do not tell.
  const isCompound = named.some((one) => one.isBeside && !isWithin(one.contents, known));
  return counted === null || unknown.length > 0 || isCompound ? widened(known) : known;
}

/** What a line holds: its counted food and all that it names. */
export const contentsOfLine = (counted: Contents | null, sheet: Account): Contents =>
  together([ownContents(counted, sheet), ...sheet.named.map(({ contents }) => contents)]);
