import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, expect, test } from 'vitest';
import { migrate, migrations, openDatabase } from '#store/open.ts';

const folder = mkdtempSync(join(tmpdir(), 'household-'));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** SHA-256 of every migration as it landed. Households' files were made by these: a new one gets a line, an old line stays. */
const landed: Readonly<Record<string, string>> = {
  '0001-start.sql': '9ab8ddba6e1627e115f5d4585f47889d16f6d319acc8fac7511d444d7e599b1f',
  '0002-people-and-trips.sql': '1ccca090cf2f20240ef145a63a2d9b4a6a3820d60c689c5815066344d55e06b2',
  '0003-reminders.sql': '3b37637607f1a657fa72f52159fac0ab2f0205d9402492c99bc443f7138df37a',
  '0004-witnesses.sql': 'ae9b06d9b33e9ccd0d249abb7cb477e7d67da09429253ae5df1e69d0f66209e8',
  '0005-named-foods.sql': 'a10ed36b555d7c3b572900516f92a415c264b46eb9a1bb53f18f87fcedd99492',
  '0006-told-apart.sql': '435932e1310530fb95e0a9d92c2e0147bacd93c2a26e23bcf574646653a555ac',
  '0007-packets.sql': 'b1d76137b7702b95e1ba10cdcfe022d36c09d0ada87dd01a3449b8ac6d87585b',
  '0008-findings.sql': '5982889d48ede27e25e32de9983e37a965741d9a454979dd103c77158293f051',
  '0009-own-foods.sql': '7c1a2517a5436c1a04309bb3f54dbb382a9b22173013666614407acefd346468',
  '0010-read-again.sql': 'a08ab53c20e7109e2c22647afe894350f7ac6a52e057f6f3e71da45ff04ea09f',
  '0011-mixed-pouches.sql': '95e00555eed86796311319215a1cadc17a46afeb0944166abfb6ec66d6fcb20b',
  '0012-eaten-dry.sql': '346707ce259a7c998774e2a773a6e8f5d23d4d333663a6f255c7348fa767604c',
  '0013-dryer-events.sql': 'f2543a38d1d028817011a0f65ea1133794b3977d7d8d194bfa905ccb97e3ca48',
  '0014-occasions.sql': '1aa51e60cc130ac5615259778cae62fed712ebb89c0b809c3eafc4a8f84834ae',
  '0015-keeping.sql': 'f8fbc681d0b36d731a6965f55c1ea7a869d0247c37adfc68e142c9aad755e1a3',
  '0016-soak-ratings.sql': '718b1e071b041f6c1bc3a88b24c6b981bc95dc6478be6e156b33f34412313792',
  '0017-absorbers.sql': '5bc2402e24c29614b71e643f4e9827a28ad9a7461b93eab6cc49f2f0c3f57de8',
  '0018-slot-rules.sql': 'd5a3ef92697ee62f8975e57020f716560f24b77d4705227904e6847fe236c525',
  '0019-pieces.sql': 'a217a9ace2c27db35b3879149ee9d8327c09b3a161172b904bc59cac3d4663e5',
  '0020-live.sql': '1af39cef2fe2b384d4842a012f24935ce278835af5d1124c6625cb6fec7a320b',
  '0021-camp-and-sections.sql': '3d7cb67fc24ede4cf2cb0ef26ebde9f68286cc08257daaa957212066f73432d8',
  '0022-prices.sql': '11ec4d66dc79c0a394b72ee11813a12e688151511f8eb041775f5ab51a795b3e',
  '0023-quiet.sql': '81dafe9a9187882603aec602d5897fae1829e362c6504190c4b3cee1752834e4',
  '0024-shelf-goods.sql': '26a2812ef178aef0aebe122296085eaccf71853dcb731540e5f0d7c43c4bffdb',
  '0025-aliases.sql': '90f9e447ddefea16199a71d9d1b9b7ae8569934a90a9bfbef79e61ac5b0be146',
  '0026-shopping.sql': '98326a0371531dc98d5fe7ae7a0b637727f7a9c973e587d9bad150d34a653690',
  '0027-said.sql': 'e457a0e2230b33de44495699f0e33b2b2add0743ae41021bc394c1f3e3dfbc73',
  '0028-slot-marks.sql': '1c7e5311124b8f19e3000af36599412b7311b9e3075f60ff7600c33f08d5559b',
};
const migrationsFolder = new URL('../../src/store/migrations/', import.meta.url);
const migrationFiles = readdirSync(migrationsFolder).sort();
const checksumOf = (name: string) =>
  createHash('sha256')
    .update(readFileSync(new URL(name, migrationsFolder)))
    .digest('hex');

test('the migrations are numbered from 1, each number once, without a gap', () => {
  const numbers = migrationFiles.map((name) => name.slice(0, 5));
  const due = migrationFiles.map((_, i) => `${String(i + 1).padStart(4, '0')}-`);
  expect(numbers, 'two have one number or one is missing: give the newer one the next free number').toEqual(
    due,
  );
  expect(migrations().map(({ version }) => version)).toEqual(due.map((_, i) => i + 1));
});

test.each(Object.entries(landed))('%s is as it landed', (name, checksum) => {
  expect(migrationFiles, `${name} ran in households' files and is gone: bring it back`).toContain(name);
  expect(
    checksumOf(name),
    `${name} ran in households' files and never changes: take the edit back and write a new migration`,
  ).toBe(checksum);
});

test('every migration is held by its checksum', () => {
  const loose = migrationFiles.filter((name) => !(name in landed));
  expect(
    loose.map((name) => `'${name}': '${checksumOf(name)}',`),
    'new: when it lands, put these lines into "landed" in this file',
  ).toEqual([]);
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
