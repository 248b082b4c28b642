import type { Api } from 'grammy';
import type { ListNow } from '#chat/live.ts';
import { editText, type Signal } from './telegram-call.ts';
import { draw } from './telegram-draw.ts';
import { failureOf, sayError } from './telegram-refused.ts';

/** Lists that lag behind the records, as the sender needs them. */
export interface Lists {
  readonly behind: () => readonly { readonly id: number; readonly chatKey: string }[];
  readonly behindIn: (chatKey: string) => { readonly id: number } | undefined;
  /** Draws a list as it stands; undefined when there is none any more. */
  readonly now: (id: number) => ListNow | undefined;
  readonly shown: (id: number, upTo: number) => void;
  readonly remove: (id: number) => void;
  /** Its message is gone: it waits in the outbox as a new one. */
  readonly anew: (id: number) => void;
  readonly pinned: (id: number, pin: 'done' | 'refused' | 'no') => void;
}

/** The platform takes about 20 messages and edits a minute in one group. */
const betweenEditsMs = 3000;
const mostTries = 8;

/** Brings lists up to date, one at a time in a chat, and not more often than the platform bears. */
export function openLists(api: Api, lists: Lists, log: (line: string) => void, signal: Signal) {
  const nextAtMs = new Map<number, number>();
  const tries = new Map<number, number>();

  /** When the list of a chat that lags behind may be drawn; undefined when none does. */
  function dueAt(chatKey: string): number | undefined {
    const list = lists.behindIn(chatKey);
    return list && (nextAtMs.get(list.id) ?? 0);
  }

  async function bring(chatKey: string): Promise<void> {
    const list = lists.behindIn(chatKey);
    if (!list) return;
    try {
      await show(list.id, chatKey);
      tries.delete(list.id);
      nextAtMs.set(list.id, Date.now() + betweenEditsMs);
    } catch (error) {
      const failure = failureOf(error);
      const tried = (tries.get(list.id) ?? 0) + 1;
      tries.set(list.id, tried);
      const pauseMs = (failure.is === 'wait' ? failure.afterMs : null) ?? Math.min(500 * 2 ** tried, 60_000);
      nextAtMs.set(list.id, Date.now() + pauseMs);
      log(`list ${list.id} waits ${Math.ceil(pauseMs / 1000)} s for chat ${chatKey}: ${sayError(error)}`);
      if (failure.is === 'unreachable' || (failure.is !== 'wait' && tried >= mostTries))
        lists.remove(list.id);
      if (failure.is === 'wait') throw error;
    }
  }

  async function show(id: number, chatKey: string): Promise<void> {
    const now = lists.now(id);
    if (!now) return;
    const { row, reply, buttons, ends } = now;
    // Not known where it is, such as after the group got another number.
    if (row.messageKey === null) return ends ? lists.remove(id) : lists.anew(id);
    const [part] = draw({ reply, buttons });
    if (part?.is !== 'text') throw new Error('a list is one text');
    const where = { chatKey, messageKey: row.messageKey };
    if (row.pin === 'unwanted' || ends) await unpin(row.pin === 'done' || row.pin === 'unwanted', where);
    const edited = await editText(api, where, part, signal);
    if (ends) return lists.remove(id);
    if (edited === 'gone') return lists.anew(id);
    if (row.pin === 'wanted') lists.pinned(id, await pin(where));
    if (row.pin === 'unwanted') lists.pinned(id, 'no');
    lists.shown(id, row.changed);
  }

  const at = ({ chatKey, messageKey }: { chatKey: string; messageKey: string }) => ({
    chat_id: Number(chatKey),
    message_id: Number(messageKey),
  });

  /** Without the right to pin, the list stays where it is. */
  async function pin(where: { chatKey: string; messageKey: string }): Promise<'done' | 'refused'> {
    try {
      await api.raw.pinChatMessage({ ...at(where), disable_notification: true }, signal);
      return 'done';
    } catch (error) {
      if (failureOf(error).is === 'wait') throw error;
      log(`a list could not be pinned in chat ${where.chatKey}: ${sayError(error)}`);
      return 'refused';
    }
  }

  async function unpin(isPinned: boolean, where: { chatKey: string; messageKey: string }): Promise<void> {
    if (!isPinned) return;
    await api.raw.unpinChatMessage(at(where), signal).catch((error: unknown) => {
      if (failureOf(error).is === 'wait') throw error;
    });
  }

  return {
    dueAt,
    bring,
    /** The platform is back: what waited for it is due at once. */
    dueNow(chatKey: string): void {
      const list = lists.behindIn(chatKey);
      if (list) nextAtMs.delete(list.id);
    },
  };
}
