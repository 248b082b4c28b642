import { closeSync, existsSync, openSync, readFileSync, renameSync, rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { z } from 'zod';
import { columnsOf, exportedTables, exportFormat, exportVersion } from './export.ts';
import { recordTables } from './journal.ts';
import { inTurn, lockAlone } from './lock.ts';
import { makeReady, migrate, newestForm } from './open.ts';
import type { Db } from './db.ts';

const Cell = z.union([z.null(), z.string(), z.number()]);
const Shape = z.object({
  format: z.literal(exportFormat),
  version: z.literal(exportVersion),
  form: z.number().int().min(1),
  made_at: z.string(),
  household: z.object({
    id: z.number().int().positive(),
    made_at_ms: z.number().int(),
    admitted_by: z.string().nullable(),
  }),
  tables: z.record(z.string(), z.array(z.record(z.string(), Cell))),
});
type File = z.infer<typeof Shape>;

/**
 * Reads an exported household into an empty database. The terminal opens that household from then on, and so do the
 * chats it was exported from.
 * @returns how many rows each table got
 * @throws Error with a sentence; then nothing was written
 */
export function importHousehold(path: string, database: string): Record<string, number> {
  const file = read(path);
  return inTurn(database, () => {
    const unlock = lockAlone(database);
    try {
      refuseUnlessEmpty(database);
      const coming = `${database}.importing`;
      rmSync(coming, { force: true });
      closeSync(openSync(coming, 'wx', 0o600));
      try {
        const counts = build(coming, file);
        for (const end of ['-wal', '-shm']) rmSync(database + end, { force: true });
        renameSync(coming, database);
        return counts;
      } finally {
        for (const end of ['', '-wal', '-shm', '-journal']) rmSync(coming + end, { force: true });
      }
    } finally {
      unlock();
    }
  });
}

function read(path: string): File {
  let json: unknown;
  try {
    json = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    const isMissing = error instanceof Error && 'code' in error && error.code === 'ENOENT';
    throw new Error(isMissing ? `There is no file ${path}.` : `${path} is no JSON; nothing was imported.`, {
      cause: error,
    });
  }
  const found = Shape.safeParse(json);
  if (!found.success) {
    const [issue] = found.error.issues;
    throw new Error(`${path} is no export of a household (${issue!.path.join('.')}: ${issue!.message}).`);
  }
  if (found.data.form > newestForm())
    throw new Error(`${path} was written by a newer version. Update the program first.`);
  return found.data;
}

function refuseUnlessEmpty(database: string): void {
  if (!existsSync(database)) return;
  const db = new Database(database, { readonly: true });
  try {
    const has = db.prepare("SELECT 1 FROM sqlite_master WHERE name = 'household'").get() !== undefined;
    if (has && db.prepare('SELECT 1 FROM household').get() !== undefined)
      throw new Error(
        `${database} holds a household already. Import into an empty one: set HOUSEHOLD_DB to a new path.`,
      );
  } finally {
    db.close();
  }
}

function build(coming: string, file: File): Record<string, number> {
  const db = new Database(coming);
  try {
    db.pragma('foreign_keys = ON');
    // First the form that the file has; the steps since then are the same as for a database of that age.
    migrate(db, file.form);
    const counts = db.transaction(() => fill(db, file)).immediate();
    makeReady(db);
    db.pragma('journal_mode = DELETE');
    if ((db.pragma('foreign_key_check') as unknown[]).length > 0)
      throw new Error('Its records do not fit together.');
    return counts;
  } catch (error) {
    if (error instanceof Database.SqliteError)
      throw new Error(`The file's records do not fit together (${error.message}); nothing was imported.`, {
        cause: error,
      });
    throw error;
  } finally {
    db.close();
  }
}

function fill(db: Db, { household, tables }: File): Record<string, number> {
  db.pragma('defer_foreign_keys = ON');
  db.prepare(
    'INSERT INTO household (id, made_at_ms, admitted_by) VALUES (:id, :made_at_ms, :admitted_by)',
  ).run(household);
  const unknown = Object.keys(tables).filter((name) => !exportedTables.includes(name));
  if (unknown.length > 0) throw new Error(`The file has a table that no household has: ${unknown[0]!}.`);
  const counts: Record<string, number> = {};
  for (const table of exportedTables) {
    const rows = tables[table] ?? [];
    const known = columnsOf(db, table);
    const isOwned = table !== 'row_change';
    for (const row of rows) {
      // Names of columns come from the database itself, never from the file.
      const columns = known.filter((name) => row[name] !== undefined);
      const other = Object.keys(row).find((name) => !known.includes(name));
      if (other !== undefined) throw new Error(`The file has a column that ${table} has not: ${other}.`);
      if (table === 'row_change') checkChange(db, row, household.id);
      const into = isOwned ? ['household', ...columns] : columns;
      db.prepare(
        `INSERT INTO ${table} (${into.join(', ')}) VALUES (${into.map((name) => `:${name}`).join(', ')})`,
      ).run(isOwned ? { ...row, household: household.id } : row);
    }
    counts[table] = rows.length;
  }
  db.prepare(
    `INSERT OR IGNORE INTO chat (door, chat_key, household, is_private, title, admitted_at_ms)
     VALUES ('terminal', 'terminal', ?, 0, 'the terminal', ?)`,
  ).run(household.id, household.made_at_ms);
  return counts;
}

/** A noted change is put back by /undo, so it must not name other tables, columns or households. */
function checkChange(db: Db, row: Record<string, unknown>, household: number): void {
  const table = recordTables.find((name) => name === row['table_name']);
  if (!table) throw new Error('The file notes a change of a table that no household has.');
  const columns = ['household', ...columnsOf(db, table)];
  for (const key of ['before_json', 'after_json']) {
    const text = row[key];
    if (text === null || text === undefined) continue;
    const noted = z.record(z.string(), Cell).safeParse(typeof text === 'string' ? JSON.parse(text) : text);
    const fits =
      noted.success &&
      noted.data['household'] === household &&
      Object.keys(noted.data).every((name) => columns.includes(name));
    if (!fits) throw new Error(`The file notes a change of ${table} that cannot be.`);
  }
}
