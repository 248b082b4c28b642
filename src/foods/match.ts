import { later } from '#words/later.ts';
import { byName, type KitchenFood } from './kitchen.ts';
import { oneSlip } from './units.ts';
import { foodWords, neutral, stateWords } from './vocabulary.ts';
import { foldedWords } from './words.ts';

/**
 * Where a word stood: before the first comma; in a short phrase after it ('beans, black'); in a longer one; behind
 * 'with', 'in', 'for'.
 */
type Region = 'main' | 'refined' | 'aside' | 'behind';
interface Word {
  readonly text: string;
  readonly region: Region;
}

export interface Match {
  readonly entries: readonly KitchenFood[];
  readonly name: string;
  /** 0 … 1: how much of the typed words the name accounts for. */
  readonly confidence: number;
  readonly covered: number;
}

/** Names by their last word, which is the food itself: 'milk' lists 'coconut milk', 'milk', 'oat milk'. */
const byHead = later((): ReadonlyMap<string, readonly string[][]> => {
  const map = new Map<string, string[][]>();
  for (const name of byName().keys()) {
    const words = name.split(' ');
    const head = words.at(-1)!;
    const same = map.get(head);
    if (same) same.push(words);
    else map.set(head, [words]);
  }
  return map;
});

/** Words behind which another food stands, or none. */
const behind = new Set(
  'with in for from without on such like preferably until using as at to then if per including by reserved not minus see into when mit avec con ohne sans w'.split(
    ' ',
  ),
);

/** A mistyped word put right, where just one known word is a slip away. */
const mended = new Map<string, string | null>();
function mend(word: string): string | null {
  if (word.length < 5 || word.length > 20) return null;
  const known = mended.get(word);
  if (known !== undefined) return known;
  let found: string | null = null;
  let isTwo = false;
  for (const candidate of foodWords())
    if (
      candidate[0] === word[0] &&
      Math.abs(candidate.length - word.length) <= 1 &&
      candidate.length >= 5 &&
      oneSlip(candidate, word)
    ) {
      isTwo ||= found !== null;
      found = candidate;
    }
  const result = isTwo ? null : found;
  if (mended.size > 5000) mended.clear();
  mended.set(word, result);
  return result;
}

/** 'aluminium free baking powder' is a name of its own. */
const freeInNames = later(
  () => new Set([...byName().keys()].flatMap((key) => /(\S+) free\b/.exec(key)?.[1] ?? [])),
);

/** 'reduced-salt bacon' is no salt. */
const isLessened = new Set(['reduced', 'less', 'lower']);
const isLessenable = new Set(['salt', 'sugar']);

/** 'nut-free pesto', 'no salt peanut butter': what is kept out says nothing of which food it is. */
function affirmed(words: readonly string[]): string[] {
  let isNegated = false;
  return words.filter((word, at) => {
    if (words[at + 1] === 'free' && foodWords().has(word) && !freeInNames().has(word)) return false;
    if (isLessened.has(word) && isLessenable.has(words[at + 1] ?? '')) return false;
    if (isLessenable.has(word) && isLessened.has(words[at - 1] ?? '')) return false;
    if (word === 'no' || word === 'without') isNegated = true;
    else if (isNegated && foodWords().has(word)) {
      isNegated = false;
      return false;
    }
    return true;
  });
}

function wordsOf(main: string, aside: readonly string[]): { words: Word[]; slips: number } {
  const words: Word[] = [];
  let slips = 0;
  const add = (text: string, first: Region) => {
    let region = first;
    for (const raw of affirmed(foldedWords(text).slice(0, 40))) {
      if (behind.has(raw)) region = 'behind';
      let word = raw;
      if (
        !foodWords().has(raw) &&
        !neutral.has(raw) &&
        !Object.hasOwn(stateWords, raw) &&
        region === 'main'
      ) {
        const right = mend(raw);
        if (right !== null) {
          word = right;
          slips++;
        }
      }
      words.push({ text: word, region });
    }
  };
  add(main, 'main');
  for (const text of aside.slice(0, 6)) {
    const isShort = foldedWords(text).length <= 3 && !/^(?:or|see|about|optional)\b/i.test(text);
    add(text, isShort ? 'refined' : 'aside');
  }
  return { words, slips };
}

/** Words of manner and state say less of which food is meant than its own name does. */
const isMinor = (word: string) => neutral.has(word) || Object.hasOwn(stateWords, word);
/** Of those, the ones that make another food of it when they stand behind a comma: 'beans, black', 'beef, ground'. */
const refining = new Set(
  'red white green yellow black brown ground minced sweet sour dark light heavy unsalted salted lean'.split(
    ' ',
  ),
);

/** What speaks for a name and against it. Chosen on lines of many cooks. */
const weights = {
  /** A word of the name: its own, in an aside, or one of manner and state. */
  own: 1,
  inAside: 0.6,
  minor: 0.3,
  /** A word left over that names food, that is short, that nothing here knows. */
  otherFood: 1,
  shortWord: 0.1,
  unknownWord: 0.42,
  /** Factors: the last food word is not in the name; a word from afar; a slip put right; words not side by side. */
  missesHead: 0.8,
  stray: 0.04,
  slip: 0.92,
  outOfOrder: 0.93,
  apart: 0.99,
} as const;

/** How much a word left over speaks against a name. */
const against = (word: string) =>
  /^\d/.test(word) || ((neutral.has(word) || Object.hasOwn(stateWords, word)) && !foodWords().has(word))
    ? 0
    : foodWords().has(word)
      ? weights.otherFood
      : word.length < 3
        ? weights.shortWord
        : weights.unknownWord;

/** The words of a line by where they stand. */
interface Said {
  readonly mains: readonly string[];
  readonly inMain: ReadonlySet<string>;
  readonly asides: ReadonlySet<string>;
  readonly refined: ReadonlySet<string>;
  readonly behinds: ReadonlySet<string>;
  /** The last word that names food: what the line is about. */
  readonly head: string | undefined;
  readonly slips: number;
}

function saidBy(main: string, aside: readonly string[]): Said {
  const { words, slips } = wordsOf(main, aside);
  const of = (...regions: Region[]) =>
    words.filter(({ region }) => regions.includes(region)).map(({ text }) => text);
  const mains = of('main');
  return {
    mains,
    inMain: new Set(mains),
    asides: new Set(of('aside', 'refined')),
    refined: new Set(of('refined').filter((word) => !isMinor(word) || refining.has(word))),
    behinds: new Set(of('behind')),
    head: mains.findLast((word) => against(word) === weights.otherFood),
    slips,
  };
}

const hasLink = (name: readonly string[]) => name.some((word) => behind.has(word));

/** Whether the line says the whole name, and more of it than manner in front of its first comma. */
function isSaid(name: readonly string[], { inMain, asides, behinds }: Said): boolean {
  const isMannered = name.length === 1 || name.every((word) => neutral.has(word));
  return (
    name.every((word) => inMain.has(word) || asides.has(word) || (hasLink(name) && behinds.has(word))) &&
    name.some((word) => inMain.has(word) && (isMannered || !neutral.has(word)))
  );
}

/** How much of the line a name accounts for. */
function matchOf(name: readonly string[], said: Said): Match {
  const { mains, inMain, refined, head, slips } = said;
  const own = new Set(name);
  // A word of an aside counts less: 'chicken, cut from the breast' is weaker than 'chicken breast'.
  const ownWeight = (word: string) =>
    isMinor(word) ? weights.minor : inMain.has(word) || refined.has(word) ? weights.own : weights.inAside;
  const covered = name.reduce((sum, word) => sum + ownWeight(word), 0);
  const entries = byName().get(name.join(' '))!;
  // 'penne pasta': a word left over that is itself a name of the same food says nothing new.
  const isSame = (word: string) =>
    byName()
      .get(word)
      ?.some((entry) => entries.includes(entry)) === true;
  const isLeft = (word: string) => !own.has(word) && !isSame(word);
  const left = [...inMain].filter(isLeft).reduce((sum, word) => sum + against(word), 0);
  const stray = hasLink(name) ? 0 : name.filter((word) => !inMain.has(word) && !refined.has(word)).length;
  let confidence = (covered / (covered + left)) * (1 - weights.stray * stray) * weights.slip ** slips;
  if (head !== undefined && isLeft(head)) confidence *= weights.missesHead;
  // Words in the order of the name, side by side, are surer than words that merely both occur.
  if (name.length > 1 && name.every((word) => inMain.has(word))) {
    if (!isRun(name, mains)) confidence *= weights.outOfOrder;
    if (!` ${mains.join(' ')} `.includes(` ${name.join(' ')} `)) confidence *= weights.apart;
  }
  return { entries, name: name.join(' '), confidence, covered };
}

/**
 * The curated names a line's words may mean, best first.
 * @param main words up to the first comma, without amount and brackets
 * @param aside what stood after commas: it may refine a name ('beans, black') but never be one
 */
export function matches(main: string, aside: readonly string[]): Match[] {
  const said = saidBy(main, aside);
  const lasts = new Set([...said.inMain, ...said.asides, ...said.behinds]);
  return [...lasts]
    .flatMap((last) => byHead().get(last) ?? [])
    .filter((name) => isSaid(name, said))
    .map((name) => matchOf(name, said))
    .toSorted(
      (a, b) =>
        b.confidence - a.confidence ||
        b.covered - a.covered ||
        b.name.length - a.name.length ||
        (a.name < b.name ? -1 : 1),
    );
}

function isRun(name: readonly string[], mains: readonly string[]): boolean {
  let at = 0;
  for (const word of mains) if (word === name[at]) at++;
  return at >= name.length;
}
