import { expect, test } from 'vitest';
import {
  type Kept,
  keepsMonths,
  monthsUntilUsed,
  planningQ10,
  q10,
  q10FromArrhenius,
  shelfMonths,
} from '#core/bestby.ts';
import { celsiusFromF } from '#core/units.ts';
import { near } from './near.ts';

// Labuza & Schmidl (read in a copy of the passage): 20 weeks at 20 °C, 10 at 30 °C.
test('f-q10-def', () => {
  near(q10(20, 20, 10, 30), { row: 'f-q10-def', published: 2, within: 1e-9, witness: 'read' });
});

// The article's table of weeks at 70 and 100 °F; ratio worked.
test.each([
  { row: 'f-70-100f-q2', q: 2, published: 3.175, within: 0.005, witness: 'read, worked' },
  { row: 'f-70-100f-q3', q: 3, published: 6.24, within: 0.005, witness: 'read, worked' },
  { row: 'f-70-100f-q4', q: 4, published: 10.079, within: 0.005, witness: 'read, worked' },
])('$row: Q10 $q, life at 70 °F over life at 100 °F', ({ q, ...row }) => {
  near(shelfMonths(1, celsiusFromF(100), celsiusFromF(70), q), row);
});

// Worked from that definition.
test.each([
  {
    row: 'f-shelf-12-20-30-2',
    months: 12,
    fromC: 20,
    toC: 30,
    q: 2,
    published: 6,
    withinFraction: 0.002,
    witness: 'read, worked',
  },
  {
    row: 'f-shelf-12-20-10-2',
    months: 12,
    fromC: 20,
    toC: 10,
    q: 2,
    published: 24,
    withinFraction: 0.002,
    witness: 'read, worked',
  },
  {
    row: 'f-shelf-24-15-35-1.8',
    months: 24,
    fromC: 15,
    toC: 35,
    q: 1.8,
    published: 7.41,
    withinFraction: 0.002,
    witness: 'read, worked',
  },
  {
    row: 'f-shelf-60-21-32-2.5',
    months: 60,
    fromC: 21,
    toC: 32,
    q: 2.5,
    published: 21.9,
    withinFraction: 0.002,
    witness: 'read, worked',
  },
])('$row: $months months at $fromC °C are $published at $toC °C', ({ months, fromC, toC, q, ...row }) => {
  near(shelfMonths(months, fromC, toC, q), row);
});

// University of Georgia Cooperative Extension: dried fruit keeps 12 months at 60 °F, 6 at 80 °F; Q10 worked.
test('f-implied-uga', () => {
  near(q10(12, celsiusFromF(60), 6, celsiusFromF(80)), {
    row: 'f-implied-uga',
    published: 1.866,
    within: 0.005,
    witness: 'read, worked',
  });
});

// Arrhenius form from memory; worked for 85 kJ/mol at 20 °C.
test('f-arrhenius', () => {
  near(q10FromArrhenius(85, 20), {
    row: 'f-arrhenius',
    published: 3.159,
    within: 0.01,
    witness: 'from memory, worked',
  });
});

// Time and temperature add up; from memory, worked: 6 months at 15 °C, then 3 at 30 °C, of 24 at 20 °C, Q10 2.
test('f-segments', () => {
  const spells = [
    { months: 6, tempC: 15 },
    { months: 3, tempC: 30 },
  ];
  // From then on at 20 °C what is left lasts 24 months times the share that is not used.
  const months = monthsUntilUsed(spells, 20, (tempC) => shelfMonths(24, 20, tempC, 2));
  const used = 1 - (months - 9) / 24;
  near(used, { row: 'f-segments', published: 0.4268, within: 0.002, witness: 'from memory, worked' });
});

// Labuza 1982, from memory: Q10 of dehydrated food lies between 1.5 and 10. The planning value has to lie in it.
test('f-range-dehydrated: the planning value lies in the published band', () => {
  const low = 1.5; // f-range-dehydrated-low
  const high = 10; // f-range-dehydrated-high
  expect(planningQ10).toBeGreaterThan(low);
  expect(planningQ10).toBeLessThan(high);
});

// University of Georgia (read): air-dried fruit 12 months at 60 °F and 6 at 80 °F. The policy's own figure for the
// leanest food falls by about as much between those temperatures.
test('d-dry-fruit: warmer storage shortens the plan as it does for dried fruit', () => {
  const lean: Kept = {
    material: 'foil',
    areaCm2: null,
    isMeasuredDry: false,
    fatFraction: 0,
    absorber: true,
    spareMl: null,
  };
  const cool = keepsMonths(lean, celsiusFromF(60));
  const warm = keepsMonths(lean, celsiusFromF(80));
  expect(cool / warm).toBeGreaterThan(12 / 6);
  expect(cool / warm).toBeLessThan(1.1 * (12 / 6));
});
