import { describe, expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
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
  ['/batch', /Which meal/],
  ['/batch barley soup', /still need the weights/],
  ['/batch trays 500 g', /still need a meal/],
  ['/batch barley soup trays 0 500 g', /0 is not a weight/],
  ['/batch barley soup trays -500 g', /-500 g is not a weight/],
  ['/batch barley soup trays 80 kg', /80000 g on one tray cannot be/],
  ['/batch barley soup trays 500 ml', /still need the weights/],
  ['/batch goulash trays 500 g', /no recipe called "goulash"/],
  ['/batch barley soup trays 1,500 g', /"1,500 g" can be read two ways/],
  ['/batch barley soup trays 1.500 g', /"1.500 g" can be read two ways/],
  ['/batch barley soup trays 400 g gross', /no more than the empty tray/],
  ['/batch barley soup x0 trays 500 g', /no factor/],
  ['/batch barley soup trays 500 g pot 300 g', /more than|pot gave/],
  ['/batch barley soup trays 500 g tomorrow', /could not place "tomorrow"/],
]);

describe('several loads of one pot', () => {
  // By hand: 300 g rice flour hold 264.3 g of solids (SR28), 1 l of tap water 1 g; 1300 g are in the pot.
  const cooked = () => {
    const house = openTestHouse('2027-04-01 08:00');
    house.say('/recipe Rice mash, 4 servings: 300 g rice flour; 1 l water');
    house.say('/batch rice mash trays 700 g');
    house.at(26);
    return house;
  };

  test('the second is asked about, and as the rest both share the pot', () => {
    const house = cooked();
    expect(house.say('/batch rice mash trays 600 g')).toBe(
      'Is this the rest of the pot that B1 came from, or was Rice mash cooked anew?',
    );
    const answer = house.press(1);
    expect(answer).toContain('B2: Rice mash, 600 g on 1 tray.');
    expect(answer).toContain('46 % of the 1300 g pot, 1.85 servings.');
    const solids = [1, 2].map((no) => Number(/about ([\d.]+) g/.exec(house.say(`/pouch B${no}`))![1]));
    // Together the solids of one pot at 3 % moisture, not of two.
    expect(solids[0]! + solids[1]!).toBeCloseTo(274, -0.5);
    house.say('/undo');
    // Taken back, the first is taken for all of its pot again: 264.3 g of solids and 1 g of the water's minerals.
    expect(house.say('/pouch B1')).toContain('expected about 274 g');
  });

  test('cooked anew, each is a pot of its own', () => {
    const house = cooked();
    house.say('/batch rice mash trays 600 g');
    expect(house.press(2)).toContain('The pot was not weighed, so the trays are taken as all of it.');
  });

  test('a third load adds to the pot; a weighed pot is held against what came out of it', () => {
    const house = cooked();
    house.say('/batch rice mash trays 400 g same pot');
    expect(house.say('/batch rice mash trays 200 g the rest of the pot')).toContain('15 % of the 1300 g pot');
    const weighed = openTestHouse('2027-04-01 08:00');
    weighed.say('/recipe Rice mash, 4 servings: 300 g rice flour; 1 l water');
    weighed.say('/batch rice mash trays 700 g pot 1.25 kg');
    expect(weighed.say('/batch rice mash trays 500 g same pot')).toContain('40 % of the 1250 g pot');
    expect(weighed.say('/batch rice mash trays 500 g same pot')).toContain('One of the weights is wrong');
  });

  test('without a load before there is no rest', () => {
    const house = cooked();
    house.at(72);
    expect(house.say('/batch rice mash trays 600 g same pot')).toContain(
      'No Rice mash was loaded in the three days before',
    );
  });
});

// The plain meaning of each, by hand, on Thursday 8 April 2027, 10:00.
test.each([
  ['loaded soup this morning at 7, 620 615 g', '2027-04-08 07:00'],
  ['loaded soup at 7am this morning, 620 615 g', '2027-04-08 07:00'],
  ['/batch soup trays 620 615 g this morning at 7', '2027-04-08 07:00'],
  ['/batch soup trays 620 615 g at 7 in the morning', '2027-04-08 07:00'],
  ['/batch soup trays 620 615 g last night at 9 pm', '2027-04-07 21:00'],
  ['/batch soup trays 620 615 g yesterday evening at 8', '2027-04-07 20:00'],
  ['loaded soup yesterday evening at 8, trays 620 615 g', '2027-04-07 20:00'],
  ['loaded soup last night at 9, trays 620 615 g', '2027-04-07 21:00'],
  ['loaded soup at 2 last night, trays 620 615 g', '2027-04-08 02:00'],
])('%s: loaded at %s', (typed, at) => {
  const house = openTestHouse('2027-04-08 10:00');
  house.say('/recipe Soup, 4 servings: 300 g carrots; 1 l water');
  expect(house.say(typed)).toContain('B1: Soup');
  expect(
    house.db
      .prepare("SELECT strftime('%Y-%m-%d %H:%M', loaded_at_ms / 1000, 'unixepoch') FROM batch")
      .pluck()
      .get(),
  ).toBe(at);
  // Asked for, it is the hour of loading and not of typing.
  expect(house.say('when was B1 loaded?')).toContain(at.slice(11));
});
