import { expect, test } from 'vitest';
import { resolveLine } from '#foods/line.ts';
import { untold } from '#foods/untold.ts';
import { openFoods } from '#store/foods.ts';

// What a careful cook would ask back: common practice, no source.
const table = openFoods(':memory:');
const lines = (...typed: string[]) => typed.map((line) => resolveLine(line, table));
const names = (text: string, ...typed: string[]) =>
  untold([text], lines(...typed)).map(({ called }) => called);

test.each<[string, string[], string[]]>([
  ['Stir in the peanut butter.', ['300 g rice'], ['peanut butter']],
  ['For the satay sauce', ['300 g rice'], ['satay sauce']],
  [
    'Fry the onions. Add the chicken and cook until the onion is soft.',
    ['2 onions', '600 g chicken thighs'],
    [],
  ],
  ['Melt the cheese into the sauce.', ['200 g cheddar, grated'], []],
  ['Cream the butter and sugar, then flour a board.', ['100 g butter', '100 g sugar', '200 g flour'], []],
  ['Toast the spices. Roll into balls. Mash with a fork, crumble over.', ['300 g lentils'], []],
  ['Serve with toast.', ['300 g lentils'], ['toast']],
  ['Season with salt and pepper, add boiling water.', ['300 g lentils'], []],
  ['Simmer the stew, stir the sauce, dress the salad.', ['300 g lentils'], []],
  [
    'Add cream. Scatter over the walnuts, and the coriander.',
    ['300 g lentils'],
    ['cream', 'walnut', 'coriander'],
  ],
  ['Use a nut-free oil.', ['1 tbsp olive oil'], []],
])('%s', (text, typed, expected) => expect(names(text, ...typed)).toEqual(expected));
