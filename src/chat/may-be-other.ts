import { Refusal } from '#core/refusal.ts';
import type { Message } from '#core/talk.ts';
import { deedsNear } from '#talk/deeds-near.ts';
import { isNegative } from '#talk/mood.ts';
import type { Answerer } from './answerer.ts';
import { type Carried, lookIn } from './carry-out.ts';
import type { Chosen } from './chosen.ts';
import { offer } from './propose.ts';
import { LeftOver, namesOf } from './read-parts.ts';

/** What a refused one of these says may be another's. */
const mayBeOther = new Set(['weigh', 'seal', 'batch', 'use', 'scale']);

/** What cannot be carried out may have been meant otherwise: the deeds that its things allow. */
export function withNearDeeds(
  answerer: Answerer,
  message: Message,
  household: number,
  { command, words }: Chosen,
  carried: Carried,
  error: unknown,
): Carried {
  const isTyped = message.button === null && !message.text.trimStart().startsWith('/');
  const isOpen = mayBeOther.has(command.name) || (command.name === 'back' && words.endsWith(' lost'));
  const isUnwanted = command.name === 'want' && words.startsWith('not ');
  if (
    !isTyped ||
    !(isUnwanted || (isOpen && !isNegative(message.text))) ||
    !(error instanceof Refusal) ||
    (carried.reply.buttons?.length ?? 0) > 0
  )
    return carried;
  const names = namesOf(lookIn(answerer, message, household).house);
  const near = deedsNear(message.text, names).flatMap(({ means, words: its }) => {
    const one = answerer.commands.find(({ name }) => name === means);
    // The same request with words left out is no other meaning.
    const isSame = one === command;
    return one && !isSame ? (offer(answerer, message, household, { command: one, words: its }) ?? []) : [];
  });
  return near.length === 0
    ? carried
    : { ...carried, reply: { ...carried.reply, asks: true, buttons: near.slice(0, 2) } };
}

/** Offers the request without the words that nothing took, where these change nothing. */
export function withoutTheRest(
  answerer: Answerer,
  message: Message,
  household: number,
  { command, words }: Chosen,
  carried: Carried,
  error: unknown,
): Carried {
  if (!(error instanceof LeftOver) || !command.mayLeaveOut || isNegative(words)) return carried;
  const button = offer(answerer, message, household, { command, words: error.without });
  return button ? { ...carried, reply: { ...carried.reply, buttons: [button] } } : carried;
}
