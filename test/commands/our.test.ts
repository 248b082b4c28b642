import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason, refuses } from '../season.ts';

/** The grams of a line of a recipe made for the purpose, with its remarks. Witness: what was taught, times the count. */
function lineOf(house: ReturnType<typeof openTestHouse>, line: string): string {
  const answer = house.say(`/recipe Trial, 2 servings: 100 g sugar; ${line}`);
  return answer.split('\n').find((one) => one.startsWith('2. ')) ?? answer;
}

test.each([
  ['/our tin of tomatoes is 390 g', '2 tins tomatoes', /780 g.*your tin of 390 g/],
  ['/our tin of tomatoes is 390 g', '1 tin chopped tomatoes', /390 g.*your tin of 390 g/],
  ['/our tin of tomatoes is 390 g', '2 x 400 g tins tomatoes', /800 g(?!.*your tin)/],
  ['/our tin is 410 g', '1 tin black beans', /410 g.*your tin of 410 g/],
  ['/our cup is 250 ml', '2 cups water', /500 g.*your cup of 250 ml/],
  ['/our mug is 300 ml', '1 mug of water', /300 g.*your mug of 300 ml/],
  ['/our mug of rice is 210 g', '2 mugs of rice', /420 g.*your mug of 210 g/],
  ['/our onion is 120 g', '3 onions', /360 g.*your onions of 120 g/],
  ['/our onion is 120 g', '3 onions, chopped', /360 g/],
  ['/our cup of flour is 140 g', '2 cups flour', /280 g.*your cup of 140 g/],
  ['/our tomato tin holds 390 g', '1 tin tomatoes', /390 g/],
  ['our tin of tomatoes is 390 g', '1 tin of tomatoes', /390 g/],
  ['Our onions weigh 120 g each.', '1 onion', /120 g/],
  ['by mince we mean lean ground beef', '500 g mince', /500 g.*your "mince"/],
  ['By “gronk” we always mean red lentils!', '200 g gronk', /200 g.*your "gronk"/],
  ['/our gronk means red lentils', '1 cup gronk', /192 g/],
])('%j is used for %j', (taught, line, expected) => {
  const house = openTestHouse();
  expect(house.say(taught)).toMatch(/^Noted: /);
  expect(lineOf(house, line)).toMatch(expected);
  expect(house.say('/undo')).toContain('Taken back: recorded the recipe Trial');
  house.say('/undo');
  expect(lineOf(house, line)).not.toContain('your ');
});

test('another size than the taught one, or a weight in the line, is not overruled', () => {
  const house = openTestHouse();
  const before = lineOf(house, '2 large onions');
  house.say('/our onion is 120 g');
  expect(lineOf(house, '2 large onions')).toBe(before);
  expect(lineOf(house, '2 onions (200 g)')).toMatch(/200 g/);
});

test("an alias names a meal everywhere, and is shown; the meal's own name wins", () => {
  const house = openSeason();
  house.say('by curry we mean lentil pot');
  expect(house.say('/water curry for 2')).toMatch(/Lentil pot[\s\S]*\("curry" is Lentil pot here\)/);
  expect(house.say('/stock curry')).toContain('B4-1');
  expect(house.say('/recipe curry')).toContain('Lentil pot, 8 servings');
  expect(house.say('/scale curry to 4 servings')).toContain('Lentil pot times 0.5');
  expect(house.say('/water cury for 2')).toContain('Lentil pot');
  expect(house.say('/our curry forget')).toBe('Forgotten: "curry".');
  expect(house.say('/water curry for 2')).toContain('could not place "curry"');
  house.say('/undo');
  expect(house.say('/water curry for 2')).toContain('Lentil pot');
});

test('what was taught is listed, forgotten, and stays in its own household', () => {
  const house = openTestHouse();
  const other = { chatKey: 'other', chatTitle: 'other' };
  expect(house.say('/our')).toContain('Nothing was taught yet');
  house.say('/our tin of tomatoes is 390 g');
  house.say('/our tin of tomatoes is 400 g');
  house.say('/our mug is 300 ml');
  house.say('/our cup is 250 ml');
  house.say('by mince we mean lean ground beef');
  expect(house.say('/our')).toBe(
    'In this house:\ncup: 250 ml\ntin of tomatoes: 400 g\nmug: 300 ml\n"mince" means lean ground beef',
  );
  expect(house.say('/our', 'Ana', other)).toContain('Nothing was taught yet');
  expect(house.say('/our tin of tomatoes forget')).toBe('Forgotten: tin of tomatoes.');
  expect(house.say('forget our mug', 'Ana')).toContain('Forgotten: mug');
  expect(house.say('/our')).not.toContain('mug');
});

test('the answer to the question which food is meant holds for the next recipe', () => {
  const house = openTestHouse();
  const asks = house.say('/recipe First, 2 servings: 100 g sugar; 200 g crimson lentil gronks');
  expect(asks).toContain('Which food is');
  const label = house.last[0]!.buttons[0]!.label.replace(/^2: /, '');
  expect(house.press(1)).toContain('From now on "crimson lentil gronks" is');
  const second = house.say('/recipe Second, 2 servings: 300 g crimson lentil gronks');
  expect(second).toContain(`your "crimson lentil gronks"`);
  expect(second).not.toContain('Which food is');
  expect(house.say('/our')).toContain(`"crimson lentil gronk" means ${label.split(',')[0]}`);
});

test('a stand-in in the table keeps what is known of the food itself', () => {
  const house = openTestHouse();
  // Witness: oat milk is made of oats; EU 1169/2011 annex II, point 1 (gluten).
  house.say('by white we mean oat milk');
  const answer = house.say('/recipe Oats, 2 servings: 300 ml white');
  expect(answer).toMatch(/oats/i);
});

refuses([
  ['/our vegetable stock contains constructor', /"constructor"/],
  ['/our kg is 900 g', 'the same in every house'],
  ['/our ml is 2 g', 'the same in every house'],
  ['/our cup is 140 g', 'A cup of what?'],
  ['/our mug is 300 g', 'no food called "mug"'],
  ['/our onion is 100 ml', 'is a food'],
  ['/our tin of gronk is 390 g', 'no food called "gronk"'],
  ['/our tin of tomatoes is -5 g', 'I can keep'],
  ['/our tin of tomatoes is 0 g', 'I can keep'],
  ['/our tin of tomatoes is 999 kg', 'I can keep'],
  ['/our tin of tomatoes is 390', 'I still need what is yours'],
  ['/our 400 g tin is 390 g', 'I still need what is yours'],
  ['/our tin of tomatoes is 1,500 g', 'Which is meant?'],
  ['/our cup is 5 l', 'A cup holds'],
  ['/our foo bar', 'could not place "foo bar"'],
  ['/our tin of tomatoes forget', 'learnt nothing of "tin of tomatoes"'],
  ['by barley soup we mean lentil pot', 'is a recipe of yours already'],
  ['by this and that and quite a lot of other things we mean lentil pot', 'too long'],
  ['by curry we mean gronk', 'no food called "gronk"'],
]);
