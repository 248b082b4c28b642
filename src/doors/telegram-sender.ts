import { setMaxListeners } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import { type Api, GrammyError, InputFile } from 'grammy';
import type { Outgoing } from '#core/talk.ts';
import { type Part, draw } from './telegram-draw.ts';
import { type Failure, failureOf, sayError } from './telegram-refused.ts';

/** The answers that wait, as the sender needs them. */
export interface Outbox {
  /** The oldest waiting answer of each chat. */
  readonly heads: (door: 'telegram') => readonly { readonly chatKey: string; readonly nextTryAtMs: number }[];
  readonly head: (
    door: 'telegram',
    chatKey: string,
  ) => (Outgoing & { readonly nextTryAtMs: number }) | undefined;
  readonly sent: (id: number) => void;
  readonly sentPart: (id: number, parts: number) => void;
  readonly tried: (id: number, nextTryAtMs: number) => void;
  readonly dropped: (id: number, why: string) => void;
  /** Gives up every answer that waits for a chat. @returns how many */
  readonly dropChat: (door: 'telegram', chatKey: string, why: string) => number;
  /** The answer goes to the group's general place, with a word on why. */
  readonly leaveTopic: (id: number, notice: string) => void;
}

export interface Sender {
  /** Something may be waiting, in one chat or in any: looks at once. */
  readonly wake: (chatKey?: string) => void;
  /** Sends what can be sent now; ends when nothing is left that is due, or at the time limit. */
  readonly flush: (limitMs: number) => Promise<void>;
}

interface SenderNeeds {
  readonly api: Api;
  readonly outbox: Outbox;
  readonly moved: (from: string, to: string) => void;
  readonly log: (line: string) => void;
}

/** The library's own type of what the runtime has built in. */
type Signal = NonNullable<Parameters<Api['raw']['sendMessage']>[1]>;

const shortestPauseMs = 500;
const longestPauseMs = 300_000;
const longestRestMs = 5000;
const mostOwnFaults = 5;
/** Calls at a time; the platform takes about 30 messages a second. */
const mostAtOnce = 100;

/**
 * Delivers the outbox: in order within a chat, every chat on its own, so that one that is slow or slowed down by
 * the platform holds no other. What waits is in the database; a restart goes on where this one ended.
 *
 * A connection that breaks after the platform took a message leaves open whether it arrived. It is sent again:
 * an answer that comes twice says the same thing twice, its buttons work once, and the change it speaks of was
 * made once. One that never comes leaves people guessing whether something was recorded.
 */
export function openSender({ api, outbox, moved, log }: SenderNeeds): Sender {
  const busy = new Map<string, Promise<void>>();
  /** Parts that arrived and could not be ticked off, such as on a full disk: they are not sent again. */
  const arrived = new Map<number, number>();
  /** Chats with something due that wait for their turn. */
  const ready = new Set<string>();
  const closing = new AbortController();
  setMaxListeners(0, closing.signal);
  let alarm: NodeJS.Timeout | undefined;
  let alarmMs = Number.POSITIVE_INFINITY;

  /** @param chatKey where something waits, if that is known: then no other chat is looked at */
  function wake(chatKey?: string): void {
    if (closing.signal.aborted) return;
    try {
      if (chatKey === undefined) startDue();
      else begin(chatKey);
    } catch (error) {
      log(`the outbox cannot be read: ${sayError(error)}`);
      wakeAt(Date.now() + longestRestMs);
    }
  }

  function startDue(): void {
    clearTimeout(alarm);
    alarmMs = Number.POSITIVE_INFINITY;
    for (const { chatKey, nextTryAtMs } of outbox.heads('telegram')) {
      if (nextTryAtMs > Date.now()) wakeAt(nextTryAtMs);
      else begin(chatKey);
    }
  }

  function wakeAt(ms: number): void {
    const atMs = Math.min(ms, Date.now() + longestPauseMs);
    if (atMs >= alarmMs) return;
    clearTimeout(alarm);
    alarmMs = atMs;
    alarm = setTimeout(startDueAgain, Math.max(0, atMs - Date.now()));
  }

  const startDueAgain = () => {
    alarmMs = Number.POSITIVE_INFINITY;
    wake();
  };

  /** Chats take turns, an answer each: one with many holds up no other. */
  function begin(chatKey: string): void {
    // Whoever is at it finds what came since.
    if (busy.has(chatKey)) return;
    if (busy.size >= mostAtOnce) {
      ready.add(chatKey);
      return;
    }
    ready.delete(chatKey);
    busy.set(
      chatKey,
      serve(chatKey).finally(() => {
        busy.delete(chatKey);
        if (closing.signal.aborted) return;
        const [next] = ready;
        if (next !== undefined) begin(next);
        again(chatKey);
      }),
    );
  }

  function again(chatKey: string): void {
    try {
      const head = outbox.head('telegram', chatKey);
      if (head === undefined) return;
      if (head.nextTryAtMs > Date.now()) wakeAt(head.nextTryAtMs);
      else begin(chatKey);
    } catch {
      wakeAt(Date.now() + longestRestMs);
    }
  }

  /** Sends a chat's oldest answer, if it is due. */
  async function serve(chatKey: string): Promise<void> {
    let next: Outgoing | undefined;
    try {
      const head = outbox.head('telegram', chatKey);
      if (!head || head.nextTryAtMs > Date.now()) return;
      next = head;
      await deliver(head);
    } catch (error) {
      // Not the platform's fault but ours, such as a full disk: other chats go on.
      log(`sending to chat ${chatKey} failed: ${sayError(error)}`);
      if (closing.signal.aborted) return;
      await setAside(next);
    }
  }

  /** An answer that cannot even be drawn or ticked off is tried a few times and then given up. */
  async function setAside(answer: Outgoing | undefined): Promise<void> {
    try {
      if (answer && answer.tries >= mostOwnFaults)
        return outbox.dropped(answer.id, 'a fault of the program; see the log');
      if (answer) return outbox.tried(answer.id, Date.now() + 1000 * 2 ** answer.tries);
    } catch (error) {
      log(`the outbox cannot be written: ${sayError(error)}`);
    }
    await sleep(longestRestMs, undefined, { signal: closing.signal }).catch(() => undefined);
  }

  async function deliver(answer: Outgoing): Promise<void> {
    const parts = draw(answer);
    const from = Math.max(answer.partsSent, arrived.get(answer.id) ?? 0);
    for (let i = from; i < parts.length; i += 1) {
      const failure = await send(answer, parts[i]!, i === 0);
      if (failure && closing.signal.aborted) return;
      if (failure) return settle(answer, failure);
      arrived.set(answer.id, i + 1);
      // The last part is ticked off together with the whole answer.
      if (i + 1 < parts.length) outbox.sentPart(answer.id, i + 1);
    }
    outbox.sent(answer.id);
    arrived.delete(answer.id);
  }

  /** A message that is refused as it stands is tried once more as bare text, so that nobody is left without. */
  async function send(answer: Outgoing, part: Part, isFirst: boolean): Promise<Failure | undefined> {
    const failure = await attempt(answer, part, isFirst);
    if (failure?.is !== 'refused') return failure;
    log(`answer ${answer.id} was not taken (${failure.why}); sent as bare text instead`);
    const text =
      part.is === 'text' ? part.text : `The file ${part.name} could not be sent here. ${part.caption}`.trim();
    return attempt({ ...answer, replyToKey: null }, { is: 'text', text, entities: [], keys: [] }, isFirst);
  }

  async function attempt(answer: Outgoing, part: Part, isFirst: boolean): Promise<Failure | undefined> {
    try {
      await call(api, answer, part, isFirst, closing.signal as unknown as Signal);
      return undefined;
    } catch (error) {
      return failureOf(error);
    }
  }

  function settle({ id, chatKey, tries, topicKey }: Outgoing, failure: Failure): void {
    switch (failure.is) {
      case 'wait': {
        const pauseMs =
          failure.afterMs ?? Math.min(shortestPauseMs * 2 ** Math.min(tries, 20), longestPauseMs);
        log(`answer ${id} waits ${Math.ceil(pauseMs / 1000)} s for chat ${chatKey}: ${failure.why}`);
        return outbox.tried(id, Date.now() + pauseMs);
      }
      case 'moved':
        moved(chatKey, failure.to);
        return wake(failure.to);
      case 'no-topic':
        if (topicKey !== null) return outbox.leaveTopic(id, '(The topic this answers is closed or gone.)');
        return outbox.dropped(id, failure.why);
      case 'unreachable':
        log(
          `chat ${chatKey} cannot be reached (${failure.why}): ${outbox.dropChat('telegram', chatKey, failure.why)} given up`,
        );
        return;
      case 'refused':
        log(`answer ${id} is given up: ${failure.why}`);
        return outbox.dropped(id, failure.why);
    }
  }

  return {
    wake,
    async flush(limitMs) {
      setTimeout(() => closing.abort(), limitMs).unref();
      while (busy.size > 0) await Promise.all(busy.values());
      closing.abort();
      clearTimeout(alarm);
    },
  };
}

/** One call for one part, with what every message of this bot carries. */
async function call(api: Api, answer: Outgoing, part: Part, isFirst: boolean, signal: Signal): Promise<void> {
  const { chatKey, topicKey, replyToKey } = answer;
  const isReply = isFirst && replyToKey !== null && /^[1-9]\d*$/.test(replyToKey);
  const common = {
    chat_id: Number(chatKey),
    ...(topicKey === null ? {} : { message_thread_id: Number(topicKey) }),
    ...(isReply
      ? { reply_parameters: { message_id: Number(replyToKey), allow_sending_without_reply: true as const } }
      : {}),
    // Sound once for each answer, and none for what nobody asked for.
    ...(isFirst && (replyToKey !== null || answer.reply.sounds === true)
      ? {}
      : { disable_notification: true as const }),
  };
  if (part.is === 'text') {
    const { text, entities, keys } = part;
    await api.raw.sendMessage(
      {
        ...common,
        text,
        link_preview_options: { is_disabled: true },
        ...(entities.length > 0 ? { entities: [...entities] } : {}),
        ...(keys.length > 0 ? { reply_markup: { inline_keyboard: keys.map((row) => [...row]) } } : {}),
      },
      signal,
    );
    return;
  }
  const file = new InputFile(part.bytes, part.name);
  const captioned = { ...common, ...(part.caption === '' ? {} : { caption: part.caption }) };
  if (part.is === 'document') {
    await api.raw.sendDocument(
      { ...captioned, document: file, disable_content_type_detection: true },
      signal,
    );
    return;
  }
  try {
    await api.raw.sendPhoto({ ...captioned, photo: file }, signal);
  } catch (error) {
    // A picture that is not taken as a picture is taken as a file.
    if (!(error instanceof GrammyError) || error.error_code !== 400 || failureOf(error).is !== 'refused')
      throw error;
    await api.raw.sendDocument({ ...captioned, document: new InputFile(part.bytes, part.name) }, signal);
  }
}
