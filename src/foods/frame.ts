/** What a recipe says around its ingredients: times, how many it feeds, how hard it is. */
export interface Frame {
  /** As typed, without its label: '6', '4-6', 'four'; null where the line tells no servings. */
  readonly servings: string | null;
}

const feeds = new Set(['serves', 'serve', 'serving', 'servings', 'feeds', 'portion', 'portions', 'people', 'persons', 'person', 'yield', 'yields', 'makes', 'for']); // prettier-ignore
const times = new Set(['min', 'mins', 'minute', 'minutes', 'h', 'hr', 'hrs', 'hour', 'hours', 'sec', 'secs', 'seconds', 'day', 'days', 'overnight']); // prettier-ignore
const labels = new Set(['prep', 'preparation', 'preparing', 'cook', 'cooking', 'cooks', 'bake', 'baking', 'total', 'active', 'hands', 'on', 'inactive', 'passive', 'ready', 'in', 'time', 'times', 'rest', 'resting', 'chill', 'chilling', 'soak', 'soaking', 'simmer', 'simmering', 'marinating', 'rising', 'proving', 'plus', 'and', 'to', 'or', 'about', 'around', 'approx', 'ca', 'up', 'under', 'takes', 'duration', 'extra', 'adults', 'hungry']); // prettier-ignore
const ease = new Set(['difficulty', 'level', 'skill', 'effort', 'easy', 'medium', 'hard', 'simple', 'moderate', 'beginner']); // prettier-ignore
const numberWords = new Set(['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'twelve', 'a', 'an', 'half']); // prettier-ignore
/** What a yield is measured in where it is no number of people. */
const measures = new Set(['cup', 'cups', 'l', 'litre', 'litres', 'liter', 'liters', 'ml', 'g', 'kg', 'oz', 'lb', 'lbs', 'quart', 'quarts', 'pint', 'pints']); // prettier-ignore

const isNumber = (word: string | undefined): boolean =>
  word !== undefined && (/^[\d½¼¾]/u.test(word) || numberWords.has(word));

/**
 * Reads a line that tells of the recipe as a whole. Every word of it must be a label, a time or a number; one that
 * could be food makes it an ingredient line.
 * @returns undefined for every other line
 */
export function frameOf(line: string): Frame | undefined {
  const words: readonly string[] =
    line.toLowerCase().match(/[\d½¼¾]+(?:[.,/][\d]+)?(?:\s*[-–—]\s*[\d½¼¾]+)?|\p{L}+/gu) ?? [];
  const isYield = words[0] === 'yield' || words[0] === 'yields' || words[0] === 'makes';
  const isKnown = (word: string): boolean =>
    isNumber(word) ||
    feeds.has(word) ||
    times.has(word) ||
    labels.has(word) ||
    ease.has(word) ||
    (isYield && measures.has(word));
  if (words.length === 0 || !words.every(isKnown)) return undefined;
  const tells =
    words.some((word) => times.has(word) && word !== 'h') ||
    words.some((word, i) => word === 'h' && isNumber(words[i - 1])) ||
    words.some((word) => word === 'difficulty' || word === 'skill') ||
    words.some((word) => feeds.has(word));
  if (
    !tells ||
    !(words.some(isNumber) || words.includes('overnight') || words.some((word) => ease.has(word)))
  )
    return undefined;
  const servings = servingsIn(words);
  // 'For the base' or 'for 20 min' tells nobody how many eat.
  if (servings === null && !words.some((word) => times.has(word) || ease.has(word) || isYield))
    return undefined;
  return { servings };
}

/** 'serves 4 to 6', 'yield 4', '6 portions', 'for 6': the number that stands beside such a word and is no time. */
function servingsIn(words: readonly string[]): string | null {
  for (const [i, word] of words.entries()) {
    if (!isNumber(word) || word === 'a' || word === 'an') continue;
    const isRange = /^(?:to|or)$/.test(words[i + 1] ?? '') && isNumber(words[i + 2]);
    const after = words[isRange ? i + 3 : i + 1];
    if (after !== undefined && (times.has(after) || measures.has(after))) continue;
    const isApprox = /^(?:about|around|approx|ca)$/.test(words[i - 1] ?? '');
    const before = words[isApprox ? i - 2 : i - 1];
    if (feeds.has(before ?? '') || (feeds.has(after ?? '') && after !== 'for' && after !== 'makes'))
      return isRange ? `${word}-${words[i + 2]!}` : word;
  }
  return null;
}
