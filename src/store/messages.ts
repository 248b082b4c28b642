import type { Message, Outgoing, Reply } from '#core/talk.ts';
import type { Db } from './db.ts';
import { saidStore } from './said.ts';

export interface PressedButton {
  /** The answer that carries it. */
  readonly outbox: number;
  readonly request: string;
  readonly stays: 0 | 1;
  readonly forPerson: string | null;
  readonly usedAtMs: number | null;
  readonly chatKey: string;
  readonly topicKey: string | null;
  readonly replyToKey: string | null;
  /** The answer recorded nothing: its buttons are a choice, of which one is taken. */
  readonly isChoice: 0 | 1;
  /** What it brings takes the answer's place. */
  readonly asks: 0 | 1;
  /** It went out together with others. */
  readonly isLate: 0 | 1;
  /** The list that carries it. */
  readonly live: number | null;
}

/** A chat that speaks for somebody unnamed: whoever it is presses buttons under a key of their own. */
const isStandIn = ({ key }: Message['person']) => key.startsWith('chat:');

/** What came in and what goes out: the half of every transaction that is not the change itself. */
export function messageStore(db: Db) {
  const see = db.prepare('INSERT OR IGNORE INTO seen (door, delivery_key, at_ms) VALUES (?, ?, ?)');
  const put = db.prepare(
    `INSERT INTO outbox (door, chat_key, topic_key, reply_to_key, reply_json, made_at_ms, instead_of)
     VALUES (:door, :chatKey, :topicKey, :replyToKey, :replyJson, :atMs, :insteadOf)`,
  );
  const putButton = db.prepare(
    `INSERT INTO button (outbox, for_person, label, request, stays, made_at_ms) VALUES (?, ?, ?, ?, ?, ?)`,
  );
  const pressed = db.prepare(
    `SELECT outbox.id AS outbox, request, stays, for_person AS forPerson, used_at_ms AS usedAtMs,
       outbox.chat_key AS chatKey, outbox.topic_key AS topicKey, outbox.reply_to_key AS replyToKey,
       reply_json ->> '$.did' IS NULL AS isChoice, coalesce(reply_json ->> '$.asks', 0) AS asks,
       coalesce(reply_json ->> '$.late', 0) AS isLate, live.id AS live
     FROM button JOIN outbox ON outbox.id = button.outbox LEFT JOIN live ON live.outbox = outbox.id
     WHERE button.id = ? AND outbox.door = ?`,
  );
  const retire = db.prepare(
    `UPDATE button SET used_at_ms = :atMs WHERE used_at_ms IS NULL AND stays = 0
       AND (id = :id OR (:all AND outbox = (SELECT outbox FROM button WHERE id = :id)))`,
  );
  const retireAll = db.prepare(
    `UPDATE button SET used_at_ms = :atMs WHERE used_at_ms IS NULL AND stays = 0
       AND outbox IN (SELECT :root UNION ALL SELECT id FROM outbox WHERE instead_of = :root)`,
  );
  const firstAnswer = db
    .prepare(
      `SELECT outbox.id FROM outbox LEFT JOIN live ON live.outbox = outbox.id
         WHERE outbox.door = ? AND outbox.chat_key = ? AND reply_to_key = ? AND live.id IS NULL ORDER BY outbox.id LIMIT 1`,
    )
    .pluck();
  const replyOf = db.prepare('SELECT reply_json FROM outbox WHERE id = ?').pluck();
  const unused = db.prepare(
    "SELECT label, request FROM button WHERE outbox = ? AND used_at_ms IS NULL AND request NOT LIKE 'page %' ORDER BY id",
  );
  const answerOfEntry = db.prepare(
    `SELECT outbox.id, outbox.door, outbox.chat_key AS chatKey, outbox.topic_key AS topicKey,
       outbox.reply_to_key AS replyToKey, person_key AS personKey, reply_json AS replyJson
     FROM heard JOIN outbox ON outbox.door = heard.door AND outbox.chat_key = heard.chat_key
       AND outbox.reply_to_key = heard.message_key
     WHERE heard.entry = ? AND outbox.message_key IS NOT NULL
       AND NOT EXISTS (SELECT 1 FROM live WHERE live.outbox = outbox.id) ORDER BY outbox.id LIMIT 1`,
  );
  const supersede = db.prepare(
    "DELETE FROM outbox WHERE instead_of = ? AND state = 'waiting' AND parts_sent = 0",
  );
  const isReplaced = db
    .prepare("SELECT 1 FROM outbox WHERE state = 'waiting' AND instead_of = ? LIMIT 1")
    .pluck();
  // All that took one another's place hang on the first, which knows the message.
  const rootOf = db.prepare('SELECT coalesce(instead_of, id) FROM outbox WHERE id = ?').pluck();
  const topicOf = db.prepare('SELECT topic_key FROM outbox WHERE id = ?').pluck();
  const arrivedAs = db.prepare('UPDATE outbox SET message_key = ? WHERE id = ? AND message_key IS NOT ?');
  const waiting = db.prepare(
    `SELECT id, door, chat_key AS chatKey, topic_key AS topicKey, reply_to_key AS replyToKey, reply_json AS replyJson,
       NULL AS editKey, parts_sent AS partsSent, tries FROM outbox
     WHERE state = 'waiting' AND door = ? AND id > ? ORDER BY id LIMIT ?`,
  );
  const buttonsOf = db.prepare('SELECT id, label FROM button WHERE outbox = ? ORDER BY id');
  const sent = db.prepare(
    "UPDATE outbox SET state = 'sent', reply_json = json_remove(reply_json, '$.files') WHERE id = ? AND state = 'waiting'",
  );
  const speaksIn = db.prepare(
    `UPDATE chat SET topic_key = :topicKey WHERE door = :door AND chat_key = :chatKey AND topic_key IS NOT :topicKey`,
  );

  const begin = db.prepare('INSERT INTO unfinished (door, message_json) VALUES (?, ?)');
  const finish = db.prepare('DELETE FROM unfinished WHERE id = ?');
  const unfinished = db.prepare(
    'SELECT id, message_json AS messageJson FROM unfinished WHERE door = ? ORDER BY id',
  );

  return {
    ...saidStore(db),

    /** Remembers a request whose sums go on beside the chat, so that a restart takes it up again. */
    begin: (message: Message): number =>
      Number(begin.run(message.door, JSON.stringify(message)).lastInsertRowid),
    finish: (id: number): void => void finish.run(id),
    unfinished: (door: string): { id: number; message: Message }[] =>
      (unfinished.all(door) as { id: number; messageJson: string }[]).map(({ id, messageJson }) => ({
        id,
        message: JSON.parse(messageJson) as Message,
      })),

    /** @returns false when this delivery was handled before */
    firstSight: (door: string, deliveryKey: string, atMs: number): boolean =>
      see.run(door, deliveryKey, atMs).changes === 1,

    /** Puts an answer in the outbox; it is sent once the transaction is through. */
    put(
      to: Pick<Message, 'door' | 'chatKey' | 'topicKey' | 'person'>,
      replyToKey: string | null,
      reply: Reply,
      atMs: number,
      insteadOf: number | null = null,
    ): number {
      const { door, chatKey, topicKey } = to;
      if (replyToKey !== null) speaksIn.run({ door, chatKey, topicKey });
      const root = insteadOf === null ? null : (rootOf.get(insteadOf) as number);
      if (root !== null) {
        supersede.run(root);
        retireAll.run({ atMs, root });
      }
      const id = Number(
        put.run({
          door,
          chatKey,
          topicKey,
          replyToKey,
          replyJson: JSON.stringify(reply),
          atMs,
          insteadOf: root,
        }).lastInsertRowid,
      );
      for (const { label, request, stays } of reply.buttons ?? []) {
        putButton.run(
          id,
          stays || reply.buttonsForAll || isStandIn(to.person) ? null : to.person.key,
          label,
          request,
          stays || reply.buttonsStay ? 1 : 0,
          atMs,
        );
      }
      reply.pages?.forEach(({ label }, i) => {
        const said = i === (reply.page ?? 0) ? `• ${label}` : label;
        putButton.run(id, null, said, `page ${i}`, 1, atMs);
      });
      return id;
    },

    /** The answer to a message; a list is none, since it goes on by itself. */
    answerTo: ({ door, chatKey, messageKey }: Message): number | undefined =>
      firstAnswer.get(door, chatKey, messageKey) as number | undefined,
    /** An answer as it was put, with those of its buttons that were not pressed. */
    answered: (id: number): Reply => ({
      ...(JSON.parse(replyOf.get(id) as string) as Reply),
      buttons: unused.all(id) as { label: string; request: string }[],
    }),
    /**
     * The answer of what made an entry, to be changed when that is taken back or put back.
     * @returns undefined where no message shows it that could be changed
     */
    answerOfEntry: (entry: number) => {
      const row = answerOfEntry.get(entry) as
        | (Pick<Message, 'door' | 'chatKey' | 'topicKey'> & {
            id: number;
            replyToKey: string;
            personKey: string;
            replyJson: string;
          })
        | undefined;
      return row && { ...row, reply: JSON.parse(row.replyJson) as Reply };
    },
    /** Whether another answer is about to take the place of the message that shows this one. */
    isReplaced: (id: number): boolean => isReplaced.get(rootOf.get(id)) === 1,
    topicOf: (id: number): string | null => topicOf.get(id) as string | null,
    /** A press tells which message an answer became. */
    arrivedAs: (id: number, messageKey: string): void =>
      void arrivedAs.run(messageKey, rootOf.get(id), messageKey),

    button: (id: number, door: string): PressedButton | undefined =>
      pressed.get(id, door) as PressedButton | undefined,
    /** A button did its work: with the others, where they were a choice. */
    retireButtons: (id: number, atMs: number, all: boolean): void =>
      void retire.run({ id, atMs, all: all ? 1 : 0 }),

    /** Answers not yet delivered, oldest first. */
    waiting: (door: string, afterId = 0, limit = 100): Outgoing[] =>
      (
        waiting.all(door, afterId, limit) as (Omit<Outgoing, 'reply' | 'buttons'> & { replyJson: string })[]
      ).map(({ replyJson, ...rest }) => ({
        ...rest,
        reply: JSON.parse(replyJson) as Reply,
        buttons: buttonsOf.all(rest.id) as { id: number; label: string }[],
      })),
    /** @returns false when it was delivered before, such as by another terminal */
    sent: (id: number): boolean => sent.run(id).changes === 1,
  };
}

export type MessageStore = ReturnType<typeof messageStore>;
