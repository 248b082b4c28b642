// Witness: the plain meaning of each line, by hand.
import { expect, test } from 'vitest';
import { frameOf } from '#foods/frame.ts';

test.each([
  ['Prep 15 min', null],
  ['Prep: 15 min | Cook: 40 min', null],
  ['Cook 40 min', null],
  ['Total time 1 h', null],
  ['Total time: 1 hr 10 mins', null],
  ['Ready in 35 minutes', null],
  ['Soak overnight', null],
  ['Difficulty: easy', null],
  ['Serves 6 • Cook 40 min', '6'],
  ['Prep time 15 min, serves 4-6', '4-6'],
  ['Serves 4 to 6', '4-6'],
  ['Yield: 4', '4'],
  ['Yields about 4 portions', '4'],
  ['for 6', '6'],
  ['For 4 people', '4'],
  ['6 portions', '6'],
  ['Servings: 8', '8'],
  ['(serves four)', 'four'],
  ['Cook 40 min for 6', '6'],
] as const)('%s', (line, servings) => {
  expect(frameOf(line)).toEqual({ servings, makes: null });
});

test.each([
  ['Makes 12 muffins', { typed: '12 muffins', pieces: 12, ml: null }],
  ['Makes about 2 dozen', { typed: 'about 2 dozen', pieces: 24, ml: null }],
  ['Makes: 8 rolls', { typed: '8 rolls', pieces: 8, ml: null }],
  ['Makes about 1.5 litres', { typed: 'about 1.5 litres', pieces: null, ml: 1500 }],
  ['Yield: 1.2 kg', { typed: '1.2 kg', pieces: null, ml: 1200 }],
] as const)('%s tells no servings', (line, makes) => {
  expect(frameOf(line)).toEqual({ servings: null, makes });
});

test.each(['4 carrots', '1 l stock', '2 hearts of romaine', 'For the sauce:', 'for the base', '1 serving rice', '4 people carriers', '2 medium eggs', '1 hard-boiled egg', '6 ready-made pancakes', '5 g salt', 'Serves: rice', '1 cup', '2 kg', 'a handful of prep salad', ''])(
  '%j is no frame',
  (line) => expect(frameOf(line)).toBeUndefined(),
); // prettier-ignore
