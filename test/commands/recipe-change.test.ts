// Witness: what each change means by its plain words, by hand; sodium of salt from SR28 02047 (38,758 mg per 100 g).
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';
import { openSeason, refuses } from '../season.ts';

/** A house with one recipe of which nothing was cooked. */
function openSoup(): TestHouse {
  const house = openTestHouse();
  house.say(
    '/recipe Barley soup, 4 servings\n300 g pearl barley\n4 carrots\n10 g salt\nMethod:\nBoil the barley in the stock.',
  );
  return house;
}

/** Says a change, sees it recorded, and that /undo brings every record of the house back. */
function changes(house: TestHouse, typed: string): string {
  const card = house.say('/recipe barley soup');
  const before = house.dump();
  const answer = house.say(typed);
  expect(house.dump(), answer).not.toBe(before);
  expect(house.faults).toEqual([]);
  const after = house.last;
  house.say('/undo');
  expect(house.say('/recipe barley soup')).toBe(card);
  house.say(typed);
  house.last.splice(0, house.last.length, ...after);
  return answer;
}

test('a line changed shows before and after, a serving, and only that', () => {
  const answer = changes(openSoup(), '/recipe barley soup line 2: 200 g sweetcorn');
  expect(answer).toMatch(/^Line 2 of Barley soup: was carrots \d+ g, now sweet corn 200 g\./);
  expect(answer).toMatch(/A serving: 128 g wet, 9[6-9]\d mg sodium/);
  expect(answer).not.toContain('pearl barley');
});

test.each([
  '/recipe barley soup line 2 3 sticks celery',
  '/recipe line 2 of barley soup: 3 sticks celery',
  '/recipe change line 2 of the barley soup to 3 sticks celery',
  '/recipe barley soup line 2 is 3 sticks celery',
  '/recipe barley soup line 2 = 3 sticks celery',
])('%s: the number behind the line number is the amount', (typed) => {
  const house = openSoup();
  expect(house.say(typed)).toMatch(/^Line 2 of Barley soup: was carrots .*, now celery.* 120 g/);
  expect(house.say('/recipe barley soup')).toContain('2. 3 sticks celery');
});

test.each([
  '/recipe barley soup delete line 3',
  '/recipe barley soup remove line 3',
  '/recipe remove line 3 of the barley soup',
  '/recipe barley soup line 3 delete',
])('%s: the line is out, and /undo brings it back', (typed) => {
  const house = openSoup();
  const answer = changes(house, typed);
  expect(answer).toMatch(/^Line 3 of Barley soup: was salt 10 g, now out\./);
  expect(house.say('/recipe barley soup')).not.toContain('salt');
});

test('what the method names and a line had is open again once the line is gone', () => {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no milk');
  house.say('/recipe Pot, 4 servings\n300 g rice\n100 ml cream\nMethod:\nStir in the cream.');
  const answer = house.say('/recipe pot delete line 2');
  expect(answer).toContain('Headings or method name cream, which no line has');
  expect(answer).toContain('Noa: unknown, so not for you yet: milk');
});

test('what somebody said to be in a line is open again once that line is another', () => {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no peanuts');
  house.say('/recipe Pot, 4 servings\nFor the peanut sauce:\n300 g rice\n2 onions');
  house.say('/recipe pot: peanut sauce is in line 2');
  expect(house.say('/recipe pot line 2: 3 onions')).toContain('unknown, so not for you yet: peanut');
  expect(house.say('/recipe pot')).not.toContain('Noa: clear');
});

test.each([
  '/recipe barley soup add 2 bay leaves',
  '/recipe barley soup add line: 2 bay leaves',
  '/recipe add 2 bay leaves to the barley soup',
])('%s: a line behind the last', (typed) => {
  const answer = changes(openSoup(), typed);
  expect(answer).toMatch(/^Line 4 of Barley soup, new: bay lea/);
});

test('a new allergen and a new caution are said with the change that brings them', () => {
  const house = openSoup();
  house.say('/eater Noa child 6 no milk');
  const answer = house.say('/recipe barley soup add line: 250 g butter');
  expect(answer).toContain('Contains: barley, milk.');
  expect(answer).toContain('Noa: not for you: milk (butter');
  expect(answer).toContain('fat does not dry');
  expect(house.say('/recipe barley soup add 2 bay leaves')).not.toContain('fat does not dry');
});

test('a line that is not understood asks, with the card behind the last button', () => {
  const house = openSoup();
  const answer = house.say('/recipe barley soup add 100 g zorblax');
  expect(answer).toContain('Line 4 of Barley soup, new: "100 g zorblax", not understood.');
  expect(answer).toContain('Allergens unknown because of: zorblax');
  const buttons = house.last[0]!.reply.buttons!;
  expect(buttons.slice(-2).map(({ label }) => label)).toEqual(['Show the recipe', 'Undo']);
  expect(house.press(buttons.length - 1)).toMatch(
    /^Barley soup, 4 servings\.\n4\. 100 g zorblax[^]*\n1\. 300 g pearl barley/,
  );
});

test('a line moves, and nothing else does', () => {
  const house = openSoup();
  expect(changes(house, '/recipe barley soup move line 3 to 1')).toMatch(
    /^Barley soup, salt 10 g: was line 3, now line 1\./,
  );
  expect(house.say('/recipe barley soup')).toMatch(/1\. 10 g salt.*\n2\. 300 g pearl.*\n3\. 4 carrots/);
});

test('servings: before and after', () => {
  expect(changes(openSoup(), '/recipe barley soup serves 8')).toMatch(
    /^Barley soup: was 4 servings, now 8\.\nA serving: /,
  );
});

test.each([
  '/recipe barley soup is called "Pearl soup"',
  '/recipe rename barley soup to Pearl soup',
  '/recipe barley soup rename to Pearl soup',
])('%s: batches, wishes and ratings go along', (typed) => {
  const house = openSeason();
  house.say('/want barley soup Heron Lake for me');
  house.say('/use B1-1');
  house.say('/rate B1-1 good');
  const before = house.say('/recipe barley soup').split('\n').slice(1);
  const keys = () =>
    ['wish', 'rating'].map((table) =>
      house.db.prepare(`SELECT DISTINCT meal_key FROM ${table}`).pluck().all(),
    );
  expect(keys()).toEqual([['barley soup'], ['barley soup']]);
  expect(house.say(typed)).toMatch(
    /^Was Barley soup, now Pearl soup\.\n(?:.*\n)*.*may still say Barley soup/,
  );
  expect(house.say('/recipe pearl soup').split('\n').slice(1)).toEqual(before);
  expect(keys()).toEqual([['pearl soup'], ['pearl soup']]);
  expect(house.say('/stock')).toContain('Pearl soup');
  expect(house.say('/recipe barley soup')).toContain('("Barley soup" is Pearl soup here)');
  house.say('/undo');
  expect(keys()).toEqual([['barley soup'], ['barley soup']]);
  expect(house.say('/stock')).toContain('Barley soup');
});

test('a recipe goes by a tap alone, and /undo brings it back', () => {
  const house = openSoup();
  const card = house.say('/recipe barley soup');
  const before = house.dump();
  for (const typed of [
    '/recipe delete barley soup',
    '/recipe delete recipe barley soup sure',
    '/recipe barley soup delete sure',
  ])
    expect(house.say(typed)).toContain('Delete the recipe Barley soup, 3 lines? Nothing is changed yet');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('Deleted: the recipe Barley soup.');
  expect(house.say('/recipe')).toContain('No recipe is recorded');
  house.say('/undo');
  expect(house.say('/recipe barley soup')).toBe(card);
});

test('no change of a recipe takes an allergen off what is in the cupboard', () => {
  for (const typed of [
    '/recipe lentil pot delete line 3',
    '/recipe lentil pot line 3: 200 ml water',
    '/recipe lentil pot move line 3 to 1',
    '/recipe lentil pot add 2 bay leaves',
    '/recipe lentil pot is called Red pot',
    '/recipe lentil pot serves 4',
  ]) {
    const house = openSeason();
    const before = house.dump();
    const answer = house.say(typed);
    expect(house.dump(), answer).not.toBe(before);
    expect(house.say('/pouch B4-1'), typed).toMatch(/Contains: .*milk/);
    expect(house.say('/pouch B4-1'), typed).toContain('Noa: not for you: milk');
  }
});

test('law: whatever is done to a recipe, milk that went into a pouch is shown in it, and /undo brings all back', () => {
  const said = fc.constantFrom(
    'delete line 3',
    'delete line 1',
    'line 3: 200 g zorblax',
    'line 3: 200 ml water',
    'line 1: 200 g zorblax',
    'line 2: 200 ml double cream',
    'move line 3 to 1',
    'move line 1 to 3',
    'add 100 g rice; 100 g zorblax',
    'line 6: 300 g rice',
    'serves 3',
    'is called Lentil pot two',
    ', 4 servings: 200 g rice; 1 onion',
    'delete sure',
  );
  fc.assert(
    fc.property(fc.array(said, { minLength: 1, maxLength: 6 }), (changes) => {
      const house = openSeason();
      const records = () =>
        ['recipe', 'recipe_line'].map((table) =>
          house.db.prepare(`SELECT * FROM ${table} ORDER BY id`).all(),
        );
      for (const change of changes) {
        const [before, dump] = [records(), house.dump()];
        house.say(`/recipe Lentil pot ${change}`);
        if (house.dump() !== dump) {
          house.say('/undo');
          expect(records()).toEqual(before);
          house.say(`/recipe Lentil pot ${change}`);
        }
        const card = house.say('/pouch B4-1');
        expect(card, changes.join(' | ')).toMatch(/Contains: .*milk/);
        expect(card, changes.join(' | ')).toContain('Noa: not for you: milk');
      }
      expect(house.faults).toEqual([]);
    }),
    { numRuns: 25, seed: 10 },
  );
});

test('a line put right counts for its batches, unless something they hold would be lost', () => {
  const house = openSeason();
  expect(house.say('/recipe lentil pot line 4: 12 g salt')).toContain(
    'B4, cooked from it, counts with it too.',
  );
  expect(house.say('/recipe lentil pot line 3: 200 ml water')).toContain(
    'B4, cooked before, keeps the old line.',
  );
  expect(house.say('/recipe lentil pot')).not.toContain('Contains: milk');
});

test('a recipe may be called like an order', () => {
  const house = openTestHouse();
  house.say('/recipe Drop scones, 4 servings: 200 g flour; 2 eggs');
  expect(house.say('/recipe drop scones')).toContain('Drop scones, 4 servings.');
  expect(house.say('/recipe Add-on stew, 2 servings: 200 g rice; add 2 onions')).toContain(
    'Recorded: Add-on stew',
  );
});

test('two recipes that can be meant are a choice that keeps the change', () => {
  const house = openSeason();
  house.say('/recipe Lentil salad, 2 servings: 100 g lentils; 2 onions');
  expect(house.say('/recipe lentil add 2 bay leaves')).toContain('could be either of two meals');
  expect(house.press(1)).toMatch(/^Line \d of Lentil .*, new: bay lea/);
});

test('several lines at once, and servings that batches keep', () => {
  const house = openSeason();
  expect(house.say('/recipe barley soup add 2 bay leaves; 20 g butter')).toMatch(
    /^Line 5 of Barley soup, new: bay leaves.*\nLine 6 of Barley soup, new: butter.* 20 g/,
  );
  expect(house.say('/undo')).toContain('Line 6');
  expect(house.say('/recipe barley soup')).not.toMatch(/bay leaves|butter/);
  expect(house.say('/recipe lentil pot serves 4')).toContain('B4, cooked before, keeps the old number.');
});

test.each([
  ['/recipe remove the carrots from barley soup', 'Line 2 of Barley soup: was carrots 244 g, now out.'],
  ['/recipe barley soup remove carrots', 'Line 2 of Barley soup: was carrots 244 g, now out.'],
  ['take the carrots out of the barley soup', 'Line 2 of Barley soup: was carrots 244 g, now out.'],
  ['replace the carrots in the barley soup with 300 g pumpkin', 'was carrots 244 g, now pumpkin 300 g'],
  ['swap the salt in the barley soup for soy sauce', 'Line 4 of Barley soup: was salt 6 g, now soy sauce'],
  ['/recipe barley soup add 2 bay leaves and 20 g butter', 'Line 6 of Barley soup, new: butter'],
  ['call the barley soup winter soup', 'Was Barley soup, now winter soup.'],
])('%s: told by the food', (typed, says) => {
  const house = openSeason();
  expect(house.say(typed)).toContain(says);
  expect(house.faults).toEqual([]);
});

test('two lines that name a food are a choice', () => {
  const house = openSeason();
  house.say('/recipe barley soup add 100 g carrot juice');
  expect(house.say('/recipe barley soup remove carrot')).toContain('2 lines of Barley soup name "carrot"');
  expect(house.press(1)).toContain('Line 2 of Barley soup: was carrots 244 g, now out.');
});

test('what a meal would be without a food is looked at; what was cooked keeps it', () => {
  const house = openSeason();
  const before = house.dump();
  const answer = house.say('could we make the lentil pot without double cream?');
  expect(answer).toContain('Lentil pot has it in line 3, 200 ml double cream.');
  expect(answer).toContain('Batches cooked with it keep it. Nothing is changed yet.');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('Recorded: Lentil pot without double cream, 8 servings.');
  expect(house.say('may Noa eat B4-1?')).toContain('NO, milk');
});

refuses([
  ['/recipe barley soup is called Pearl soup, 6 servings', /tells servings/],
  ['/recipe remove zorblax from barley soup', /No line of Barley soup names "zorblax"/],
  ['/recipe barley soup add ;', /I read no ingredient/],
  ['/recipe barley soup delete line 9', /there is no line 9/],
  ['/recipe barley soup delete line 3 and 4', /I know no recipe/],
  ['/recipe delete line 3', /of which recipe/],
  ['/recipe barley soup move line 2 to 9', /there is no line 9/],
  ['/recipe barley soup move line 2 to 2', /stands there already/],
  ['/recipe zorblax barley soup line 2: 300 g barley', /I know no recipe "zorblax barley soup"/],
  ['/recipe barley soup is called Lentil pot', /two meals must not go by one name/],
  ['/recipe barley soup is called Barley soup', /is called that already/],
  [`/recipe barley soup is called ${'long '.repeat(20)}`, /does not fit on a pouch/],
  ['/recipe delete recipe lentil pot', /B4 of Lentil pot is still there/],
  ['/recipe delete rice and beans', /B2 of Rice and beans is still there/],
  ['/recipe add 2 bay leaves to the unheard of', /I know no recipe "the unheard of"/],
]);
