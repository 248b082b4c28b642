import type { Reader } from './hold.ts';
import type { Meaning } from './look.ts';

/** 'We are four: me, Tom, Lea 9 and Ida 6', 'the family is Ana, Ben and Kit (7)': several people in one message. */
export const family: Reader = (look) => {
  if (look.said.mood.asks || look.said.codes.length + look.said.trips.length > 0) return undefined;
  const list =
    /^(?:hi[\s,!]+)?(?:we are|we['’]re|the family is|our family is|in the family are|eating here are|there are|eaters are|our family:|the family:|family:|us:)(?:\s+(?:\d+|two|three|four|five|six|seven|eight)(?: of us| people| eaters)?)?\s*[:,–-]?\s+(.+)$/isu.exec(
      look.bare,
    )?.[1];
  if (list === undefined) return undefined;
  const pieces = list
    .split(/\s*[,;]\s*(?:and\s+)?|\s+and\s+/iu)
    .map((piece) => piece.replace(/[.!]+$/u, '').trim())
    .filter((piece) => piece !== '');
  const told = pieces.map((piece): Meaning | undefined => {
    const isMe = /^(?:me|myself|i)$/iu.test(piece);
    const m =
      /^(?:(?:our|my)\s+(?:son|daughter|kid|child|baby|wife|husband|partner)\s+)?(\p{Lu}[\p{L}'’-]*(?:\s+\p{Lu}[\p{L}'’-]*)?)(?:\s*\(?\s*(?:who is |age |aged )?(\d{1,2})(?:\s*(?:years?(?: old)?|y\/?o))?\s*\)?)?(?:\s+((?:no|not|never|allergic|vegan|vegetarian|child|portion)\b.*))?$/u.exec(
        piece,
      );
    if (!isMe && !m) return undefined;
    const age = m?.[2] === undefined ? '' : ` ${m[2]} years`;
    const words = isMe ? 'me' : `${m![1]}${age}${m![3] === undefined ? '' : ` ${m![3]}`}`;
    return { means: 'eater', words, score: 5, left: [], holds: null };
  });
  if (told.length < 2 || told.some((one) => one === undefined)) return undefined;
  return (told as Meaning[]).reduceRight((rest, one) => ({ ...one, also: rest }));
};
