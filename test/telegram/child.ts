import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { Platform } from './platform.ts';
import { until } from './group.ts';

export interface Child {
  readonly process: ChildProcess;
  /** Everything it printed, both streams. */
  readonly said: () => string;
  /** The exit code, or the signal that ended it. */
  readonly exited: Promise<number | NodeJS.Signals | null>;
}

/** A folder for a household's files that goes away at the end. */
export function newFolder(): { path: string; database: string; remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), 'household-'));
  return { path, database: join(path, 'h.db'), remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** The bot as people run it, in a process of its own. */
export function startBot(
  platform: Pick<Platform, 'root' | 'token'>,
  database: string,
  more: Record<string, string> = {},
): Child {
  const bot = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts'], {
    cwd: join(import.meta.dirname, '..', '..'),
    env: {
      PATH: process.env['PATH'] ?? '',
      HOUSEHOLD_DB: database,
      HOUSEHOLD_ADMIT_CODE: 'plum-42',
      TELEGRAM_BOT_TOKEN: platform.token,
      TELEGRAM_API_ROOT: platform.root,
      TZ: 'UTC',
      ...more,
    },
  });
  let said = '';
  for (const stream of [bot.stdout, bot.stderr])
    stream.on('data', (chunk: Buffer) => (said += chunk.toString()));
  const exited = new Promise<number | NodeJS.Signals | null>((resolve) =>
    bot.once('close', (code, signal) => resolve(code ?? signal)),
  );
  return { process: bot, said: () => said, exited };
}

export const greeted = (child: Child) => until(() => child.said().includes('Privacy mode is'), 120_000);

/** Reads a household's file from outside. */
export function look<T>(database: string, sql: string): T[] {
  const db = new Database(database, { readonly: true });
  try {
    return db.prepare(sql).all() as T[];
  } finally {
    db.close();
  }
}
