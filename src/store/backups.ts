import {
  chmodSync,
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import type { Db } from './db.ts';

/** Why a copy was made: by the day, before the records change form, or before a restore put another in place. */
export type Why = 'daily' | 'before-change' | 'replaced';

export interface Backup {
  readonly path: string;
  readonly why: Why;
  readonly atMs: number;
}

/** How many of each kind are kept. Chosen. */
const kept: Record<Why, number> = { daily: 14, 'before-change': 5, replaced: 5 };
const dayMs = 24 * 3_600_000;
/** A copy of up to this size is checked right away; a larger one when it is restored. */
const checkedBytes = 64 * 1_048_576;

const namePattern = /^(daily|before-change|replaced)-(\d{4}-\d\d-\d\d)T(\d\d)(\d\d)(\d\d)Z(?:-\d+)?\.db$/;

/** Where the copies of a database are: a folder beside it. */
export const backupFolder = (database: string): string => `${database}.backups`;

/** The copies there are, the newest first. */
export function backupsOf(database: string): Backup[] {
  const folder = backupFolder(database);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .flatMap((name): Backup[] => {
      const found = namePattern.exec(name);
      if (!found) return [];
      const [, why, day, hour, minute, second] = found;
      const atMs = Date.parse(`${day!}T${hour!}:${minute!}:${second!}Z`);
      return [{ path: join(folder, name), why: why as Why, atMs }];
    })
    .sort((a, b) => b.atMs - a.atMs || b.path.localeCompare(a.path));
}

/** A name for a new copy, in a folder and a file that only their owner reads. */
export function newBackup(database: string, why: Why, nowMs: number): string {
  const folder = backupFolder(database);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  chmodSync(folder, 0o700);
  const stamp = new Date(nowMs).toISOString().replace(/:|\.\d+/g, '');
  for (let n = 1; ; n += 1) {
    const path = join(folder, `${why}-${stamp}${n === 1 ? '' : `-${n}`}.db`);
    if (!existsSync(path)) return path;
  }
}

/** Drops what is more than the number kept of a kind. */
export function dropOldBackups(database: string): void {
  for (const why of Object.keys(kept) as Why[]) {
    const old = backupsOf(database)
      .filter((backup) => backup.why === why)
      .slice(kept[why]);
    for (const { path } of old) rmSync(path, { force: true });
  }
}

/** Made under another name first: what has a copy's name is whole. */
function unfinished(path: string): string {
  const part = join(dirname(path), `${basename(path)}.part`);
  rmSync(part, { force: true });
  closeSync(openSync(part, 'wx', 0o600));
  return part;
}

/**
 * Copies the database at one moment, while nothing else happens in this process.
 * @returns the copy's path
 * @throws Error of the file system or of SQLite; nothing half-made is left
 */
export function backUpNow(db: Db, database: string, why: Why, nowMs: number): string {
  const path = newBackup(database, why, nowMs);
  const part = unfinished(path);
  try {
    db.prepare('VACUUM INTO ?').run(part);
    renameSync(part, path);
  } catch (error) {
    rmSync(part, { force: true });
    throw error;
  }
  dropOldBackups(database);
  return path;
}

/**
 * The copy of the day, made beside the chat: people are answered while it grows, and it holds one consistent moment.
 * A copy that turns out damaged drives out no older one.
 * @returns the copy's path; undefined when the latest is younger than a day or there is nothing yet
 */
export async function backUpDaily(db: Db, database: string, nowMs: number): Promise<string | undefined> {
  const latest = backupsOf(database).find(({ why }) => why === 'daily');
  // A clock that was set back must not stop the copies.
  if (latest && nowMs - latest.atMs < dayMs && latest.atMs <= nowMs) return undefined;
  // Nothing was recorded yet.
  if (db.prepare('SELECT 1 FROM household').get() === undefined) return undefined;
  const path = newBackup(database, 'daily', nowMs);
  const part = unfinished(path);
  try {
    await db.backup(part);
    settle(part);
    renameSync(part, path);
  } catch (error) {
    for (const left of [part, `${part}-wal`, `${part}-shm`, `${part}-journal`]) rmSync(left, { force: true });
    throw error;
  }
  dropOldBackups(database);
  return path;
}

/** Makes a copy one file that needs no others beside it, and looks at it where that is quick. */
function settle(part: string): void {
  const copy = new Database(part);
  try {
    copy.pragma('journal_mode = DELETE');
    const bytes =
      Number(copy.pragma('page_count', { simple: true })) *
      Number(copy.pragma('page_size', { simple: true }));
    if (bytes <= checkedBytes && copy.pragma('quick_check(1)', { simple: true }) !== 'ok')
      throw new Error('the copy is damaged, and so may be the database');
  } finally {
    copy.close();
  }
}
