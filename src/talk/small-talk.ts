import type { Names } from '#words/parts.ts';
import { harmless, isAdverb, openers } from './grammar.ts';
import { Look } from './look.ts';

/** Nobody chats longer in one breath. Chosen. */
const longest = 120;

/** Words of praise and feeling that ask for nothing and tell nothing that is kept. */
const feeling = new Set(
  `good great nice lovely perfect cool super awesome brilliant amazing fantastic yummy delicious excellent wonderful beautiful
  funny fun tired excited hungry full sad cute sweet crazy mad proud ready hurray hurrah bravo congrats congratulations
  love loved like liked hug hugs kiss xx xo job work idea evening morning night day weekend time luck birthday
  mum mom mummy mommy dad daddy papa mama grandma grandpa granny sister brother cousin aunt uncle darling love honey guys lads
  see ya bye later soon true right exactly agreed sure absolutely totally such what how as if ever always whoop whoops phew
  omg lmao rofl hihi hehe haha hahaha aww aw ooh ah gosh blimey no nope yes yeah yep can't wait sounds knock peekaboo boo tada`.split(
    /\s+/,
  ),
);

/** 'Haha nice one mum', 'can't wait': chat that no answer is expected to. */
export function isSmallTalk(text: string, names: Names): boolean {
  if (text.length > longest || /[?？\d/]/u.test(text)) return false;
  const { said } = new Look(text, names);
  const { codes, batches, meals, trips, people, all, mood } = said;
  if (mood.asks || codes.length + batches.length + meals.length + trips.length > 0) return false;
  const named = new Set(people.flatMap(({ at }) => at));
  const words = all.filter((token, i) => token.is !== 'mark' && !named.has(i));
  const isNothing = ({ is, plain }: (typeof all)[number]) =>
    plain === 'one' ||
    (is === 'word' && (harmless.has(plain) || openers.has(plain) || feeling.has(plain) || isAdverb(plain)));
  return (
    words.length > 0 &&
    words.every(isNothing) &&
    words.some(({ plain }) => feeling.has(plain) || /^(?:ha)+h?$/.test(plain))
  );
}
