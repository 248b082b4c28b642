import type { Db } from './db.ts';
import { recordTables } from './record-tables.ts';
import { type Author, takingBack } from './taking-back.ts';

export { recordTables } from './record-tables.ts';
export type { Author } from './taking-back.ts';

export interface Entry {
  readonly id: number;
  /** Who made it, as a member. */
  readonly member: number;
  readonly atMs: number;
  readonly by: string;
  readonly did: string;
  readonly undoneBy: string | null;
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
  const recent = db.prepare(
    `SELECT entry.id, entry.member, at_ms AS atMs, member.name AS by, did, undoer.name AS undoneBy FROM entry
       JOIN member ON member.id = entry.member LEFT JOIN member AS undoer ON undoer.id = entry.undone_by
     WHERE entry.household = ? AND did <> '' ORDER BY entry.id DESC LIMIT ?`,
  );

  return {
    ...takingBack(db, columns, () => void clearWriting.run()),
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

    /** The latest entries, newest first, taken-back ones included and marked. */
    latest: (household: number, count: number): Entry[] => recent.all(household, count) as Entry[],
  };
}

export type Journal = ReturnType<typeof openJournal>;
