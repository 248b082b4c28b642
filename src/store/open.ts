import { chmodSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';

export type Db = Database.Database;

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

/**
 * Opens the household's file, makes it readable by its owner alone, and brings it up to date.
 * Full synchronous writes: what was answered as recorded survives a power cut.
 */
export function openDatabase(path: string): Db {
  const inMemory = path === ':memory:';
  if (!inMemory) mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const db = new Database(path);
  if (!inMemory) chmodSync(path, 0o600);
  return makeReady(db);
}

/** Sets a connection up as this house needs it, and brings its file up to date. */
export function makeReady(db: Db): Db {
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  db.pragma('busy_timeout = 2000');
  db.pragma('trusted_schema = OFF');
  migrate(db);
  return db;
}
