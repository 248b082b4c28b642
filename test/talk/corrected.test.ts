// Witness: the plain meaning of each sentence, by hand; that nothing is changed before the tap is this project's promise.
import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';

test.each([
  ['/use B4-1', 'no, I meant B4-2', 'used B4-2'],
  ['ate B4-1', 'B4-2 not B4-1', 'used B4-2'],
  ['ate B4-1', 'not B4-1, B4-2', 'used B4-2'],
  ['ate B4-1 and B4-2', 'sorry, B4-3 not B4-2', 'used B4-1 and B4-3'],
  ['/house altitude 400 m', 'oops, 450 m', 'set altitude 450 m'],
  ['/house altitude 400 m', '450 not 400', 'set altitude 450 m'],
  ['/weigh B2 400 g', 'wait, it was 410', 'weighed B2: 410 g'],
  ['threw out B4-1, mice', 'i meant B4-2', 'discarded B4-2'],
  ['Ben wants lentil pot on saturday dinner', 'not Ben, Rosa', 'for Rosa'],
])('%s, then "%s"', (first, then, instead) => {
  const house = openSeason();
  house.say(first);
  const before = house.dump();
  const answer = house.say(then);
  expect(answer).toContain(`Nothing is changed yet.\nInstead: `);
  expect(answer).toContain(instead);
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('Taken back: ');
  expect(house.faults).toEqual([]);
});

test.each([
  ['ate B4-1', 'no'],
  ['ate B4-1', 'sorry, my phone died'],
  ['ate B4-1', 'it was raining'],
  ['how heavy is B4-1', 'no, B4-2'],
])('%s, then "%s" turns nothing recorded round', (first, then) => {
  const house = openSeason();
  house.say(first);
  const before = house.dump();
  expect(house.say(then)).not.toContain('Instead: ');
  expect(house.dump()).toBe(before);
});

test("what somebody else recorded is not turned round by one's own slip", () => {
  const house = openSeason();
  house.say('ate B4-1', 'Ben');
  const before = house.dump();
  expect(house.say('no, B4-2', 'Ana')).not.toContain('Instead: ');
  expect(house.dump()).toBe(before);
});

test('settings told in one message are one change', () => {
  const house = openSeason();
  const answer = house.say(
    'we live at 520 m, the dryer holds 5 trays 25 x 50, max 6 kg, bags are 18 x 28 cm',
  );
  expect(answer).toContain('altitude 520 m');
  expect(answer).toContain('5 trays');
  expect(answer).toContain('18 x 28 cm');
  expect(house.say('/undo')).toContain('Taken back: set altitude 520 m; set dryer');
  expect(house.say('/house')).not.toContain('altitude 520 m');
});

test('several requests in one message are carried out, or none of them', () => {
  const house = openSeason();
  expect(house.say('/use B4-1\n/discard B4-2 mice')).toContain('Discarded: B4-2');
  const before = house.dump();
  expect(house.say('/use B4-3\n/use B9-1')).toContain('Nothing of this message is recorded.');
  expect(house.dump()).toBe(before);
});

test('a verb that is denied puts nothing right of what was recorded before', () => {
  const house = openSeason();
  house.say('/house pouch 20 x 30 cm foil');
  expect(house.say('Timo is 7 and must not have nuts')).toContain('Timo (child, 7 years): never nuts');
});
