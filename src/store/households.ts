import type { Message } from '#core/talk.ts';
import type { Db } from './db.ts';

export interface Member {
  readonly id: number;
  readonly name: string;
  /** Somebody who writes as the group and stays unnamed: no person, and nobody who eats. */
  readonly isUnnamed?: boolean;
}

/** Which household a chat belongs to and who its members are. */
export function householdStore(db: Db) {
  const ofChat = db.prepare('SELECT household FROM chat WHERE door = ? AND chat_key = ?').pluck();
  const ofPerson = db
    .prepare('SELECT DISTINCT household FROM member WHERE door = ? AND person_key = ? ORDER BY household')
    .pluck();
  const make = db.prepare('INSERT INTO household (made_at_ms, admitted_by) VALUES (?, ?)');
  const owner = db
    .prepare(
      `SELECT admitted_by FROM household WHERE admitted_by IS NOT NULL
         AND EXISTS (SELECT 1 FROM chat WHERE chat.household = household.id AND door = ?) ORDER BY id LIMIT 1`,
    )
    .pluck();
  const addChat = db.prepare(
    `INSERT INTO chat (door, chat_key, household, is_private, title, admitted_at_ms) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT (door, chat_key) DO UPDATE SET household = excluded.household, title = excluded.title`,
  );
  const dropButtons = db.prepare(
    'DELETE FROM button WHERE outbox IN (SELECT id FROM outbox WHERE door = ? AND chat_key = ?)',
  );
  const dropLists = db.prepare('DELETE FROM live WHERE door = ? AND chat_key = ?');
  const moveChat = db.prepare('UPDATE OR IGNORE chat SET chat_key = ? WHERE door = ? AND chat_key = ?');
  const findMember = db.prepare(
    'SELECT id, name, alias FROM member WHERE household = ? AND door = ? AND person_key = ?',
  );
  const addMember = db.prepare('INSERT INTO member (household, door, person_key, name) VALUES (?, ?, ?, ?)');
  const rename = db.prepare('UPDATE member SET name = ? WHERE id = ?');
  const setAlias = db.prepare('UPDATE member SET alias = ? WHERE id = ?');
  const byAlias = db
    .prepare(
      'SELECT name FROM member WHERE household = ? AND alias = ? COLLATE NOCASE ORDER BY id DESC LIMIT 1',
    )
    .pluck();
  const all = db.prepare('SELECT id, name FROM member WHERE household = ? ORDER BY id');

  const wrong = db.prepare('INSERT INTO wrong_code (door, chat_key, person_key, at_ms) VALUES (?, ?, ?, ?)');
  const wrongBy = db
    .prepare(
      'SELECT at_ms FROM wrong_code WHERE door = ? AND person_key = ? AND at_ms > ? ORDER BY at_ms LIMIT 20',
    )
    .pluck();
  const hint = db.prepare(
    `UPDATE chat SET hinted_at_ms = :atMs WHERE door = :door AND chat_key = :chatKey
       AND (hinted_at_ms IS NULL OR hinted_at_ms < :sinceMs)`,
  );
  const title = db.prepare('SELECT title FROM chat WHERE household = ? AND is_private = 0 LIMIT 1').pluck();

  return {
    /** What the household's group is called, for people who belong to several. */
    title: (household: number): string =>
      (title.get(household) as string | undefined) ?? `household ${household}`,
    wrongCode: (message: Message): void =>
      void wrong.run(message.door, message.chatKey, message.person.key, message.sentAtMs),
    /** When a person tried wrong codes since a moment, the earliest first, ms. */
    wrongCodes: ({ door, person }: Message, sinceMs: number): number[] =>
      wrongBy.all(door, person.key, sinceMs) as number[],
    /** @returns whether the chat was not hinted at since a moment, and now is */
    hint: ({ door, chatKey, sentAtMs }: Message, sinceMs: number): boolean =>
      hint.run({ door, chatKey, atMs: sentAtMs, sinceMs }).changes === 1,
    of: (door: string, chatKey: string): number | undefined =>
      ofChat.get(door, chatKey) as number | undefined,
    /** The households a person belongs to, for their private chat. */
    ofPerson: (door: string, personKey: string): number[] => ofPerson.all(door, personKey) as number[],
    admit(message: Message): number {
      // Somebody who spoke as a chat is nobody in particular.
      const by = message.person.key.startsWith('chat:') ? null : message.person.key;
      const household = Number(make.run(message.sentAtMs, by).lastInsertRowid);
      this.join(message, household);
      return household;
    },
    /** The person who first admitted a household on a door: whoever runs the bot. */
    owner: (door: string): string | undefined => owner.get(door) as string | undefined,
    /** A chat speaks for a household from now on. Its buttons belonged to the one before. */
    join(message: Message, household: number): void {
      const before = this.of(message.door, message.chatKey);
      if (before !== undefined && before !== household) {
        dropButtons.run(message.door, message.chatKey);
        dropLists.run(message.door, message.chatKey);
      }
      addChat.run(
        message.door,
        message.chatKey,
        household,
        message.isPrivate ? 1 : 0,
        message.chatTitle,
        message.sentAtMs,
      );
    },
    /** A group that became a supergroup keeps everything under its new key. */
    move: (door: string, from: string, to: string): void => void moveChat.run(to, door, from),
    /** The member who wrote; people are known by their key, their names follow what they call themselves. */
    member(household: number, { door, person, alias }: Message): Member {
      const isUnnamed = person.key.startsWith('chat:');
      const found = findMember.get(household, door, person.key) as
        (Member & { alias: string | null }) | undefined;
      if (!found) {
        const added = addMember.run(household, door, person.key, person.name);
        if (alias !== undefined) setAlias.run(alias, added.lastInsertRowid);
        return { id: Number(added.lastInsertRowid), name: person.name, isUnnamed };
      }
      if (found.name !== person.name) rename.run(person.name, found.id);
      if (alias !== undefined && found.alias !== alias) setAlias.run(alias, found.id);
      return { id: found.id, name: person.name, isUnnamed };
    },
    /** The member whom others mean by a public name. */
    nameBehind: (household: number, alias: string): string | undefined =>
      byAlias.get(household, alias) as string | undefined,
    members: (household: number): Member[] => all.all(household) as Member[],
  };
}

export type HouseholdStore = ReturnType<typeof householdStore>;
