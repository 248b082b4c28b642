import { byName, type KitchenFood, type State } from './kitchen.ts';
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
const byHead = new Map<string, string[][]>();
for (const name of byName.keys()) {
  const words = name.split(' ');
  const head = words.at(-1)!;
  const same = byHead.get(head);
  if (same) same.push(words);
  else byHead.set(head, [words]);
}

const behind = new Set([
  'with',
  'in',
  'for',
  'from',
  'without',
  'on',
  'such',
  'like',
  'preferably',
  'until',
  'using',
  'as',
  'at',
  'to',
  'then',
  'if',
  'per',
  'including',
  'by',
  'reserved',
  'not',
  'minus',
  'see',
  'into',
  'when',
]);

/** A mistyped word put right, where just one known word is a slip away. */
const mended = new Map<string, string | null>();
function mend(word: string): string | null {
  if (word.length < 5 || word.length > 20) return null;
  const known = mended.get(word);
  if (known !== undefined) return known;
  let found: string | null = null;
  let isTwo = false;
  for (const candidate of foodWords)
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
const freeInNames = new Set([...byName.keys()].flatMap((key) => /(\S+) free\b/.exec(key)?.[1] ?? []));

/** 'reduced-salt bacon' is no salt. */
const isLessened = new Set(['reduced', 'less', 'lower']);
const isLessenable = new Set(['salt', 'sugar']);

/** 'nut-free pesto', 'no salt peanut butter': what is kept out says nothing of which food it is. */
function affirmed(words: readonly string[]): string[] {
  let isNegated = false;
  return words.filter((word, at) => {
    if (words[at + 1] === 'free' && foodWords.has(word) && !freeInNames.has(word)) return false;
    if (isLessened.has(word) && isLessenable.has(words[at + 1] ?? '')) return false;
    if (isLessenable.has(word) && isLessened.has(words[at - 1] ?? '')) return false;
    if (word === 'no' || word === 'without') isNegated = true;
    else if (isNegated && foodWords.has(word)) {
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
      if (!foodWords.has(raw) && !neutral.has(raw) && !Object.hasOwn(stateWords, raw) && region === 'main') {
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
const refining = new Set([
  'red',
  'white',
  'green',
  'yellow',
  'black',
  'brown',
  'ground',
  'minced',
  'sweet',
  'sour',
  'dark',
  'light',
  'heavy',
  'unsalted',
  'salted',
  'lean',
]);

/** How much a word left over speaks against a name. */
const against = (word: string) =>
  /^\d/.test(word) || ((neutral.has(word) || Object.hasOwn(stateWords, word)) && !foodWords.has(word))
    ? 0
    : foodWords.has(word)
      ? 1
      : word.length < 3
        ? 0.1
        : 0.42;

/**
 * The curated names a line's words may mean, best first.
 * @param main words up to the first comma, without amount and brackets
 * @param aside what stood after commas: it may refine a name ('beans, black') but never be one
 */
export function matches(main: string, aside: readonly string[]): Match[] {
  const { words, slips } = wordsOf(main, aside);
  const mains = words.filter((word) => word.region === 'main').map((word) => word.text);
  const asides = new Set(
    words.filter(({ region }) => region === 'aside' || region === 'refined').map(({ text }) => text),
  );
  const refined = new Set(
    words
      .filter(({ region, text }) => region === 'refined' && (!isMinor(text) || refining.has(text)))
      .map(({ text }) => text),
  );
  const behinds = new Set(words.filter((word) => word.region === 'behind').map((word) => word.text));
  const inMain = new Set(mains);
  const head = mains.findLast((word) => against(word) === 1);
  const found: Match[] = [];
  for (const last of new Set([...inMain, ...asides, ...behinds]))
    for (const name of byHead.get(last) ?? []) {
      const hasLink = name.some((word) => behind.has(word));
      if (!name.every((word) => inMain.has(word) || asides.has(word) || (hasLink && behinds.has(word))))
        continue;
      if (
        !name.some(
          (word) =>
            inMain.has(word) &&
            (!neutral.has(word) || name.length === 1 || name.every((w) => neutral.has(w))),
        )
      )
        continue;
      const own = new Set(name);
      // A word of an aside counts less: 'chicken, cut from the breast' is weaker than 'chicken breast'.
      const covered = name.reduce(
        (sum, word) => sum + (isMinor(word) ? 0.3 : inMain.has(word) || refined.has(word) ? 1 : 0.6),
        0,
      );
      const entries = byName.get(name.join(' '))!;
      // 'penne pasta': a word left over that is itself a name of the same food says nothing new.
      const isSame = (word: string) => byName.get(word)?.some((entry) => entries.includes(entry)) === true;
      const left = [...inMain].reduce(
        (sum, word) => sum + (own.has(word) || isSame(word) ? 0 : against(word)),
        0,
      );
      const missesHead = head !== undefined && !own.has(head) && !isSame(head);
      const stray = hasLink ? 0 : name.filter((word) => !inMain.has(word) && !refined.has(word)).length;
      let confidence =
        (covered / (covered + left)) * (missesHead ? 0.8 : 1) * (1 - 0.04 * stray) * 0.92 ** slips;
      // Words in the order of the name, side by side, are surer than words that merely both occur.
      if (name.length > 1 && name.every((word) => inMain.has(word)) && !isRun(name, mains))
        confidence *= 0.93;
      const isAllMain = name.length > 1 && name.every((word) => inMain.has(word));
      if (isAllMain && !` ${mains.join(' ')} `.includes(` ${name.join(' ')} `)) confidence *= 0.99;
      found.push({ entries, name: name.join(' '), confidence, covered });
    }
  return found.toSorted(
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

/** The states that would do, in the order wanted, from the words of the whole line and its unit. */
export function wantedStates(
  words: ReadonlySet<string>,
  unit: { isTin: boolean; isVolume: boolean; isSpoon: boolean },
): (State | null)[] {
  const said = new Set<string>();
  for (const word of words) if (Object.hasOwn(stateWords, word)) said.add(stateWords[word]!);
  if (words.has('freeze') && words.has('dried')) said.add('dried');
  const canned = said.has('canned') || unit.isTin;
  if (canned)
    return said.has('drained') || (unit.isVolume && !said.has('undrained'))
      ? ['drained', 'canned']
      : ['canned', 'drained'];
  if (said.has('smoked')) return ['smoked'];
  if (said.has('cooked')) return ['cooked', 'roasted', 'fried'];
  if (said.has('frozen')) return ['frozen', null, 'dry'];
  if (said.has('dried') && !said.has('fresh')) return ['dried', 'dry'];
  if (said.has('fresh') || said.has('raw')) return ['fresh', null];
  if (said.has('fried')) return ['fried'];
  if (said.has('roasted')) return ['roasted', 'cooked'];
  if (said.has('dry')) return ['dry', 'dried'];
  if (said.has('drained')) return ['drained', 'canned'];
  return [];
}

const isHerb = (food: KitchenFood) =>
  food.weights.some(({ unit }) => unit === 'sprig' || unit === 'bunch' || unit === 'leaf') &&
  food.weights.every(({ grams }) => grams < 130);

/**
 * The row among those that share a name that stands for the state asked for.
 * @returns the row, and whether the state asked for is what it is
 */
export function inState(
  entries: readonly KitchenFood[],
  wanted: readonly (State | null)[],
  isTeaspoon: boolean,
): { food: KitchenFood; isAsAsked: boolean } {
  for (const state of wanted) {
    const food = entries.find((entry) => entry.state === state);
    if (food) return { food, isAsAsked: true };
  }
  const first = entries.find((entry) => entry.state === null) ?? entries[0]!;
  const dried = entries.find((entry) => entry.state === 'dried');
  // A teaspoon of a herb with no other word is the dried one (common practice).
  if (wanted.length === 0 && isTeaspoon && dried && isHerb(first)) return { food: dried, isAsAsked: true };
  return {
    food: wanted.length === 0 && entries[0]!.state === 'dry' ? entries[0]! : first,
    isAsAsked: wanted.length === 0,
  };
}
