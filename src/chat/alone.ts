import { Lacking, Refusal } from '#core/refusal.ts';
import type { Choice, Message } from '#core/talk.ts';
import type { House } from '#house/house.ts';
import { type Kind, ownThings } from '#house/own-things.ts';
import { isQuestion } from '#talk/mood.ts';
import type { Names } from '#words/parts.ts';
import { Ambiguous } from '#words/reading.ts';
import { called } from './called.ts';
import type { Carried } from './carry-out.ts';
import type { Addressed } from './chosen.ts';
import type { Command } from './command.ts';
import { readParts } from './read-parts.ts';

// A request that comes alone, as from the menu: the household's own things are a tap away, and what is still missing may
// follow in a message of its own.

/** What is asked where nobody said of what; none where the answer shows them anyway. */
const whichOf: Readonly<Record<Kind, string>> = {
  loads: 'Which load is it?',
  batches: 'Which batch?',
  sealed: 'Which batch?',
  pouches: 'Which pouch?',
  eaten: 'Which pouch was it?',
  meals: 'Which meal?',
  'in stock': 'Which meal?',
  eaters: 'Who?',
  days: 'Which days?',
  trips: 'For which trip?',
};

type Request = Pick<Command, 'name' | 'offers'>;

/** The household's own things behind a request's name. */
function choices({ name, offers }: Request, house: House): Choice[] {
  if (!offers) return [];
  return ownThings(house, offers.of).map(({ label, words }) => ({
    label: offers.label?.(label) ?? label,
    request: `/${offers.request ?? name} ${words} ${offers.behind ?? ''}`.trim(),
  }));
}

/**
 * Puts the household's own things below the answer to a request that came without words, and lets what is missing follow.
 * @param error why it was refused, if it was
 */
export function askingFor(
  carried: Carried,
  { command, words, message, error }: { command: Command; words: string; message: Message; error?: unknown },
  house: () => House,
): Carried {
  const { reply } = carried;
  const isAlone = words.trim() === '';
  const isRefused = error instanceof Refusal;
  const isMissing = isRefused && (error instanceof Lacking || (isAlone && command.offers !== null));
  if ((!isAlone && !isMissing) || carried.outcome === 'recorded') return carried;
  const awaits = { request: `/${command.name} ${words}`.trim(), person: message.person.key };
  if ((reply.buttons?.length ?? 0) > 0)
    return isMissing ? { ...carried, reply: { ...reply, awaits } } : carried;
  const own = isAlone ? choices(command, house()) : [];
  if (!isRefused) return own.length === 0 ? carried : { ...carried, reply: { ...reply, buttons: own } };
  if (!isMissing) return carried;
  if (own.length === 0) {
    const group = isAlone ? reply.group : `${reply.group}\nAnswer this with just that.`;
    return { ...carried, reply: { ...reply, group, awaits } };
  }
  const example = reply.group.split('\n').filter((line) => line.startsWith('For example: '));
  const asks = command.offers!.request === undefined ? whichOf[command.offers!.of] : error.message;
  return { ...carried, reply: { asks: true, awaits, group: [asks, ...example].join('\n'), buttons: own } };
}

/**
 * What somebody says in answer to what was asked of them, as the whole request.
 * @param awaited the request that still lacked something
 * @param byItself what the text means without what was asked
 * @returns undefined where it is no such answer
 */
export function completed(
  awaited: string | undefined,
  text: string,
  commands: readonly Command[],
  names: () => Names,
  byItself: () => Addressed,
): string | undefined {
  const typed = text.trim();
  if (awaited === undefined || typed === '' || typed.startsWith('/') || isQuestion(typed)) return undefined;
  const [, name, words] = /^\/(\w+)(.*)$/su.exec(awaited) ?? [];
  const command = name === undefined ? undefined : called(name, commands);
  if (!command) return undefined;
  if (!isWhole(command, `${words!} ${typed}`, names())) return undefined;
  // Where any words fit, such as a reason, what means another deed by itself is that one.
  const takesAny = isWhole(command, `${words!} ${typed} ${anyWord}`, names());
  return takesAny && isAnother(byItself(), command) ? undefined : `${awaited} ${typed}`;
}

/** A word that no request knows. */
const anyWord = 'zqxj';

const isAnother = (found: Addressed, command: Command): boolean =>
  found.is === 'request'
    ? found.main.command.records && found.main.command !== command
    : found.is === 'several' || found.is === 'together' || found.is === 'instead';

/** Whether a request takes all of some words, or has to ask which of two it means by them. */
function isWhole(command: Command, words: string, names: Names): boolean {
  try {
    return readParts(command, words, names).couldNot === '';
  } catch (error) {
    if (error instanceof Ambiguous) return true;
    if (error instanceof Refusal) return false;
    throw error;
  }
}
