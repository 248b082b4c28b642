// Witness: what each wording says by its plain words, by hand.
import { expect, test } from 'vitest';
import { readBrought } from '#words/bring-parts.ts';

const read = (typed: string) => readBrought(typed, Date.parse('2026-05-01T09:00:00Z'), 'UTC');

test.each([
  ['6 oat bars 60 g', 6, '60 g', 'Oat bars'],
  ['6 x 60 g oat bars', 6, '60 g', 'Oat bars'],
  ['oat bars 6 x 60 g', 6, '60 g', 'Oat bars'],
  ['six oat bars, 60 g each', 6, '60 g', 'Oat bars'],
  ['6 oat bars, 360 g in all', 6, '60 g', 'Oat bars'],
  ['2 packs of 8 tortillas 62 g each', 16, '62 g', 'Tortillas'],
  ['a pack of 6 oat bars 60 g', 6, '60 g', 'Oat bars'],
  ['two boxes of 12 crackers 8 g each', 24, '8 g', 'Crackers'],
  ['a bag of coffee 250 g', 1, '250 g', 'Coffee'],
  ['olive oil 250 ml', 1, '250 ml', 'Olive oil'],
  ['a 200 g block of cheese', 1, '200 g', 'Cheese'],
  ['3 tins of tuna 112 g', 3, '112 g', 'Tuna'],
  ['40 g jerky x 4', 4, '40 g', 'Jerky'],
  ['1,5 kg muesli', 1, '1.5 kg', 'Muesli'],
])('%s', (typed, count, each, name) => {
  expect(read(typed)).toMatchObject({ count, each, name });
});

test.each([
  ['6 oat bars 60 g 250 kcal 90 mg sodium', { kcal: 250, sodiumMg: 90 }],
  ['6 oat bars 60 g, energy 250 kcal each, sodium: 90 mg', { kcal: 250, sodiumMg: 90 }],
  ['6 oat bars 60 g 0.5 g salt', { kcal: null, sodiumMg: 200 }],
  ['6 oat bars 60 g 1046 kJ/250 kcal', { kcal: 250 }],
  ['6 oat bars 60 g, protein 8 g, fat 11 g, 30 g carbs', { proteinG: 8, fatG: 11, carbohydrateG: 30 }],
])('%s: figures of one', (typed, figures) => {
  const told = read(typed);
  expect(told.name).toBe('Oat bars');
  for (const [key, value] of Object.entries(figures))
    if (value === null) expect(told.figures[key as 'kcal']).toBeNull();
    else expect(told.figures[key as 'kcal']).toBeCloseTo(value, 0);
});

test.each([
  ['bars 60 g, best by March', '2027-03-31'],
  ['bars 60 g best before June', '2026-06-30'],
  ['bars 60 g, bb 2027-03', '2027-03-31'],
  ['bars 60 g, use by 15 March 2027', '2027-03-15'],
  ['bars 60 g, best by March 15 2027', '2027-03-15'],
  ['bars 60 g, best by 15.3.2027', '2027-03-15'],
  ['bars 60 g, expires 03/2027', '2027-03-31'],
  ['bars 60 g, good until the end of nothing', 'refused'],
  ['bars 60 g, best by soon', 'refused'],
  ['bars 60 g, best by 31.2.2027', 'refused'],
  ['bars 60 g', null],
])('%s', (typed, day) => {
  if (day === 'refused') expect(() => read(typed)).toThrow();
  else expect(read(typed)).toMatchObject({ bestBy: day, name: 'Bars', each: '60 g' });
});

test.each([
  ['6 nut bars 40 g each, contain peanuts, best by March', 'contain peanuts'],
  ['bars 60 g contains milk, soya. may contain nuts', 'contains milk, soya. may contain nuts'],
  ['bars 60 g, no egg, gluten-free', 'no egg; gluten-free'],
  ['bars 60 g, vegan', 'vegan'],
  ['bars 60 g contains oats, 250 kcal each', 'contains oats'],
  ['vegan cheese 100 g', ''],
])('%s: the packet says', (typed, statement) => {
  expect(read(typed).statement).toBe(statement);
});

test('a ready meal: water, servings, what it is for', () => {
  expect(read('Trail lasagne 130 g, needs 350 ml boiling water, serves 2, for dinner')).toMatchObject({
    name: 'Trail lasagne', waterMl: 350, servings: 2, uses: ['main'], each: '130 g', count: 1,
  }); // prettier-ignore
  expect(read('10 sachets of hot chocolate 28 g with 200 ml hot water as a drink')).toMatchObject({
    name: 'Hot chocolate', count: 10, waterMl: 200, uses: ['drink'],
  }); // prettier-ignore
});

test('a panel below, in the order of the EU; what a piece weighs may stand below it', () => {
  const told = read(
    'Trail curry\nNutrition information per 100 g\nEnergy 1700 kJ/405 kcal\nFat 12 g\nof which saturates 4 g\nCarbohydrate 58 g\nFibre 5 g\nProtein 14 g\nSalt 3,1 g\n130 g\ncontains mustard, milk',
  );
  expect(told).toMatchObject({ name: 'Trail curry', each: '130 g', statement: 'contains mustard, milk' });
  expect(told.panel?.panel).toMatchObject({ ofG: 100, kcal: 405, sodiumMg: 1240, fatG: 12 });
});

test.each([
  ['6 oat bars 60 g, 1.20 EUR each', 1.2, 'EUR'],
  ['6 oat bars 60 g, €1,20 each', 1.2, 'EUR'],
  ['6 oat bars 60 g €7.20 in all', 1.2, 'EUR'],
  ['6 oat bars 60 g at $1.20', 1.2, 'USD'],
])('%s: the price of one', (typed, amount, currency) => {
  const told = read(typed);
  expect(told).toMatchObject({ name: 'Oat bars', each: '60 g', count: 6, price: { currency } });
  expect(told.price!.amount).toBeCloseTo(amount, 9);
});
