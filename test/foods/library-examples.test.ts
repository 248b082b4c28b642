import { expect, test } from 'vitest';
import { readLine } from '#foods/read.ts';
import { readNumber } from '#words/numbers.ts';

// The registry packages parse-ingredient 3.0.0 and numeric-quantity 3.3.3 (both MIT licence, Jake Boone) carry no
// test tables: their archives hold the built files, a licence and a README. The rows below are the examples of
// those READMEs, as printed there, quantity for quantity; where the reader here differs, the reason stands beside.

/** Text, the value printed in the README of numeric-quantity, rounded there to three places. */
const numbers: readonly (readonly [typed: string, printed: number])[] = [
  ['1 1/2', 1.5],
  ['2 2/3', 2.667],
  ['10½', 10.5],
  ['1/3', 0.333],
  ['1 2/3', 1.667],
  ['½', 0.5],
  ['100', 100],
];

test.each(numbers)('the number %s', (typed, printed) => {
  const read = readNumber(typed, 0)!;
  expect(Number(read.value.toFixed(3))).toBe(printed);
  expect(read.to).toBe(typed.length);
});

/** Text, the value printed there, the value here, why. */
const otherNumbers: readonly (readonly [string, number | null, number | undefined, string])[] = [
  [
    '1,5',
    15,
    1.5,
    'a comma before fewer than three figures is decimal: 15 kg of flour for 1.5 kg spoils a pot',
  ],
  ['1.000,50', 1000.5, 1000.5, 'the same, without being told which mark is decimal'],
  ['9007199254740993', 9007199254740992, 9007199254740992, 'the same: no ingredient is counted so far'],
  ['100abc', null, 100, 'the figure is read and what follows is quoted back or taken as the food'],
  ['50%', null, 50, 'the sign is left for the part that takes percentages'],
  ['$100', null, undefined, 'the same: no number starts there'],
  ['MCCXIV', 1214, undefined, 'no cook writes amounts in Roman figures; IV is a word here'],
  ['xii', 12, undefined, 'as above'],
];

test.each(otherNumbers)('%s is %j there and %j here: %s', (typed, _printed, here) => {
  expect(readNumber(typed, 0)?.value).toBe(here);
});

/** Text, quantities and unit printed in the README of parse-ingredient, words left for the food. */
const lines: readonly (readonly [
  typed: string,
  printed: readonly number[],
  unit: string | null,
  words: string,
])[] = [
  ['1 1/2 cups sugar', [1.5], 'cup', 'sugar'],
  ['2/3 cup flour', [0.667], 'cup', 'flour'],
  ['1 tsp baking powder', [1], 'tsp', 'baking powder'],
  ['Ripe tomato x2', [2], null, 'Ripe tomato'],
  ['1 c sugar', [1], 'cup', 'sugar'],
  ['1 cup flour', [1], 'cup', 'flour'],
  ['2 tbsp sugar', [2], 'tbsp', 'sugar'],
  ['1 11/16 cups sugar', [1.688], 'cup', 'sugar'],
];

test.each(lines)('the line %s', (typed, printed, unit, words) => {
  const read = readLine(typed);
  expect(read.amounts.map(({ value }) => Number(value.toFixed(3)))).toEqual(printed);
  expect(read.amounts[0]!.unit?.name ?? null).toBe(unit);
  expect(read.words).toBe(words);
});

test('a heading is one', () => expect(readLine('For cake:').is).toBe('heading'));

test('where the lines are read otherwise, and why', () => {
  // There: quantity 1, quantity2 2. Here a range becomes its midpoint, and says so.
  expect(readLine('1-2 pears')).toMatchObject({ amounts: [{ value: 1.5 }], remarks: ['midpoint of 1 to 2'] });
  // There: no quantity, the dash part of the description. Here the amount is kept and asked about.
  expect(readLine('-2 cups sugar')).toMatchObject({ amounts: [{ value: -2 }], negative: true });
  // There and here: a division by zero is no amount.
  expect(readLine('1/0 cups sugar').amounts.every(({ value }) => Number.isFinite(value))).toBe(true);
  // There: units of one's own are given in code. Here a household teaches them: /our bucket is 10 l.
  expect(readLine('2 buckets of widgets')).toMatchObject({ amounts: [{ value: 2, unit: null }] });
  // There 'of' stays with the description when asked; here it is dropped.
  expect(readLine('1 cup of sugar').words).toBe('sugar');
  // There 'large' stays in the description; here it is a size, which chooses the weight.
  expect(readLine('2 large eggs')).toMatchObject({ amounts: [{ value: 2 }], size: 'large', words: 'eggs' });
});
