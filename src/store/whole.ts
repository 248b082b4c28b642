import { existsSync, statSync } from 'node:fs';
import Database from 'better-sqlite3';
import { backupsOf } from './backups.ts';
import type { Db } from './db.ts';

const damageCodes = /^SQLITE_(CORRUPT|NOTADB|IOERR)/;

export function isDamage(error: unknown): boolean {
  return error instanceof Database.SqliteError && damageCodes.test(error.code);
}

/** What to do about a file that cannot be used; for whoever starts the program. */
export function damaged(path: string, what: string): Error {
  const latest = backupsOf(path)[0];
  const back = latest
    ? `The latest backup is ${latest.path}. To go back to it: npm run restore -- ${latest.path}`
    : 'There is no backup of it beside it.';
  return new Error(
    `${path} ${what}. It was left exactly as it is, and nothing was started. ${back}\nKeep the file: what is whole in it can still be read out with SQLite's own tools (.recover).`,
  );
}

/** An empty file where there are backups was cut off; one where there are none is a new beginning. */
export function mayBegin(path: string): void {
  if (existsSync(path) && statSync(path).size === 0 && backupsOf(path).length > 0)
    throw damaged(path, 'is empty, though there are backups of it');
}

/**
 * Looks whether a file is a whole database, and ours, before anything is written to it.
 * @throws Error with words that help
 */
export function checkWhole(db: Db, path: string): void {
  let found: unknown;
  let tables: unknown;
  try {
    found = db.pragma('quick_check(1)', { simple: true });
    tables = db.prepare("SELECT count(*) FROM sqlite_master WHERE type = 'table'").pluck().get();
  } catch (error) {
    if (isDamage(error)) throw damaged(path, 'is damaged');
    throw error;
  }
  if (found !== 'ok') throw damaged(path, 'is damaged');
  const isOurs =
    db.prepare("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = 'household'").get() !== undefined;
  if (tables !== 0 && !isOurs)
    throw new Error(`${path} holds other data, no households. It was left as it is.`);
}

/** The file or its folder may not be written by this user. */
export const isReadOnly = (error: unknown): boolean =>
  error instanceof Error &&
  'code' in error &&
  /^(SQLITE_(READONLY|CANTOPEN|PERM)|EACCES|EPERM|EROFS)/.test(String(error.code));

export function cannotWrite(path: string, cause: unknown): Error {
  return new Error(
    `${path} cannot be written here. Give this user the right to write it and its folder, or set HOUSEHOLD_DB to another path.`,
    { cause },
  );
}
