import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('every record of a season can be taken back, one by one, to an empty house', () => {
  const house = openSeason();
  let answer = '';
  for (let i = 0; i < 200 && !answer.includes('nothing left'); i++)
    answer = house.say('/undo', i % 2 ? 'Ana' : 'Ben');
  expect(answer).toContain('nothing left to take back');
  for (const table of ['recipe', 'batch', 'tray', 'weighing', 'pouch', 'eater', 'trip', 'slot', 'setting']) {
    expect(house.db.prepare(`SELECT count(*) FROM ${table}`).pluck().get(), table).toBe(0);
  }
  expect(house.faults).toEqual([]);
});

test('a code that was taken back is given again', () => {
  const house = openSeason();
  house.say('/batch rice and beans trays 500 g');
  house.say('/undo');
  expect(house.say('/batch rice and beans trays 510 g')).toContain('B5:');
});

refuses([['/undo the sealing', /could not place "sealing"/]]);

test('what was taken back can be sent again at once; what stands is not doubled', () => {
  const house = openSeason();
  house.say('/batch rice and beans trays 500 g');
  house.say('/undo');
  expect(house.say('/batch rice and beans trays 500 g')).toContain('B5:');
  expect(house.say('/batch rice and beans trays 500 g')).toContain('Nothing was recorded twice');
  expect(house.press(1)).toContain('B6:');
});
