import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('a batch gets the next code, and its figures follow from the recipe', () => {
  const house = openSeason();
  const answer = house.say('/batch rice and beans trays 812 g 798,5 g 1 1/2 lb');
  // 812 + 798.5 + 1.5 x 453.59237 = 2290.9 g.
  expect(answer).toContain('B5: Rice and beans, 2291 g on 3 trays.');
});

test('gross weights lose the stored tray', () => {
  const house = openSeason();
  expect(house.say('/batch barley soup trays 1012 1012 g gross')).toContain('1000 g on 2 trays');
});

test('the part of the pot that is on the trays is in the sums', () => {
  const house = openSeason();
  const whole = house.say('/batch barley soup trays 800 g pot 1600 g');
  expect(whole).toContain('50 % of the 1600 g pot, 3 servings');
});

test('a load over the limit is told in loads', () => {
  const house = openSeason();
  expect(house.say('/batch lentil pot x2 trays 1500 1500 1500 1500 g')).toContain(
    "Over your dryer's limit of 4000 g by 2000 g: dry it in 2 loads.",
  );
});

test('depth on the tray is weight over area', () => {
  const house = openSeason();
  // 900 g on 20 x 45 cm: 900 / 900 cm² = 1 cm, with a density of 1.
  expect(house.say('/batch barley soup trays 900 g')).toContain('about 10 mm');
});

test('raw food is marked', () => {
  const house = openSeason();
  expect(house.say('/batch barley soup trays 900 g raw')).toContain('RAW');
});

refuses([
  ['/batch', /still need a meal by its name and the weights/],
  ['/batch barley soup', /still need the weights/],
  ['/batch trays 500 g', /still need a meal/],
  ['/batch barley soup trays 0 500 g', /0 is not a weight/],
  ['/batch barley soup trays -500 g', /-500 g is not a weight/],
  ['/batch barley soup trays 80 kg', /80000 g on one tray cannot be/],
  ['/batch barley soup trays 500 ml', /still need the weights/],
  ['/batch goulash trays 500 g', /could not place "goulash"/],
  ['/batch barley soup trays 1,500 g', /"1,500 g" can be read two ways/],
  ['/batch barley soup trays 1.500 g', /"1.500 g" can be read two ways/],
  ['/batch barley soup trays 400 g gross', /no more than the empty tray/],
  ['/batch barley soup x0 trays 500 g', /no factor/],
  ['/batch barley soup trays 500 g pot 300 g', /more than|pot gave/],
  ['/batch barley soup trays 500 g tomorrow', /could not place "tomorrow"/],
]);
