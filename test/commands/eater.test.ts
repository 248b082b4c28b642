import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('an eater is shown back as understood, with what in stock suits them', () => {
  const answer = openSeason().say('/eater Pip child 7 no peanuts, no milk portion 0.6 sodium 1500');
  expect(answer).toContain('Pip (child, 7 years): never peanuts and milk; portion 0.6.');
  expect(answer).toContain('Sodium 1500 mg a day (their own limit)');
  expect(answer).toContain('Blocked: Lentil pot (milk');
  expect(answer).toContain('Unknown, so not served: Barley soup (milk (vegetable stock)).');
});

test.each([
  // NASEM 2019, chronic disease risk reduction intakes (published rows i-cdrr-*).
  ['/eater Pip age 2', 'Sodium 1200 mg'],
  ['/eater Pip age 8', 'Sodium 1500 mg'],
  ['/eater Pip age 13', 'Sodium 1800 mg'],
  ['/eater Pip age 14', 'Sodium 2300 mg'],
  // Dietary Guidelines, estimated calorie needs (published rows i-kcal-*).
  ['/eater Pip boy age 8 active', 'energy 2000 kcal'],
  ['/eater Pip girl age 8 sedentary', 'energy 1400 kcal'],
  ['/eater Pip male age 45 sedentary', 'energy 2200 kcal'],
  ['/eater Pip female age 40 moderately active', 'energy 2000 kcal'],
])('%s: %s', (typed, says) => {
  expect(openSeason().say(typed)).toContain(says);
});

test.each([
  ['/eater Pip vegan', 'Pip (adult): vegan'],
  ['/eater Pip gluten-free, no pork and no shellfish', 'gluten-free; never pork and shellfish'],
  ['/eater Pip allergic to eggs and sesame', 'never eggs and sesame'],
  ['/eater Pip no turnips', 'never turnips (a plain food, found by name)'],
  ['/eater Pip dislikes olives and leeks', 'dislikes olives'],
  ["/eater Pip doesn't like carrots", 'dislikes carrots'],
  ['/eater Pip 2200 kcal', 'energy 2200 kcal a day (their own limit)'],
])('%s', (typed, says) => {
  expect(openSeason().say(typed)).toContain(says);
});

test('a plain food is kept away by name, and what the small print may hide is unknown', () => {
  const answer = openSeason().say('/eater Pip no carrots');
  expect(answer).toContain('Blocked: ');
  expect(answer).toMatch(/Blocked: .*\(carrots\)/);
});

test('what is allowed again is dropped', () => {
  const house = openSeason();
  expect(house.say('/eater Noa may eat milk again')).toContain('never peanuts; portion 0.6');
});

test('a similar name is asked about, never guessed', () => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say('/eater Noah no fish')).toContain('Is "Noah" Noa, or somebody new?');
  expect(house.dump()).toBe(before);
  expect(house.press(2)).toContain('Noah (adult): never fish');
  expect(house.say('/eater Noa')).not.toContain('fish');
});

test('changed notes of a person are in the log', () => {
  const house = openSeason();
  house.say('/eater Noa no fish', 'Ben');
  expect(house.say('/log')).toContain('Ben: changed the eater Noa');
});

test("a child changes their own notes, not another's", () => {
  const house = openSeason();
  house.say('/eater me child 9', 'Kit');
  expect(house.say('/eater me dislikes leeks', 'Kit')).toContain('dislikes leeks');
  expect(house.say('/eater Noa may eat milk again', 'Kit')).toContain('may change their own notes');
});

test('kept pouches that no longer suit are named at once', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  expect(house.say('/eater Ana no lentils, no barley')).toMatch(
    /B\d-\d, kept for Ana at .*: not clear, .*\/pick for Heron Lake again/s,
  );
});

refuses([
  ['/eater no milk', /not for whom/],
  ['/eater Pip no peanust', /no food, allergen or diet called "peanust"/],
  ['/eater Pip portion 9', /from 0.1 to 4/],
  ['/eater Pip portion 0', /from 0.1 to 4/],
  ['/eater Pip sodium 5 mg', /from 100 to 10000/],
  ['/eater Pip age 200', /age of 200/],
  ['/eater Noa may eat fish', /"fish" is not kept from Noa/],
  ['/eater Nobody gone', /no eater called Nobody/],
  ['/eater 12345', /no name that I can keep/],
]);
