import type { Outgoing } from '#core/talk.ts';
import { lightly } from './open.ts';
import type { Db } from './db.ts';

/** Later than any clock: an answer to a chat that the bot cannot reach at present. */
const pausedMs = 9_000_000_000_000_000;
/** The platform repeats nothing for longer than a day; a month is kept to be sure. */
const memoryMs = 30 * 24 * 3_600_000;

/** A list to tick off may stay in use for a season. */
const answersMs = 180 * 24 * 3_600_000;

/** Late answers in one message at most. Chosen. */
const mostTogether = 6;
const lateWords = 'Late, for I was away:';

/** Plain answers may share a message; what has files, pages or a list has one of its own. */
const mayGoAlong = ({ late, files, pages, live }: Outgoing['reply']): boolean =>
  late === true && !files && !pages && !live;

type Head = Outgoing & { readonly nextTryAtMs: number };

/** What a door needs that delivers over a network: its answers in order, and chats that come, go and move. */
export function deliveryStore(db: Db) {
  const heads = db.prepare(
    `SELECT outbox.chat_key AS chatKey, next_try_at_ms AS nextTryAtMs FROM outbox JOIN
       (SELECT min(id) AS first FROM outbox WHERE state = 'waiting' AND door = ? GROUP BY chat_key) ON id = first
     ORDER BY id`,
  );
  const head = db.prepare(
    `SELECT id, door, chat_key AS chatKey, topic_key AS topicKey, reply_to_key AS replyToKey, reply_json AS replyJson,
       (SELECT before.message_key FROM outbox AS before WHERE before.id = outbox.instead_of) AS editKey,
       parts_sent AS partsSent, tries, next_try_at_ms AS nextTryAtMs FROM outbox
     WHERE state = 'waiting' AND door = ? AND chat_key = ? ORDER BY id LIMIT 1`,
  );
  const buttonsOf = db.prepare('SELECT id, label FROM button WHERE outbox = ? ORDER BY id');
  const sent = db.prepare(
    `UPDATE outbox SET state = 'sent', reply_json = json_remove(reply_json, '$.files'),
       message_key = coalesce(?, message_key) WHERE id = ?`,
  );
  const sentPart = db.prepare(
    `UPDATE outbox SET parts_sent = ?, tries = 0, next_try_at_ms = 0, message_key = coalesce(?, message_key)
     WHERE id = ?`,
  );
  const dueNow = db.prepare(
    `UPDATE outbox SET next_try_at_ms = 0 WHERE door = ? AND chat_key = ? AND state = 'waiting'
       AND next_try_at_ms <> ${pausedMs}`,
  );
  const notInstead = db.prepare('UPDATE outbox SET instead_of = NULL WHERE id = ?');
  const tried = db.prepare('UPDATE outbox SET tries = tries + 1, next_try_at_ms = ? WHERE id = ?');
  const dropped = db.prepare("UPDATE outbox SET state = 'dropped', why_dropped = ? WHERE id = ?");
  const dropChat = db.prepare(
    `UPDATE outbox SET state = 'dropped', why_dropped = ? WHERE door = ? AND chat_key = ? AND state = 'waiting'`,
  );
  const leaveTopic = db.prepare(
    `UPDATE outbox SET topic_key = NULL, reply_to_key = NULL,
       reply_json = json_set(reply_json, '$.group', ? || char(10) || (reply_json ->> '$.group')) WHERE id = ?`,
  );
  const lateAfter = db.prepare(
    `SELECT outbox.id, reply_json AS replyJson, heard.text AS asked FROM outbox
       LEFT JOIN heard ON heard.door = outbox.door AND heard.chat_key = outbox.chat_key AND heard.message_key = outbox.reply_to_key
     WHERE state = 'waiting' AND outbox.door = ? AND outbox.chat_key = ? AND outbox.id >= ? AND topic_key IS ?
     ORDER BY outbox.id LIMIT ?`,
  );
  const pause = db.prepare(
    `UPDATE outbox SET next_try_at_ms = ${pausedMs} WHERE door = ? AND chat_key = ? AND state = 'waiting'`,
  );
  const resume = db.prepare(
    `UPDATE outbox SET next_try_at_ms = 0
     WHERE door = ? AND chat_key = ? AND state = 'waiting' AND next_try_at_ms = ${pausedMs}`,
  );
  const setAway = db.prepare('UPDATE chat SET is_away = ? WHERE door = ? AND chat_key = ? AND is_away <> ?');
  const watchAgain = db.prepare(
    `UPDATE watch SET next_at_ms = 0
     WHERE household = (SELECT household FROM chat WHERE door = ? AND chat_key = ?)`,
  );
  const isSpent = db
    .prepare(
      `SELECT used_at_ms IS NOT NULL FROM button JOIN outbox ON outbox.id = button.outbox
       WHERE button.id = ? AND outbox.door = ? AND outbox.chat_key = ?
         AND NOT EXISTS (SELECT 1 FROM outbox AS later
           WHERE later.instead_of = coalesce(outbox.instead_of, outbox.id) AND later.id > outbox.id)`,
    )
    .pluck();
  const leftBeside = db.prepare(
    `SELECT id, label FROM button WHERE outbox = (SELECT outbox FROM button WHERE id = ?)
       AND (used_at_ms IS NULL OR stays = 1) ORDER BY id`,
  );
  const forget = db.prepare(
    `DELETE FROM seen WHERE door = :door AND at_ms < (SELECT max(at_ms) FROM seen WHERE door = :door) - ${memoryMs}`,
  );

  // Of what was said only the records stay; an old answer's buttons go with it.
  const forgetSaid = ['outbox', 'heard'].map((table) =>
    db.prepare(
      `DELETE FROM ${table} WHERE door = :door${table === 'outbox' ? " AND state <> 'waiting' AND id NOT IN (SELECT outbox FROM live) AND made_at_ms" : ' AND at_ms'}
         < (SELECT max(at_ms) FROM seen WHERE door = :door) - ${answersMs}`,
    ),
  );

  const householdOf = db.prepare('SELECT household FROM chat WHERE door = ? AND chat_key = ?').pluck();
  const hasRecords = db.prepare('SELECT 1 FROM entry WHERE household = ?').pluck();
  const removeChat = db.prepare('DELETE FROM chat WHERE door = ? AND chat_key = ?');
  const rename = ['chat', 'entry', 'wrong_code', 'live'].map((table) =>
    db.prepare(`UPDATE ${table} SET chat_key = ? WHERE door = ? AND chat_key = ?`),
  );
  // Message numbers start over in the new chat, so the old ones must not be replied to.
  const moveOutbox = db.prepare(
    `UPDATE outbox SET chat_key = ?, reply_to_key = NULL, topic_key = NULL, message_key = NULL,
       next_try_at_ms = CASE next_try_at_ms WHEN ${pausedMs} THEN 0 ELSE next_try_at_ms END
     WHERE door = ? AND chat_key = ?`,
  );
  const listsAnew = db.prepare('UPDATE live SET changed = changed + 1 WHERE door = ? AND chat_key = ?');
  const moveUnfinished = db.prepare(
    `UPDATE unfinished SET message_json = json_set(message_json, '$.chatKey', ?)
     WHERE door = ? AND message_json ->> '$.chatKey' = ?`,
  );
  const moveStandIn = db.prepare(
    'UPDATE OR IGNORE member SET person_key = ? WHERE door = ? AND person_key = ?',
  );

  /** Answers to what was asked long ago, in one message: nobody wants ten of them at once. */
  function withLate(own: Head): Head {
    const rows = lateAfter.all(own.door, own.chatKey, own.id, own.topicKey, mostTogether) as {
      id: number;
      replyJson: string;
      asked: string | null;
    }[];
    const all = rows.map(({ id, replyJson, asked }) => ({
      id,
      asked,
      reply: JSON.parse(replyJson) as Outgoing['reply'],
      buttons: buttonsOf.all(id) as { id: number; label: string }[],
    }));
    const firstApart = all.findIndex(({ reply }) => !mayGoAlong(reply));
    const these = firstApart < 0 ? all : all.slice(0, firstApart);
    const [only] = these;
    if (!only) return own;
    const said = (one: (typeof these)[number]) =>
      these.length === 1 || one.asked === null
        ? [one.reply.group]
        : [`"${one.asked.split('\n')[0]!.slice(0, 60)}"`, one.reply.group];
    const why = these.flatMap(({ reply }) => reply.why ?? []);
    const notes = these.flatMap(({ reply }) => reply.notes ?? []);
    return {
      ...own,
      along: these.slice(1).map(({ id }) => id),
      buttons: these.flatMap(({ buttons }) => buttons),
      reply: {
        group: [lateWords, ...these.flatMap(said)].join('\n'),
        ...(why.length === 0 ? {} : { why }),
        ...(notes.length === 0 ? {} : { notes }),
        late: true,
        ...(these.every(({ reply }) => reply.did !== undefined) ? { did: only.reply.did! } : {}),
      },
    };
  }

  return {
    /** The oldest waiting answer of each chat: when it may be tried. */
    heads: (door: string) => heads.all(door) as { chatKey: string; nextTryAtMs: number }[],
    /** The oldest answer that waits for a chat. */
    head: (door: string, chatKey: string): Head | undefined => {
      const row = head.get(door, chatKey) as
        (Omit<Head, 'reply' | 'buttons'> & { replyJson: string }) | undefined;
      if (!row) return undefined;
      const { replyJson, ...rest } = row;
      const own = {
        ...rest,
        reply: JSON.parse(replyJson) as Outgoing['reply'],
        buttons: buttonsOf.all(row.id) as { id: number; label: string }[],
      };
      return mayGoAlong(own.reply) && rest.partsSent === 0 ? withLate(own) : own;
    },
    // Where a power cut loses a tick, an answer comes twice.
    /** @param messageKey the message it became; null where that is not to be changed any more */
    sent: (id: number, messageKey: string | null = null): void => lightly(db, () => sent.run(messageKey, id)),
    sentPart: (id: number, parts: number, messageKey: string | null = null): void =>
      lightly(db, () => sentPart.run(parts, messageKey, id)),
    /** What waits for a platform that was away is due at once. */
    dueNow: (door: string, chatKey: string): void => void dueNow.run(door, chatKey),
    /** The message whose place it was to take is gone: it becomes one of its own. */
    notInstead: (id: number): void => void notInstead.run(id),
    tried: (id: number, nextTryAtMs: number): void => void tried.run(nextTryAtMs, id),
    dropped: (id: number, why: string): void => void dropped.run(why, id),
    /** Gives up what waits for a chat and posts nothing there until it is resumed. @returns how many answers */
    dropChat: (door: string, chatKey: string, why: string): number => {
      setAway.run(1, door, chatKey, 1);
      return dropChat.run(why, door, chatKey).changes;
    },
    leaveTopic: (id: number, notice: string): void => void leaveTopic.run(notice, id),

    /** The bot was put out of a chat: its answers wait until it is back. */
    pause: (door: string, chatKey: string): void => {
      setAway.run(1, door, chatKey, 1);
      pause.run(door, chatKey);
    },
    resume: (door: string, chatKey: string): void => {
      if (setAway.run(0, door, chatKey, 0).changes > 0) watchAgain.run(door, chatKey);
      resume.run(door, chatKey);
    },
    /**
     * The buttons that are left beside one of this chat that has done its work.
     * @returns undefined where it still works, and where another answer takes the place of its message
     */
    leftBeside: (
      door: string,
      button: number,
      chatKey: string,
    ): { id: number; label: string }[] | undefined =>
      isSpent.get(button, door, chatKey) === 1
        ? (leftBeside.all(button) as { id: number; label: string }[])
        : undefined,

    /**
     * Drops deliveries that no platform repeats any more, and what was said half a year ago, counted from the latest
     * delivery and not by our clock.
     */
    forget: (door: string): void => {
      for (const statement of forgetSaid) statement.run({ door });
      forget.run({ door });
    },

    /**
     * A chat goes on under a new key, with its household, its journal and its waiting answers. Doing it again
     * changes nothing. A new chat that was admitted by itself in between, and already has records, is left alone.
     * @returns false when it was left alone
     */
    moveChat: (door: string, from: string, to: string): boolean =>
      db
        .transaction(() => {
          const [before, after] = [from, to].map((key) => householdOf.get(door, key) as number | undefined);
          if (before !== undefined && after !== undefined && before !== after) {
            if (hasRecords.get(after) !== undefined) return false;
          }
          if (before !== undefined && after !== undefined) removeChat.run(door, to);
          for (const statement of rename) statement.run(to, door, from);
          moveOutbox.run(to, door, from);
          // Their messages have other numbers there: they go on in new ones.
          listsAnew.run(door, to);
          moveUnfinished.run(to, door, from);
          moveStandIn.run(`chat:${to}`, door, `chat:${from}`);
          return true;
        })
        .immediate(),
  };
}
