// Witness: sums by hand from the lines below; what foods are sold in is common practice, no source.
import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';

function open(): TestHouse {
  const house = openTestHouse();
  house.say('/eater Ana');
  house.say(
    '/recipe Bean pot, 4 servings\n2 tins (400 g each) kidney beans, drained\n1 x 400 g tin chopped tomatoes\n2 onions\n3 cloves garlic\n300 g rice\n500 ml water\nat camp: 20 g cheddar',
  );
  house.say(
    '/recipe Lentil pot, 8 servings: 600 g red lentils; 400 g carrots; 200 ml double cream; 9 g salt; 1.8 l water; 1 onion',
  );
  return house;
}
function tap(house: TestHouse, label: string): string {
  const at = house.last.flatMap(({ buttons }) => buttons).findIndex((one) => one.label.startsWith(label));
  expect(at, label).toBeGreaterThanOrEqual(0);
  return house.press(at + 1);
}

test('over several meals, in the tins, packs and pieces of a shop, by kind of food, without water', () => {
  const answer = open().say('/shop bean pot x2, lentil pot for 4');
  expect(answer).toContain('To buy for Bean pot x2 and Lentil pot x0.5: 0 of 10 in the basket or at home.');
  expect(answer).toContain('☐ Kidney beans: 4 tins of 400 g');
  expect(answer).toContain('☐ Chopped tomatoes: 2 tins of 400 g');
  // 2 x 2 and half of one.
  expect(answer).toContain('☐ Onions: 5, about 585 g');
  expect(answer).toContain('☐ Carrots: 200 g');
  // Too long for a phone with its kinds of food and all amounts: those are folded.
  expect(answer).toContain('☐ Red lentils: 1 packet of 500 g\n');
  expect(answer).toContain('Red lentils: 300 g needed.');
  expect(answer).toContain('☐ Cheddar: 40 g');
  expect(answer).not.toContain('ater:');
  expect(answer.indexOf('☐ Carrots')).toBeLessThan(answer.indexOf('☐ Kidney beans'));
  expect(open().say('/shop lentil pot')).toContain('Red lentils: 2 packets of 500 g (600 g needed)');
});

test('ticked off with buttons, by name, all at once; and taken back', async () => {
  const house = open();
  house.say('/shop bean pot');
  expect(tap(house, '☐ Onions')).toContain('✓ Onions');
  expect(tap(house, '✓ Onions')).toContain('☐ Onions');
  expect(house.say('/shop got rice and garlic')).toContain('2 of 6 in the basket');
  expect(house.say('/shop not rice')).toContain('1 of 6 in the basket');
  expect(house.say('/shop got everything')).toContain('All there. /shop done puts the list away.');
  house.say('/undo');
  expect(await house.ask('/shop')).toContain('1 of 6 in the basket');
});

test('less what is at home', async () => {
  const house = open();
  house.say('/shop lentil pot');
  const answer = house.say('/shop home 500 g red lentils, carrots');
  expect(answer).toContain('☐ Red lentils: 1 packet of 500 g (100 g needed, 500 g at home)');
  expect(answer).toContain('✓ Carrots: at home');
  house.say('/undo');
  expect(await house.ask('/shop')).toContain('☐ Red lentils: 2 packets of 500 g (600 g needed)');
});

test('a list that waits is put away by a tap alone', () => {
  const house = open();
  house.say('/shop bean pot x2');
  const before = house.dump();
  expect(house.say('/shop lentil pot')).toContain('There is a list for Bean pot x2, 0 of 6 ticked.');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('To buy for Lentil pot: 0 of 5');
  expect(house.say('/shop new bean pot')).toContain('To buy for Bean pot:');
  expect(house.say('/shop done')).toContain('The list for Bean pot is put away. Not ticked: garlic');
  expect(house.say('/shop got rice')).toContain('There is no shopping list.');
});

test('for a trip: what it still lacks, as /cook has it, and what is added at camp', async () => {
  const house = open();
  house.say('/trip Heron Lake 12-14 June dinner for Ana');
  expect(await house.ask('/shop')).toContain('To buy for Heron Lake (');
  expect(await house.ask('/shop Heron Lake')).toContain('There is a list for Heron Lake');
  house.say('/shop done');
  expect(await house.ask('/shop Heron Lake')).toContain('To buy for Heron Lake (');
  expect(house.faults).toEqual([]);
});

test.each([
  'what do we need to buy?',
  'what must we buy for the bean pot?',
  'do we need to buy onions for the bean pot?',
])('%s only looks', async (typed) => {
  const house = open();
  house.say('/trip Heron Lake 12-14 June dinner for Ana');
  const before = house.dump();
  expect(await house.ask(typed)).toContain('To buy for');
  expect(house.dump()).toBe(before);
});

test("the household's own packs win", () => {
  const house = open();
  house.say('/our packet of red lentils is 750 g');
  expect(house.say('/shop lentil pot')).toContain('☐ Red lentils: 1 packet of 750 g (600 g needed)');
});

test.each([
  ['/shop bananas', 'I know no meal and no trip "bananas"'],
  ['/shop got bananas', 'There is no shopping list.'],
  ['/shop tick 40', 'There is no shopping list.'],
])('%s is refused', (typed, why) => {
  const house = open();
  const before = house.dump();
  expect(house.say(typed)).toContain(why);
  expect(house.dump()).toBe(before);
});

test('a line that nobody understood is on the list as it was typed', () => {
  const house = open();
  house.say('/recipe Odd pot, 2 servings\n200 g rice\na love letter');
  expect(house.say('/shop odd pot')).toContain('☐ "a love letter"');
});

test('nothing to buy is not said of a trip that nothing feeds', async () => {
  const house = openTestHouse('2027-03-01 10:00');
  house.say('/recipe Barley with herbs, 6 servings: 400 g pearl barley; 10 g parsley; 1.2 l water');
  house.say('/eater me');
  house.say('/trip Birch Pond 4-6 June dinner for all');
  const answer = await house.ask('/shop');
  expect(answer).not.toContain('Stock covers');
  expect(answer).toContain('Nothing to buy yet, though 3 meals of Birch Pond are not covered');
  expect(await house.ask('/cook')).toContain('"Barley with herbs is for dinner too" would change that.');
  house.say('Barley with herbs is for dinner too');
  expect(await house.ask('/shop')).toContain('Pearl barley: 800 g');
});

test('a lunch-box packet is no way to buy for many', () => {
  const house = open();
  house.say('/recipe Muesli, 20 servings: 1 kg rolled oats; 600 g raisins');
  // Fourteen packets of 43 g would be 600 g; a tenth of it is two of them.
  expect(house.say('/shop muesli')).toContain('☐ Raisins: 600 g');
  house.say('/shop done');
  expect(house.say('/shop muesli for 2')).toContain('☐ Raisins: 2 packets of 43 g');
});
