// Witness: as in test/core/cautions.test.ts. Here: each at its moment, once.
import { describe, expect, test } from 'vitest';
import { openTestHouse } from './house.ts';

const cooling =
  /Rice: cool it within 2 h of cooking, spread thin, or load it at once; its spores outlive the pot\./;

describe('cooling before loading', () => {
  test('rice: at the first load of each meal', () => {
    const house = openTestHouse();
    house.say('/recipe Pilaf, 4 servings: 300 g long grain rice; 700 g water');
    house.say('/recipe Risotto, 4 servings: 300 g arborio rice; 700 g water');
    expect(house.say('/batch pilaf trays 500 g')).toMatch(cooling);
    house.at(30);
    expect(house.say('/batch pilaf trays 500 g')).not.toMatch(/cool it/i);
    house.at(30);
    expect(house.say('/batch risotto trays 500 g')).toMatch(cooling);
  });
  test('the rest: at the first load of the house', () => {
    const house = openTestHouse();
    house.say('/recipe Stew, 8 servings: 600 g red lentils; 2.4 l water');
    expect(house.say('/batch stew trays 500 g')).toContain(
      'Cool what was cooked within 2 h, or load it at once.',
    );
    house.at(30);
    expect(house.say('/batch stew trays 500 g')).not.toContain('Cool what');
  });
});

describe('raw beside ready-to-eat in one load', () => {
  const both = () => {
    const house = openTestHouse();
    house.say('/recipe Stew, 8 servings: 600 g red lentils; 2.4 l water');
    house.say('/recipe Mince, 4 servings: 500 g ground beef, raw, 90 % lean; 300 g onions');
    house.say('/batch stew trays 500 g');
    return house;
  };
  test('is said of either', () => {
    const house = both();
    house.at(1);
    expect(house.say('/batch mince raw trays 400 g')).toContain(
      'Never in one load with B1: raw food and food that is eaten as it comes out do not share a dryer.',
    );
    house.at(1);
    expect(house.say('/batch stew trays 500 g anew')).toContain('Never in one load with B2');
  });
  test('a load of yesterday is none of it', () => {
    const house = both();
    house.at(13);
    expect(house.say('/batch mince raw trays 400 g')).not.toContain('Never in one load');
  });
});

test('garlic in oil, when the recipe is recorded and never again', () => {
  const house = openTestHouse();
  const recipe = '/recipe Aglio, 4 servings: 400 g spaghetti; 6 cloves garlic; 100 ml olive oil';
  expect(house.say(recipe)).toContain('Garlic left standing in oil at room temperature can grow botulism');
  house.at(1);
  expect(house.say(recipe)).not.toContain('Garlic left');
  expect(house.say('/recipe aglio')).not.toContain('Garlic left');
});

test('honey that does not dry, and the fat by its name', () => {
  const house = openTestHouse();
  expect(house.say('/recipe Bars, 8 servings: 200 g rolled oats; 150 g honey')).toContain(
    'The honey will not dry: it stays sticky and keeps its water.',
  );
  expect(house.say('/recipe Mash, 4 servings: 1 kg potatoes; 150 g butter')).toMatch(
    /\d\d % of the dry food is fat: .* leave the butter out and add it at camp\./,
  );
});

test('absorbers, their kind and heat: the first time that one is sealed in', () => {
  const house = openTestHouse('2027-04-01 08:00');
  house.say('/house pouch 20 x 30 cm');
  house.say('/house absorbers 100 300 500 ml');
  house.say('/recipe Stew, 8 servings: 600 g red lentils; 2.4 l water');
  house.say('/batch stew trays 1400 1400 g');
  house.at(20);
  house.say('/weigh B1 286 286');
  house.at(2);
  house.say('/weigh B1 286 286');
  const first = house.say('/seal 2 x 90 g B1');
  expect(first).toContain('take out what you use within minutes');
  expect(first).toContain('the kind that carries its own moisture');
  expect(first).toContain('not in a car or by a heater');
  house.at(0.1);
  expect(house.say('/seal 1 x 90 g B1')).not.toContain('within minutes');
});
