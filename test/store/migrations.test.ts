import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, expect, test } from 'vitest';
import { migrate, migrations, openDatabase } from '#store/open.ts';

const folder = mkdtempSync(join(tmpdir(), 'household-'));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('the migrations are numbered from 1 without a gap', () => {
  expect(migrations().map(({ version }) => version)).toEqual(migrations().map((_, i) => i + 1));
});

test.each(migrations())('a file of version $version comes up to date', ({ version }) => {
  const db = new Database(':memory:');
  migrate(db, version);
  expect(db.pragma('user_version', { simple: true })).toBe(version);
  migrate(db);
  expect(db.pragma('user_version', { simple: true })).toBe(migrations().length);
  expect(db.pragma('foreign_key_check')).toEqual([]);
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
});

test('a file of a newer program is refused and left alone', () => {
  const db = new Database(':memory:');
  db.pragma('user_version = 9999');
  expect(() => migrate(db)).toThrow(/newer version/);
  expect(db.prepare('SELECT count(*) FROM sqlite_master').pluck().get()).toBe(0);
});

test('the file is read by its owner alone, and every write is waited for', () => {
  const path = join(folder, 'deep', 'household.db');
  const db = openDatabase(path);
  expect(statSync(path).mode & 0o777).toBe(0o600);
  expect(statSync(join(folder, 'deep')).mode & 0o777).toBe(0o700);
  expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
  expect(db.pragma('synchronous', { simple: true })).toBe(2);
  expect(db.pragma('foreign_keys', { simple: true })).toBe(1);
  db.close();
});

test('every table is STRICT', () => {
  const db = openDatabase(':memory:');
  const loose = db
    .prepare(
      "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'",
    )
    .pluck()
    .all();
  expect(loose).toEqual([]);
});
