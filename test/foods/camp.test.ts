// Witness: what each wording means by its plain words, by hand; the laws hold for any food of the kitchen.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { campTold } from '#foods/camp.ts';
import { kitchen } from '#foods/kitchen.ts';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';
import { foodTablePath } from '../food-table.ts';

const foods = openFoods(foodTablePath);

test.each([
  ['at camp: 20 g butter', 'all', '20 g butter'],
  ['20 g butter (at camp)', 'all', '20 g butter'],
  ['20 g butter, at camp', 'all', '20 g butter'],
  ['Add at camp: 20 g butter', 'all', '20 g butter'],
  ['add 20 g butter at camp', 'all', '20 g butter'],
  ['20 g butter, to be added at camp', 'all', '20 g butter'],
  ['camp: 30 g parmesan', 'all', '30 g parmesan'],
  ['20 g butter - camp', 'all', '20 g butter'],
  ['20 g butter @ camp', 'all', '20 g butter'],
  ['20 g butter for camp only', 'all', '20 g butter'],
  ['stir in 20 g cheese at camp', 'all', '20 g cheese'],
  ['olive oil, drizzled on at the hut', 'all', 'olive oil'],
  ['20 g cheese when rehydrating', 'all', '20 g cheese'],
  ['20 g fresh coriander at camp', 'all', '20 g fresh coriander'],
  ['add 20 g packed brown sugar at camp', 'all', '20 g packed brown sugar'],
  ['take along 20 g butter for the trip', 'all', '20 g butter'],
  ['a slice of bread (30 g each) at camp', 'all', 'a slice of bread (30 g each)'],
  ['at camp: 20 g butter each', 'each', '20 g butter'],
  ['20 g butter per serving (added at camp)', 'each', '20 g butter'],
  ['on the trail: 2 tbsp olive oil for each person', 'each', '2 tbsp olive oil'],
  ['1 tortilla per person at the hut', 'each', '1 tortilla'],
  ['30 g butter in the pot', 'pot', '30 g butter'],
  ['At camp:', 'all', ''],
  ['To add at camp', 'all', ''],
  ['At camp, per person:', 'each', ''],
  ['For the trail (each):', 'each', ''],
  ['100 g trail mix', null, '100 g trail mix'],
  ['for the trail mix: 50 g raisins', null, 'for the trail mix: 50 g raisins'],
  ['camp coffee 20 g', null, 'camp coffee 20 g'],
])('%s', (typed, camp, rest) => {
  expect(campTold(typed)).toEqual({ camp, rest, isDivided: false });
});

test.each([
  '40 g butter, half at camp',
  'half of it at camp: 40 g butter',
  '40 g butter in the pot and 20 g at camp',
  '20 g butter, not at camp',
  '100 g cheese, the rest at camp',
])('%s: how much goes where is asked', (typed) => {
  const { is, question, grams } = resolveLine(typed, foods);
  expect({ is, question }).toEqual({
    is: 'asked',
    question: expect.stringContaining('Give each a line of its own'),
  });
  expect(grams === null || is === 'asked').toBe(true);
});

const wordings = [
  (food: string) => `at camp: ${food}`,
  (food: string) => `${food} (at camp)`,
  (food: string) => `${food}, added at camp`,
  (food: string) => `add ${food} at camp`,
  (food: string) => `On the trail: ${food}`,
  (food: string) => `${food} - camp`,
];

test('any food of the kitchen is the same food at camp: grams, contents, questions', () => {
  fc.assert(
    fc.property(fc.constantFrom(...kitchen()), fc.constantFrom(...wordings), ({ called }, wording) => {
      const plain = `20 g ${called}`;
      const { typed: _, camp, choices: _some, ...at } = resolveLine(wording(plain), foods);
      const { typed: _plain, camp: none, choices: _others, ...without } = resolveLine(plain, foods);
      expect([camp, none]).toEqual(['all', null]);
      expect(at).toEqual(without);
    }),
    { numRuns: 150 },
  );
});
