// Witness: what is added at camp is in no pot, by hand from the lines; butter 7.2 kcal and 0.06 mg of sodium a g from SR28 01001's
// 717 kcal and 643 mg (salted) per 100 g.
import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';

/** 300 g of barley and 400 g of carrots for 4, and what is added at camp. */
function openPot(...camp: string[]): TestHouse {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no milk');
  house.say(['/recipe Barley pot, 4 servings', '300 g pearl barley', '400 g carrots', ...camp].join('\n'));
  return house;
}
const kcalOf = (answer: string) => Number(/(\d+) kcal/.exec(answer)![1]);

test('it stays out of the pot and the drying masses and counts in energy, sodium and allergens', () => {
  const [without, with20] = [openPot(), openPot('at camp: 80 g butter')];
  const plain = without.say('/recipe barley pot');
  const card = with20.say('/recipe barley pot');
  expect(card).toContain('A serving: 175 g wet, about 82 g dry,');
  expect(plain).toContain('A serving: 175 g wet, about 82 g dry,');
  expect(kcalOf(card) - kcalOf(plain)).toBeGreaterThan(142);
  expect(kcalOf(card) - kcalOf(plain)).toBeLessThan(145);
  expect(card).toContain('Added at camp to each serving: butter 20 g');
  expect(card).toContain('Noa: not for you: milk (butter)');
  expect(card).toContain('The pot: 700 g of ingredients');
  expect(without.say('/batch barley pot trays 690 g')).toContain('Expected dry: about 3');
  // A batch of it lies on the trays and dries as one without.
  expect(with20.say('/batch barley pot trays 690 g').split('\nNoa')[0]).toBe(
    without.say('/undo') && without.say('/batch barley pot trays 690 g').split('\nNoa')[0],
  );
});

test.each([
  [['20 g butter (at camp)'], 'butter 5 g'],
  [['At camp:', '20 g butter', '8 g olive oil'], 'butter 5 g and olive oil 2 g'],
  [['To add at camp, per person:', '20 g butter'], 'butter 20 g'],
  [['at camp: 20 g butter each'], 'butter 20 g'],
  [['For the trail', '20 g butter', 'Ingredients', '1 onion'], 'butter 5 g'],
  [['grated parmesan at camp'], 'grated parmesan'],
])('%j', (lines, each) => {
  expect(openPot(...lines).say('/recipe barley pot')).toContain(
    `Added at camp to each serving: ${each}; not in`,
  );
});

test('a weight is read for the whole recipe, said so, and one tap makes it one for each serving', () => {
  const house = openPot('at camp: 20 g butter');
  expect(house.last.at(-1)!.reply.group).toContain('Added at camp to each serving: butter 5 g');
  const button = house.last.at(-1)!.buttons.findIndex(({ label }) => label.startsWith('At camp'));
  const answer = house.press(button + 1);
  expect(answer).toContain('At camp: was butter 5 g for each serving of Barley pot, now butter 20 g.');
  expect(house.say('/recipe barley pot serves 8')).toContain('now 8');
  expect(house.say('/recipe barley pot')).toContain('butter, 160 g at camp');
  house.say('/undo');
  house.say('/undo');
  expect(house.say('/recipe barley pot')).toContain('Added at camp to each serving: butter 5 g');
});

/** Three quarters of the pot in one pouch, as its weights have it. */
function openSealed(): TestHouse {
  const house = openPot('at camp: 80 g butter');
  house.say('/batch barley pot trays 700 g pot 700 g');
  house.at(20);
  house.say('/weigh B1 330');
  house.at(3);
  house.say('/weigh B1 330');
  house.say('/seal 3 x 82.5 g B1');
  return house;
}

test('the card, the water and the label of a pouch tell what is added to it', async () => {
  const house = openSealed();
  expect(house.say('/pouch B1-1')).toContain('At camp add butter 20 g.');
  expect(house.say('/water B1-1 B1-2')).toContain('At camp add butter 40 g.');
  expect(house.say('/water 165 g barley pot')).toContain('At camp add butter 40 g.');
  expect(house.say('/scale barley pot x2')).toContain('160 g butter at camp');
});

test('a trip carries it: the plan, the packing list and the answers to questions', async () => {
  const house = openSealed();
  house.say('/eater Ana');
  house.say('/trip Heron Lake 2026-06-12 dinner for Ana');
  const plan = await house.ask('/pick');
  expect(plan).toContain('and 40 g to add at camp');
  await house.ask('/pick keep');
  expect(await house.ask('/pack')).toContain('To add at camp, carried beside the pouches: butter 40 g.');
  expect(house.say("what's for dinner at Heron Lake?")).toContain('At camp add butter 40 g.');
  expect(house.say('how heavy is the pack?')).toContain('and 40 g to add at camp');
});

test('a batch keeps what was in its pot; what is added at camp is of every portion still to be eaten', () => {
  const house = openSealed();
  const moved = house.say('/recipe barley pot line 2: 400 g carrots at camp');
  expect(moved).toContain('B1, cooked before, keeps the old line.');
  house.say('/undo');
  expect(house.say('/recipe barley pot line 3: 40 g butter at camp')).toContain('now butter 40 g at camp');
  expect(house.say('/pouch B1-1')).toContain('At camp add butter 10 g.');
  expect(house.say('/recipe barley pot line 3: 40 g butter in the pot')).toContain(
    'B1, cooked before, keeps the old line.',
  );
  house.say('/undo');
  house.say('/recipe barley pot delete line 3');
  expect(house.say('/pouch B1-1')).not.toContain('At camp');
  expect(house.say('/pouch B1-1')).toContain('Noa: clear');
  house.say('/undo');
  expect(house.say('/pouch B1-1')).toContain('Noa: not for you: milk (butter)');
});

test('what is sealed in is not added at camp', () => {
  const house = openSealed();
  expect(house.say('/seal 1 x 40 g B1 + 15 g milk powder at camp')).toContain('is added at camp');
});
