// Witness: CSV as in RFC 4180; that a cell which starts with = + - @ may be carried out: OWASP, CSV Injection. That an
// export read back answers alike is this project's promise, no source.
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import type { HouseholdExport } from '#store/export.ts';
import { importHousehold } from '#store/import.ts';
import { recordTables } from '#store/journal.ts';
import { openTestHouse, type TestHouse } from '../house.ts';
import { openSeason } from '../season.ts';

const folder = mkdtempSync(join(tmpdir(), 'household-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let count = 0;

function filesOf(house: TestHouse): Record<string, string> {
  house.say('/export');
  const files = house.last[0]!.reply.files!;
  return Object.fromEntries(
    files.map(({ name, base64 }) => [name, Buffer.from(base64, 'base64').toString()]),
  );
}
const parsed = (text: string) => JSON.parse(text) as HouseholdExport;

/** Writes an export to a file and reads it into a new database. @returns the database's path */
function brought(json: string): string {
  count += 1;
  const [file, database] = [join(folder, `${count}.json`), join(folder, `${count}.db`)];
  writeFileSync(file, json);
  importHousehold(file, database);
  return database;
}

test('read back into an empty database, every request answers the same', async () => {
  const before = openSeason();
  await before.ask('/pick');
  await before.ask('/pick keep');
  before.say('/rate B4-2 40 ml more, too salty', 'Ben');
  before.say('/use B1-1');
  before.say('/want soup saturday dinner');
  before.say('/weigh B4 190 g');
  before.say('/seal 2 x 40 g B4 + 15 g milk powder pressed 200 ml');
  before.say('/house absorbers 20 x 300 ml opened today');
  before.say('/house storage 25 C');
  before.say('/recipe barley soup eaten dry');
  const database = brought(filesOf(before)['household.json']!);
  expect(statSync(database).mode & 0o777).toBe(0o600);
  const after = openTestHouse(before.nowText(), {}, readFileSync(database));
  const commands = await readCommands();
  const examples = commands
    .filter(({ name }) => !['help', 'export', 'status', 'chart', 'label'].includes(name))
    .flatMap((c) => c.examples);
  for (const text of [
    '/log 40 entries',
    ...examples,
    '/pouch M5-1',
    '/water M5-2',
    'what absorber for 60 g?',
    '/stock',
    '/log',
    ...Array.from({ length: 12 }, () => '/undo'),
    '/stock',
  ]) {
    expect(await after.ask(text), text).toBe(await before.ask(text));
    expect(
      after.last.map(({ reply }) => reply.buttons),
      text,
    ).toEqual(before.last.map(({ reply }) => reply.buttons));
  }
  expect(after.faults).toEqual([]);
});

test('an export of an import is the same export', () => {
  const house = openSeason();
  const first = parsed(filesOf(house)['household.json']!);
  const again = openTestHouse(house.nowText(), {}, readFileSync(brought(JSON.stringify(first))));
  const second = parsed(filesOf(again)['household.json']!);
  const { chat, ...rest } = second.tables;
  expect({ ...second, tables: rest }).toEqual({ ...first, tables: { ...first.tables, chat: undefined } });
  // The terminal opens what was read in.
  expect(chat!.map((row) => row['chat_key'])).toEqual(['terminal', 'test']);
});

test('it holds the own household and no other, and every table of records', () => {
  const house = openTestHouse();
  const other = { chatKey: 'other', chatTitle: 'Nextdoor' };
  house.say('/recipe Pot, 4 servings: 300 g sugar; 700 g water');
  house.say('/recipe Secret stew, 2 servings: 100 g milk', 'Zoe', other);
  house.say('/eater Zoe no peanuts', 'Zoe', other);
  const files = Object.values(filesOf(house)).join('\n');
  expect(files).toContain('Pot');
  expect(files).not.toMatch(/Secret|Zoe|Nextdoor|peanut/);
  const { tables } = parsed(filesOf(house)['household.json']!);
  for (const table of recordTables) expect(tables).toHaveProperty(table);
  for (const rows of Object.values(tables))
    for (const row of rows) expect(row).not.toHaveProperty('household');
});

test('the lists open in a spreadsheet, and nothing in them is carried out there', () => {
  const house = openSeason();
  house.say('/recipe "=HYPERLINK(x)" "quoted", 2 servings: 100 g sugar');
  house.say('/discard B1-2 =cmd|calc');
  const files = filesOf(house);
  expect(files['pouches.csv']!.startsWith('\uFEFF"code","meal","dry_g"')).toBe(true);
  expect(files['pouches.csv']).toMatch(/\r\n"B4-2","Lentil pot",95,"2027-04-\d\dT\d\d:00:00Z",1,/);
  expect(files['pouches.csv']).toContain('"\'=cmd|calc"');
  house.say('/weigh B4 190 g');
  house.say('/seal 1 x 40 g B4 + 15 g milk powder');
  expect(filesOf(house)['pouches.csv']).toMatch(/\r\n"M5-1","Lentil pot \+ nonfat dry milk",55,/);
  expect(files['batches.csv']).toContain('"B1","Barley soup","loaded",1,"2027-04-01T08:00:00Z",500\r\n');
  expect(files['recipes.csv']).toMatch(/"Barley soup",6,,1,"300 g pearl barley"/);
  for (const text of Object.values(files)) expect(text).not.toMatch(/(^|,)"?[=@]/m);
});

test('sent, the files do not stay in the database', () => {
  const house = openSeason();
  house.say('/export');
  const kept = house.db
    .prepare('SELECT reply_json FROM outbox ORDER BY id DESC LIMIT 1')
    .pluck()
    .get() as string;
  expect(kept).toContain('as files');
  expect(kept).not.toContain('base64');
});

const small = () => {
  const house = openTestHouse();
  house.say('/recipe Pot, 4 servings: 300 g sugar; 700 g water');
  house.say('/house altitude 340 m');
  return parsed(filesOf(house)['household.json']!);
};
const changed = (tables: object): string =>
  JSON.stringify({ ...small(), tables: { ...small().tables, ...tables } });

test.each([
  ['no JSON', () => 'x', /is no JSON/],
  ['another file', () => '{"format":"songs"}', /is no export of a household/],
  ['a newer form', () => JSON.stringify({ ...small(), form: 999 }), /newer version/],
  ['an unknown table', () => changed({ 'sqlite_master; --': [] }), /a table that no household has/],
  [
    'an unknown column',
    () => changed({ setting: [{ id: 1, 'name) --': 'x' }] }),
    /a column that setting has not/,
  ],
  ['a row without its parent', () => changed({ recipe: [] }), /do not fit together/],
  [
    'a value that cannot be',
    () => changed({ recipe: [{ ...small().tables['recipe']![0], servings: -4 }] }),
    /do not fit together/,
  ],
  [
    'a change of another household',
    () => changed({ row_change: [{ ...small().tables['row_change']![0], after_json: '{"household":2}' }] }),
    /a change of \w+ that cannot be/,
  ],
  [
    'a change of a table that is no record',
    () => changed({ row_change: [{ ...small().tables['row_change']![0], table_name: 'member' }] }),
    /a change of a table/,
  ],
])('a file with %s is refused, and nothing is written', (_, json, says) => {
  count += 1;
  const [file, database] = [join(folder, `${count}.json`), join(folder, `${count}.db`)];
  writeFileSync(file, json());
  expect(() => importHousehold(file, database)).toThrow(says);
  expect(() => statSync(database)).toThrow(/ENOENT/);
});

test('nothing is read in over a household that is there', () => {
  const json = JSON.stringify(small());
  const database = brought(json);
  const before = readFileSync(database);
  expect(() => importHousehold(join(folder, `${count}.json`), database)).toThrow(/holds a household already/);
  expect(readFileSync(database).equals(before)).toBe(true);
});
