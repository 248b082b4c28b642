// Witness: what each line says by its plain words, by hand.
import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';

const rest = '\n200 g flour\n2 eggs';

test.each([
  [
    '/recipe Muffins\nMakes 12 muffins',
    'Muffins makes 12 muffins. How many servings is that?',
    '12 servings',
  ],
  [
    '/recipe Muffins, makes 12 muffins',
    'Muffins makes 12 muffins. How many servings is that?',
    '12 servings',
  ],
  ['/recipe Cookies\nMakes about 2 dozen cookies', 'Cookies makes about 2 dozen cookies. How', '24 servings'],
  ['/recipe Stew\nYields 1.5 litres', 'Stew makes 1.5 litres. How many', '3 servings'],
  ['/recipe Stew\nYield: 6 cups', 'Stew makes 6 cups. How many', '3 servings'],
  ['/recipe Loaf\nMakes one loaf', 'Loaf makes one loaf. How many', '4 servings'],
])('%s: pieces and litres are no servings, so it is asked', (typed, question, first) => {
  const house = openTestHouse();
  expect(house.say(typed + rest)).toContain(question);
  expect(house.say('/recipe')).toContain('No recipe is recorded yet');
  house.say(typed + rest);
  expect(house.last.at(-1)!.buttons[0]!.label).toContain(first);
  const name = typed.split(/[\n,]/)[0]!.replace('/recipe ', '');
  expect(house.press(1)).toMatch(new RegExp(`^Recorded: ${name}, ${first}\\.`));
  expect(house.say(`/recipe ${name}`)).toContain('2. 2 eggs');
});

test.each([
  ['/recipe Soup serves 4-6', 5],
  ['/recipe Soup\nServes 4 to 6', 5],
  ['/recipe Soup\nServes 6 • Cook 40 min', 6],
  ['/recipe Soup\nYield: 4', 4],
  ['/recipe Soup\nMakes 8 servings', 8],
  ['/recipe Soup\n6 generous servings', 6],
  ['/recipe Soup\nServes: 4 adults', 4],
  ['/recipe Soup\nFor 4 people\nPrep 15 min\nTotal time: 1 h 10 min\nDifficulty: easy', 4],
  ['/recipe Soup, 6 servings\nMakes 12 muffins', 6],
])('%s', (typed, servings) => {
  const house = openTestHouse();
  expect(house.say(typed + rest)).toContain(`Recorded: Soup, ${servings} servings.`);
  expect(house.say('/recipe soup')).toContain('2. 2 eggs');
  expect(house.say('/recipe soup')).not.toContain('3. ');
});

test('what feeds a crowd is asked for a number, and is no ingredient', () => {
  const answer = openTestHouse().say(`/recipe Soup\nServes a crowd${rest}`);
  expect(answer).toContain('I read "Soup" with 2 ingredient lines, but not how many servings');
});

test('a food in the yield is read, the dish itself is not', () => {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no peanuts, no egg');
  expect(house.say('/recipe Bites, 6 servings\nMakes 12 peanut bites\n200 g oats')).toContain('peanut');
  expect(house.say('/recipe Rounds, 6 servings\nMakes 12 muffins\n200 g oats\n100 g honey')).toContain(
    'Noa: clear',
  );
});
