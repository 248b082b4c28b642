import { expect, test } from 'vitest';
import { rereadLines } from '#house/reread.ts';
import { openTestHouse } from '../house.ts';

const asOnceRead = `UPDATE recipe_line SET reader = 0, named_json = '[]', question = NULL,
  contents_json = '{"contains":[],"check":[],"kinds":["poultry","meat"],"checkKinds":[]}'`;

test('a line recorded by a reader that let words go is read again once, and is no longer clear', () => {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no peanuts');
  house.say('/recipe Chicken rice, 4 servings\n600 g chicken breast in peanut sauce');
  house.db.prepare(asOnceRead).run();
  expect(house.say('/recipe chicken rice')).toContain('Noa: clear');
  const { stores, foods } = house.house;
  expect(rereadLines(stores, foods)).toBe(1);
  expect(rereadLines(stores, foods)).toBe(0);
  const lines = house.db.prepare('SELECT contents_json, named_json, grams FROM recipe_line').get();
  expect(lines).toMatchObject({ grams: 600, named_json: expect.stringContaining('peanut') });
});

test('what was known of a line is never lost by reading it again', () => {
  const house = openTestHouse();
  house.say('/recipe Toast, 2 servings\n4 slices bread\n200 g Gronk peas');
  house.db.prepare(`UPDATE recipe_line SET reader = 0, question = NULL`).run();
  const before = house.db.prepare('SELECT contents_json FROM recipe_line ORDER BY id').pluck().all();
  rereadLines(house.house.stores, house.house.foods);
  const after = house.db.prepare('SELECT contents_json FROM recipe_line ORDER BY id').pluck().all();
  for (const [i, json] of before.entries()) {
    const [old, now] = [JSON.parse(json as string), JSON.parse(after[i] as string)];
    expect([...now.contains, ...now.check]).toEqual(expect.arrayContaining([...old.contains, ...old.check]));
  }
  expect(house.db.prepare('SELECT question FROM recipe_line ORDER BY id').pluck().all()).toEqual([
    null,
    'What is "gronk"?',
  ]);
});

test('a change noted before a column was added can be taken back', () => {
  const house = openTestHouse();
  house.say('/recipe Toast, 2 servings\n4 slices bread');
  house.say('/recipe toast line 1: 2 slices bread');
  house.db
    .prepare(
      `UPDATE row_change SET before_json = json_remove(before_json, '$.reader', '$.named_json') WHERE table_name = 'recipe_line'`,
    )
    .run();
  expect(house.say('/undo')).toContain('Taken back');
  expect(house.say('/recipe toast')).toContain('4 slices bread');
});
