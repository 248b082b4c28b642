import { Refusal } from '#core/refusal.ts';
import type { Db } from './db.ts';

/** The tables whose rows are a household's records; every change to them can be taken back. */
export const recordTables = [
  'setting',
  'recipe',
  'recipe_line',
  'batch',
  'tray',
  'weighing',
  'witness',
  'rest',
  'mix_part',
  'pouch',
  'finding',
  'learnt_food',
  'learnt_measure',
  'meal_alias',
  'packet',
  'own_food',
  'eater',
  'eater_food',
  'trip',
  'slot',
  'slot_eater',
  'wish',
  'promise',
  'rating',
  'stove',
] as const;

export interface Entry {
  readonly id: number;
  readonly atMs: number;
  readonly by: string;
  readonly did: string;
  readonly undoneBy: string | null;
}

interface Change {
  table_name: string;
  row_id: number;
  before_json: string | null;
  after_json: string | null;
}

/** Where a change was made and by whom. */
export interface Author {
  readonly household: number;
  readonly door: string;
  readonly chatKey: string;
  readonly member: number;
  readonly atMs: number;
}

/**
 * The journal notices every changed row by triggers, so that no request can forget to make itself
 * undoable. The triggers are temporary and made from the tables as they are, so a migration that adds a
 * column needs no second list of columns.
 */
export function openJournal(db: Db) {
  db.exec('CREATE TEMP TABLE writing (entry INTEGER NOT NULL)');
  const columns = new Map<string, string[]>();
  for (const table of recordTables) {
    const names = (db.pragma(`table_info(${table})`) as { name: string }[]).map((c) => c.name);
    columns.set(table, names);
    const row = (which: string) => `json_object(${names.map((n) => `'${n}', ${which}.${n}`).join(', ')})`;
    const note = (event: string, id: string, before: string, after: string) =>
      db.exec(`CREATE TEMP TRIGGER noted_${table}_${event} AFTER ${event} ON main.${table}
        WHEN (SELECT count(*) FROM writing) = 1 BEGIN
          INSERT INTO row_change (entry, table_name, row_id, before_json, after_json)
          VALUES ((SELECT entry FROM writing), '${table}', ${id}, ${before}, ${after});
        END`);
    note('insert', 'NEW.id', 'NULL', row('NEW'));
    note('update', 'NEW.id', row('OLD'), row('NEW'));
    note('delete', 'OLD.id', row('OLD'), 'NULL');
  }

  const addEntry = db.prepare(
    `INSERT INTO entry (household, door, chat_key, member, at_ms, did)
     VALUES (:household, :door, :chatKey, :member, :atMs, '')`,
  );
  const setWriting = db.prepare('INSERT INTO temp.writing (entry) VALUES (?)');
  const clearWriting = db.prepare('DELETE FROM temp.writing');
  const countChanges = db.prepare('SELECT count(*) FROM row_change WHERE entry = ?').pluck();
  const dropEntry = db.prepare('DELETE FROM entry WHERE id = ?');
  const nameEntry = db.prepare('UPDATE entry SET did = ? WHERE id = ?');
  const lastStanding = db.prepare(
    `SELECT id, did FROM entry WHERE door = ? AND chat_key = ? AND household = ? AND undone_at_ms IS NULL AND did <> '' ORDER BY id DESC LIMIT 1`,
  );
  const changesOf = db.prepare('SELECT * FROM row_change WHERE entry = ? ORDER BY id DESC');
  const laterOnRow = db.prepare(
    `SELECT entry.did, member.name FROM row_change JOIN entry ON entry.id = row_change.entry
       JOIN member ON member.id = entry.member
     WHERE table_name = ? AND row_id = ? AND entry.id > ? AND undone_at_ms IS NULL AND did <> '' ORDER BY entry.id DESC LIMIT 1`,
  );
  const laterInHousehold = db.prepare(
    `SELECT entry.did, member.name FROM entry JOIN member ON member.id = entry.member
     WHERE entry.household = ? AND entry.id > ? AND undone_at_ms IS NULL AND did <> '' ORDER BY entry.id DESC LIMIT 1`,
  );
  const markUndone = db.prepare('UPDATE entry SET undone_at_ms = ?, undone_by = ? WHERE id = ?');
  const recent = db.prepare(
    `SELECT entry.id, at_ms AS atMs, member.name AS by, did, undoer.name AS undoneBy FROM entry
       JOIN member ON member.id = entry.member LEFT JOIN member AS undoer ON undoer.id = entry.undone_by
     WHERE entry.household = ? AND did <> '' ORDER BY entry.id DESC LIMIT ?`,
  );

  const restore = ({ table_name: table, row_id, before_json, after_json }: Change) => {
    const known = columns.get(table);
    if (!known) throw new Error(`the journal names an unknown table: ${table}`);
    // A row noted before a column was added does not tell it: it keeps what it has, or the column's default.
    const told = new Set(Object.keys(JSON.parse(before_json ?? '{}') as object));
    const names = known.filter((name) => told.has(name));
    if (before_json === null) {
      db.prepare(`DELETE FROM ${table} WHERE id = ?`).run(row_id);
    } else if (after_json === null) {
      db.prepare(
        `INSERT INTO ${table} (${names.join(', ')}) SELECT ${names.map((n) => `:row ->> '${n}'`).join(', ')}`,
      ).run({ row: before_json });
    } else {
      db.prepare(
        `UPDATE ${table} SET ${names.map((n) => `${n} = :row ->> '${n}'`).join(', ')} WHERE id = :id`,
      ).run({ row: before_json, id: row_id });
    }
  };

  return {
    /**
     * Runs work as one entry. Work that changes no record leaves no entry.
     * @returns the work's result and the entry, null when nothing was recorded
     */
    record<T extends { did?: string | undefined }>(
      author: Author,
      work: () => T,
    ): { result: T; entry: number | null } {
      const entry = Number(addEntry.run(author).lastInsertRowid);
      setWriting.run(entry);
      try {
        const result = work();
        const recorded = Number(countChanges.get(entry)) > 0;
        if (!recorded) dropEntry.run(entry);
        else if (!result.did) throw new Error('a request changed records without saying what it did');
        else nameEntry.run(result.did, entry);
        return { result, entry: recorded ? entry : null };
      } finally {
        clearWriting.run();
      }
    },

    /**
     * Takes back the last standing change of a chat.
     * @throws Refusal 'nothing-to-undo' or 'stands-on' when a later change, perhaps made in another chat, needs it
     */
    undoLast(author: Author): string {
      const last = lastStanding.get(author.door, author.chatKey, author.household) as
        { id: number; did: string } | undefined;
      if (!last) throw new Refusal('nothing-to-undo', 'There is nothing left to take back in this chat.');
      const changes = changesOf.all(last.id) as Change[];
      const standsOn = (later: unknown) => {
        const by = later as { did: string; name: string } | undefined;
        return new Refusal(
          'stands-on',
          `"${last.did}" cannot be taken back yet: a later change stands on it (${by ? `${by.name}: ${by.did}` : 'made in another chat'}). Take that one back first.`,
        );
      };
      for (const change of changes) {
        const later = laterOnRow.get(change.table_name, change.row_id, last.id);
        if (later) throw standsOn(later);
      }
      clearWriting.run();
      try {
        for (const change of changes) restore(change);
      } catch (error) {
        if (error instanceof Error && /FOREIGN KEY/.test(error.message)) {
          throw standsOn(laterInHousehold.get(author.household, last.id));
        }
        throw error;
      }
      markUndone.run(author.atMs, author.member, last.id);
      return last.did;
    },

    /** The latest entries, newest first, taken-back ones included and marked. */
    latest: (household: number, count: number): Entry[] => recent.all(household, count) as Entry[],
  };
}

export type Journal = ReturnType<typeof openJournal>;
