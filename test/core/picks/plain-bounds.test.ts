import { expect, test } from 'vitest';
import { makeGrid } from '#core/picks/make-grid.ts';
import { plainBounds } from '#core/picks/plain-bounds.ts';
import { at, levelNames, type Lot, type PicksProblem } from '#core/picks/problem.ts';

// Witness: counted by hand beside each case.
const lot = (
  meal: string,
  pouches: number,
  servingsTwentieths: number,
  bestBy: number | null = null,
): Lot => ({
  code: `${meal}/${servingsTwentieths}`,
  meal,
  pouches: Array.from({ length: pouches }, (_, i) => `${meal}-${i + 1}`),
  servingsTwentieths,
  dryG: 80,
  waterMl: 200,
  sodiumMgPerServing: 400,
  kcalPerServing: 500,
  bestBy,
  steady: true,
});
const eater = (key: string) => ({
  key,
  name: key,
  portionTwentieths: 20,
  sodiumLimitMg: null,
  energyKcal: null,
});
const problem = (over: Partial<PicksProblem>): PicksProblem => ({
  lots: [lot('soup', 9, 20), lot('oats', 9, 20)],
  eaters: [eater('a'), eater('b')],
  slots: [
    { key: 's1', day: 10, order: 0, eaters: ['a', 'b'] },
    { key: 's2', day: 10, order: 1, eaters: ['a', 'b'] },
  ],
  safe: ['a', 'b'].flatMap((e) => ['soup', 'oats'].map((meal) => ({ eater: e, meal }))),
  dislikes: [],
  wishes: [],
  ...over,
});
const nothing = levelNames.map(() => 0);
const bound = (over: Partial<PicksProblem>, vector: readonly number[] = nothing) => {
  const bounds = plainBounds(makeGrid(problem(over)), vector);
  return (name: keyof typeof at) => bounds[at[name]];
};

test('with enough for all nothing is bounded above nothing', () => {
  const of = bound({});
  expect(levelNames.map((name) => of(name))).toEqual(nothing);
});

test('who may eat nothing that is there goes without at each meal', () => {
  const of = bound({ safe: [{ eater: 'a', meal: 'soup' }] });
  expect(of('unfed')).toBe(2);
  expect(of('worst off')).toBe(2);
  // Nine tenths of a usual portion of 500 kcal, twice, in steps of 100 kcal.
  expect(of('energy short')).toBe(9);
});

test('what is past its date on the day feeds nobody', () => {
  expect(bound({ lots: [lot('soup', 9, 20, 9), lot('oats', 9, 20, 9)] })('unfed')).toBe(4);
  expect(bound({ lots: [lot('soup', 9, 20, 10)] })('unfed')).toBe(0);
});

test('halves are the least: a pouch of one serving feeds two at most', () => {
  // Each counts as fed with 18 twentieths and as half fed with 9: 20 twentieths are two halves, and two go without.
  expect(bound({ lots: [lot('soup', 1, 20)] })('unfed')).toBe(2);
  expect(bound({ lots: [lot('soup', 1, 20)] })('worst off')).toBe(1);
  // 36 twentieths are four halves.
  expect(bound({ lots: [lot('soup', 1, 36)] })('unfed')).toBe(0);
});

test('what the stock lacks is missing, at the least it can count', () => {
  // Four times 18 twentieths are wanted and 40 are there; a twentieth of a usual serving is 25 kcal.
  const of = bound({ lots: [lot('soup', 2, 20)] });
  expect(of('energy short')).toBe(Math.floor((32 * 25) / 100));
});

test('breakfasts and mains have stocks of their own', () => {
  const uses = [
    { meal: 'soup', is: ['main' as const] },
    { meal: 'oats', is: ['breakfast' as const] },
  ];
  const slots = problem({}).slots.map((slot, i) => ({
    ...slot,
    carriedBy: [i === 0 ? ('breakfast' as const) : ('main' as const)],
  }));
  // Plenty of soup helps no breakfast: one pouch of oats is two halves.
  expect(bound({ uses, slots, lots: [lot('soup', 9, 20), lot('oats', 1, 10)] })('unfed')).toBe(1);
  expect(bound({ lots: [lot('soup', 9, 20), lot('oats', 1, 10)] })('unfed')).toBe(0);
});

test('who likes nothing of what is there eats something disliked, unless they go without', () => {
  const dislikes = ['soup', 'oats'].map((meal) => ({ eater: 'a', meal }));
  expect(bound({ dislikes })('dislikes')).toBe(2);
  expect(bound({ dislikes: dislikes.slice(1) })('dislikes')).toBe(0);
  expect(bound({ dislikes }, nothing.with(at.unfed, 1))('dislikes')).toBe(1);
  expect(bound({ dislikes }, nothing.with(at.unfed, 5))('dislikes')).toBe(0);
});

test('no more wishes come true than there are', () => {
  const wishes = [{ eater: 'a', meal: 'soup', slot: null, rank: 1 }];
  expect(bound({ wishes })('wishes')).toBeLessThan(0);
});
