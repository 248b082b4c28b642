import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('every record of a season can be taken back, one by one, to an empty house', () => {
  const house = openSeason();
  let answer = '';
  for (let i = 0; i < 200 && !answer.includes('nothing left'); i++) {
    const who = i % 2 ? 'Ana' : 'Ben';
    answer = house.say('/undo', who);
    // What must never be served to somebody is given up by a tap alone.
    if (answer.includes('Nothing is changed yet')) answer = house.press(1, who);
  }
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

test('undoing what is kept from somebody takes a tap of a grown-up', () => {
  const house = openSeason();
  house.say('/eater me child 9', 'Kit');
  house.say('/eater Noa no fish');
  const before = house.dump();
  expect(house.say('/undo', 'Kit')).toContain('Only a grown-up of the household');
  expect(house.say('/undo sure')).toContain('fish must never be served to Noa. Nothing is changed yet');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toBe('Taken back: changed the eater Noa.');
  expect(house.say('/eater Noa')).not.toContain('fish');
});
