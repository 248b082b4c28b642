import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

// The balance of published rows c-water-per-pouch: (ready − dry) x pouch / dry.
// B4: 3000 g wet, 760 g dry, so 95 g take (3000 − 760) x 95 / 760 = 280 ml.
test('a pouch', () => {
  const answer = openSeason().say('/water B4-2');
  expect(answer).toContain(
    'B4-2 (95 g Lentil pot): start with 240 ml of boiling water, up to 280 ml (1⅛ cups).',
  );
  expect(answer).toContain(
    'Exactly 280.0 ml.\nB4 gave up 2240 g of water for 760 g dry: 2.95 ml for each g.',
  );
  expect(answer).toContain('The minutes: common practice.');
  expect(answer).toContain('eat within 2 hours');
});

test('several pouches are added up', () => {
  const answer = openSeason().say('/water B4-2 and 3, B1-1');
  // B1: (1000 − 300) x 100 / 300 = 233.3 ml.
  expect(answer).toContain('Together: 795 ml');
  expect(answer).toContain('Exactly 280.0 and 233.3 ml each');
});

test('at another altitude the boiling point follows', () => {
  // Published row g-boil-2500: 91.64 °C; g-csu-5000ft: 203 °F = 95.0 °C.
  expect(openSeason().say('/water B4-2 at 2500 m')).toContain('Water boils at 91.6 °C at 2500 m');
  expect(openSeason().say('/water B4-2 at 5,000 ft')).toContain('at 1524 m');
});

test('for people: the oldest pouches until all are fed', () => {
  const house = openSeason();
  const servings = Number(/: ([\d.]+) servings?,/.exec(house.say('/pouch B4-1'))![1]);
  const pouches = Math.ceil(3 / servings - 0.05);
  expect(house.say('/water lentil pot for 3').match(/start with /g)).toHaveLength(pouches);
});

test('a weight of a meal', () => {
  expect(openSeason().say('/water 180 g lentil pot')).toContain('Exactly 530.5 ml');
});

test('a meal never dried is told as expected', () => {
  expect(openSeason().say('/water 100 g rice and beans')).toContain('Expected, not measured');
});

test('plain sentences', () => {
  expect(
    openSeason()
      .say('How much water do I need for two lentil pouches, please?')
      .match(/start with 240 ml/g),
  ).toHaveLength(2);
  expect(openSeason().say("what's the water for B4-2?")).toContain('start with 240 ml');
});

test('a metric cup', () => {
  const house = openSeason();
  house.say('/house cup 250 ml');
  expect(house.say('/water B4-2')).toContain('280 ml (1⅛ cups)');
});

test('an unchecked pouch says so', () => {
  expect(openSeason().say('/water B3-1')).toContain('unchecked, not shown to be dry');
});

test('notes for those whom it concerns, none for others', () => {
  const answer = openSeason().say('/water B4-2');
  expect(answer).toContain('Noa: not for you: milk');
  expect(answer).not.toMatch(/^(Ben|Rosa):/m);
});

test('pouches never shown to be dry are not offered for a meal: B3-1 is sealed unchecked', () => {
  const house = openSeason();
  expect(house.say('/stock')).toContain('UNCHECKED): B3-1');
  expect(house.say('/water barley soup 3 pouches')).toContain(
    'Only 2 of 3 pouches of Barley soup are in stock: B1-1 and B1-2.',
  );
  expect(house.say('/water barley soup')).not.toContain('B3-1');
});

refuses([
  ['/water', /Which pouch/],
  ['/water for 3', /what the water is for/],
  ['/water B9-1', /no batch B9/],
  ['/water B4-99', /no pouch B4-99\. B4 has B4-1 to B4-6/],
  ['/water B4-1 to B4-1', /no row of codes/],
  ['/water B4-2 barley soup', /B4-2 is Lentil pot, not Barley soup/],
  ['/water 0 g lentil pot', /above zero/],
  ['/water B4-2 at 12000 m', /The altitude has to be between -500 and 5500 m; it was 12000 m/],
  ['/water lentil pot for 40', /not 40/],
  ['/water goulash', /what the water is for/],
]);
