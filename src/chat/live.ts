import type { Outgoing, Reply } from '#core/talk.ts';
import type { LiveRow } from '#store/live.ts';
import { type Answerer, standing } from './answerer.ts';

/** A list as it stands, to be shown in its message. */
export interface ListNow {
  readonly row: LiveRow;
  readonly reply: Reply;
  readonly buttons: Outgoing['buttons'];
  /** Nothing of it will change any more. */
  readonly ends: boolean;
}

/**
 * Draws a list from the records as they are now.
 * @returns undefined when there is no such list, or nothing left to say of it
 */
export function listNow(answerer: Answerer, id: number, nowMs: number): ListNow | undefined {
  const { stores } = answerer;
  return stores.together(() => {
    const row = stores.live.byId(id);
    if (!row) return undefined;
    if (row.isOver === 1)
      return { row, reply: { group: 'This list goes on further down.' }, buttons: [], ends: true };
    const request = answerer.commands.find(({ name }) => name === row.kind);
    const now = request?.live?.(row.of, row.page, standing(answerer, row.household, nowMs));
    if (!now) {
      stores.live.remove(id);
      return undefined;
    }
    if (now.said === null) {
      stores.live.shown(id, row.changed);
      return undefined;
    }
    const { meals: _, notesTell: __, ...reply } = now.said;
    const buttons = stores.live.buttons(row.outbox, reply.buttons ?? [], nowMs);
    const live = { kind: row.kind, of: row.of, page: row.page, receipt: '' };
    return { row, reply: { ...reply, live }, buttons, ends: now.isOver };
  });
}

/** Lists as a door needs them that can change its messages. */
export function listsOf(answerer: () => Answerer, door: 'telegram', now: () => number) {
  const live = () => answerer().stores.live;
  return {
    behind: () => live().behind(door),
    behindIn: (chatKey: string) => live().behindIn(door, chatKey),
    now: (id: number) => listNow(answerer(), id, now()),
    shown: (id: number, upTo: number) => live().shown(id, upTo),
    remove: (id: number) => live().remove(id),
    anew: (id: number) => listAnew(answerer(), id, now()),
    pinned: (id: number, pin: LiveRow['pin']) => pinned(answerer(), id, pin, now()),
  };
}

/** Whether a list is at the top of its chat; where that is not allowed, the group is told once. */
function pinned({ stores }: Answerer, id: number, pin: LiveRow['pin'], nowMs: number): void {
  stores.together(() => {
    const row = stores.live.byId(id);
    stores.live.pinned(id, pin);
    if (!row || pin !== 'refused') return;
    const to = { ...row, topicKey: stores.messages.topicOf(row.outbox), person: { key: '', name: '' } };
    const group = 'I may not pin here. Pin the message yourselves, or make me an administrator who may pin.';
    stores.messages.put(to, null, { group }, nowMs);
  });
}

/** The message of a list is gone: it goes on in a new one. */
export function listAnew(answerer: Answerer, id: number, nowMs: number): void {
  const { stores } = answerer;
  stores.together(() => {
    const now = listNow(answerer, id, nowMs);
    if (!now) return;
    if (now.ends) return stores.live.remove(id);
    const { door, chatKey } = now.row;
    const to = {
      door,
      chatKey,
      topicKey: stores.messages.topicOf(now.row.outbox),
      person: { key: '', name: '' },
    };
    const outbox = stores.messages.put(
      to,
      null,
      { ...now.reply, buttonsForAll: true, buttonsStay: true },
      nowMs,
    );
    stores.live.moveTo(id, outbox);
  });
}
