import { chmodSync, closeSync, existsSync, openSync, renameSync, rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { backUpNow, dropOldBackups, newBackup } from './backups.ts';
import { lockAlone } from './lock.ts';
import { newestForm } from './open.ts';
import type { Db } from './db.ts';
import { isDamage } from './whole.ts';

/** What a file holds, for whoever restores it. */
export interface Holds {
  readonly households: number;
  readonly pouches: number;
  /** When something was last recorded, ms; null for never. */
  readonly lastAtMs: number | null;
}

export interface Restored {
  readonly holds: Holds;
  /** Where the database that was there before is now; null when there was none. */
  readonly replaced: string | null;
}

/**
 * Looks whether a file is a whole database of households that this program can read.
 * @throws Error with a sentence
 */
export function checkBackup(file: string): Holds {
  if (!existsSync(file)) throw new Error(`There is no file ${file}.`);
  let db: Db | undefined;
  try {
    db = new Database(file, { readonly: true, fileMustExist: true });
    if (db.pragma('integrity_check(1)', { simple: true }) !== 'ok')
      throw new Error(`${file} is damaged, so nothing was restored.`);
    const form = Number(db.pragma('user_version', { simple: true }));
    if (form < 1 || db.prepare("SELECT 1 FROM sqlite_master WHERE name = 'household'").get() === undefined)
      throw new Error(`${file} holds no households, so nothing was restored.`);
    if (form > newestForm())
      throw new Error(
        `${file} was written by a newer version. Update the program first; nothing was restored.`,
      );
    if ((db.pragma('foreign_key_check') as unknown[]).length > 0)
      throw new Error(`${file} has records that hang on missing ones, so nothing was restored.`);
    const count = (sql: string) => db!.prepare(sql).pluck().get() as number;
    return {
      households: count('SELECT count(*) FROM household'),
      pouches: count('SELECT count(*) FROM pouch'),
      lastAtMs: db.prepare('SELECT max(at_ms) FROM entry').pluck().get() as number | null,
    };
  } catch (error) {
    if (isDamage(error)) throw new Error(`${file} is damaged, so nothing was restored.`, { cause: error });
    throw error;
  } finally {
    db?.close();
  }
}

/**
 * Puts a backup in the database's place. What was there is kept among the backups, damaged or not. Answers that
 * waited when the backup was made are dropped: most were delivered since.
 * @throws Error with a sentence; then the database is as it was
 */
export function restore(file: string, database: string, nowMs: number): Restored {
  const holds = checkBackup(file);
  const unlock = lockAlone(database);
  try {
    const coming = `${database}.restoring`;
    rmSync(coming, { force: true });
    closeSync(openSync(coming, 'wx', 0o600));
    try {
      copyWhole(file, coming);
      checkBackup(coming);
      const replaced = existsSync(database) ? keepReplaced(database, nowMs) : null;
      for (const left of [`${database}-wal`, `${database}-shm`]) rmSync(left, { force: true });
      renameSync(coming, database);
      chmodSync(database, 0o600);
      dropOldBackups(database);
      return { holds, replaced };
    } finally {
      rmSync(coming, { force: true });
    }
  } finally {
    unlock();
  }
}

function copyWhole(file: string, coming: string): void {
  const source = new Database(file, { readonly: true });
  try {
    source.prepare('VACUUM INTO ?').run(coming);
  } finally {
    source.close();
  }
  const copy = new Database(coming);
  try {
    copy.exec(
      `UPDATE outbox SET state = 'dropped', why_dropped = 'waited in a backup that was restored' WHERE state = 'waiting'`,
    );
    const hasUnfinished = copy.prepare("SELECT 1 FROM sqlite_master WHERE name = 'unfinished'").get();
    if (hasUnfinished !== undefined) copy.exec('DELETE FROM unfinished');
  } finally {
    copy.close();
  }
}

/** A whole database is copied as one file; one that cannot be read is moved as it is, with what belongs to it. */
function keepReplaced(database: string, nowMs: number): string {
  try {
    const old = new Database(database, { fileMustExist: true });
    try {
      return backUpNow(old, database, 'replaced', nowMs);
    } finally {
      old.close();
    }
  } catch {
    const path = newBackup(database, 'replaced', nowMs);
    for (const end of ['', '-wal', '-shm'])
      if (existsSync(database + end)) renameSync(database + end, path + end);
    return path;
  }
}
