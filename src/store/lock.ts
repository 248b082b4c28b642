import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';

/**
 * Makes sure that a database has one bot only. The system itself holds the lock for this process and lets go of
 * it however the process ends, so there is never a stale one to clear away.
 * @param path the household's database
 * @returns what lets go of it again; whoever drops it may lose the lock
 * @throws Error with a sentence when another process has it
 */
export function lockHousehold(path: string): () => void {
  if (path === ':memory:') return () => undefined;
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const lock = new Database(`${path}.lock`, { timeout: 0 });
  try {
    lock.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    lock.close();
    if (!(error instanceof Database.SqliteError) || !error.code.startsWith('SQLITE_BUSY')) throw error;
    throw new Error(
      `Another bot is running on ${path}. Stop that one first, or set HOUSEHOLD_DB to another file.`,
      { cause: error },
    );
  }
  return () => void lock.close();
}
