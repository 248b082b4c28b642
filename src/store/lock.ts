import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { cannotWrite, isReadOnly } from './whole.ts';

/**
 * Makes sure that a database has one bot only. The system itself holds the lock for this process and lets go of
 * it however the process ends, so there is never a stale one to clear away.
 * @param path the household's database
 * @returns what lets go of it again; whoever drops it may lose the lock
 * @throws Error with a sentence when another process has it
 */
export function lockHousehold(path: string): () => void {
  return hold(
    `${path}.lock`,
    'BEGIN EXCLUSIVE',
    path,
    `Another bot is running on ${path}. Stop that one first, or set HOUSEHOLD_DB to another file.`,
  );
}

/**
 * Says that this process has the database open: a bot, a terminal, any number of them at once.
 * @throws Error with a sentence while the file is being replaced
 */
export function lockInUse(path: string): () => void {
  return hold(
    `${path}.use`,
    'BEGIN; SELECT count(*) FROM sqlite_master',
    path,
    `${path} is being replaced at the moment. Start again when that is done.`,
  );
}

/**
 * Makes sure that nobody has the database open, so that its file may be replaced.
 * @throws Error with a sentence when a bot or a terminal has
 */
export function lockAlone(path: string): () => void {
  return hold(
    `${path}.use`,
    'BEGIN EXCLUSIVE',
    path,
    `${path} is in use. Stop the bot and close every terminal on it first.`,
  );
}

/** Does what two processes must not do to one file at the same time; the second waits for the first. */
export function inTurn<T>(path: string, work: () => T): T {
  const unlock = hold(
    `${path}.turn`,
    'BEGIN EXCLUSIVE',
    path,
    `Another process has been busy with ${path} for a minute. Start again when it is done.`,
    60_000,
  );
  try {
    return work();
  } finally {
    unlock();
  }
}

function hold(lockPath: string, how: string, path: string, otherwise: string, waitMs = 0): () => void {
  if (path === ':memory:') return () => undefined;
  let lock: Database.Database | undefined;
  try {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    lock = new Database(lockPath, { timeout: waitMs });
    lock.exec(how);
  } catch (error) {
    lock?.close();
    if (isReadOnly(error)) throw cannotWrite(path, error);
    if (!(error instanceof Database.SqliteError) || !error.code.startsWith('SQLITE_BUSY')) throw error;
    throw new Error(otherwise, { cause: error });
  }
  return () => void lock?.close();
}
