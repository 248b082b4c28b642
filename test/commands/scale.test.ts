import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('to servings: every line is multiplied', () => {
  const answer = openSeason().say('/scale barley soup to 9 servings');
  expect(answer).toContain('Barley soup times 1.5: 9 servings, 2226 g wet, 1 dryer load.');
  expect(answer).toContain('450 g barley');
  // 1 tsp x 1.5, exactly a half of a tablespoon.
  expect(answer).toMatch(/9 g salt: (1½ tsp|½ tbsp)/);
});

test('to pouches: by the expected dry weight', () => {
  const house = openSeason();
  const dry = Number(/about (\d+) g dry\./.exec(house.say('/recipe rice and beans'))![1]);
  const answer = house.say('/scale rice and beans to 10 pouches of 100 g');
  const times = Number(/times ([\d.]+):/.exec(answer)![1]);
  expect(times).toBeCloseTo(1000 / dry, 1);
});

test('to trays: each takes its share of the limit', () => {
  const answer = openSeason().say('/scale lentil pot to 4 trays');
  expect(answer).toMatch(/Wet (3999|4000|4001) g/);
  expect(answer).toContain('A dryer load is at most 4000 g');
});

test('with an ingredient at hand', () => {
  expect(openSeason().say('/scale lentil pot with 1.2 kg red lentils')).toContain(
    'Lentil pot times 2: 16 servings',
  );
});

test.each(['us', '240 ml', '250 ml', '284 ml'])('a cup of %s leaves spoons alone', (cup) => {
  const house = openSeason();
  house.say(`/house cup ${cup}`);
  house.say('/recipe Cocoa porridge, 2 servings: 100 g rolled oats; 2 tsp sugar; 1 1/4 cups milk');
  const answer = house.say('/scale cocoa porridge x2');
  expect(answer).toContain(' sugar: 4 tsp');
  expect(answer).toContain(' milk: 2½ cups');
  expect(answer).toContain('Rounding to those measures changes next to nothing.');
});

test('a sodium target gives the salt that may still go in', () => {
  const house = openSeason();
  const answer = house.say('/scale rice and beans sodium 500 mg');
  const now = Number(/Sodium now (\d+) mg/.exec(answer)![1]);
  const salt = Number(/: ([\d.]+) g of table salt/.exec(answer)![1]);
  // Published row i-salt-sr28: 6 g of table salt carry 2325.5 mg of sodium.
  expect((salt * 2325.5) / 6).toBeCloseTo((500 - now) * 5, -2);
});

test('a target that is passed names the ingredients', () => {
  const answer = openSeason().say('/scale barley soup sodium 100 mg');
  expect(answer).toContain('Already passed');
  expect(answer).toMatch(/Most of it comes from (salt|vegetable stock)/);
});

refuses([
  ['/scale', /Which meal/],
  ['/scale barley soup', /not to what/],
  ['/scale goulash to 4 servings', /no recipe called "goulash"/],
  ['/scale barley soup to 0 servings', /0 servings cannot be/],
  ['/scale barley soup to 4 servings x2', /two targets/],
  ['/scale barley soup with 500 g walrus', /no weighed line for "500 g walrus"/],
  ['/scale barley soup x1000', /no factor/],
  ['/scale barley soup sodium 0 mg', /no target/],
]);

// Witness: by hand; tablespoons that no cup comes near stay tablespoons, tins stay tins.
test('tins stay tins and spoons stay spoons', () => {
  const house = openSeason();
  house.say('/house cup 250 ml');
  house.say(
    '/recipe Bean pot, 4 servings: 2 tins (400 g each) kidney beans, drained; 3 tbsp tomato paste; 1 x 400 g tin chopped tomatoes',
  );
  const double = house.say('/scale bean pot x2');
  expect(double).toContain('960 g kidney beans, drained: 4 tins of 400 g');
  expect(double).toContain('96 g tomato paste: 6 tbsp');
  expect(house.say('/scale bean pot x1.5')).toContain('600 g tomatoes, canned: 1.5 tins of 400 g');
});
