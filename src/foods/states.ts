import type { KitchenFood, State } from './kitchen.ts';
import { stateWords } from './vocabulary.ts';

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
