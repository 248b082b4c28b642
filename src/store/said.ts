import type { Message, Note } from '#core/talk.ts';
import type { Db } from './db.ts';

export type Outcome = 'answered' | 'recorded' | 'refused';

/** Answers that are looked through. Chosen. */
const mostLooked = 40;

/** What was said in a chat, by people and to them, as far as the next answer hangs on it. */
export function saidStore(db: Db) {
  // However busy a chat is: what stands further up is not before anybody's eyes.
  const latest = `(SELECT *, id AS own, coalesce(instead_of, id) AS root FROM outbox WHERE door = :door AND chat_key = :chatKey AND made_at_ms >= :sinceMs
    ORDER BY made_at_ms DESC, id DESC LIMIT ${mostLooked})`;
  const hear = db.prepare(
    `INSERT INTO heard (door, chat_key, message_key, person_key, text, outcome, at_ms, entry)
     VALUES (:door, :chatKey, :messageKey, :personKey, :text, :outcome, :atMs, :entry)
     ON CONFLICT (door, chat_key, message_key) DO UPDATE SET text = :text, outcome = :outcome, at_ms = :atMs,
       entry = :entry`,
  );
  const heardBefore = db.prepare(
    'SELECT text, outcome, entry FROM heard WHERE door = ? AND chat_key = ? AND message_key = ?',
  );
  const lately = db
    .prepare(
      'SELECT text FROM heard WHERE door = ? AND chat_key = ? AND message_key <> ? AND at_ms >= ? ORDER BY at_ms DESC, rowid DESC LIMIT 4',
    )
    .pluck();
  const lastRecorded = db.prepare(
    `SELECT heard.text, heard.entry FROM heard JOIN entry ON entry.id = heard.entry AND undone_at_ms IS NULL
       WHERE heard.door = :door AND heard.chat_key = :chatKey AND message_key <> :messageKey AND person_key = :person
         AND heard.at_ms >= :sinceMs AND outcome = 'recorded' ORDER BY heard.at_ms DESC, heard.rowid DESC LIMIT 1`,
  );
  const settle = db.prepare(
    "UPDATE heard SET outcome = 'recorded', entry = coalesce(?, entry) WHERE door = ? AND chat_key = ? AND message_key = ?",
  );
  const recordedSince = db.prepare(
    `SELECT 1 FROM heard JOIN entry ON entry.id = heard.entry AND undone_at_ms IS NULL
       WHERE heard.door = ? AND heard.chat_key = ? AND person_key = ? AND text = ? AND heard.at_ms >= ?
         AND outcome = 'recorded'`,
  );
  // What took another's place is told in its stead; what is not delivered yet will be.
  const toldSince = db.prepare(
    `SELECT reply_json ->> '$.heed' AS heed, reply_json ->> '$.notes' AS notes FROM ${latest}
     WHERE topic_key IS :topicKey AND state <> 'dropped'
       AND root IS NOT (SELECT coalesce(instead_of, id) FROM outbox WHERE id = :insteadOf)
       AND (reply_json ->> '$.heed' IS NOT NULL OR reply_json ->> '$.notes' IS NOT NULL)
       AND NOT EXISTS (SELECT 1 FROM outbox AS later WHERE later.instead_of = root AND later.id > own)`,
  );
  const lastOf = db.prepare(
    `SELECT message_key AS messageKey, at_ms AS atMs FROM heard
     WHERE door = :door AND chat_key = :chatKey AND person_key = :person AND message_key <> :messageKey
     ORDER BY at_ms DESC, rowid DESC LIMIT 1`,
  );
  // Whoever went on to something else is not waited for: only the answer to what that person said last counts, or one
  // that a press brought since.
  const awaited = db
    .prepare(
      `SELECT reply_json ->> '$.awaits.request' FROM ${latest}
       WHERE (reply_json ->> '$.awaits.person' = :person AND (made_at_ms > :lastMs
               OR made_at_ms = :lastMs AND NOT EXISTS (SELECT 1 FROM heard WHERE heard.door = :door
                 AND heard.chat_key = :chatKey AND heard.message_key = reply_to_key))
           OR reply_to_key = :lastKey AND coalesce(reply_json ->> '$.awaits.person', :person) = :person)
       ORDER BY own DESC LIMIT 1`,
    )
    .pluck();

  return {
    heard: (message: Message): { text: string; outcome: Outcome; entry: number | null } | undefined =>
      heardBefore.get(message.door, message.chatKey, message.messageKey) as
        { text: string; outcome: Outcome; entry: number | null } | undefined,

    /** @param entry the journal's entry that the message made, if any */
    remember: (
      { door, chatKey, messageKey, person, text, sentAtMs }: Message,
      outcome: Outcome,
      entry: number | null = null,
    ): void => {
      hear.run({ door, chatKey, messageKey, personKey: person.key, text, outcome, atMs: sentAtMs, entry });
    },

    /** What was said in a chat since a moment, the newest first, without the message at hand. */
    lately: ({ door, chatKey, messageKey }: Message, sinceMs: number): string[] =>
      lately.all(door, chatKey, messageKey, sinceMs) as string[],

    /** What was told to a chat since a moment and is still shown there, without the message that is to be replaced. */
    toldSince: (
      { door, chatKey, topicKey }: Pick<Message, 'door' | 'chatKey' | 'topicKey'>,
      sinceMs: number,
      insteadOf: number | null,
    ): { heed: string[]; notes: Note[] } => {
      const rows = toldSince.all({ door, chatKey, topicKey, sinceMs, insteadOf }) as {
        heed: string | null;
        notes: string | null;
      }[];
      const all = <T>(json: readonly (string | null)[]) =>
        json.flatMap((one) => JSON.parse(one ?? '[]') as T[]);
      return { heed: all(rows.map(({ heed }) => heed)), notes: all(rows.map(({ notes }) => notes)) };
    },

    /** The request of which something was asked of a person last, since a moment; undefined where nothing was. */
    awaited: ({ door, chatKey, person: { key: person }, messageKey }: Message, sinceMs: number) => {
      const last = lastOf.get({ door, chatKey, person, messageKey }) as
        { messageKey: string; atMs: number } | undefined;
      const since = { sinceMs, lastMs: last?.atMs ?? 0, lastKey: last?.messageKey ?? null };
      return (awaited.get({ door, chatKey, person, ...since }) as string | null | undefined) ?? undefined;
    },

    /** A button of the answer to a message was pressed and recorded something: the message counts as recorded. */
    settle: ({ door, chatKey, messageKey }: Message, outcome: Outcome, entry: number | null): void =>
      void (outcome === 'recorded' && settle.run(entry, door, chatKey, messageKey)),

    /** What a person had recorded last in a chat since a moment, without the message at hand; what was taken back is left out. */
    lastRecorded: ({ door, chatKey, messageKey, person }: Message, sinceMs: number) =>
      lastRecorded.get({ door, chatKey, messageKey, person: person.key, sinceMs }) as
        { text: string; entry: number } | undefined,

    /** Whether the same person had the same words recorded in this chat since a moment, and it still stands. */
    recordedSince: ({ door, chatKey, person, text }: Message, sinceMs: number): boolean =>
      recordedSince.get(door, chatKey, person.key, text, sinceMs) !== undefined,
  };
}
