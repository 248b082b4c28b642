import { expect, test } from 'vitest';
import { guessOccasions, type OccasionPart } from '#core/occasion-guess.ts';

// Witness: common practice, no source. What a family would say of such a dish.
const of = (parts: Readonly<Record<string, number>>): OccasionPart[] =>
  Object.entries(parts).map(([group, solidsG]) => ({ group, solidsG }));
const grain = 'Cereal Grains and Pasta';
const legumes = 'Legumes and Legume Products';
const vegetables = 'Vegetables and Vegetable Products';

test.each([
  ['oat porridge', {}, ['breakfast']],
  ['porridge with apples', {}, ['breakfast']],
  [
    'morning bowl',
    { 'Breakfast Cereals': 60, 'Fruits and Fruit Juices': 20, 'Dairy and Egg Products': 20 },
    ['breakfast'],
  ],
  ['strawberry crisps', { 'Fruits and Fruit Juices': 90 }, ['snack', 'sweet']],
  ['potato crisps', { [vegetables]: 90 }, ['snack']],
  ['apple rings', { 'Fruits and Fruit Juices': 95, Sweets: 5 }, ['snack', 'sweet']],
  ['rice pudding', { [grain]: 50, 'Dairy and Egg Products': 30, Sweets: 20 }, ['sweet']],
  ['peanut sauce', { [legumes]: 60, Sweets: 10 }, ['side']],
  ['saffron mash', { [vegetables]: 90 }, ['side']],
  ['mash with lentils', { [vegetables]: 50, [legumes]: 40 }, ['main']],
  ['plain rice', { [grain]: 100 }, ['side']],
  ['spinach', { [vegetables]: 30 }, ['side']],
  ['carrot soup', { [vegetables]: 100 }, ['main']],
  ['noodles with peanut sauce', { [grain]: 60, [legumes]: 35 }, ['main']],
  ['chickpea rice with spinach', { [grain]: 40, [legumes]: 45, [vegetables]: 15 }, ['main']],
  ['hot cocoa', {}, ['drink']],
  ['something new', {}, ['main']],
] as const)('%s', (name, parts, is) => expect(guessOccasions(name.split(' '), of(parts))).toEqual(is));

test('fats and spices tell nothing', () => {
  const bare = of({ 'Fruits and Fruit Juices': 50 });
  const rich = [...bare, ...of({ 'Fats and Oils': 200, 'Spices and Herbs': 10 })];
  expect(guessOccasions(['rings'], rich)).toEqual(guessOccasions(['rings'], bare));
});
