import { avoidanceOf } from '#core/avoidance.ts';
import { Refusal } from '#core/refusal.ts';
import { optional, type Part, part } from './parts.ts';
import { isFiller, type Reading } from './reading.ts';

const never = new Set([
  'no',
  'never',
  'without',
  'avoid',
  'avoids',
  'not',
  'cannot',
  "can't",
  "mustn't",
  'allergic',
  'intolerant',
  'allergy',
  'free',
]);
const dislike = new Set(['dislikes', 'dislike', 'hates', 'hate', "doesn't", "don't"]);
const allowed = new Set(['may', 'can', 'again', 'allowed', 'likes', 'eats']);
const inside = new Set(['to', 'like', 'eat', 'any', 'of', 'from', 'eats', 'has', 'have']);
const polite = new Set([
  'please',
  'pls',
  'plz',
  'thanks',
  'thank',
  'thx',
  'now',
  'either',
  'too',
  'also',
  'at',
  'in',
  'for',
  'with',
]);
const stops = new Set(
  `portion sodium energy age aged child kid guest adult male female boy girl man woman active moderately sedentary gone
  before for until kcal but is`.split(/\s+/),
);

/** The longest food or diet of at most four words that starts at an index; a plain word where nothing is known by name. */
function phraseAt(
  reading: Reading,
  start: number,
  longest: number,
): { words: string; indexes: number[] } | undefined {
  const indexes: number[] = [];
  for (let i = start; i < reading.all.length && indexes.length < longest; i++) {
    const token = reading.at(i);
    if (token?.is !== 'word' || [stops, never, dislike, polite].some((set) => set.has(token.plain))) break;
    if (token.plain === 'and' || token.plain === 'or' || token.plain === 'nor') break;
    indexes.push(i);
  }
  const text = (some: readonly number[]) => some.map((i) => reading.all[i]!.plain).join(' ');
  for (let length = indexes.length; length > 0; length--) {
    const some = indexes.slice(0, length);
    if (avoidanceOf(text(some)) !== undefined) return { words: text(some), indexes: some };
  }
  return indexes.length > 0 ? { words: text(indexes), indexes } : undefined;
}

/** Every food that stands behind one of some words: 'no peanuts, milk and eggs' is three. */
function behind(reading: Reading, leads: ReadonlySet<string>, isOpen: boolean): string[] {
  const longest = 4;
  const found: string[] = [];
  for (let i = 0; i < reading.all.length; i++) {
    const lead = reading.at(i);
    if (lead?.is !== 'word' || !leads.has(lead.plain)) continue;
    let at = i + 1;
    while (inside.has(reading.at(at)?.plain ?? '')) at += 1;
    const first = phraseAt(reading, at, longest);
    if (!first) continue;
    for (let k = i; k < first.indexes[0]!; k++) reading.take(k);
    let phrase: typeof first | undefined = first;
    while (phrase) {
      reading.take(...phrase.indexes);
      found.push(phrase.words);
      phrase = listed(reading, phrase.indexes.at(-1)!, longest, isOpen);
    }
  }
  return found;
}

/**
 * The next member of a list: ', milk' or 'and milk'. A food or diet known by name; in an open list also another
 * plain word in small letters, which the request then looks up.
 */
function listed(reading: Reading, last: number, longest: number, isOpen: boolean) {
  let at = last + 1;
  const passed: number[] = [];
  while ([',', '&', 'and', 'or', 'nor', '/'].includes(reading.at(at)?.plain ?? '')) passed.push(at++);
  if (passed.length === 0) return undefined;
  const next = phraseAt(reading, at, longest);
  if (!next) return undefined;
  const isPlain = next.indexes.length <= 2 && /^\p{Ll}/u.test(reading.all[next.indexes[0]!]!.typed);
  if (avoidanceOf(next.words) === undefined && !(isOpen && isPlain)) return undefined;
  reading.take(...passed);
  return next;
}

/** Diets are said without a 'no': 'vegetarian', 'gluten-free'. */
function diets(reading: Reading): string[] {
  const found: string[] = [];
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'word' || isFiller(token.plain)) continue;
    if (avoidanceOf(token.plain)?.is !== 'diet') continue;
    reading.take(index);
    found.push(token.plain);
  }
  return found;
}

const freeWords = ['free', 'intolerant', 'intolerance', 'allergy', 'allergic'];

/** 'milk-free', 'nut free', 'lactose intolerant', 'peanut allergy': the food stands in front. */
function inFront(reading: Reading): string[] {
  const found: string[] = [];
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'word') continue;
    const glued = /^(.+)-(?:free|intolerant)$/u.exec(token.plain)?.[1];
    const next = reading.at(index + 1);
    const isApart = next?.is === 'word' && freeWords.includes(next.plain);
    const food = glued ?? (isApart ? token.plain : undefined);
    const isFromNext =
      ['from', 'of', 'to'].includes(reading.at(index + 2)?.plain ?? '') && glued === undefined;
    if (food === undefined || isFromNext || avoidanceOf(food) === undefined) continue;
    reading.take(index, ...(glued === undefined ? [index + 1] : []));
    const diet = avoidanceOf(`${food}-free`);
    found.push(diet?.is === 'diet' ? `${food}-free` : food);
  }
  return found;
}

const avoidedBy = (isOpen: boolean): Part<string[]> =>
  part('what to keep out, such as no milk', (reading) => {
    const found = [...inFront(reading), ...behind(reading, never, isOpen), ...diets(reading)];
    return found.length > 0 ? [...new Set(found)] : undefined;
  });

/** Foods and diets to keep out: 'no milk', 'no peanuts or egg', 'vegan', 'allergic to shellfish', 'nut free'. */
export const avoided = avoidedBy(false);

/** The same for an eater, whose list goes on with any plain food: 'no milk, olives and capers'. */
export const keptOut = avoidedBy(true);

/** 'dislikes mushrooms and olives'. */
export const disliked = optional(
  part<string[]>('what is not liked, such as dislikes olives', (reading) => {
    const found = behind(reading, dislike, true);
    return found.length > 0 ? [...new Set(found)] : undefined;
  }),
);

/** 'may eat milk again'. */
export const allowedAgain = optional(
  part<string[]>('what may be eaten again, such as may eat milk', (reading) => {
    const found = behind(reading, allowed, true);
    reading.keyword('again');
    return found.length > 0 ? found : undefined;
  }),
);

/** A number behind or before a word: 'portion 0.6', 'sodium 1500 mg', '2200 kcal'. */
export function numberBeside(like: string, low: number, high: number, ...words: string[]) {
  return optional(
    part<number>(like, (reading) => {
      for (let i = 0; i < reading.all.length; i++) {
        const word = reading.at(i);
        if (word?.is !== 'word' || !words.includes(word.plain)) continue;
        for (const beside of [i + 1, i - 1]) {
          const token = reading.at(beside);
          if (token?.is !== 'number' && token?.is !== 'quantity') continue;
          reading.settleNumbers([beside]);
          reading.take(i, beside);
          const isGrams = token.is === 'quantity' && token.unit.symbol === 'g';
          const sign = beside > i && reading.at(beside + 1)?.plain === '%' ? 100 : 1;
          if (sign === 100) reading.take(beside + 1);
          const value = (isGrams ? token.value * 1000 : token.value) / sign;
          if (!(value >= low && value <= high)) {
            throw new Refusal(
              'out-of-range',
              `${words[0]} ${token.typed} cannot be; from ${low} to ${high} can.`,
            );
          }
          return value;
        }
      }
      return undefined;
    }),
  );
}
