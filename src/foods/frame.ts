import { readLine } from './read.ts';

/** What a recipe gives, where it is told in pieces or by volume: '12 muffins', 'about 2 dozen', '1.5 litres'. */
export interface Makes {
  readonly typed: string;
  readonly pieces: number | null;
  readonly ml: number | null;
}

/** What a recipe says around its ingredients: times, how many it feeds, how hard it is. */
export interface Frame {
  /** As typed, without its label: '6', '4-6', 'four'; null where the line tells no servings. */
  readonly servings: string | null;
  readonly makes: Makes | null;
}

const feeds = new Set(['serves', 'serve', 'serving', 'servings', 'feeds', 'portion', 'portions', 'people', 'persons', 'person', 'yield', 'yields', 'makes', 'for']); // prettier-ignore
const times = new Set(['min', 'mins', 'minute', 'minutes', 'h', 'hr', 'hrs', 'hour', 'hours', 'sec', 'secs', 'seconds', 'day', 'days', 'overnight']); // prettier-ignore
const labels = new Set(['prep', 'preparation', 'preparing', 'cook', 'cooking', 'cooks', 'bake', 'baking', 'total', 'active', 'hands', 'on', 'inactive', 'passive', 'ready', 'in', 'time', 'times', 'rest', 'resting', 'chill', 'chilling', 'soak', 'soaking', 'simmer', 'simmering', 'marinating', 'rising', 'proving', 'plus', 'and', 'to', 'or', 'about', 'around', 'approx', 'ca', 'up', 'under', 'takes', 'duration', 'extra', 'adults', 'kids', 'children', 'hungry', 'generous', 'hearty', 'large', 'small', 'big', 'good', 'main', 'course', 'starter', 'side', 'as', 'family', 'crowd', 'the', 'whole', 'us', 'all', 'of', 'size', 'sized']); // prettier-ignore
const ease = new Set(['difficulty', 'level', 'skill', 'effort', 'easy', 'medium', 'hard', 'simple', 'moderate', 'beginner']); // prettier-ignore
const numberWords = new Set(['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'twelve', 'a', 'an', 'half']); // prettier-ignore
const yields =
  /^(?:(?:it|this|the recipe|recipe|batch)\s+)?(?:makes|yields?|gives)\b[\s:–—-]*(?:(?:approx\.?|approximately|ca\.?|roughly|around|up to|enough for)\s+)*/iu;

/** How large a serving is said to be. */
const sorts = new Set(['generous', 'hearty', 'large', 'small', 'big', 'good', 'main', 'hungry']); // prettier-ignore

const isNumber = (word: string | undefined): boolean =>
  word !== undefined && (/^[\d½¼¾]/u.test(word) || numberWords.has(word));

/**
 * Reads a line that tells of the recipe as a whole. Every word of it must be a label, a time or a number; one that
 * could be food makes it an ingredient line.
 * @returns undefined for every other line
 */
export function frameOf(line: string): Frame | undefined {
  const made = makesIn(line);
  if (made) return { servings: null, makes: made };
  const words: readonly string[] =
    line.toLowerCase().match(/[\d½¼¾]+(?:[.,/][\d]+)?(?:\s*[-–—]\s*[\d½¼¾]+)?|\p{L}+/gu) ?? [];
  const isYield = words[0] === 'yield' || words[0] === 'yields' || words[0] === 'makes';
  const isKnown = (word: string): boolean =>
    isNumber(word) || feeds.has(word) || times.has(word) || labels.has(word) || ease.has(word);
  if (words.length === 0 || !words.every(isKnown)) return undefined;
  const tells =
    words.some((word) => times.has(word) && word !== 'h') ||
    words.some((word, i) => word === 'h' && isNumber(words[i - 1])) ||
    words.some((word) => word === 'difficulty' || word === 'skill') ||
    words.some((word) => feeds.has(word));
  if (
    !tells ||
    !(
      words.some(isNumber) ||
      words[0] === 'serves' ||
      words[0] === 'feeds' ||
      words.includes('overnight') ||
      words.some((word) => ease.has(word))
    )
  )
    return undefined;
  const servings = servingsIn(words);
  // 'For the base' or 'for 20 min' tells nobody how many eat.
  if (
    servings === null &&
    !words.some((word) => times.has(word) || ease.has(word) || isYield) &&
    !/^(?:serves|feeds)$/.test(words[0]!)
  )
    return undefined;
  return { servings, makes: null };
}

/** 'Makes 12 muffins', 'yields 1.5 litres': a number of something that is neither servings nor people. */
export function makesIn(line: string): Makes | undefined {
  const lead = yields.exec(line)?.[0];
  const typed =
    lead === undefined
      ? ''
      : line
          .slice(lead.length)
          .trim()
          .replace(/[.)]+$/u, '');
  const { amounts, words } = readLine(typed);
  const [amount] = amounts;
  if (!amount || typed.split(/\s+/u).length > 8) return undefined;
  const named = [amount.unit?.name ?? '', words].join(' ').trim().toLowerCase();
  const isOfPeople =
    named === ''
      ? !/dozen/iu.test(typed)
      : feeds.has(named.split(' ').at(-1)!) || /\b(?:serv|portion|people|person)/iu.test(named);
  if (isOfPeople) return undefined;
  const ml = amount.unit?.ml;
  const grams = amount.unit?.grams;
  if (grams !== undefined) return { typed, pieces: null, ml: amount.value * grams };
  return ml === undefined
    ? { typed, pieces: amount.value, ml: null }
    : { typed, pieces: null, ml: amount.value * ml };
}

/** 'serves 4 to 6', 'yield 4', '6 portions', 'for 6': the number that stands beside such a word and is no time. */
function servingsIn(words: readonly string[]): string | null {
  for (const [i, word] of words.entries()) {
    if (!isNumber(word) || word === 'a' || word === 'an') continue;
    const isRange = /^(?:to|or)$/.test(words[i + 1] ?? '') && isNumber(words[i + 2]);
    const behind = words.slice(isRange ? i + 3 : i + 1);
    // '6 generous servings'
    const after = behind.find((one) => !sorts.has(one));
    if (after !== undefined && times.has(after)) continue;
    const isApprox = /^(?:about|around|approx|ca)$/.test(words[i - 1] ?? '');
    const before = words[isApprox ? i - 2 : i - 1];
    if (feeds.has(before ?? '') || (feeds.has(after ?? '') && after !== 'for' && after !== 'makes'))
      return isRange ? `${word}-${words[i + 2]!}` : word;
  }
  return null;
}
