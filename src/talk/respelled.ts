import { forgiven, slips } from '#words/near.ts';
import type { Names } from '#words/parts.ts';
import { isAccounted, knownWords } from './aside.ts';
import { avoidableWords } from './ask.ts';
import { ideas } from './question-words.ts';
import { takeApart } from './pieces.ts';

const known = [
  ...new Set([
    ...knownWords,
    ...avoidableWords,
    ...Object.values(ideas).flat(),
    'heaviest',
    'lightest',
    'biggest',
    'smallest',
    'oldest',
    'newest',
  ]),
].filter((word) => word.length > 3);

/**
 * A question with the slips of the pen in it put right: each word that nobody knows and that is one or two letters from
 * just one that people ask by. For questions alone: what records is never guessed at.
 * @returns undefined where nothing was put right
 */
export function respelled(
  text: string,
  names: Names,
): { readonly text: string; readonly remark: string } | undefined {
  const { all, meals, people, trips } = takeApart(text, names);
  const spoken = new Set([...meals, ...people, ...trips].flatMap(({ at }) => at));
  const put: { from: number; to: number; typed: string; into: string }[] = [];
  all.forEach((token, i) => {
    if (token.is !== 'word' || spoken.has(i) || token.plain.length < 4 || isAccounted(token.plain)) return;
    const near = nearestTo(token.plain);
    if (near !== undefined) put.push({ from: token.from, to: token.to, typed: token.typed, into: near });
  });
  if (put.length === 0) return undefined;
  const whole = put
    .toReversed()
    .reduce((so, { from, to, into }) => so.slice(0, from) + into + so.slice(to), text);
  return { text: whole, remark: `read ${put.map(({ typed, into }) => `"${typed}" as ${into}`).join(', ')}` };
}

function nearestTo(word: string): string | undefined {
  if (known.includes(word)) return undefined;
  for (let most = 1; most <= forgiven(word); most++) {
    const found = known.filter((one) => one[0] === word[0] && slips(word, one, most) === most);
    if (found.length > 0) return found.length === 1 ? found[0] : undefined;
  }
  return undefined;
}
