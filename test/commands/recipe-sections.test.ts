// Witness: what each change means by its plain words, by hand.
import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';

function openPie(): TestHouse {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no peanuts');
  house.say(
    '/recipe Barley pot, 4 servings\n300 g pearl barley\nFor the peanut sauce:\n2 onions\n200 g tomatoes\nTo finish:\n10 g parsley',
  );
  return house;
}

/** The headings of the card, each with the lines under it. */
const headings = (house: TestHouse) =>
  [...house.say('/recipe barley pot').matchAll(/^(— .*|\d\.)/gm)].map(([, said]) => said).join(' ');

test('headings are kept and shown above their lines', () => {
  expect(headings(openPie())).toBe('1. — For the peanut sauce 2. 3. — To finish 4.');
});

test.each([
  ['/recipe barley pot rename heading For the peanut sauce to For the onion sauce', 'For the onion sauce'],
  ['/recipe barley pot heading 1 is For the onion sauce', 'For the onion sauce'],
  ['/recipe barley pot heading "For the peanut sauce": For the onion sauce', 'For the onion sauce'],
  ['/recipe rename the heading peanut sauce in the barley pot to For the onion sauce', 'For the onion sauce'],
  ['rename the heading For the peanut sauce of the barley pot to For the onion sauce', 'For the onion sauce'],
  ['change section peanut sauce to For the onion sauce in the barley pot', 'For the onion sauce'],
])('%s: what only the old heading named is open no more', (typed, now) => {
  const house = openPie();
  expect(house.say('/recipe barley pot')).toContain('Noa: unknown');
  const answer = house.say(typed);
  expect(answer).toMatch(/^Heading of Barley pot: was "For the peanut sauce" above line 2, now /);
  expect(headings(house)).toBe(`1. — ${now} 2. 3. — To finish 4.`);
  expect(house.say('/recipe barley pot')).toContain('Noa: clear');
  house.say('/undo');
  expect(house.say('/recipe barley pot')).toContain('Noa: unknown');
});

test('a heading that names another food opens it', () => {
  const answer = openPie().say('/recipe barley pot rename heading To finish to For the cashew cream');
  expect(answer).toContain('cashew');
});

test.each([
  ['/recipe barley pot delete heading To finish', '1. — For the peanut sauce 2. 3. 4.'],
  ['remove the heading To finish from the barley pot', '1. — For the peanut sauce 2. 3. 4.'],
  ['/recipe barley pot delete heading 1', '1. 2. 3. — To finish 4.'],
  ['/recipe barley pot move heading To finish to line 3', '1. — For the peanut sauce 2. — To finish 3. 4.'],
  [
    'move the heading To finish in the barley pot above line 3',
    '1. — For the peanut sauce 2. — To finish 3. 4.',
  ],
  [
    '/recipe barley pot add heading For the base above line 1',
    '— For the base 1. — For the peanut sauce 2. 3. — To finish 4.',
  ],
  [
    'put heading Herbs above line 3 in the barley pot',
    '1. — For the peanut sauce 2. — Herbs 3. — To finish 4.',
  ],
])('%s', (typed, now) => {
  const house = openPie();
  house.say(typed);
  expect(headings(house)).toBe(now);
  house.say('/undo');
  expect(headings(house)).toBe('1. — For the peanut sauce 2. 3. — To finish 4.');
});

test.each([
  [
    '/recipe barley pot delete heading Topping',
    'Of "Topping" I know no heading in Barley pot: it has "For the peanut sauce" and "To finish".',
  ],
  ['/recipe barley pot heading is Topping', 'say which'],
  ['/recipe barley pot rename heading to Topping', 'say which'],
  ['/recipe barley pot move heading To finish to line 9', 'there is no line 9'],
  [
    '/recipe barley pot move heading To finish to line 2',
    'Above line 2 of Barley pot stands "For the peanut sauce"',
  ],
])('%s: nothing is changed, and it is said why', (typed, why) => {
  const house = openPie();
  const before = house.dump();
  expect(house.say(typed)).toContain(why);
  expect(house.dump()).toBe(before);
});

test('a heading that sends its lines to camp, or back into the pot, says so; what was cooked keeps its pot', () => {
  const house = openPie();
  expect(house.say('/recipe barley pot rename heading To finish to At camp')).toContain(
    'parsley goes in at camp now.',
  );
  expect(house.say('/recipe barley pot')).toContain('Added at camp to each serving: parsley 2.5 g');
  house.say('/batch barley pot trays 500 g pot 800 g');
  const back = house.say('/recipe barley pot delete heading At camp');
  expect(back).toContain('parsley goes into the pot now.');
  expect(back).toContain('B1, cooked before, keeps what the old heading says.');
});

test('batches keep the doubt that an old heading leaves', () => {
  const house = openPie();
  house.say('/batch barley pot trays 500 g pot 800 g');
  const answer = house.say('/recipe barley pot rename heading For the peanut sauce to For the onion sauce');
  expect(answer).toContain('B1, cooked before, keeps what the old heading says.');
  expect(house.say('/pouch B1')).toContain('Noa: unknown');
});

test.each([
  'can we rename the heading To finish in the barley pot to For the top?',
  'should I delete the heading To finish from the barley pot?',
])('%s records nothing', (typed) => {
  const house = openPie();
  const before = house.dump();
  house.say(typed);
  expect(house.dump()).toBe(before);
});
