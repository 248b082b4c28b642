import { type Token, tokens } from '#words/tokens.ts';
import {
  orderVerbs,
  isAdverb,
  alwaysAsking,
  articles,
  auxiliaries,
  doubtPhrases,
  doubts,
  exceptions,
  futurePhrases,
  futures,
  isNegation,
  openers,
  parts,
  pronouns,
  questionWords,
  wantsToKnow,
} from './grammar.ts';
import { isPast } from './lemma.ts';

/** How a thing is said, whatever it is about. Each word is the one that shows it, as typed; null where none does. */
export interface Mood {
  /** A question, or a wish to be told. */
  readonly asks: boolean;
  /** Where the sentence begins behind greetings and polite words, as an index of a token. */
  readonly start: number;
  readonly doubt: string | null;
  /** Ahead of now, and nothing in it is past. */
  readonly future: string | null;
  readonly negated: string | null;
  /** A part of a thing: 'half of B1-2'. */
  readonly part: string | null;
  /** What is left out of a whole: 'all except'. */
  readonly except: string | null;
  /** 'B1-2 or B1-3'. */
  readonly either: boolean;
}

/**
 * Reads the mood of a sentence from its words, before anybody asks what it is about.
 * @param text as typed
 * @param all its pieces
 * @param isSomebody whether a piece is a person or a thing that can be spoken of: a name, a code, a meal
 */
export function moodOf(text: string, all: readonly Token[], isSomebody: (index: number) => boolean): Mood {
  const start = startOf(all, isSomebody);
  const rest = all[start] === undefined ? '' : text.slice(all[start].from);
  const words = all.filter((token) => token.is === 'word').map((token) => token.plain);
  const future = futurePhrases.exec(text)?.[0] ?? words.find((word) => futures.has(word)) ?? null;
  return {
    start,
    asks:
      text.includes('?') ||
      text.includes('？') ||
      opensQuestion(all, start, isSomebody) ||
      sentenceStarts(all).some((at) => opensQuestion(all, at, isSomebody)) ||
      clauseStarts(all).some((at) => opensQuestion(all, at, isSomebody)) ||
      wantsToKnow.test(rest) ||
      /\b(?:is|are) (?:that|this|it|they|those) (?:enough|ok(?:ay)?|safe|normal|right|too \w+)\b/iu.test(
        rest,
      ) ||
      / how (?:much|many|long|heavy|old|salty|high|far|big|hot|soon|often|full) /.test(
        ` ${rest.toLowerCase()} `,
      ) ||
      /\bwhat (?:do|should|can|shall|now|to do)\b/iu.test(rest),
    doubt: doubtPhrases.exec(text)?.[0] ?? words.find((word) => doubts.has(word)) ?? null,
    future: words.some(isPast) ? null : future,
    negated: /\b(?:no one|no-one|none of)\b/iu.exec(text)?.[0] ?? negationIn(all),
    part: parts.exec(text)?.[0] ?? null,
    except: exceptions.exec(text)?.[0] ?? null,
    either: isEither(all, isSomebody),
  };
}

/** The word that turns a sentence round; '2100 m, not 1900' only says which figure is right. */
function negationIn(all: readonly Token[]): string | null {
  const isFigure = (token: Token | undefined) => token?.is === 'number' || token?.is === 'quantity';
  const found = all.find(
    (token, i) =>
      token.is === 'word' &&
      isNegation(token.plain) &&
      !(token.plain === 'not' && isFigure(all[i + 1]) && all.slice(0, i).some(isFigure)) &&
      // 'I don't remember' turns nothing round.
      !/^(?:remember|know|recall|mind|care|matter)$/.test(all[i + 1]?.plain ?? '') &&
      // 'Not sure' doubts.
      !(token.plain === 'not' && /^(?:sure|certain)$/.test(all[i + 1]?.plain ?? '')),
  );
  return found?.plain ?? null;
}

/** Where further sentences begin: behind a full stop, a colon, a line's end. */
function sentenceStarts(all: readonly Token[]): number[] {
  return all.flatMap((token, i) =>
    token.is === 'mark' && /^[.!;:]$/.test(token.plain) && all[i + 1] ? [i + 1] : [],
  );
}

/** A question behind a comma: '…, is it safe', '…, what now'. 'Which' and 'who' only go on there. */
function clauseStarts(all: readonly Token[]): number[] {
  return all.flatMap((token, i) => {
    const next = all[i + 1];
    const opens =
      token.plain === ',' &&
      next?.is === 'word' &&
      /^(?:is|are|can|could|may|should|shall|does|do|did|what|whats|how|why)$/.test(next.plain) &&
      (/^(?:what|whats|how|why)$/.test(next.plain) || pronouns.has(all[i + 2]?.plain ?? ''));
    return opens ? [i + 1] : [];
  });
}

/** Behind 'hey', 'ok so', 'please' and a called name: 'Ben, did you …'. */
function startOf(all: readonly Token[], isSomebody: (index: number) => boolean): number {
  let at = 0;
  for (; at < all.length; at++) {
    const token = all[at]!;
    if (token.is === 'mark') continue;
    if (token.is === 'word' && openers.has(token.plain) && at < all.length - 1) continue;
    if (token.is === 'word' && isSomebody(at) && all[at + 1]?.plain === ',' && at < all.length - 2) continue;
    // 'Roughly how much', 'and then what'.
    if (isAdverb(token.plain) && questionWords.has(all[at + 1]?.plain ?? '')) continue;
    break;
  }
  return at;
}

function opensQuestion(
  all: readonly Token[],
  start: number,
  isSomebody: (index: number) => boolean,
): boolean {
  const first = all[start];
  if (first?.is !== 'word') return false;
  const word = first.plain;
  const next = all[start + 1];
  if (questionWords.has(word)) return !isExclamation(word, all, start);
  if (!auxiliaries.has(word) || next === undefined) return false;
  // 'Can you record …' is an order; 'can you tell me' is caught as a wish to know.
  if (/^(?:can|could|would|will)$/.test(word) && /^(?:you|u)$/.test(next.plain)) {
    // 'Can you still eat it' speaks of anybody.
    const verb = all
      .slice(start + 2)
      .find(({ plain }) => !/^(?:please|pls|just|also|kindly|quickly|maybe)$/.test(plain));
    return verb === undefined || !orderVerbs.has(verb.plain);
  }
  if (alwaysAsking.has(word)) return true;
  const isPronoun = pronouns.has(next.plain);
  // 'May Lake, 12 June' is a place; 'may Noa' asks.
  if (word === 'may' || word === 'must' || word === 'need') return isPronoun || isSomebody(start + 1);
  // 'Had the chili for lunch' tells; 'have we eaten' asks.
  if (word === 'have' || word === 'had')
    return (
      (isPronoun && !/^(?:this|that|these|those|one|all|it|some|any)$/.test(next.plain)) || isPerson(next)
    );
  // 'Do the labels' is an order.
  if (word === 'do') return isPronoun || isSomebody(start + 1) || next.plain === 'people';
  // "Don't throw it out" is an order, "don't we have" asks.
  if (/^(?:don't|dont|won't|wont)$/.test(word)) return isPronoun && !articles.has(next.plain);
  if (word === 'was' || word === 'were')
    return isPronoun || isSomebody(start + 1) || articles.has(next.plain);
  return isPronoun || isSomebody(start + 1) || articles.has(next.plain);
}

const isPerson = (token: Token): boolean => token.is === 'word' && /^\p{Lu}/u.test(token.typed);

/** 'What a great soup' asks nothing. */
function isExclamation(word: string, all: readonly Token[], start: number): boolean {
  const next = all[start + 1]?.plain;
  if (word === 'what' && (next === 'a' || next === 'an')) return !all.some((token) => token.plain === '?');
  return word === 'how' && next === 'nice';
}

function isEither(all: readonly Token[], isSomebody: (index: number) => boolean): boolean {
  return all.some((token, i) => {
    if (token.is !== 'word' || token.plain !== 'or') return false;
    const isThing = (index: number) =>
      all[index] !== undefined &&
      (isSomebody(index) || all[index].is === 'pouch' || all[index].is === 'batch');
    // '237 or 240 ml': two figures, one of which is meant.
    const isFigure = (index: number) => all[index]?.is === 'number' || all[index]?.is === 'quantity';
    if (isFigure(i - 1) && isFigure(i + 1)) return true;
    // 'B2-2 or was it B2-3'.
    const isCode = (other: Token) => other.is === 'pouch' || other.is === 'batch';
    if (all.slice(0, i).some(isCode) && all.slice(i).some(isCode)) return true;
    return isThing(i - 1) && (isThing(i + 1) || isThing(i + 2) || all[i + 1]?.is === 'number');
  });
}

/** A text without the greetings and polite words it opens with: 'please weigh B6' is 'weigh B6'. */
export function withoutOpening(text: string): string {
  const all = tokens(text);
  const first = all[startOf(all, () => false)];
  const polite =
    /^(?:(?:can|could|would|will) (?:you|we|i)(?: please)?\s+|(?:i|we)(?:['’]d| would)? (?:want|like|need|have) to\s+|let(?:['’]s| us)\s+)/iu;
  return first === undefined ? text : text.slice(first.from).replace(polite, '');
}

/** Whether a text is a question or a wish to be told, by its words alone. */
export function isQuestion(text: string): boolean {
  const all = tokens(text.slice(0, 2000));
  return moodOf(text, all, (i) => all[i]?.is === 'pouch' || all[i]?.is === 'batch').asks;
}

/** Whether a text turns something round or leaves something out: no words of it may be dropped. */
export function isNegative(text: string): boolean {
  const all = tokens(text.slice(0, 2000));
  const { negated, except, part, either, doubt } = moodOf(text, all, () => false);
  return negated !== null || except !== null || part !== null || either || doubt !== null;
}
