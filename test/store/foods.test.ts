import { mkdtempSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { openFoods } from '#store/foods.ts';

const folder = mkdtempSync(join(tmpdir(), 'foods-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('every food of the release is read in', () => {
  const table = openFoods(':memory:');
  // SR28 documentation: 8,789 foods in the ABBREV file (from memory; the file has as many lines).
  const ndbs = Array.from({ length: 99_999 }, (_, n) => String(n).padStart(5, '0'));
  expect(ndbs.filter((ndb) => table.byNdb(ndb) !== undefined)).toHaveLength(8789);
});

test('missing values stay unknown, names lose double spaces, quotes inside labels stay', () => {
  const table = openFoods(':memory:');
  // SR28 ABBREV, row 09523 as printed: 93.96^24^0.40^0.07^0.19^5.37^^ : fibre is empty.
  expect(table.byNdb('09523')?.per100).toMatchObject({ waterG: 93.96, kcal: 24, ashG: 0.19, fibreG: null });
  // SR28 ABBREV, row 01001: ~1 pat,  (1" sq, 1/3" high)~
  expect(table.byNdb('01001')?.measures[0]).toEqual({ label: '1 pat, (1" sq, 1/3" high)', grams: 5 });
  expect(table.byNdb('1001')).toBeUndefined();
  expect(table.byNdb('99999')).toBeUndefined();
});

test('search finds all the words, then any; odd words are no operators', () => {
  const table = openFoods(':memory:');
  expect(table.search('pink red lentils', 1)[0]?.ndb).toBe('16144'); // SR28: Lentils, pink or red, raw
  expect(table.search('lentils xyzzy', 3).length).toBeGreaterThan(0);
  for (const words of ['', '"', 'NEAR(', 'a OR', '*', '-', 'name:', "';--"])
    expect(table.search(words, 3)).toBeInstanceOf(Array);
});

test('a file is read in once, for its owner alone, and again when damaged', () => {
  const path = join(folder, 'kept', 'foods.db');
  const first = openFoods(path);
  expect(first.readIn).toBe(true);
  first.close();
  expect(statSync(path).mode & 0o777).toBe(0o600);
  const again = openFoods(path);
  expect(again.readIn).toBe(false);
  expect(again.byNdb('02047')?.per100.sodiumMg).toBe(38758); // published value b-comp-02047-na
  again.close();

  const whole = readFileSync(path);
  const damages: Record<string, () => void> = {
    'no database': () => writeFileSync(path, 'not a database, but long enough to look at'.repeat(100)),
    'cut off': () => truncateSync(path, 40_960),
    empty: () => truncateSync(path, 0),
    'of another version': () =>
      writeFileSync(path, Buffer.from(whole.toString('latin1').replace('schema 1', 'schema 0'), 'latin1')),
  };
  for (const [damage, harm] of Object.entries(damages)) {
    writeFileSync(path, whole);
    harm();
    const table = openFoods(path);
    expect([damage, table.readIn]).toEqual([damage, true]);
    expect(table.search('butter salted', 1)).toHaveLength(1);
    table.close();
  }
});

test('a later start reads nothing in again', () => {
  const path = join(folder, 'later.db');
  const started = [1, 2].map(() => {
    const table = openFoods(path);
    table.close();
    return table.readIn;
  });
  expect(started).toEqual([true, false]);
});
