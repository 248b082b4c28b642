import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('the next figure learns, says so, and weighs later ratings more', () => {
  const house = openSeason();
  // 280 ml by weight; 28 more are 10 %.
  expect(house.say('/rate B4-1 28 ml more')).toContain(
    '310 ml (1¼ cups). Learnt from 1 rated meal: 10 % more than by weight.',
  );
  house.at(24);
  // Poured 308, right: 252 = 0.9 of 280. Each counts twice the one before: (1.1 + 2 x 0.9) / 3 = 0.967 (chosen weights).
  expect(house.say('/rate B4-2 56 ml less')).toContain('Learnt from 2 rated meals: 3 % less than by weight.');
  expect(house.say('/water B4-3')).toContain('Exactly 270.7 ml.');
});

test('it stays within its bounds', () => {
  const house = openSeason();
  expect(house.say('/rate B4-1 300 ml more')).toContain('30 % more than by weight, which is as far as I go');
});

test('portions learn from "too much" and "hungry"', () => {
  const house = openSeason();
  expect(house.say('/rate B4-1 too much for Noa', 'Ben')).toContain("Noa's portion is 0.57 now");
  expect(house.say('/rate B4-2 still hungry', 'Ben')).toContain("Ben's portion is 1.05 now");
});

test('salt and again are counted', () => {
  const house = openSeason();
  house.say('/rate B4-1 too salty, not again');
  expect(house.say('/rate B4-2 too salty, again')).toMatch(
    /2 of 2 ratings call it too salty[\s\S]*Again: 1 for, 1 against/,
  );
});

test('just right', () => {
  expect(openSeason().say('/rate B4-1 water just right')).toContain('as by weight');
});

test.each([
  ['/rate B4-1 too dry, 20 ml more', 300],
  ['/rate B4-1 20 ml too dry', 300],
  ['/rate B4-1 watery, 20 ml less', 260],
  ['/rate B4-1 20 ml too wet', 260],
  ['/rate B4-1 20 ml wet', 260],
])('%s: next time %s ml', (typed, ml) => {
  expect(openSeason().say(typed)).toContain(`a pouch of 95 g gets ${ml} ml`);
});

refuses([
  ['/rate B4-1 too wet', /I read "wet", but not how much water it lacked or had too much/],
  ['/rate B4-1 dry, 20 ml less', /could not place "dry"/],
  ['/rate B4-1 20 ml wetter', /not whether more or less/],
  ['/rate', /still need a pouch code/],
  ['/rate B4-1', /not how it was/],
  ['/rate B4-1 40 ml', /not whether more or less/],
  ['/rate B4-1 900 ml less', /leaves none/],
  ['/rate B9-1 too salty', /no batch B9/],
  ['/rate B4-1 B4-2 too salty', /One pouch at a time/],
  ['/rate B4-1 purple', /could not place "purple"|not how it was/],
]);
