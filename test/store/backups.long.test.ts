// Witness: common practice, no source. That quick_check and VACUUM INTO do what they say: sqlite.org, pragma.html and
// lang_vacuum.html.
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import { defaultSettings } from '#core/settings.ts';
import { backUpDaily, backUpNow, backupFolder, backupsOf } from '#store/backups.ts';
import { openStores } from '#store/house.ts';
import { lockAlone, lockInUse } from '#store/lock.ts';
import { migrate, newestForm, openDatabase } from '#store/open.ts';
import { restore } from '#store/restore.ts';

const source = join(import.meta.dirname, '..', '..', 'src');
const root = mkdtempSync(join(tmpdir(), 'household-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));
let count = 0;

/** A household's file with one record, in a folder of its own. */
function household() {
  count += 1;
  const path = join(root, String(count), 'h.db');
  const db = openDatabase(path);
  const stores = openStores(db, defaultSettings);
  const { households, messages } = stores;
  const message = { door: 'terminal', chatKey: 'terminal', chatTitle: 'x', isPrivate: false, sentAtMs: 5 };
  const own = households.admit({ ...message, person: { key: 'ana', name: 'Ana' } } as never);
  stores.of(own).settings.set('altitudeM', 340);
  return { path, db, messages };
}
const day = (n: number) => Date.UTC(2027, 0, n, 6);
const altitude = (path: string) => {
  const db = new Database(path, { readonly: true });
  try {
    return db.prepare("SELECT value_json FROM setting WHERE name = 'altitudeM'").pluck().get();
  } finally {
    db.close();
  }
};
const mode = (path: string) => statSync(path).mode & 0o777;

test('a copy a day, read by its owner alone, two weeks of them kept', async () => {
  const { path, db } = household();
  const first = await backUpDaily(db, path, day(1));
  expect(altitude(first!)).toBe('340');
  expect([mode(first!), mode(backupFolder(path))]).toEqual([0o600, 0o700]);
  expect(await backUpDaily(db, path, day(1) + 23 * 3_600_000)).toBeUndefined();
  // The clock was set back: better one more than none.
  expect(await backUpDaily(db, path, day(1) - 3_600_000)).toBeDefined();
  for (let n = 2; n <= 20; n += 1) await backUpDaily(db, path, day(n));
  const all = backupsOf(path);
  expect(all).toHaveLength(14);
  expect(all.map(({ atMs }) => atMs)).toEqual(Array.from({ length: 14 }, (_, i) => day(20 - i)));
  expect(readdirSync(backupFolder(path))).toHaveLength(14);
  db.close();
});

test('people go on recording while a copy grows, and it is whole', async () => {
  const { path, db } = household();
  const put = db.prepare(
    "INSERT INTO heard (door, chat_key, message_key, text, person_key, outcome, at_ms) VALUES ('terminal', 'x', ?, ?, 'a', 'answered', 0)",
  );
  for (let i = 0; i < 3000; i += 1) put.run(String(i), 'x'.repeat(900));
  let isDone = false;
  const copying = backUpDaily(db, path, day(1)).finally(() => (isDone = true));
  let meanwhile = 0;
  while (!isDone) {
    put.run(`more ${meanwhile}`, 'y');
    meanwhile += 1;
    await new Promise((resolve) => setImmediate(resolve));
  }
  const copy = new Database((await copying) ?? '', { readonly: true });
  expect(meanwhile).toBeGreaterThan(3);
  expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
  copy.close();
  db.close();
});

test('a copy that fails leaves nothing half-made and drives out no older one', async () => {
  const { path, db } = household();
  await backUpDaily(db, path, day(1));
  db.close();
  await expect(backUpDaily(db, path, day(2))).rejects.toThrow();
  expect(() => backUpNow(db, path, 'replaced', day(2))).toThrow();
  expect(readdirSync(backupFolder(path))).toHaveLength(1);
});

test('before the records change form a copy is kept', () => {
  count += 1;
  const path = join(root, String(count), 'h.db');
  openDatabase(path).close();
  rmSync(path);
  const old = new Database(path);
  migrate(old, 1);
  old.exec('INSERT INTO household (made_at_ms) VALUES (7)');
  old.close();
  openDatabase(path, day(3)).close();
  const [copy] = backupsOf(path);
  expect(copy).toMatchObject({ why: 'before-change', atMs: day(3) });
  const before = new Database(copy!.path, { readonly: true });
  expect(before.pragma('user_version', { simple: true })).toBe(1);
  expect(before.prepare('SELECT made_at_ms FROM household').pluck().get()).toBe(7);
  before.close();
  expect(newestForm()).toBeGreaterThan(1);
});

test.each([
  ['overwritten in its middle', (path: string) => scribble(path, 5000)],
  ['overwritten at its start', (path: string) => scribble(path, 0)],
  ['cut off', (path: string) => truncateSync(path, 9000)],
  ['emptied', (path: string) => truncateSync(path, 0)],
])('a database %s is refused at the start with words that help, and left as it is', (_, harm) => {
  const { path, db } = household();
  const copy = backUpNow(db, path, 'daily', day(1));
  db.close();
  harm(path);
  const before = readFileSync(path);
  expect(() => openDatabase(path)).toThrow(`npm run restore -- ${copy}`);
  expect(readFileSync(path).equals(before)).toBe(true);
  const { replaced } = restore(copy, path, day(2));
  expect(altitude(path)).toBe('340');
  // An empty file is a whole one, too, and is copied as such.
  expect(before.length === 0 || readFileSync(replaced!).equals(before)).toBe(true);
  openDatabase(path).close();
});

function scribble(path: string, from: number): void {
  const bytes = readFileSync(path);
  for (let i = from; i < Math.min(from + 40_000, bytes.length); i += 1) bytes[i] = (i * 31) % 251;
  writeFileSync(path, bytes);
}

test('a file of something else is refused and left alone', () => {
  count += 1;
  const path = join(root, `${count}.db`);
  const other = new Database(path);
  other.exec('CREATE TABLE songs (name TEXT)');
  other.close();
  expect(() => openDatabase(path)).toThrow(/holds other data/);
  expect(() => restore(path, join(root, 'new.db'), 0)).toThrow(/holds no households/);
});

test('a backup takes the place of the records, which are kept; answers that waited then are dropped', () => {
  const { path, db, messages } = household();
  messages.put(
    { door: 'telegram', chatKey: 'x', topicKey: null, person: { key: 'a', name: 'A' } },
    null,
    { group: 'x' },
    0,
  );
  const copy = backUpNow(db, path, 'daily', day(1));
  db.exec("UPDATE setting SET value_json = '999'");
  db.close();
  const { holds, replaced } = restore(copy, path, day(2));
  expect(holds).toEqual({ households: 1, pouches: 0, lastAtMs: null });
  expect([altitude(path), altitude(replaced!)]).toEqual(['340', '999']);
  expect([mode(path), mode(replaced!)]).toEqual([0o600, 0o600]);
  const now = new Database(path, { readonly: true });
  expect(now.prepare('SELECT state FROM outbox').pluck().all()).toEqual(['dropped']);
  now.close();
});

test('a damaged or missing backup restores nothing', () => {
  const { path, db } = household();
  const copy = backUpNow(db, path, 'daily', day(1));
  db.close();
  scribble(copy, 5000);
  expect(() => restore(copy, path, day(2))).toThrow(/is damaged, so nothing was restored/);
  expect(() => restore(`${copy}.gone`, path, day(2))).toThrow(/no file/);
  expect(altitude(path)).toBe('340');
  expect(existsSync(`${path}.restoring`)).toBe(false);
});

test('nothing is restored while somebody has the records open, and nobody opens them meanwhile', () => {
  const { path, db } = household();
  const copy = backUpNow(db, path, 'daily', day(1));
  db.close();
  const [one, two] = [lockInUse(path), lockInUse(path)];
  expect(() => restore(copy, path, day(2))).toThrow(/is in use\. Stop the bot/);
  one();
  expect(() => restore(copy, path, day(2))).toThrow(/is in use/);
  two();
  const alone = lockAlone(path);
  expect(() => lockInUse(path)).toThrow(/is being replaced/);
  alone();
  restore(copy, path, day(2));
});

/** One of the project's programs, run as people run it. */
function run(script: string, args: string[], database: string) {
  const env = { PATH: process.env['PATH'] ?? '', HOUSEHOLD_DB: database, TZ: 'UTC' };
  return spawnSync(process.execPath, ['--import', 'tsx', script, ...args], {
    cwd: join(import.meta.dirname, '..', '..'),
    encoding: 'utf8',
    input: 'Ana: /help\n',
    env,
  });
}

test('npm run restore lists what there is, restores, and says what it did', () => {
  const { path, db } = household();
  const copy = backUpNow(db, path, 'daily', day(1));
  db.close();
  const listed = run('src/keep/restore.ts', [], path);
  expect(listed.status).toBe(1);
  expect(listed.stdout).toContain(copy);
  const done = run('src/keep/restore.ts', [copy], path);
  expect(done).toMatchObject({ status: 0, stderr: '' });
  expect(done.stdout).toContain('is whole: 1 household(s), 0 pouch(es)');
});

test('records that may not be written stop the start with words that help', () => {
  const { path, db } = household();
  db.close();
  for (const folder of [root, join(path, '..')]) chmodSync(folder, 0o755);
  chmodSync(path, 0o444);
  // Rights bind everybody but the system's first user, who becomes somebody else here; only after the program is
  // loaded, as it may lie where nobody else looks in.
  const script = `
    const { openDatabase } = await import(${JSON.stringify(pathToFileURL(join(source, 'store', 'open.ts')).href)});
    openDatabase(':memory:').close();
    if (process.getuid?.() === 0) process.setuid(65534);
    try { openDatabase(${JSON.stringify(path)}); } catch (error) { console.log(error.message); }`;
  const { stdout } = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script], {
    cwd: join(source, '..'),
    encoding: 'utf8',
  });
  expect(stdout).toContain('cannot be written here');
});

test('two processes on one database both record, and nothing is lost', async () => {
  const { path, db } = household();
  db.close();
  const { spawn } = await import('node:child_process');
  const lines = (who: string) =>
    Array.from(
      { length: 25 },
      (_, i) =>
        `${who}: /recipe Pot ${who} ${'abcdefghijklmnopqrstuvwxyz'[i]}${'nopqrstuvwxyzabcdefghijklm'[i]}, 2 servings: 100 g sugar`,
    );
  const play = (who: string) =>
    new Promise<string>((resolve) => {
      const child = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts'], {
        cwd: join(import.meta.dirname, '..', '..'),
        env: { PATH: process.env['PATH'] ?? '', HOUSEHOLD_DB: path, TZ: 'UTC' },
      });
      let said = '';
      child.stdout.on('data', (chunk: Buffer) => (said += chunk.toString()));
      child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
      child.on('close', () => resolve(said));
      child.stdin.end(lines(who).join('\n'));
    });
  const said = await Promise.all([play('Ana'), play('Ben')]);
  // Two terminals are one chat: each answer is shown in one of them.
  expect(said.join('\n').match(/Recorded: /g)).toHaveLength(50);
  const after = new Database(path, { readonly: true });
  expect(after.prepare('SELECT count(*) FROM recipe').pluck().get()).toBe(50);
  expect(after.pragma('integrity_check', { simple: true })).toBe('ok');
  after.close();
});
