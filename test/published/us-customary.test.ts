import { expect, test } from 'vitest';
import { converted, energyKcal, lengthM, massG, volumeMl } from '#core/units.ts';
import { near } from './near.ts';

// NIST exact values, read as tabulated on pages that credit them: 1 gallon = 231 cubic inches, 1 inch = 2.54 cm.
test.each([
  { row: 'a-vol-tsp', unit: 'tsp', published: 4.9289215938, withinFraction: 1e-6, witness: 'read' },
  { row: 'a-vol-tbsp', unit: 'tbsp', published: 14.7867647812, withinFraction: 1e-6, witness: 'read' },
  { row: 'a-vol-fl_oz', unit: 'fl oz', published: 29.5735295625, withinFraction: 1e-6, witness: 'read' },
  { row: 'a-vol-cup', unit: 'cup', published: 236.5882365, withinFraction: 1e-6, witness: 'read' },
  { row: 'a-vol-pint', unit: 'pint', published: 473.176473, withinFraction: 1e-6, witness: 'read' },
  { row: 'a-vol-quart', unit: 'quart', published: 946.352946, withinFraction: 1e-6, witness: 'read' },
  { row: 'a-vol-gallon', unit: 'gallon', published: 3785.411784, withinFraction: 1e-6, witness: 'read' },
])('$row: one $unit is $published ml', ({ unit, ...row }) => {
  near(volumeMl(unit), row);
});

// J. Walker, Units and conversion factors; NIST weights. Avoirdupois pound, international foot, thermochemical calorie.
test.each([
  { row: 'a-mass-lb', from: 'lb', to: 'g', published: 453.59237, withinFraction: 1e-9, witness: 'read' },
  { row: 'a-mass-oz', from: 'oz', to: 'g', published: 28.349523125, withinFraction: 1e-9, witness: 'read' },
  {
    row: 'a-mass-kg-lb',
    from: 'kg',
    to: 'lb',
    published: 2.20462262185,
    withinFraction: 1e-8,
    witness: 'read',
  },
  { row: 'a-energy-kcal', from: 'kcal', to: 'kJ', published: 4.184, withinFraction: 1e-9, witness: 'read' },
  { row: 'a-length-ft', from: 'ft', to: 'm', published: 0.3048, withinFraction: 1e-9, witness: 'read' },
])('$row: one $from in $to', ({ from, to, ...row }) => {
  near(converted(1, from, to), row);
});

// NIST Office of Weights and Measures, kitchen equivalencies: rounded, so only met within the rounding of the card
// (10 ml, 1 g); the exact unit is what the sums use.
test.each([
  { row: 'a-nistk-third-cup', count: 1 / 3, of: 'cup', published: 80, within: 2, witness: 'read' },
  { row: 'a-nistk-quarter-lb', count: 1 / 4, of: 'lb', published: 114, within: 1, witness: 'read' },
  { row: 'a-nistk-quart', count: 1, of: 'quart', published: 950, within: 4, witness: 'read' },
])('$row: a $of on the card is rounded', ({ count, of, ...row }) => {
  near(count * (of === 'lb' ? massG(of) : volumeMl(of)), row);
});

// Definitions, from memory: Imperial gallon 4.54609 l (Weights and Measures Act 1985), pint an eighth and fluid ounce
// a 160th of it; stone 14 lb; mile 5280 ft; metric cup 250 ml.
test.each([
  { row: 'imperial pint', unit: 'imperial pint', published: 568.26125, within: 1e-9, witness: 'from memory' },
  {
    row: 'imperial fl oz',
    unit: 'imperial fl oz',
    published: 28.4130625,
    within: 1e-9,
    witness: 'from memory',
  },
  {
    row: 'imperial quart',
    unit: 'imperial quart',
    published: 1136.5225,
    within: 1e-9,
    witness: 'from memory',
  },
  {
    row: 'imperial gallon',
    unit: 'imperial gallon',
    published: 4546.09,
    within: 1e-9,
    witness: 'from memory',
  },
  { row: 'metric cup', unit: 'metric cup', published: 250, within: 0, witness: 'from memory' },
])('$row is $published ml', ({ unit, ...row }) => {
  near(volumeMl(unit), row);
});

test('stone and mile, from memory', () => {
  near(massG('st'), { row: 'stone', published: 6350.29318, within: 1e-9, witness: 'from memory' });
  near(lengthM('mi'), { row: 'mile', published: 1609.344, within: 1e-9, witness: 'from memory' });
});

// SI prefixes and the units accepted beside them, exact by definition; from memory.
test.each([
  { from: 'mg', to: 'g', published: 0.001 },
  { from: 'kg', to: 'g', published: 1000 },
  { from: 'l', to: 'ml', published: 1000 },
  { from: 'dl', to: 'ml', published: 100 },
  { from: 'cl', to: 'ml', published: 10 },
  { from: 'mm', to: 'm', published: 0.001 },
  { from: 'cm', to: 'm', published: 0.01 },
  { from: 'km', to: 'm', published: 1000 },
  { from: 'in', to: 'mm', published: 25.4 },
  { from: 'min', to: 's', published: 60 },
  { from: 'h', to: 's', published: 3600 },
  { from: 'day', to: 'h', published: 24 },
  { from: 'week', to: 'day', published: 7 },
])('a $from is $published $to', ({ from, to, published }) => {
  near(converted(1, from, to), { row: from, published, within: 0, witness: 'from memory' });
});

// The base units themselves: whatever a sum multiplies by a factor comes out in g, ml, m and kcal.
test('g, ml, m and kcal are the units the factors lead to', () => {
  expect([massG('g'), volumeMl('ml'), lengthM('m'), energyKcal('kcal')]).toEqual([1, 1, 1, 1]);
});
