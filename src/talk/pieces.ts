import { table } from '#words/table.ts';
import { isFiller } from '#words/fillers.ts';
import { fold, forgiven, slips, stem } from '#words/near.ts';
import type { Names, PouchCode } from '#words/parts.ts';
import { codeIn, type Token, tokens } from '#words/tokens.ts';
import { lemma } from './lemma.ts';
import { articles, openers, pronouns, questionWords } from './grammar.ts';
import { type Mood, moodOf } from './mood.ts';
import { meantWords } from './word-classes.ts';

/** One name of the household that a message speaks of; several where the words fit several. */
interface Mentioned {
  readonly names: readonly [string, ...string[]];
  /** Indexes of its tokens. */
  readonly at: readonly number[];
  /** Every word of the name was said. */
  readonly whole: boolean;
}

/** A message taken apart, before anybody asks what it wants. */
export interface Said {
  readonly text: string;
  readonly all: readonly Token[];
  /** The form under which each token is looked up. */
  readonly lemmas: readonly string[];
  /** The message folded word by word, each under the word that readers look for. */
  readonly forms: readonly string[];
  readonly mood: Mood;
  readonly codes: readonly { readonly code: PouchCode; readonly at: number }[];
  readonly batches: readonly { readonly batch: number; readonly isMixed: boolean; readonly at: number }[];
  readonly meals: readonly Mentioned[];
  readonly people: readonly Mentioned[];
  readonly trips: readonly Mentioned[];
}

const small = table<string>(
  Object.fromEntries(
    'one two three four five six seven eight nine ten eleven twelve'
      .split(' ')
      .map((word, i) => [word, String(i + 1)]),
  ),
);
const count = `\\d{1,5}|${Object.keys(small).join('|')}`;
const asFigures = (word: string) => small[word.toLowerCase()] ?? word;

const nths = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');
const trayNth = new RegExp(`\\b(?:the )?(${nths.join('|')}) tray\\b`, 'giu');

const tens = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const decades = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const digit = 'one|two|three|four|five|six|seven|eight|nine';
const spokenHundreds = new RegExp(
  `\\b(${digit}) (?:(?:oh|o|zero) (${digit})|(${tens.join('|')})|(${decades.join('|')})(?:[ -](${digit}))?)\\b(?! (?:pouch|bag))`,
  'giu',
);

/** 'Two oh five' and 'five ninety', as weights are read out; not where things are counted beside their weight. */
function withSpokenWeights(text: string): string {
  if (
    !/\b(?:weigh\w*|tray|batch|load\w*|B\d+)\b/iu.test(text) ||
    /\b(?:pouch|bag|seal|portion|of)/iu.test(text)
  )
    return text;
  return text.replace(
    spokenHundreds,
    (_, h: string, unit?: string, teen?: string, decade?: string, more?: string) => {
      const rest = unit
        ? Number(asFigures(unit))
        : teen
          ? tens.indexOf(teen.toLowerCase()) + 10
          : (decades.indexOf(decade!.toLowerCase()) + 2) * 10 + (more ? Number(asFigures(more)) : 0);
      return String(Number(asFigures(h)) * 100 + rest);
    },
  );
}

const below100 = `(?:(?:${decades.join('|')})(?:[ -](?:${digit}))?|${tens.join('|')}|${digit})`;
const spokenSize = new RegExp(
  `\\b(${below100}) (?:by|times|x) (${below100})(?: (centimetres?|centimeters?|cm|inches|inch))?\\b`,
  'giu',
);

/** 'Twenty by forty five centimetres' as '20 x 45 cm'. */
function withSpokenSizes(text: string): string {
  const value = (word: string) => {
    const [first, second] = word.toLowerCase().split(/[ -]/u) as [string, string?];
    const ten = decades.indexOf(first);
    return ten >= 0
      ? (ten + 2) * 10 + (second ? Number(asFigures(second)) : 0)
      : tens.includes(first)
        ? tens.indexOf(first) + 10
        : Number(asFigures(first));
  };
  return text.replace(
    spokenSize,
    (_, a: string, b: string, unit?: string) =>
      `${value(a)} x ${value(b)} ${unit === undefined || /^c/i.test(unit) ? 'cm' : 'inch'}`,
  );
}

/**
 * Codes as they are spoken or slipped: 'batch five', 'batch 5', 'pouch 2 of B4', 'b3 1' at the end.
 * @returns the text with such codes written as codes
 */
export function withCodes(text: string): string {
  return (
    text
      // An O between figures is a nought.
      .replace(/(?<=\d)[oO](?=\d)/gu, '0')
      .replace(
        new RegExp(`\\bb (${count}) (?:dash|minus|hyphen) (${count})\\b`, 'giu'),
        (_, b: string, n: string) => `B${asFigures(b)}-${asFigures(n)}`,
      )
      .replace(
        new RegExp(`\\bb (${Object.keys(small).join('|')})\\b(?! (?:hundred|dash|minus|hyphen)\\b)`, 'giu'),
        (_, b: string) => `B${asFigures(b)}`,
      )
      .replace(/\btray(?=\d)/giu, 'tray ')
      .replace(trayNth, (_, nth: string) => `tray ${nths.indexOf(nth.toLowerCase()) + 1}`)
      .replace(new RegExp(`\\btray (${count})\\b`, 'giu'), (_, n: string) => `tray ${asFigures(n)}`)
      .replace(
        new RegExp(`\\b(?:batch|load) (?:no\\.? ?|number |#)?(${count})\\b(?! ?(?:g|kg|trays?|x)\\b)`, 'giu'),
        (_, n: string) => `B${asFigures(n)}`,
      )
      .replace(
        new RegExp(`\\b(?:pouch|bag) (?:no\\.? ?|number |#)?(${count}) (?:of|from) ([BM])(\\d+)\\b`, 'giu'),
        (_, n: string, letter: string, b: string) => `${letter}${b}-${asFigures(n)}`,
      )
      .replace(
        new RegExp(`\\b([BM])(\\d{1,5}) (?:pouch|bag) (?:no\\.? ?|number |#)?(${count})\\b`, 'giu'),
        (_, letter: string, b: string, n: string) => `${letter}${b}-${asFigures(n)}`,
      )
      .replace(
        /\b([BM])(\d{1,5})[ ./_](\d{1,2})(?=\s*[?!.]*\s*$|\s+(?:just|now|for|today|yesterday|at|with|and|please|this|last|was|is|has|on)\b|\s*,\s*(?!\d))/giu,
        '$1$2-$3',
      )
      .replace(
        new RegExp(`\\b(?:pouch |bag )?(?:number|no\\.?) (${count}) (?:of|from|in) ([BM])(\\d+)\\b`, 'giu'),
        (_, n: string, letter: string, b: string) => `${letter}${b}-${asFigures(n)}`,
      )
      // 'B4-1, -2 and -3'.
      .replace(
        /(?<=\b[BM]\d{1,5}-\d{1,2}(?:\s*(?:,|and|&)\s*-?\d{1,2}){0,8}\s*(?:,|and|&)\s*)-(\d{1,2})(?![\d.])/giu,
        '$1',
      )
  );
}

/** Words that stand between the words of one name. */
const links = new Set(['and', 'n', '&', 'of', 'the', 'with', 'in', "'", '-', '’']);

/** Names whose words stand in a message, each with its tokens; words may be slipped or shortened. */
function mentionsOf(
  all: readonly Token[],
  names: readonly string[],
  taken: ReadonlySet<number>,
): Mentioned[] {
  const parsed = names
    .map((name) => ({ name, words: fold(name).split(' ').filter(Boolean).map(stem) }))
    .filter(({ words }) => words.length > 0);
  const fits = all.map((token, i) => {
    if (taken.has(i)) return new Map<string, number>();
    const said =
      token.is === 'quoted'
        ? fold(token.inside)
        : token.is === 'word' || token.is === 'number'
          ? fold(token.plain.replace(/['’]s$/u, ''))
          : '';
    const found = new Map<string, number>();
    if (said === '' || (token.is === 'word' && (isFiller(token.plain) || links.has(token.plain))))
      return found;
    for (const { name, words } of parsed) {
      if (token.is === 'quoted') {
        if (fold(name) === said) found.set(name, 0);
        continue;
      }
      const distance = Math.min(...words.map((word) => wordDistance(said, word)));
      if (Number.isFinite(distance)) found.set(name, distance);
    }
    return found;
  });
  const out: Mentioned[] = [];
  for (let i = 0; i < all.length; i++) {
    if (fits[i]!.size === 0) continue;
    let group = new Map(fits[i]);
    const at = [i];
    for (let j = i + 1; j < all.length; j++) {
      if (links.has(all[j]!.plain) && fits[j]!.size === 0) continue;
      const both = new Map(
        [...group].filter(([name]) => fits[j]!.has(name)).map(([name, d]) => [name, d + fits[j]!.get(name)!]),
      );
      if (both.size === 0 || isSameWordAgain(all, at, j)) break;
      group = both;
      at.push(j);
    }
    const best = bestOf(group, all, at, parsed);
    if (best) out.push({ ...best, at });
    i = at.at(-1)!;
  }
  return out;
}

/** 'soup soup' are two mentions. */
const isSameWordAgain = (all: readonly Token[], at: readonly number[], j: number): boolean =>
  at.some((i) => stem(all[i]!.plain) === stem(all[j]!.plain));

function wordDistance(said: string, word: string): number {
  const typed = stem(said);
  if (typed === word) return 0;
  // Some plurals lose more than an s: 'curries', 'chilies'.
  if (lemma(said) === word) return 0;
  if (typed.length >= 3 && word.startsWith(typed) && word.length - typed.length >= 2) return 0.5;
  const most = Math.min(forgiven(typed), forgiven(word));
  const distance = slips(typed, word, most);
  return distance > 0 && distance <= most && typed[0] === word[0] ? distance : Number.POSITIVE_INFINITY;
}

function bestOf(
  group: ReadonlyMap<string, number>,
  all: readonly Token[],
  at: readonly number[],
  parsed: readonly { readonly name: string; readonly words: readonly string[] }[],
): Pick<Mentioned, 'names' | 'whole'> | undefined {
  const least = Math.min(...group.values());
  const near = [...group].filter(([, distance]) => distance === least).map(([name]) => name);
  const said = at.map((i) => stem(all[i]!.plain));
  // A single word that is only like a name, and short, is no name.
  if (least >= 1 && at.length === 1 && said[0]!.length < 5) return undefined;
  const wholeOnes = near.filter((name) => parsed.find((one) => one.name === name)!.words.length <= at.length);
  const names = wholeOnes.length > 0 ? wholeOnes : near;
  const [first, ...others] = names;
  return first === undefined ? undefined : { names: [first, ...others], whole: wholeOnes.length > 0 };
}

/** 'Tell me', 'show me': whoever is told is not spoken of. */
const isToldTo = (all: readonly Token[], i: number): boolean =>
  all[i]!.plain === 'me' &&
  /^(?:tell|show|give|remind|let|help|send|tells|gave|told|list|print|get|find)$/.test(
    all[i - 1]?.plain ?? '',
  );

const selves = new Set(['i', 'me', 'myself', "i'm", 'im', "i've", 'ive', "i'd", 'id', "i'll", 'mine', 'my']);

/** Takes a message apart. Nothing is decided, and nothing refused. */
export function takeApart(typed: string, names: Names): Said {
  const text = withSpokenSizes(withSpokenWeights(withCodes(typed)));
  const all = tokens(text);
  const meant = meantWords(all);
  const lemmas = all.map(
    (token, i) => meant.get(i)?.lemma ?? (token.is === 'word' ? lemma(token.plain) : token.plain),
  );
  const none = new Set<number>();
  const trips = mentionsOf(all, names.trips, none).filter(
    (one) =>
      one.whole || one.at.length > 1 || isTheOne(all, one) || (all.length < 8 && !isOfAnother(all, one)),
  );
  const ofTrips = new Set(trips.filter(({ whole }) => whole).flatMap(({ at }) => at));
  const meals = mentionsOf(all, [...names.meals, ...names.otherNames.keys()], ofTrips)
    // 'Fish soup' is no barley soup.
    .filter(({ at, whole }) => whole || at.length > 1 || !otherKinds.test(all[at[0]! - 1]?.plain ?? ''))
    // "Noa's peanut thing", 'the peanut allergy' speak of the food.
    .filter(
      ({ at }) =>
        !/^(?:thing|allergy|allergies|issue|intolerance|problem|free)$/.test(
          all[at.at(-1)! + 1]?.plain ?? '',
        ),
    )
    .map((one) => ({
      ...one,
      names: one.names.map((name) => names.otherNames.get(name) ?? name) as [string, ...string[]],
    }));
  const ofMeals = new Set(meals.filter(({ whole }) => whole).flatMap(({ at }) => at));
  const others = names.eaters.filter((name) => name !== names.me);
  const named = mentionsOf(all, [names.me, ...others], new Set([...ofTrips, ...ofMeals])).filter(
    ({ at, whole }) => whole && !isCommonWord(all, at),
  );
  const me = all.flatMap((token, i): Mentioned[] =>
    token.is === 'word' && selves.has(token.plain) && !isToldTo(all, i)
      ? [{ names: [names.me], at: [i], whole: true }]
      : [],
  );
  const people = [...named, ...me].toSorted((a, b) => a.at[0]! - b.at[0]!);
  const spoken = new Set([...trips, ...meals, ...named].flatMap(({ at }) => at));
  return {
    text,
    all,
    lemmas,
    forms: all.map((token, i) => meant.get(i)?.form ?? fold(token.typed)),
    mood: moodOf(text, all, (i) => spoken.has(i) || all[i]?.is === 'pouch' || all[i]?.is === 'batch'),
    codes: all.flatMap((token, at) => (token.is === 'pouch' ? [{ code: codeIn(token), at }] : [])),
    batches: all.flatMap((token, at) =>
      token.is === 'batch' ? [{ batch: token.batch, isMixed: token.isMixed, at }] : [],
    ),
    meals,
    people,
    trips,
  };
}

/** Foods that make another dish of one: 'tomato soup', 'beef curry'. */
const otherKinds =
  /^(?:fish|beef|chicken|lamb|pork|turkey|tofu|lentil|pea|bean|tomato|potato|pumpkin|carrot|onion|mushroom|leek|noodle|vegetable|veggie|seafood|prawn|shrimp|salmon|egg|cheese|peanut|thai|green|red|yellow)$/;

/** 'The lake' where just one trip goes to a lake. */
const isTheOne = (all: readonly Token[], { names, at }: Mentioned): boolean =>
  names.length === 1 &&
  /^(?:the|our)$/.test(all[at[0]! - 1]?.plain ?? '') &&
  stem(fold(names[0]).split(' ').at(-1)!) === stem(all[at[0]!]!.plain);

/** 'May Lake' is not Heron Lake: a later word of a name behind a word that it has not. */
function isOfAnother(all: readonly Token[], { names: [name], at }: Mentioned): boolean {
  const [first] = fold(name).split(' ').map(stem);
  const before = all[at[0]! - 1];
  return (
    stem(fold(all[at[0]!]!.plain)) !== first &&
    before?.is === 'word' &&
    !isFiller(before.plain) &&
    !articles.has(before.plain)
  );
}

/** Somebody may be called Will or May: a word that a sentence needs anyway is no person unless it is written as one. */
function isCommonWord(all: readonly Token[], at: readonly number[]): boolean {
  const [only] = at;
  const token = all[only!]!;
  const isNeeded =
    openers.has(token.plain) ||
    pronouns.has(token.plain) ||
    articles.has(token.plain) ||
    questionWords.has(token.plain) ||
    isFiller(token.plain);
  return at.length === 1 && isNeeded && !/^\p{Lu}/u.test(token.typed);
}
