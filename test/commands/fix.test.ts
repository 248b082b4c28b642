// Witness: that the weight typed is the weight recorded, common practice, no source.
import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason } from '../season.ts';

function drying() {
  const house = openTestHouse('2027-03-01 10:00');
  house.say('/recipe Lentil pot, 6 servings: 500 g red lentils; 500 g carrots; 1 l water');
  house.say('/batch lentil pot trays 500 510 490 g');
  house.at('2027-03-02 10:00');
  house.say('/weigh B1 150 203 148 g sure');
  return house;
}

test('a weight typed wrong is put right in place, and undo brings it back', () => {
  const house = drying();
  const before = house.dump();
  expect(house.say('tray 2 was 153 not 203')).toContain(
    'B1, tray 2, at Tue 2 Mar 10:00: was 203 g, now 153 g.',
  );
  expect(house.say('/pouch B1')).toContain('451 g dry');
  house.say('/undo');
  expect(house.say('/pouch B1')).toContain('501 g dry');
  expect(house.dump()).not.toBe(before);
});

test('without the wrong figure the last weight of the tray is meant; the loaded one by its own', () => {
  const house = drying();
  expect(house.say('/fix B1 tray 3 146 g')).toContain('was 148 g, now 146 g');
  expect(house.say('/fix tray 1 505 g not 500 g')).toContain('B1, tray 1, as loaded: was 500 g, now 505 g.');
});

test.each([
  ['/fix B1 tray 4 146 g', /I find no tray 4 of B1\./],
  ['/fix tray 2 146 g not 999 g', /I find no tray 2 with 999 g in the latest batches\./],
  ['/fix B1 146 g', /not of which tray/],
  ['tray 2 was 153 not 203?', /./],
])('%s changes nothing', (typed, says) => {
  const house = drying();
  const before = house.dump();
  expect(house.say(typed)).toMatch(says);
  expect(house.dump()).toBe(before);
});

test.each([
  'tray 3 weighs 502 g when empty',
  'the empty tray 3 weighs 502 g',
  'tray 3 weighs 185 g',
  'tray 3 was 8 oz',
  'tray 3 was 6.5 oz not 190 g',
])('"%s" puts no record right', (typed) => {
  const house = openSeason();
  const before = house.dump();
  const answer = house.say(typed);
  expect(house.dump()).toBe(before);
  expect(answer).not.toMatch(/was 190 g, now|put tray 3 of B4 right/);
});

test.each(['tray 3 is 185 not 190', 'oops, B4 tray 3 was 185 g not 190 g', 'B4 tray 3 should be 185 g'])(
  '"%s" does',
  (typed) => expect(openSeason().say(typed)).toContain('was 190 g, now 185 g.'),
);
