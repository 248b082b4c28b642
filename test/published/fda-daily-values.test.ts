import { expect, test } from 'vitest';
import { dailyValue, levelOf, percentDailyValue } from '#core/nutrition.ts';
import { near } from './near.ts';

// U.S. FDA, Sodium in Your Diet; reference values of the 2016 final rule (read in a copy).
test.each([
  { row: 'i-dv-sodium', of: 'sodiumMg', published: 2300, within: 0, witness: 'read' },
  { row: 'i-dv-total-fat', of: 'fatG', published: 78, within: 0, witness: 'read' },
  { row: 'i-dv-saturated-fat', of: 'saturatedFatG', published: 20, within: 0, witness: 'read' },
  { row: 'i-dv-carbohydrate', of: 'carbohydrateG', published: 275, within: 0, witness: 'read' },
  { row: 'i-dv-fiber', of: 'fibreG', published: 28, within: 0, witness: 'read' },
  { row: 'i-dv-added-sugars', of: 'addedSugarsG', published: 50, within: 0, witness: 'read' },
  { row: 'i-dv-protein', of: 'proteinG', published: 50, within: 0, witness: 'read' },
  { row: 'i-dv-potassium', of: 'potassiumMg', published: 4700, within: 0, witness: 'read' },
] as const)('$row: $of', ({ of, ...row }) => {
  near(dailyValue[of], row);
});

// FDA consumer release of 16 February 2021 (read): percent of the daily value.
test.each([
  { row: 'i-pdv-115', sodiumMg: 115, published: 5, within: 0.05, witness: 'read' },
  { row: 'i-pdv-460', sodiumMg: 460, published: 20, within: 0.05, witness: 'read' },
  { row: 'i-pdv-140', sodiumMg: 140, published: 6.09, within: 0.05, witness: 'read' },
  { row: 'i-pdv-690', sodiumMg: 690, published: 30, within: 0.05, witness: 'read' },
  { row: 'i-pdv-0', sodiumMg: 0, published: 0, within: 0.05, witness: 'read' },
])('$row: $sodiumMg mg of sodium', ({ sodiumMg, ...row }) => {
  near(percentDailyValue('sodiumMg', sodiumMg), row);
});

// The same release: 5 % or less is low, 20 % or more is high.
test.each([
  { row: 'i-pdv-class-115', sodiumMg: 115, published: 'low', witness: 'read' },
  { row: 'i-pdv-class-460', sodiumMg: 460, published: 'high', witness: 'read' },
  { row: 'i-pdv-class-140', sodiumMg: 140, published: 'neither', witness: 'read' },
  { row: 'i-pdv-class-690', sodiumMg: 690, published: 'high', witness: 'read' },
  { row: 'i-pdv-class-0', sodiumMg: 0, published: 'low', witness: 'read' },
])('$row: $sodiumMg mg a serving is $published', ({ sodiumMg, published }) => {
  expect(levelOf('sodiumMg', sodiumMg)).toBe(published);
});
