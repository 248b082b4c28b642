import { momentOf } from './amounts.ts';
import { harmless, openers } from './grammar.ts';
import { type Reader, holdOf, idea, people, scoreOf } from './hold.ts';

/** 'Sealed 3 pouches of 76 g B3 with 72 g B4', 'mixed 40 g of the soup, 30 g lentils and 15 g milk powder in a bag'. */
export const mixing: Reader = (look) => {
  const { all, batches, meals, codes } = look.said;
  const masses = all.filter((token) => token.is === 'quantity' && token.unit.kind === 'mass').length;
  const named = new Set([
    ...batches.map(({ batch }) => `B${batch}`),
    ...meals.map(({ names: [name] }) => name),
  ]);
  const joined = all.some(({ plain }) => plain === '+' || plain === 'plus');
  const isMixed = named.size > 0 && codes.length === 0 && (masses > 1 || joined);
  const isPut = look.has('mix', 'with', 'put', 'fill', 'add', 'combine', 'stir');
  if (!isMixed || (named.size < 2 && !joined && !isPut)) return undefined;
  // 'Bag' is a deed, and a thing behind its number.
  const seals = look.at(...idea('seal')).filter((i) => all[i - 1]?.is !== 'number');
  const mixes = look.at('mix', 'combine', 'fill', 'make', 'put', 'add', 'stir');
  const isPouch = look.has('pouch', 'bag', 'jar', 'tin') || seals.length > 0;
  if (seals.length + mixes.length === 0 || !isPouch) return undefined;
  const moment = momentOf(look);
  const drop = new Set([...seals, ...mixes, ...people(look), ...moment.at]);
  // What opens the sentence says nothing of what goes in; everything else the request itself accounts for.
  for (let i = 0; i < all.length; i++) {
    const { is, plain } = all[i]!;
    if (drop.has(i)) continue;
    if (is === 'word' && (openers.has(plain) || harmless.has(plain))) drop.add(i);
    else break;
  }
  return {
    means: 'seal',
    words: `${look.without(drop)}${moment.words === '' ? '' : ` at ${moment.words}`}`,
    score: scoreOf(
      seals.length > 0 ? 4 : 3,
      batches.length > 0 && 1,
      look.has('pouch', 'bag', 'jar', 'tin') && 1,
      3,
    ),
    left: [],
    holds: holdOf(look),
  };
};
