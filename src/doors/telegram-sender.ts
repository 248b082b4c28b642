import { setMaxListeners } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Api } from 'grammy';
import type { Outgoing } from '#core/talk.ts';
import { openAway } from './telegram-away.ts';
import type { Signal } from './telegram-call.ts';
import { openDelivery, type Ticks } from './telegram-deliver.ts';
import { type Lists, openLists } from './telegram-lists.ts';
import { type Failure, failureOf, sayError } from './telegram-refused.ts';

/** The answers that wait, as the sender needs them. */
export interface Outbox extends Ticks {
  /** The oldest waiting answer of each chat. */
  readonly heads: (door: 'telegram') => readonly { readonly chatKey: string; readonly nextTryAtMs: number }[];
  readonly head: (
    door: 'telegram',
    chatKey: string,
  ) => (Outgoing & { readonly nextTryAtMs: number }) | undefined;
  /** What waits for the platform to come back is due at once. */
  readonly dueNow: (door: 'telegram', chatKey: string) => void;
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
  /** The platform answered something: whoever waited for it is served at once. */
  readonly reached: () => void;
}

interface SenderNeeds {
  readonly api: Api;
  readonly outbox: Outbox;
  readonly lists: Lists;
  readonly moved: (from: string, to: string) => void;
  readonly log: (line: string) => void;
}

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
export function openSender({ api, outbox, lists: own, moved, log }: SenderNeeds): Sender {
  const busy = new Map<string, Promise<void>>();
  /** Chats with something due that wait for their turn. */
  const ready = new Set<string>();
  const closing = new AbortController();
  setMaxListeners(0, closing.signal);
  const signal = closing.signal as unknown as Signal;
  const lists = openLists(api, own, log, signal);
  const delivery = openDelivery(api, outbox, log, signal);
  const away = openAway(serveNow, closing.signal);
  let alarm: NodeJS.Timeout | undefined;
  let alarmMs = Number.POSITIVE_INFINITY;

  /** @param chatKey where something waits, if that is known: then no other chat is looked at */
  function wake(chatKey?: string): void {
    if (closing.signal.aborted) return;
    try {
      if (chatKey === undefined) startDue();
      else begin(chatKey);
      // What was done in one chat may stand on a list in another.
      for (const list of own.behind()) begin(list.chatKey);
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
      const nextMs = outbox.head('telegram', chatKey)?.nextTryAtMs ?? lists.dueAt(chatKey);
      if (nextMs === undefined) return;
      if (nextMs > Date.now()) wakeAt(nextMs);
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
      if (!head && (lists.dueAt(chatKey) ?? Number.POSITIVE_INFINITY) <= Date.now()) await bring(chatKey);
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

  /** Answers go first; lists when nothing else waits. */
  async function bring(chatKey: string): Promise<void> {
    try {
      await lists.bring(chatKey);
      away.delivered();
    } catch (error) {
      if (closing.signal.aborted) return;
      away.failed(chatKey, failureOf(error));
    }
  }

  function serveNow(chatKey: string): void {
    try {
      outbox.dueNow('telegram', chatKey);
      lists.dueNow(chatKey);
      begin(chatKey);
    } catch (error) {
      log(`the outbox cannot be written: ${sayError(error)}`);
      wakeAt(Date.now() + longestRestMs);
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
    const failure = await delivery.deliver(answer);
    if (closing.signal.aborted) return;
    if (failure) {
      away.failed(answer.chatKey, failure);
      return settle(answer, failure);
    }
    away.delivered();
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
    reached: () => away.reached(),
    async flush(limitMs) {
      setTimeout(() => closing.abort(), limitMs).unref();
      while (busy.size > 0) await Promise.all(busy.values());
      closing.abort();
      clearTimeout(alarm);
    },
  };
}
