import load from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { linearFrom } from '../../../src/solver/highs.ts';
import type { Linear } from '#core/picks/linear.ts';
import { pickPouches } from '#core/picks/pick.ts';
import type { Lot, PicksProblem } from '#core/picks/problem.ts';
import { shortages, whyPouch } from '#core/picks/why.ts';

// Witness: by hand. Each trip has one trouble and one only.
let linear: Linear;
beforeAll(async () => {
  linear = linearFrom(await load());
});

const lot = (code: string, meal: string, pouches: number, change: Partial<Lot> = {}): Lot => ({
  code, meal, pouches: Array.from({ length: pouches }, (_, i) => `${code.split('/')[0]!}-${i + 1}`),
  servingsTwentieths: 20, dryG: 80, waterMl: 200, sodiumMgPerServing: 500, kcalPerServing: 400, bestBy: 900, steady: true, ...change,
}); // prettier-ignore
const base: PicksProblem = {
  lots: [lot('B1/80', 'ash', 1), lot('B2/80', 'birch', 3)],
  eaters: [{ key: 'ana', name: 'Ana', portionTwentieths: 20, sodiumLimitMg: null, energyKcal: null }],
  slots: [
    { key: 'fri', day: 10, order: 0, eaters: ['ana'] },
    { key: 'sat', day: 11, order: 0, eaters: ['ana'] },
  ],
  safe: [{ eater: 'ana', meal: 'ash' }],
  dislikes: [],
  wishes: [],
};
const reasonsFor = (problem: PicksProblem) =>
  shortages(problem, pickPouches(problem, linear)).map((s) => [s.slot, s.shortTwentieths, s.reason]);

describe('who goes short and why', () => {
  test('used up by the other slot, which is named', () => {
    const [only, ...rest] = reasonsFor(base);
    expect(rest).toEqual([]);
    const other = only![0] === 'sat' ? 'fri' : 'sat';
    expect(only!.slice(1)).toEqual([18, { is: 'used up', slots: [{ slot: other, pouches: 1 }] }]);
  });

  test('nothing clear: the food that blocks most meals', () => {
    const blocked = [
      { eater: 'ana', meal: 'ash', foods: ['milk', 'rye'], unknown: false },
      { eater: 'ana', meal: 'birch', foods: ['rye'], unknown: false },
    ];
    expect(reasonsFor({ ...base, safe: [], blocked })[0]![2]).toEqual({
      is: 'nothing clear',
      food: 'rye',
      unknown: [],
    });
  });

  test('nothing clear because it is not known', () => {
    const blocked = [{ eater: 'ana', meal: 'ash', foods: ['stock cube'], unknown: true }];
    expect(reasonsFor({ ...base, safe: [], blocked })[0]![2]).toEqual({
      is: 'nothing clear',
      food: null,
      unknown: ['ash'],
    });
  });

  test('promised to another trip, which is named', () => {
    const problem = {
      ...base,
      lots: [base.lots[1]!],
      promised: [{ lot: base.lots[0]!, trip: 'Heron Lake' }],
    };
    expect(reasonsFor(problem)[0]![2]).toEqual({ is: 'promised', trips: ['Heron Lake'], lots: ['B1/80'] });
  });

  test('past best-by on the second day only', () => {
    const problem = { ...base, lots: [lot('B1/80', 'ash', 2, { bestBy: 10 })] };
    expect(reasonsFor(problem)).toEqual([
      ['sat', 18, { is: 'past best-by', lots: [{ lot: 'B1/80', meal: 'ash', bestBy: 10 }] }],
    ]);
  });

  test('too much sodium for a hard limit', () => {
    const eaters = [{ ...base.eaters[0]!, sodiumLimitMg: 400, sodiumHard: true }];
    expect(reasonsFor({ ...base, eaters })[0]![2]).toEqual({ is: 'too much sodium', meals: ['ash'] });
  });

  test('less than half a dish is left', () => {
    const problem = { ...base, lots: [lot('B1/80', 'ash', 1, { servingsTwentieths: 8 })] };
    expect(reasonsFor(problem)[0]![2]).toEqual({ is: 'too little left', leftTwentieths: 8 });
  });

  test('nothing in stock at all', () => {
    expect(reasonsFor({ ...base, lots: [] })[0]![2]).toEqual({ is: 'nothing in stock' });
  });

  test('a dish that falls short is told for each of its eaters', () => {
    const problem = {
      ...base,
      slots: [base.slots[0]!],
      lots: [lot('B1/80', 'ash', 1, { servingsTwentieths: 12 })],
    };
    expect(shortages(problem, pickPouches(problem, linear))).toEqual([
      {
        eater: 'ana',
        slot: 'fri',
        unfed: false,
        shortTwentieths: 6,
        meal: 'ash',
        reason: { is: 'too little left', leftTwentieths: 0 },
      },
    ]);
  });
});

describe('why this pouch', () => {
  const both = { ...base, safe: [...base.safe, { eater: 'ana', meal: 'birch' }] };

  test('without it somebody goes short', () => {
    const result = pickPouches(base, linear);
    expect(whyPouch(base, result, 'B1-1', linear)).toEqual({
      level: 'unfed',
      withIt: 1,
      without: 2,
      proven: true,
    });
  });

  test('without it a wish does not come true', () => {
    const problem = { ...both, wishes: [{ eater: 'ana', meal: 'ash', slot: null, rank: 1 }] };
    const reason = whyPouch(problem, pickPouches(problem, linear), 'B1-1', linear);
    expect(reason).toEqual({ level: 'wishes', withIt: -4, without: 0, proven: true });
  });

  test('another pouch would do as well', () => {
    const problem = { ...base, lots: [lot('B1/80', 'ash', 3)] };
    expect(whyPouch(problem, pickPouches(problem, linear), 'B1-3', linear).level).toBe(null);
  });
});
