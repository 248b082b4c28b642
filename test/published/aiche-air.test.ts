import { expect, test } from 'vitest';
import { pressurePa, seaLevelPa } from '#core/boiling.ts';
import { chooseAbsorber, freeAirMl, oxygenMl, oxygenOfAirFraction } from '#core/oxygen.ts';
import { near } from './near.ts';

// AIChE CCPS glossary: oxygen in dry air, ml per ml.
test('e-o2-fraction', () => {
  near(oxygenOfAirFraction, { row: 'e-o2-fraction', published: 0.2095, within: 0.0002, witness: 'read' });
});

// Worked from 0.2095: the upper bound, no food in it.
test.each([
  {
    row: 'e-empty-pint',
    containerMl: 473.176,
    published: 99.1,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
  {
    row: 'e-empty-quart',
    containerMl: 946.353,
    published: 198.3,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
  {
    row: 'e-empty-half_gallon',
    containerMl: 1892.706,
    published: 396.5,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
  {
    row: 'e-empty-gallon',
    containerMl: 3785.412,
    published: 793,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
])('$row: an empty container holds $published ml of oxygen', ({ containerMl, ...row }) => {
  near(oxygenMl(freeAirMl(containerMl, 0, 1)), row);
});

// Worked from 0.2095 and the food's own volume, ml of oxygen.
test.each([
  {
    row: 'e-pouch-1000-120',
    pouchMl: 1000,
    foodG: 120,
    gPerMl: 1.45,
    published: 192.2,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
  {
    row: 'e-pouch-500-60',
    pouchMl: 500,
    foodG: 60,
    gPerMl: 1.45,
    published: 96.1,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
  {
    row: 'e-pouch-1900-200',
    pouchMl: 1900,
    foodG: 200,
    gPerMl: 1.45,
    published: 369.2,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
  {
    row: 'e-pouch-950-125',
    pouchMl: 950,
    foodG: 125,
    gPerMl: 1.4,
    published: 180.3,
    withinFraction: 0.003,
    witness: 'read, worked',
  },
])('$row: $foodG g in $pouchMl ml', ({ pouchMl, foodG, gPerMl, ...row }) => {
  near(oxygenMl(freeAirMl(pouchMl, foodG, gPerMl)), row);
});

// Worked: capacity is ml of oxygen; exactly enough is enough.
test.each([
  {
    row: 'e-count-192.2-100',
    neededMl: 192.2,
    sizeMl: 100,
    published: 2,
    within: 0,
    witness: 'read, worked',
  },
  {
    row: 'e-count-192.2-300',
    neededMl: 192.2,
    sizeMl: 300,
    published: 1,
    within: 0,
    witness: 'read, worked',
  },
  { row: 'e-count-300-300', neededMl: 300, sizeMl: 300, published: 1, within: 0, witness: 'read, worked' },
  { row: 'e-count-301-300', neededMl: 301, sizeMl: 300, published: 2, within: 0, witness: 'read, worked' },
  { row: 'e-count-787-300', neededMl: 787, sizeMl: 300, published: 3, within: 0, witness: 'read, worked' },
])('$row: $neededMl ml of oxygen take $published of $sizeMl ml', ({ neededMl, sizeMl, ...row }) => {
  near(chooseAbsorber(neededMl, [sizeMl], 1).packs[0]!.count, row);
});

// Utah State University Extension: one absorber of 300 ml for a container of up to a U.S. gallon of dense dry food.
// Worked: so much air it can clear, and the void of a gallon where the rule ends.
test('e-usu: what the one-per-gallon rule implies', () => {
  const rule = { row: 'e-usu-rule', published: 300, within: 0, witness: 'read' };
  const airMl = rule.published / oxygenMl(1);
  near(airMl, { row: 'e-usu-implied-air', published: 1432, within: 2, witness: 'read, worked' });
  near(airMl / 3785.41, {
    row: 'e-usu-implied-void',
    published: 0.378,
    within: 0.002,
    witness: 'read, worked',
  });
  expect(chooseAbsorber(oxygenMl(3785.41 * 0.37), [rule.published], 1).packs[0]!.count).toBe(1);
});

// Worked: a gallon of freeze-dried pepper, 0.981 air, holds 2.6 times what that rule clears.
test('e-gallon-fd-peppers', () => {
  near(oxygenMl(3785.41 * 0.981), {
    row: 'e-gallon-fd-peppers',
    published: 778,
    within: 6,
    witness: 'from memory, worked',
  });
  expect(chooseAbsorber(oxygenMl(3785.41 * 0.981), [300], 1).packs[0]!.count).toBe(3);
});

// U.S. Standard Atmosphere 1976 (read): ml of oxygen at sea-level pressure, same temperature.
test.each([
  { row: 'e-alt-1500', altitudeM: 1500, published: 139.9, withinFraction: 0.003, witness: 'read' },
  { row: 'e-alt-3000', altitudeM: 3000, published: 116, withinFraction: 0.003, witness: 'read' },
])('$row: sealed at $altitudeM m, 800 ml of air', ({ altitudeM, ...row }) => {
  near(oxygenMl(800, pressurePa(altitudeM) / seaLevelPa), row);
});
