import { describe, expect, test } from 'vitest';
import { bestByDay } from '#core/bestby.ts';
import { fatOfSolids, sealingPlan } from '#core/sealing-plan.ts';
import { totalsOf } from '#core/solids.ts';

// The parts are held elsewhere against their sources (Choi & Okos, Robin, composition of air, the policy of
// core/bestby.ts); here they are put together, worked by hand.
const nothing = {
  waterG: 0,
  kcal: 0,
  proteinG: 0,
  fatG: 0,
  carbohydrateG: 0,
  fibreG: 0,
  ashG: 0,
  sodiumMg: 0,
};
const starch = totalsOf([
  { grams: 190, food: 'starch', per100: { ...nothing, carbohydrateG: 100 } },
  { grams: 10, food: 'oil', per100: { ...nothing, fatG: 100 } },
]);
const batch = { dryG: 200, totals: starch };
const told = {
  volumeMl: 1000,
  withAbsorber: true,
  isDry: true,
  absorbersMl: [100, 300, 500],
  absorberSafety: 1.5,
  altitudeM: 0,
  storageC: 20,
  sealedOn: '2027-04-15',
};

describe('a pouch of 100 g', () => {
  test('oxygen, absorber, date', () => {
    const plan = sealingPlan(100, batch, told);
    // At 20 °C starch 1.5929 and fat 0.9172 g/ml: 95 / 1.5929 + 5 / 0.9172 = 65.1 ml; 20.95 % of 934.9 ml is oxygen.
    expect(plan.oxygenMl).toBeCloseTo(0.2095 * (1000 - 95 / 1.59289 - 5 / 0.917239), 2);
    expect(plan.absorber).toMatchObject({ sizeMl: 300, count: 1 });
    expect(plan).toMatchObject({
      fatFraction: 0.05,
      bestByOn: '2030-03-31',
      noAbsorber: false,
      storageC: 20,
    });
  });
  test('thinner air holds less oxygen: 75 % of it at 2400 m', () => {
    const high = sealingPlan(100, batch, { ...told, altitudeM: 2400 });
    expect(high.oxygenMl! / sealingPlan(100, batch, told).oxygenMl!).toBeCloseTo(0.7465, 3);
    expect(high.absorber).toMatchObject({ sizeMl: 300 });
  });
  test('food that is not shown to be dry gets neither absorber nor date', () => {
    expect(sealingPlan(100, batch, { ...told, isDry: false })).toMatchObject({
      absorber: null,
      bestByOn: null,
    });
  });
  test('without an absorber the date is a quarter, 6 months at most', () => {
    expect(sealingPlan(100, batch, { ...told, withAbsorber: false })).toMatchObject({
      absorber: null,
      noAbsorber: true,
      bestByOn: '2027-09-30',
    });
  });
  test('a pouch of unknown size has no oxygen to speak of, and a house without absorbers gets none', () => {
    expect(sealingPlan(100, batch, { ...told, volumeMl: null })).toMatchObject({
      oxygenMl: null,
      absorber: null,
    });
    expect(sealingPlan(100, batch, { ...told, absorbersMl: [] }).absorber).toBeNull();
  });
  test('of unknown food 1.45 g/ml and the least keeping row are taken', () => {
    const plan = sealingPlan(100, { dryG: 200, totals: totalsOf([]) }, told);
    expect(plan.oxygenMl).toBeCloseTo(0.2095 * (1000 - 100 / 1.45), 6);
    expect(plan).toMatchObject({ fatFraction: 1, bestByOn: '2027-07-31' });
  });
  test('water left in dry food makes it less dense', () => {
    const damp = sealingPlan(100, { dryG: 250, totals: starch }, told);
    expect(damp.oxygenMl!).toBeLessThan(sealingPlan(100, batch, told).oxygenMl!);
  });
  test('food that is larger than its pouch is refused', () => {
    expect(() => sealingPlan(100, batch, { ...told, volumeMl: 50 })).toThrow(
      expect.objectContaining({ code: 'food-does-not-fit' }),
    );
  });
});

test('fat of the solids', () => {
  expect(fatOfSolids(starch)).toBe(0.05);
  expect(fatOfSolids({ fatG: 3, solidsG: 2 })).toBe(1);
  expect(fatOfSolids({ fatG: 0, solidsG: 0 })).toBeUndefined();
});

// Counted by hand in the calendar: the end of the last whole month within the months.
test.each([
  ['2027-04-15', 36, '2030-03-31'],
  ['2027-04-30', 36, '2030-04-30'],
  ['2027-01-31', 1, '2027-02-28'],
  ['2028-01-31', 1, '2028-02-29'],
  ['2027-12-01', 1, '2027-12-31'],
  ['2027-04-15', 4.5, '2027-07-31'],
  ['2027-04-15', 4.6, '2027-08-31'],
  ['2027-04-15', 0.1, '2027-04-18'],
  ['2027-04-15', 0.5, '2027-04-30'],
  ['2027-04-15', 0, '2027-04-15'],
  ['2027-04-15', 0.9, '2027-04-30'],
])('%s and %f months: %s', (sealedOn, months, day) => expect(bestByDay(sealedOn, months)).toBe(day));
