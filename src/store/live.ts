import type { Choice, Live, Message } from '#core/talk.ts';
import type { Db } from './db.ts';

/** A list in a chat, as it is kept. */
export interface LiveRow {
  readonly id: number;
  readonly outbox: number;
  readonly household: number;
  readonly kind: string;
  readonly of: number;
  readonly page: number;
  readonly changed: number;
  readonly pin: 'no' | 'wanted' | 'done' | 'refused' | 'unwanted';
  /** A newer message shows the same. */
  readonly isOver: 0 | 1;
  readonly door: Message['door'];
  readonly chatKey: string;
  /** The message that shows it; null while that is not known. */
  readonly messageKey: string | null;
}

const columns = `live.id, outbox, live.household, kind, of_id AS "of", page, changed, pin, is_over AS isOver,
  live.door, live.chat_key AS chatKey, message_key AS messageKey`;

/** Messages that follow the records. */
export function liveStore(db: Db) {
  // One to be pinned has to be looked at once more.
  const add = db.prepare(
    `INSERT INTO live (outbox, household, door, chat_key, kind, of_id, page, pin, changed)
     VALUES (:outbox, :household, :door, :chatKey, :kind, :of, :page, :pin, :pin = 'wanted')`,
  );
  const here = `live.door = :door AND live.chat_key = :chatKey AND kind = :kind AND of_id = :of AND is_over = 0`;
  const find = db.prepare(
    `SELECT ${columns} FROM live JOIN outbox ON outbox.id = live.outbox WHERE ${here} AND state <> 'dropped'
     ORDER BY live.id DESC LIMIT 1`,
  );
  const endOthers = db.prepare(
    `UPDATE live SET is_over = 1, changed = changed + 1, pin = CASE pin WHEN 'done' THEN 'unwanted' ELSE pin END
     WHERE ${here} AND outbox <> :outbox`,
  );
  const touch = db.prepare('UPDATE live SET changed = changed + 1 WHERE household = ? AND is_over = 0');
  const turn = db.prepare('UPDATE live SET page = ?, changed = changed + 1 WHERE id = ?');
  const setPin = db.prepare('UPDATE live SET pin = ? WHERE id = ?');
  const wantPin = db.prepare('UPDATE live SET pin = ?, changed = changed + 1 WHERE id = ?');
  const behind = db.prepare(
    `SELECT ${columns} FROM live JOIN outbox ON outbox.id = live.outbox
     WHERE changed > shown AND live.door = ? AND state = 'sent'`,
  );
  const behindIn = db.prepare(
    `SELECT ${columns} FROM live JOIN outbox ON outbox.id = live.outbox
     WHERE changed > shown AND live.door = ? AND live.chat_key = ? AND state = 'sent' ORDER BY live.id LIMIT 1`,
  );
  const byId = db.prepare(
    `SELECT ${columns} FROM live JOIN outbox ON outbox.id = live.outbox WHERE live.id = ?`,
  );
  const shown = db.prepare('UPDATE live SET shown = ? WHERE id = ? AND shown < ?');
  const remove = db.prepare('DELETE FROM live WHERE id = ?');
  const moveTo = db.prepare('UPDATE live SET outbox = ?, shown = changed WHERE id = ?');
  const ownButtons = db.prepare('SELECT id, label, request FROM button WHERE outbox = ?');
  const relabel = db.prepare('UPDATE button SET label = ? WHERE id = ?');
  const addButton = db.prepare(
    'INSERT INTO button (outbox, for_person, label, request, stays, made_at_ms) VALUES (?, NULL, ?, ?, 1, ?)',
  );

  return {
    /** The list of a chat that is going on. */
    find: (
      at: Pick<Message, 'door' | 'chatKey'>,
      { kind, of }: Pick<Live, 'kind' | 'of'>,
    ): LiveRow | undefined =>
      find.get({ door: at.door, chatKey: at.chatKey, kind, of }) as LiveRow | undefined,
    byId: (id: number): LiveRow | undefined => byId.get(id) as LiveRow | undefined,
    /** An answer becomes the list of its chat; one that was there before ends. */
    begin(at: Pick<Message, 'door' | 'chatKey'>, household: number, outbox: number, live: Live): void {
      const { kind, of, page, pin } = live;
      const here = { outbox, door: at.door, chatKey: at.chatKey, kind, of };
      endOthers.run(here);
      add.run({ ...here, household, page, pin: pin === true ? 'wanted' : 'no' });
    },
    /** Something of a household's records changed: its lists lag behind. */
    touch: (household: number): void => void touch.run(household),
    turn: (id: number, page: number): void => void turn.run(page, id),
    /** Whether the group wants it at the top of the chat. */
    wantPin: (id: number, pin: boolean): void => void wantPin.run(pin ? 'wanted' : 'unwanted', id),
    pinned: (id: number, pin: LiveRow['pin']): void => void setPin.run(pin, id),

    /** Lists of a door that show less than the records hold. */
    behind: (door: string): LiveRow[] => behind.all(door) as LiveRow[],
    behindIn: (door: string, chatKey: string): LiveRow | undefined =>
      behindIn.get(door, chatKey) as LiveRow | undefined,
    /** @param upTo what `changed` was when that was drawn which arrived */
    shown: (id: number, upTo: number): void => void shown.run(upTo, id, upTo),
    remove: (id: number): void => void remove.run(id),
    /** The message is gone: a new one shows the list from now on. */
    moveTo: (id: number, outbox: number): void => void moveTo.run(outbox, id),

    /** The list's buttons as rows: a request keeps its row, so that a button on an older screen still works. */
    buttons(outbox: number, choices: readonly Choice[], atMs: number): { id: number; label: string }[] {
      const own = new Map(
        (ownButtons.all(outbox) as { id: number; label: string; request: string }[]).map((one) => [
          one.request,
          one,
        ]),
      );
      return choices.map(({ label, request }) => {
        const known = own.get(request);
        if (!known) return { id: Number(addButton.run(outbox, label, request, atMs).lastInsertRowid), label };
        if (known.label !== label) relabel.run(label, known.id);
        return { id: known.id, label };
      });
    },
  };
}

export type LiveStore = ReturnType<typeof liveStore>;
