import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';

const soup = '/recipe Barley soup, 6 servings: 300 g pearl barley; 400 g carrots; 1 l water; 6 g salt';

test('undo goes back change by change until nothing is left, and then says so', () => {
  const house = openTestHouse();
  house.say(soup);
  house.say('/house altitude 340 m');
  house.say('/batch barley soup trays 812 798 g');
  expect(house.say('/undo')).toContain('Taken back: loaded B1');
  expect(house.say('/undo')).toContain('Taken back: set altitude 340 m');
  expect(house.say('/undo')).toContain('Taken back: recorded the recipe Barley soup');
  expect(house.say('/undo')).toContain('nothing left to take back');
  expect(house.db.prepare('SELECT count(*) FROM batch').pluck().get()).toBe(0);
  expect(house.db.prepare('SELECT count(*) FROM recipe_line').pluck().get()).toBe(0);
});

test('a value that was changed comes back to the last digit', () => {
  const house = openTestHouse();
  house.say('/house altitude 1234.5678901234567 m');
  const before = house.db.prepare('SELECT value_json FROM setting').pluck().get();
  house.say('/house altitude 10 m');
  house.say('/undo');
  expect(house.db.prepare('SELECT value_json FROM setting').pluck().get()).toBe(before);
});

test('weights survive being changed and taken back bit for bit', () => {
  const house = openTestHouse();
  house.say(soup);
  house.say('/recipe barley soup pot 1.7000000000000004 kg');
  const before = house.db.prepare('SELECT pot_g FROM recipe').pluck().get();
  house.say('/recipe barley soup pot 1.65 kg');
  house.say('/undo');
  expect(house.db.prepare('SELECT pot_g FROM recipe').pluck().get()).toBe(before);
});

test('a change that a later one from another chat stands on goes only with it, after a tap', () => {
  const house = openTestHouse();
  house.say(soup);
  house.say('/batch barley soup trays 812 798 g');
  house.db
    .prepare(
      `INSERT INTO chat (door, chat_key, household, is_private, title, admitted_at_ms) SELECT door, 'aside', household, 1, 'aside', 0 FROM chat`,
    )
    .run();
  house.at(3);
  house.say('/weigh B1 412 398', 'Ben', { chatKey: 'aside' });
  const before = house.dump();
  const asked = house.say('/undo');
  expect(asked).toContain('Take back these 2');
  expect(asked).toContain('Ben: weighed B1');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('Taken back: weighed B1: 810 g and loaded B1');
});

test("a row that another chat changed later is not overwritten by undo: the later one's words stay", () => {
  const house = openTestHouse();
  house.say('/house altitude 10 m');
  house.say('/house altitude 340 m');
  house.db
    .prepare(
      `INSERT INTO chat (door, chat_key, household, is_private, title, admitted_at_ms) SELECT door, 'aside', household, 1, 'aside', 0 FROM chat`,
    )
    .run();
  house.say('/house altitude 500 m', 'Ben', { chatKey: 'aside' });
  const before = house.dump();
  expect(house.say('/undo')).toContain('Ben: set altitude 500 m');
  expect(house.dump()).toBe(before);
  expect(house.say('/house')).toContain('altitude 500 m');
  house.say('/undo', 'Ben', { chatKey: 'aside' });
  expect(house.say('/undo')).toContain('Taken back: set altitude 340 m');
  expect(house.say('/house')).toContain('altitude 10 m');
});

test('the log names who did what and marks what was taken back', () => {
  const house = openTestHouse();
  house.say('/house altitude 340 m', 'Ana');
  expect(house.say('/undo', 'Ben')).toContain('Ana: set altitude 340 m');
  house.press(1, 'Ben');
  expect(house.say('/log')).toBe('Sun 3 May 18:00 Ana: set altitude 340 m (taken back by Ben)');
});
