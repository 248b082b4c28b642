// Witness: fruit and crisps are eaten as they are (common practice, no source); what needs no water boils none and burns no gas.
import { describe, expect, test } from 'vitest';
import { openSeason } from '../season.ts';

/** B5: 148 g of dried apple rings, steady and fresh. */
function withRings() {
  const house = openSeason();
  house.say('/recipe Apple rings, 6 servings: 2 kg apples; 1 tsp cinnamon');
  house.say('/batch apple rings trays 500 500 g pot 2 kg');
  house.at(20);
  house.say('/weigh B5 74 74');
  house.at(3);
  house.say('/weigh B5 74 74');
  return house;
}

describe('what is all fruit is taken as eaten dry, and said to be', () => {
  test.each([
    ['/recipe Berries, 4 servings: 500 g strawberries; 300 g blueberries', true],
    ['/recipe Peaches, 4 servings: 1 kg peaches; 30 g sugar', true],
    ['/recipe Mango, 4 servings: 1 kg mango', true],
    ['/recipe Muesli, 4 servings: 500 g apples; 300 g rolled oats', false],
    ['/recipe Jam, 4 servings: 500 g strawberries; 400 g sugar', false],
    ['/recipe Guess, 4 servings: 500 g apples; 20 g xylomagic', false],
    ['/recipe Flurb, 4 servings: 500 g flurb apples', false],
    ['/recipe Olives, 4 servings: 500 g olives', false],
    ['/recipe Soup, 4 servings: 500 g carrots', false],
  ])('%s', (typed, isDry) => {
    const answer = openSeason().say(typed);
    expect(answer).toContain('Recorded');
    expect(answer.includes('Taken so because it is all fruit')).toBe(isDry);
  });
});

test.each([
  ['/recipe Beet crisps, 6 servings, eaten dry: 1 kg beetroot; 5 g salt', 'Eaten dry: no water'],
  ['/recipe barley soup eaten dry', 'Barley soup is eaten dry'],
  ['we eat the barley soup dry', 'Barley soup is eaten dry'],
  ['the barley soup is eaten as it is', 'Barley soup is eaten dry'],
  ['/recipe barley soup soaked', 'Barley soup is soaked'],
  ['/recipe barley soup is eaten with water', 'Barley soup is soaked'],
])('%s', (typed, says) => {
  expect(openSeason().say(typed)).toContain(says);
});

test.each(['the lentil pot is not dry', 'is the barley soup eaten dry?', 'we might eat the barley soup dry'])(
  'records nothing: %s',
  (typed) => {
    const house = openSeason();
    const before = house.dump();
    house.say(typed);
    expect(house.dump()).toBe(before);
  },
);

test('no water, no boiling, no fuel: at the seal, on card, label, plan and paper', async () => {
  const house = withRings();
  const sealed = house.say('/seal 3 x 40 g B5');
  expect(sealed).toContain('Write on each: code, Apple rings, 2027-04-04, eat dry.');
  expect(sealed).toContain('Eaten dry: no water, nothing to boil. Taken so because it is all fruit');
  expect(sealed).not.toContain('Water:');
  expect(house.say('/pouch B5-1')).not.toMatch(/Water:|boils/);
  const water = house.say('/water B5-1');
  expect(water).toContain('B5-1 (40 g Apple rings): eaten dry: no water');
  expect(water).not.toMatch(/ml|burns/);
  house.say('/discard B4-1 to B4-6');
  house.say('/discard B1-1 to B1-2');
  const picks = await house.ask('/pick');
  expect(picks).toContain('Nothing to boil.');
  expect(picks).toMatch(/Dry \d+ g; all of it is eaten dry, nothing to boil\./);
  expect(picks).not.toContain('Gas:');
});

test('beside food that is soaked only that has water, and in one pouch with it fruit soaks along', () => {
  const house = withRings();
  house.say('/weigh B4 190 g');
  house.say('/seal 1 x 40 g B5');
  const both = house.say('/water B5-1 B4-1');
  expect(both).toContain('B4-1 (95 g Lentil pot): start with 240 ml of boiling water, up to 280 ml');
  expect(both).not.toMatch(/Together|B5 gave up/);
  const mixed = house.say('/seal 1 x 20 g B5 + 10 g B4');
  // 20 x 852 / 148 + 10 x 2240 / 760 = 115.1 + 29.5 ml.
  expect(mixed).toContain('exactly 144.6 ml of water');
  expect(mixed).toContain('Apple rings: eaten dry alone, soaked here with the rest.');
});

test('said otherwise, it holds for what is in stock at once; taken back, too; a new wording keeps it', () => {
  const house = withRings();
  house.say('/seal 3 x 40 g B5');
  house.say('/recipe apple rings soaked');
  // 40 x 852 / 148 ml.
  expect(house.say('/water B5-1')).toContain('up to 230 ml');
  house.say('/recipe Apple rings, 6 servings: 2 kg apples; 2 tsp cinnamon');
  expect(house.say('/water B5-1')).toContain('up to 230 ml');
  house.say('/undo');
  house.say('/undo');
  expect(house.say('/water B5-1')).toContain('eaten dry');
});

test('a rating of water is refused where none was poured', () => {
  const house = withRings();
  house.say('/seal 3 x 40 g B5');
  const before = house.dump();
  expect(house.say('/rate B5-1 40 ml more')).toContain('Apple rings is eaten dry here');
  expect(house.dump()).toBe(before);
  expect(house.say('/rate B5-1 again')).toContain('Again: 1 for');
});
