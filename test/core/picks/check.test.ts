import { expect, test } from 'vitest';
import { checkPlan } from '#core/picks/check.ts';
import type { DishPick, Lot, PicksPlan, PicksProblem } from '#core/picks/problem.ts';

// Witness: by hand. One slot, one dish, figures small enough to count on fingers.
const lot: Lot = {
  code: 'B1/80', meal: 'ash', pouches: ['B1-1', 'B1-2'], servingsTwentieths: 20, dryG: 80, waterMl: 200,
  sodiumMgPerServing: 600, kcalPerServing: 400, bestBy: 10, steady: true,
}; // prettier-ignore
const problem: PicksProblem = {
  lots: [lot, { ...lot, code: 'B2/80', meal: 'birch', pouches: ['B2-1'] }],
  eaters: [
    {
      key: 'ana',
      name: 'Ana',
      portionTwentieths: 20,
      sodiumLimitMg: 1500,
      sodiumHard: true,
      energyKcal: null,
    },
    { key: 'ben', name: 'Ben', portionTwentieths: 12, sodiumLimitMg: null, energyKcal: null },
  ],
  slots: [{ key: 's', day: 10, order: 0, eaters: ['ana', 'ben'] }],
  safe: [{ eater: 'ana', meal: 'ash' }, { eater: 'ben', meal: 'ash' }], // prettier-ignore
  dislikes: [],
  wishes: [],
};
const dish: DishPick = {
  meal: 'ash', pouches: ['B1-1'], eaters: ['ana', 'ben'], openedTwentieths: 20, shortTwentieths: 9, wasteTwentieths: 0,
}; // prettier-ignore
const plan = (change: Partial<DishPick>): PicksPlan => ({
  slots: [{ slot: 's', dishes: [{ ...dish, ...change }], unfed: [] }],
});
const stocked = (change: Partial<Lot>): PicksProblem => ({
  ...problem,
  lots: [{ ...lot, ...change }, problem.lots[1]!],
});

test('a good plan has no fault: 18 + 11 needed, 20 opened, 9 short', () => {
  expect(checkPlan(problem, plan({}))).toEqual([]);
});

test('a dish that must not be near somebody at the slot is a fault for everybody there', () => {
  const barred = [{ slot: 's', meal: 'ash', near: ['Ana'] }];
  expect(checkPlan({ ...problem, barred }, plan({})).join()).toMatch(/not to be at this slot/);
  expect(checkPlan({ ...problem, barred: [{ ...barred[0]!, meal: 'birch' }] }, plan({}))).toEqual([]);
  expect(checkPlan({ ...problem, banned: [{ slot: 's', meal: 'ash' }] }, plan({})).join()).toMatch(
    /not to be at this slot/,
  );
});

test.each([
  [
    'a pouch that is not there',
    problem,
    plan({ pouches: ['B9-1'], openedTwentieths: 0, shortTwentieths: 29 }),
    /no pouch B9-1/,
  ],
  [
    'a pouch twice',
    problem,
    plan({ pouches: ['B1-1', 'B1-1'], openedTwentieths: 40, shortTwentieths: 0, wasteTwentieths: 5 }),
    /opened twice/,
  ],
  ['another meal', problem, plan({ pouches: ['B2-1'] }), /B2-1 is birch/],
  ['past best-by', stocked({ bestBy: 9 }), plan({}), /past its best-by/],
  ['not steady', stocked({ steady: false }), plan({}), /not steady/],
  ['not clear', { ...problem, safe: [problem.safe[0]!] }, plan({}), /not clear for ben/],
  ['too much sodium', stocked({ sodiumMgPerServing: 1501 }), plan({}), /sodium limit of ana/],
  ['sodium not known', stocked({ sodiumMgPerServing: null }), plan({}), /sodium not known/],
  ['an eater left out', problem, plan({ eaters: ['ana'], shortTwentieths: 0 }), /not each there once/],
  ['another shortage', problem, plan({ shortTwentieths: 8 }), /9 short, not 8/],
  ['another waste', problem, plan({ wasteTwentieths: 1 }), /waste is another figure/],
  [
    'less than half',
    { ...problem, lots: [{ ...lot, servingsTwentieths: 14 }] },
    plan({ openedTwentieths: 14, shortTwentieths: 15 }),
    /less than half/,
  ],
  ['a slot left out', problem, { slots: [] }, /slot s is missing/],
] as const)('finds %s', (_, asked, answered, fault) => {
  expect(checkPlan(asked, answered).join('\n')).toMatch(fault);
});
