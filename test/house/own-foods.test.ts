import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';

// Figures of our own invention; energy adds up by Annex XIV.
const panel =
  '/our vegetable stock cube per 100 g: energy 1142 kJ / 275 kcal, fat 20 g, of which saturates 12 g, carbohydrate 14 g, of which sugars 5 g, fibre 0.5 g, protein 8 g, salt 48 g';

test('a recipe counts the stock cube that was bought, not that of the table', () => {
  const house = openTestHouse();
  expect(house.say(panel)).toContain(
    '275 kcal, 20 g fat, 14.5 g carbohydrate with its fibre, 8 g protein, 19200 mg sodium',
  );
  // 20 g of it: 55 kcal and 3840 mg sodium in the pot of 2.
  const answer = house.say('/recipe Broth, 2 servings: 20 g vegetable stock cube');
  expect(answer).toContain('28 kcal, 1920 mg sodium');
  expect(answer).toContain('counted by its panel');
  expect(house.say('/our')).toContain('vegetable stock cube, 100 g: 275 kcal');
});

test('recipes recorded before are offered it, and undo takes it back', () => {
  const house = openTestHouse();
  house.say('/recipe Broth, 2 servings: 20 g vegetable stock cube');
  house.say(panel);
  expect(house.say('/recipe broth')).not.toContain('1920 mg');
  house.say('/our vegetable stock cube packet in broth');
  expect(house.say('/recipe broth')).toContain('1920 mg sodium');
  house.say('/undo');
  expect(house.say('/recipe broth')).not.toContain('1920 mg');
  house.say(panel);
  expect(house.press(1)).toContain('Broth, line 1');
  house.say('/our vegetable stock cube forget');
  expect(house.say('/recipe broth')).toContain('1920 mg sodium');
});

test('per serving and per 100 ml; the pack is a measure from then on', () => {
  const house = openTestHouse();
  expect(
    house.say(
      '/our oat milk per 100 ml: energy 190 kJ/46 kcal, fat 1.5 g, carbohydrate 6.7 g, fibre 0.8 g, protein 1 g, salt 0.1 g',
    ),
  ).toContain('100 ml were taken as 100 g');
  expect(
    house.say(
      '/our granola per serving (50 g): calories 230, total fat 8 g, sodium 150 mg, total carbohydrate 35 g, dietary fiber 4 g, protein 4 g, pack 500 g',
    ),
  ).toContain('A packet of it is 500 g');
  expect(house.say('/recipe G, 5 servings: 1 packet granola')).toContain('460 kcal');
});

test.each([
  ['more than the food', 'fat 60 g, carbohydrate 50 g, protein 8 g, salt 1 g', /more than the food/],
  [
    'energy that does not add up',
    'energy 100 kcal, fat 20 g, carbohydrate 14 g, protein 8 g, salt 1 g',
    /do not go with the rest/,
  ],
  ['a missing line', 'energy 100 kcal, fat 2 g, protein 8 g, salt 1 g', /nothing of carbohydrate/],
  [
    'a word that is not understood',
    'fat 2 g, gronk 4 g, carbohydrate 5 g, protein 8 g, salt 1 g',
    /could not place "gronk 4 g"/,
  ],
  ['a figure without its unit', 'fat 2, carbohydrate 5 g, protein 8 g, salt 1 g', /needs g or mg/],
])('%s is refused', (_, lines, says) => {
  const house = openTestHouse();
  house.say('/our');
  const before = house.dump();
  expect(house.say(`/our stock per 100 g: ${lines}`)).toMatch(says);
  expect(house.dump()).toBe(before);
});
