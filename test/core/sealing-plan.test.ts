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
// 100 g in the pouch were 300 g wet: 300 / 1.03 / 0.6 = 485.4 ml of room pressed flat.
const batch = { wetG: 600, dryG: 200, totals: starch };
const roomMl = 300 / 1.03 / 0.6;
/** At 20 °C starch 1.5929 and fat 0.9172 g/ml: 95 g and 5 g of them. */
const foodMl = 95 / 1.59289 + 5 / 0.917239;
const told = {
  pouchMl: 1000,
  measuredMl: null,
  material: 'foil' as const,
  areaCm2: 1200,
  isMeasuredDry: false,
  waterMl: 200,
  withAbsorber: true,
  fatFraction: null,
  isDry: true,
  absorbersMl: [100, 300, 500],
  absorberSafety: 1.5,
  altitudeM: 0,
  storageC: 20,
  sealedOn: '2027-04-15',
};

describe('a pouch of 100 g', () => {
  test('oxygen of the pressed pouch, absorber, date', () => {
    const plan = sealingPlan(100, batch, told);
    expect(plan.oxygenMl).toBeCloseTo(0.2095 * (roomMl - foodMl), 2);
    // 88 ml of oxygen, times 1.5: 132 ml.
    expect(plan.absorber).toMatchObject({ packs: [{ sizeMl: 300, count: 1 }] });
    expect(plan).toMatchObject({
      room: 'pressed',
      kept: { fatFraction: 0.05, absorber: true, material: 'foil' },
      bestByOn: '2029-03-31',
      noAbsorber: false,
      storageC: 20,
    });
  });
  test('never more room than the pouch has, and a jar has all of its own', () => {
    expect(sealingPlan(100, batch, { ...told, pouchMl: 400 })).toMatchObject({
      volumeMl: 400,
      room: 'pressed',
    });
    expect(sealingPlan(100, batch, { ...told, material: 'glass' })).toMatchObject({
      volumeMl: 1000,
      room: 'rigid',
    });
    expect(sealingPlan(100, batch, { ...told, material: 'glass', pouchMl: null }).room).toBe('pressed');
  });
  test('what was measured in water counts before all', () => {
    const plan = sealingPlan(100, batch, { ...told, measuredMl: 265 });
    expect(plan).toMatchObject({ volumeMl: 265, room: 'measured' });
    expect(plan.oxygenMl).toBeCloseTo(0.2095 * (265 - foodMl), 2);
    expect(plan.absorber).toMatchObject({ packs: [{ sizeMl: 100, count: 1 }] });
  });
  test('a pouch of unknown size is reckoned all the same', () => {
    expect(sealingPlan(100, batch, { ...told, pouchMl: null })).toMatchObject({
      room: 'pressed',
      isTooFull: false,
      absorber: { packs: [{ sizeMl: 300 }] },
    });
  });
  test('food and water that pass 85 % of the pouch are too much for it', () => {
    // 485.4 + 200 ml of 850 ml are 80.6 %; of 806 ml 85.04 %.
    expect(sealingPlan(100, batch, { ...told, pouchMl: 850 }).isTooFull).toBe(false);
    expect(sealingPlan(100, batch, { ...told, pouchMl: 806 }).isTooFull).toBe(true);
    expect(sealingPlan(100, batch, { ...told, waterMl: 370 }).isTooFull).toBe(true);
  });
  test('thinner air holds less oxygen: 75 % of it at 2400 m', () => {
    const high = sealingPlan(100, batch, { ...told, altitudeM: 2400 });
    expect(high.oxygenMl / sealingPlan(100, batch, told).oxygenMl).toBeCloseTo(0.7465, 3);
    expect(high.absorber).toMatchObject({ packs: [{ sizeMl: 100 }] });
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
  test('a house without absorbers gets none', () => {
    expect(sealingPlan(100, batch, { ...told, absorbersMl: [] }).absorber).toBeNull();
  });
  test('of unknown food 1.45 g/ml and the least keeping row are taken', () => {
    const plan = sealingPlan(100, { wetG: 600, dryG: 200, totals: totalsOf([]) }, told);
    expect(plan.oxygenMl).toBeCloseTo(0.2095 * (roomMl - 100 / 1.45), 6);
    expect(plan).toMatchObject({ kept: { fatFraction: 1 }, bestByOn: '2027-06-30' });
  });
  test('food that is larger than its pouch is refused', () => {
    for (const material of ['glass', 'foil'] as const)
      expect(() => sealingPlan(100, batch, { ...told, material, pouchMl: 50 })).toThrow(
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
  // From the last of February 28 days on, to 28 March; not from 3 March to the last of it.
  ['2027-01-31', 1.95, '2027-02-28'],
  ['2027-08-31', 1.99, '2027-09-30'],
  ['2027-12-01', 1, '2027-12-31'],
  ['2027-04-15', 4.5, '2027-07-31'],
  ['2027-04-15', 4.6, '2027-08-31'],
  ['2027-04-15', 0.1, '2027-04-18'],
  ['2027-04-15', 0.5, '2027-04-30'],
  ['2027-04-15', 0, '2027-04-15'],
  ['2027-04-15', 0.9, '2027-04-30'],
])('%s and %f months: %s', (sealedOn, months, day) => expect(bestByDay(sealedOn, months)).toBe(day));
