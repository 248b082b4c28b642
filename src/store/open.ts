import { chmodSync, closeSync, mkdirSync, openSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { backUpNow } from './backups.ts';
import type { Db } from './db.ts';
import { cannotWrite, checkWhole, isReadOnly, mayBegin } from './whole.ts';

const folder = join(dirname(fileURLToPath(import.meta.url)), 'migrations');

/** The numbered migrations, oldest first: '0001-start.sql' is version 1. */
export function migrations(): { version: number; sql: string }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.sql'))
    .sort()
    .map((name) => ({ version: Number(name.slice(0, 4)), sql: readFileSync(join(folder, name), 'utf8') }));
}

/** Brings the file up to the given version, one transaction for each step. */
export function migrate(db: Db, upTo = Number.POSITIVE_INFINITY): void {
  const at = Number(db.pragma('user_version', { simple: true }));
  const steps = migrations();
  const newest = steps.at(-1)?.version ?? 0;
  if (at > newest) {
    throw new Error(
      `The database was written by a newer version (its form is ${at}, this program knows ${newest}). Update the program; nothing was changed.`,
    );
  }
  for (const { version, sql } of steps) {
    if (version <= at || version > upTo) continue;
    // Immediate: two processes that start at once must not both see the older version.
    db.transaction(() => {
      if (Number(db.pragma('user_version', { simple: true })) >= version) return;
      db.exec(sql);
      db.pragma(`user_version = ${version}`);
    }).immediate();
  }
}

/** The newest form of the records that this program knows. */
export const newestForm = (): number => migrations().at(-1)?.version ?? 0;

/**
 * Opens the household's file, makes it readable by its owner alone, and brings it up to date. Before its form is
 * changed a copy is kept. Full synchronous writes: what was answered as recorded survives a power cut.
 * @throws Error with words that help when the file is damaged, not ours, or cannot be written
 */
export function openDatabase(path: string, nowMs: number = Date.now()): Db {
  const inMemory = path === ':memory:';
  if (inMemory) return makeReady(new Database(path));
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  mayBegin(path);
  const db = openFile(path);
  try {
    checkWhole(db, path);
    const form = Number(db.pragma('user_version', { simple: true }));
    if (form > 0 && form < newestForm()) {
      try {
        backUpNow(db, path, 'before-change', nowMs);
      } catch (error) {
        throw new Error(
          `The records have to change their form, and the backup that comes first failed (is the disk full?). Nothing was changed.`,
          { cause: error },
        );
      }
    }
    return makeReady(db);
  } catch (error) {
    db.close();
    throw isReadOnly(error) ? cannotWrite(path, error) : error;
  }
}

function openFile(path: string): Db {
  // Made by us first, so that nobody else could read it even for a moment.
  try {
    closeSync(openSync(path, 'a', 0o600));
    chmodSync(path, 0o600);
  } catch (error) {
    throw cannotWrite(path, error);
  }
  return new Database(path);
}

/** Sets a connection up as this house needs it, and brings its file up to date. */
export function makeReady(db: Db): Db {
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  // Pages are put in their places less often than after every fifty messages, and more of them are kept at hand.
  db.pragma('wal_autocheckpoint = 8000');
  db.pragma('cache_size = -16000');
  db.pragma('foreign_keys = ON');
  db.pragma('busy_timeout = 2000');
  db.pragma('trusted_schema = OFF');
  migrate(db);
  return db;
}

/**
 * Writes without waiting for the disk. What is written so outlives the process all the same; a power cut may lose it.
 * For what can be found out again, and never for what people recorded. Not inside a transaction.
 */
export function lightly(db: Db, work: () => unknown): void {
  db.pragma('synchronous = NORMAL');
  try {
    work();
  } finally {
    db.pragma('synchronous = FULL');
  }
}
