import type { Names } from '#words/parts.ts';
import { whichOne } from './hold.ts';
import { takeApart } from './pieces.ts';

/** Requests whose words are text of their own: 'or' and 'maybe' may stand in it. */
const ofText = new Set(['recipe', 'our', 'eater', 'label', 'help', 'undo']);
/** Requests that tell a deed: doubt about it is no deed. */
const deeds = new Set([
  'use',
  'discard',
  'weigh',
  'seal',
  'batch',
  'pack',
  'back',
  'found',
  'rate',
  'fix',
  'fuel',
]);

/**
 * What leaves a request open that was named by its slash: two things joined by 'or', a word of doubt.
 * @returns why it is not carried out, null where nothing is open
 */
export function leftOpen(request: string, words: string, names: () => Names): string | null {
  if (
    ofText.has(request) ||
    words.length > 300 ||
    !/\b(?:or|maybe|perhaps|probably|possibly|might)\b/iu.test(words)
  )
    return null;
  const { mood } = takeApart(words, names());
  if (mood.either) return whichOne;
  const doubt = /\b(?:maybe|perhaps|probably|possibly|might)\b/iu.exec(words)?.[0];
  return doubt !== undefined && deeds.has(request) ? `"${doubt}" leaves it open` : null;
}
