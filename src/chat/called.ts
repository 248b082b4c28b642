import type { HelpRecord } from '#house/house.ts';
import { slips } from '#words/near.ts';
import type { Command } from './command.ts';

/** The request of that name, or of another name that people use for it. */
export function called<R extends HelpRecord>(name: string, requests: readonly R[]): R | undefined {
  return requests.find((c) => c.name === name || c.alsoCalled.includes(name));
}

/** A short word with one letter exchanged is as likely another word: 'wait' is no slip of 'want'. */
const isOtherWord = (typed: string, name: string): boolean =>
  typed.length <= 4 &&
  typed.length === name.length &&
  typed.split('').toSorted().join('') !== name.split('').toSorted().join('');

/** The request that a sentence may open with, its name mistyped. */
export function slipOf(word: string, commands: readonly Command[]): Command | undefined {
  const found = word.length < 4 ? undefined : nearest(word, commands);
  return found && isOtherWord(word, found.name) ? undefined : found;
}

/** The request whose name is a slip of the pen away. */
export function nearest<R extends HelpRecord>(typed: string, requests: readonly R[]): R | undefined {
  const most = typed.length < 7 ? 1 : 2;
  return requests
    .map((request) => ({ request, distance: slips(typed, request.name, most) }))
    .filter(({ distance }) => distance <= most)
    .sort((a, b) => a.distance - b.distance)[0]?.request;
}
