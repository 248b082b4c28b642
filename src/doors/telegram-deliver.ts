import type { Api } from 'grammy';
import type { Outgoing } from '#core/talk.ts';
import { editText, react, sendPart, type Signal } from './telegram-call.ts';
import { type Part, copies, draw } from './telegram-draw.ts';
import { type Failure, failureOf } from './telegram-refused.ts';

/** Where what arrived is ticked off. */
export interface Ticks {
  /** @param messageKey the message it became */
  readonly sent: (id: number, messageKey: string | null) => void;
  readonly sentPart: (id: number, parts: number, messageKey: string | null) => void;
  /** The message whose place it was to take is gone: it becomes one of its own. */
  readonly notInstead: (id: number) => void;
}

interface Place {
  readonly isFirst: boolean;
  readonly isOnly: boolean;
}

/** 'labels B4 (pdf)': a name with a dot in it may be shown as a link. */
const fileWords = (name: string): string => name.replace(/\.(\w+)$/u, ' ($1)');

/** Delivers one answer: as a message or several, in the place of an earlier one, or as a sign. */
export function openDelivery(api: Api, ticks: Ticks, log: (line: string) => void, signal: Signal) {
  /** Parts that arrived and could not be ticked off, such as on a full disk: they are not sent again. */
  const arrived = new Map<number, number>();
  let mayCopy = true;

  async function deliver(answer: Outgoing): Promise<Failure | undefined> {
    const parts = draw(answer);
    const from = Math.max(answer.partsSent, arrived.get(answer.id) ?? 0);
    let messageKey: string | null = null;
    for (let i = from; i < parts.length; i += 1) {
      const sent = await send(answer, parts[i]!, { isFirst: i === 0, isOnly: parts.length === 1 });
      if (sent !== null && typeof sent === 'object') return sent;
      arrived.set(answer.id, i + 1);
      // Of several messages the last text has the buttons: that one is known by its number.
      if (parts[i]!.is === 'text') messageKey = sent;
      // The last part is ticked off together with the whole answer.
      if (i + 1 < parts.length) ticks.sentPart(answer.id, i + 1, messageKey);
    }
    // Of several in one message none is known by its number: a change to one must not take the others away.
    const isShared = (answer.along ?? []).length > 0;
    for (const id of answer.along ?? []) ticks.sent(id, null);
    ticks.sent(answer.id, isShared ? null : messageKey);
    arrived.delete(answer.id);
    return undefined;
  }

  /** A message that is refused as it stands is tried once more as bare text, so that nobody is left without. */
  async function send(answer: Outgoing, part: Part, place: Place): Promise<Failure | string | null> {
    const sent = await withKeys(answer, part, place);
    if (sent === null || typeof sent !== 'object' || sent.is !== 'refused') return sent;
    log(`answer ${answer.id} was not taken (${sent.why}); sent as bare text instead`);
    const text =
      part.is === 'text'
        ? part.text
        : `The file ${fileWords(part.name)} could not be sent here. ${part.caption}`.trim();
    const bare: Part = { is: 'text', text, entities: [], keys: [] };
    return attempt({ ...answer, replyToKey: null, editKey: null }, bare, place);
  }

  /** A server that knows no keys that copy gets none; the line can be copied all the same. */
  async function withKeys(answer: Outgoing, part: Part, place: Place): Promise<Failure | string | null> {
    if (part.is !== 'text' || !part.keys.flat().some(copies)) return attempt(answer, part, place);
    const without: Part = { ...part, keys: [] };
    if (!mayCopy) return attempt(answer, without, place);
    const sent = await attempt(answer, part, place);
    if (sent === null || typeof sent !== 'object' || sent.is !== 'refused') return sent;
    const again = await attempt(answer, without, place);
    mayCopy = again !== null && typeof again === 'object';
    return again;
  }

  async function attempt(answer: Outgoing, part: Part, place: Place): Promise<Failure | string | null> {
    try {
      return await call(answer, part, place);
    } catch (error) {
      return failureOf(error);
    }
  }

  /** @returns the number of the message that shows it; null where a sign says all of it */
  async function call(answer: Outgoing, part: Part, { isFirst, isOnly }: Place): Promise<string | null> {
    const { editKey, chatKey, reply } = answer;
    if (reply.isReceipt && isOnly && (await react(api, answer, signal))) return null;
    if (editKey !== null && isOnly && part.is === 'text') {
      if ((await editText(api, { chatKey, messageKey: editKey }, part, signal)) === 'done') return editKey;
      ticks.notInstead(answer.id);
    }
    return sendPart(api, answer, part, isFirst, signal);
  }

  return { deliver };
}
