import { describe, expect, test } from 'vitest';
import { fedByDay } from '#core/picks/fed.ts';
import { layBeside } from '#core/picks/beside.ts';
import { helpingOf, missesAll, shortKcal, worthKcal } from '#core/picks/helpings.ts';
import { pickPouches } from '#core/picks/pick.ts';
import type { Lot, PicksProblem } from '#core/picks/problem.ts';

// Witness: by hand, figures small enough to count on fingers.
describe('a helping', () => {
  test.each([
    ['the portion where it gives enough', 20, 500, 600, { helping: 20, low: 18, high: 22, thin: 0 }],
    ['more where it does not: 800 / 500 servings', 20, 800, 500, { helping: 32, low: 29, high: 35, thin: 0 }],
    // 720 wanted, 36 twentieths of 100 kcal a serving are 180.
    ['twice the portion at most', 20, 800, 100, { helping: 40, low: 36, high: 44, thin: 540 }],
    ['the portion where nobody knows the need', 20, null, 100, { helping: 20, low: 18, high: 22, thin: 0 }],
    ['the portion where nobody knows the energy', 12, 400, null, { helping: 12, low: 11, high: 13, thin: 0 }],
    ['water gives nothing', 20, 500, 0, { helping: 40, low: 36, high: 44, thin: 450 }],
  ] as const)('%s', (_, portion, floor, kcal, helping) =>
    expect(helpingOf(portion, floor, kcal)).toEqual(helping),
  );
  test('having nothing counts nine tenths of the floor, or of a usual portion', () => {
    expect(missesAll(20, 800)).toBe(720);
    expect(missesAll(20, null)).toBe(450);
  });
  test.each([
    [40, 40, 0],
    [40, 44, 0],
    [40, 37, 75],
    [40, 30, 250], // a quarter
    [40, 29, 300], // and one beyond it, twice
    [40, 20, 750],
  ])('of %i twentieths %i are there: %i kcal', (low, opened, kcal) =>
    expect(shortKcal(low, opened, 25)).toBe(kcal),
  );
  test('a rich dish counts as a usual one', () =>
    expect([worthKcal(1000), worthKcal(500), worthKcal(200), worthKcal(0), worthKcal(null)]).toEqual([
      25, 25, 10, 1, 25,
    ]));
});

const lot = (code: string, meal: string, pouches: number, change: Partial<Lot> = {}): Lot => ({
  code, meal, pouches: Array.from({ length: pouches }, (_, i) => `${code}-${i + 1}`), servingsTwentieths: 20, dryG: 100,
  waterMl: 300, sodiumMgPerServing: 400, kcalPerServing: 600, bestBy: 900, steady: true, ...change,
}); // prettier-ignore
const day = (lots: readonly Lot[], uses: PicksProblem['uses']): PicksProblem => ({
  lots,
  uses: uses!,
  eaters: [{ key: 'ana', name: 'Ana', portionTwentieths: 20, sodiumLimitMg: null, energyKcal: 2000 }],
  slots: [
    { key: 'b', day: 5, order: 0, eaters: ['ana'], carriedBy: ['breakfast'], beside: ['drink'], floors: [{ eater: 'ana', kcal: 400 }] },
    { key: 'd', day: 5, order: 2, eaters: ['ana'], carriedBy: ['main'], beside: ['side', 'sweet', 'snack'], floors: [{ eater: 'ana', kcal: 600 }] },
  ],
  safe: [...new Set(lots.map((l) => l.meal))].map((meal) => ({ eater: 'ana', meal })),
  dislikes: [],
  wishes: [],
}); // prettier-ignore
const crisps = lot('B1', 'crisps', 30, { kcalPerServing: 32 });
const stew = lot('B2', 'stew', 2);
const oats = lot('B3', 'oats', 2, { kcalPerServing: 400 });
const uses = [
  { meal: 'crisps', is: ['snack', 'sweet'] },
  { meal: 'stew', is: ['main'] },
  { meal: 'oats', is: ['breakfast'] },
] as const;

test('thirty servings of crisps are no meal: nobody is fed by them', () => {
  const problem = day([crisps], uses);
  const plan = pickPouches(problem, undefined);
  expect(plan.slots.every((s) => s.dishes.length === 0)).toBe(true);
  expect(plan.slots[1]!.beside).toMatchObject([{ meal: 'crisps', eaters: ['ana'] }]);
  expect(fedByDay(problem, plan)).toMatchObject([
    { missed: ['b', 'd'], kcal: 32, floorKcal: 1000, shortKcal: 968 },
  ]);
});

test('with a breakfast and a main she is fed, and the sweet stands beside', () => {
  const problem = day([crisps, stew, oats], uses);
  const plan = pickPouches(problem, undefined);
  expect(plan.slots.map((s) => [s.dishes[0]?.meal, s.beside?.[0]?.meal])).toEqual([['oats', undefined], ['stew', 'crisps']]); // prettier-ignore
  expect(fedByDay(problem, plan)).toMatchObject([{ missed: [], kcal: 1032, shortKcal: 0, unknown: [] }]);
});

test('a main is no breakfast, unless she wished for it just there', () => {
  const problem = day([stew], uses);
  expect(pickPouches(problem, undefined).slots[0]!.unfed).toHaveLength(1);
  const wishes = [{ eater: 'ana', meal: 'stew', slot: 'b', rank: 1 }];
  expect(pickPouches({ ...problem, wishes }, undefined).slots[0]!.dishes[0]!.meal).toBe('stew');
});

test('what is not known is not called fed', () => {
  const problem = day([{ ...stew, kcalPerServing: null }, oats], uses);
  expect(fedByDay(problem, pickPouches(problem, undefined))).toMatchObject([
    { unknown: ['stew'], shortKcal: 0 },
  ]);
});

describe('beside', () => {
  test('a wish comes first, and for the slot it names', () => {
    const nuts = lot('B4', 'nuts', 9, { bestBy: 8 });
    const problem = day([crisps, nuts, stew, oats], [...uses, { meal: 'nuts', is: ['snack'] }]);
    const plan = pickPouches(problem, undefined);
    expect(plan.slots[1]!.beside![0]!.meal).toBe('nuts');
    const wishes = [{ eater: 'ana', meal: 'crisps', slot: 'd', rank: 1 }];
    expect(layBeside({ ...problem, wishes }, plan)[1]!.beside![0]!.meal).toBe('crisps');
  });
  test('what is not clear, past its date or barred stays in stock', () => {
    const problem = day([crisps, stew, oats], uses);
    const plan = pickPouches(problem, undefined);
    const laid = (change: Partial<PicksProblem>): unknown =>
      layBeside({ ...problem, ...change }, plan)[1]!.beside;
    expect(laid({ safe: problem.safe.filter((p) => p.meal !== 'crisps') })).toBeUndefined();
    expect(laid({ lots: [{ ...crisps, bestBy: 4 }, stew, oats] })).toBeUndefined();
    expect(laid({ barred: [{ slot: 'd', meal: 'crisps', near: ['Ana'] }] })).toBeUndefined();
    expect(laid({ dislikes: [{ eater: 'ana', meal: 'crisps' }] })).toBeUndefined();
  });
});
