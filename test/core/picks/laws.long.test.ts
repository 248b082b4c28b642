import { assert, integer, nat, pre, property } from 'fast-check';
import load from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { makeInstance } from '../../../src/bench/picks.ts';
import { linearFrom } from '../../../src/solver/highs.ts';
import { checkPlan } from '#core/picks/check.ts';
import { greedyState } from '#core/picks/greedy.ts';
import { makeGrid } from '#core/picks/make-grid.ts';
import { handOut } from '#core/picks/handout.ts';
import type { Linear } from '#core/picks/linear.ts';
import { compareVectors } from '#core/picks/measure.ts';
import { pickPouches } from '#core/picks/pick.ts';
import { plainBounds } from '#core/picks/plain-bounds.ts';
import { at, type PicksPlan, type PicksProblem, type Wish } from '#core/picks/problem.ts';
import { seeded } from '#core/picks/chance.ts';
import { countLevels } from './count.ts';
import { tinyProblem } from './tiny.ts';

// Witness of every law: the model's own words ("How to test it"); figures are counted by count.ts.
let linear: Linear;
beforeAll(async () => {
  linear = linearFrom(await load());
});

const runs = { numRuns: 20, seed: 5 };
const seeds = integer({ min: 1, max: 100_000 });
const small = (stock: 'ample' | 'short' | 'tight'): PicksProblem =>
  makeInstance({ eaters: 4, days: 3, meals: 2, pouches: 60, stock }, 3);

function shuffled<T>(list: readonly T[], seed: number): T[] {
  const chance = seeded(seed);
  const copy = [...list];
  for (let i = copy.length - 1; i > 0; i -= 1) {
    const j = chance.below(i + 1);
    [copy[i], copy[j]] = [copy[j]!, copy[i]!];
  }
  return copy;
}

function shuffleRows(p: PicksProblem, seed: number): PicksProblem {
  return {
    lots: shuffled(p.lots, seed).map((l) => ({ ...l, pouches: shuffled(l.pouches, seed) })),
    eaters: shuffled(p.eaters, seed + 1),
    slots: shuffled(p.slots, seed + 2).map((s) => ({
      ...s,
      eaters: shuffled(s.eaters, seed),
      ...(s.floors ? { floors: shuffled(s.floors, seed) } : {}),
    })),
    ...(p.uses ? { uses: shuffled(p.uses, seed + 7) } : {}),
    ...(p.before ? { before: { ...p.before, seats: shuffled(p.before.seats, seed + 8) } } : {}),
    barred: shuffled(p.barred ?? [], seed + 6),
    banned: shuffled(p.banned ?? [], seed + 9),
    safe: shuffled(p.safe, seed + 3),
    dislikes: shuffled(p.dislikes, seed + 4),
    wishes: shuffled(p.wishes, seed + 5),
  };
}

/** Other names in another alphabetical order: each is turned round and given a letter drawn from the seed. */
function rename(p: PicksProblem, seed: number): PicksProblem {
  const to = (name: string): string =>
    'zqkxvbw'[Math.abs(Array.from(name).reduce((sum, c) => sum * 31 + c.charCodeAt(0), seed)) % 7]! +
    Array.from(name).reverse().join('');
  const pair = <T extends { eater: string; meal: string }>(x: T): T => ({
    ...x,
    eater: to(x.eater),
    meal: to(x.meal),
  });
  return {
    lots: p.lots.map((l) => ({ ...l, code: to(l.code), meal: to(l.meal), pouches: l.pouches.map(to) })),
    eaters: p.eaters.map((e) => ({ ...e, key: to(e.key) })),
    slots: p.slots.map((s) => ({
      ...s,
      key: to(s.key),
      eaters: s.eaters.map(to),
      ...(s.floors ? { floors: s.floors.map((f) => ({ ...f, eater: to(f.eater) })) } : {}),
    })),
    ...(p.uses ? { uses: p.uses.map((u) => ({ ...u, meal: to(u.meal) })) } : {}),
    ...(p.before
      ? {
          before: {
            ...p.before,
            seats: p.before.seats.map((x) => ({
              slot: to(x.slot),
              eater: to(x.eater),
              meal: x.meal === null ? null : to(x.meal),
            })),
          },
        }
      : {}),
    barred: (p.barred ?? []).map((b) => ({ ...b, slot: to(b.slot), meal: to(b.meal) })),
    banned: (p.banned ?? []).map((b) => ({ slot: to(b.slot), meal: to(b.meal) })),
    safe: p.safe.map(pair),
    dislikes: p.dislikes.map(pair),
    wishes: p.wishes.map((w) => ({ ...pair(w), slot: w.slot === null ? null : to(w.slot) })),
  };
}

function grantedByRank(plan: PicksPlan, wishes: readonly Wish[]): number[] {
  const counts = [0, 0, 0];
  for (const w of wishes) {
    const where = plan.slots.filter((s) => w.slot === null || s.slot === w.slot);
    if (where.some((s) => s.dishes.some((d) => d.meal === w.meal && d.eaters.includes(w.eater)))) {
      counts[Math.min(3, w.rank) - 1]! += 1;
    }
  }
  return counts;
}

const half = (n: number | null): number | null => (n === null ? null : n / 2);

describe('laws', { timeout: 30_000 }, () => {
  test('a plan is safe, in stock, in date, and its figures are what its pouches and portions say', () =>
    assert(
      property(seeds, (seed) => {
        const problem = tinyProblem(seed);
        const result = pickPouches(problem, linear);
        expect(checkPlan(problem, result)).toEqual([]);
        expect(countLevels(problem, result)).toEqual(result.vector);
      }),
      runs,
    ));

  test('one pouch more never worsens the vector', () =>
    assert(
      property(seeds, nat(), (seed, which) => {
        const problem = tinyProblem(seed);
        const lots = problem.lots.map((lot, i) =>
          i === which % problem.lots.length ? { ...lot, pouches: [...lot.pouches, `${lot.code} more`] } : lot,
        );
        // What expires and stays at home is more by what came on top: taken is what counts here.
        const taken = (p: PicksProblem): number[] =>
          pickPouches(p, linear).vector.map((v, k) => (k === at.expiring ? v - makeGrid(p).expiring : v));
        expect(compareVectors(taken({ ...problem, lots }), taken(problem))).toBeLessThanOrEqual(0);
      }),
      runs,
    ));

  test('a meal that is for more feeds nobody less', () =>
    assert(
      property(seeds, nat(), (seed, which) => {
        const problem = tinyProblem(seed);
        pre((problem.uses ?? []).length > 0);
        const uses = problem.uses!.map((use, i) =>
          i === which % problem.uses!.length
            ? { ...use, is: [...use.is, 'main', 'breakfast'] as const }
            : use,
        );
        const fed = (p: PicksProblem): number[] => pickPouches(p, linear).vector.slice(0, at.wishes);
        expect(compareVectors(fed({ ...problem, uses }), fed(problem))).toBeLessThanOrEqual(0);
      }),
      runs,
    ));

  test('withdrawing a wish never takes a wish from anybody else', () =>
    assert(
      property(seeds, nat(), (seed, which) => {
        const problem = tinyProblem(seed);
        pre(problem.wishes.length > 1);
        const rest = problem.wishes.filter((_, i) => i !== which % problem.wishes.length);
        const before = grantedByRank(pickPouches(problem, linear), rest);
        const after = grantedByRank(pickPouches({ ...problem, wishes: rest }, linear), rest);
        expect(
          compareVectors(
            after.map((n) => -n),
            before.map((n) => -n),
          ),
        ).toBeLessThanOrEqual(0);
      }),
      runs,
    ));

  test('other names and another order of rows give the same vector', () =>
    assert(
      property(seeds, (seed) => {
        const problem = tinyProblem(seed);
        const { vector } = pickPouches(problem, linear);
        expect(pickPouches(shuffleRows(problem, seed), linear).vector).toEqual(vector);
        expect(pickPouches(rename(problem, seed), linear).vector).toEqual(vector);
      }),
      runs,
    ));

  test.each(['ample', 'short', 'tight'] as const)('so they do for a long weekend, %s', (stock) => {
    const problem = small(stock);
    const result = pickPouches(problem, linear);
    expect(pickPouches(shuffleRows(problem, 8), linear)).toEqual(result);
    expect(pickPouches(rename(problem, 8), linear).vector).toEqual(result.vector);
  });

  // What is short or left over counts in hundreds of kcal and whole servings, which do not double.
  test('twice the portions and twice the servings leave as many without a meal', () =>
    assert(
      property(seeds, (seed) => {
        const { before: _before, ...problem } = tinyProblem(seed);
        const once: PicksProblem = {
          ...problem,
          slots: problem.slots.map((slot) => ({ ...slot, floors: [] })),
        };
        // A serving is then half as much food, so that each holds half the sodium.
        const twice: PicksProblem = {
          ...once,
          eaters: once.eaters.map((e) => ({ ...e, portionTwentieths: 2 * e.portionTwentieths })),
          lots: once.lots.map((l) => ({
            ...l,
            servingsTwentieths: 2 * l.servingsTwentieths,
            sodiumMgPerServing: half(l.sodiumMgPerServing),
          })),
        };
        const fed = (p: PicksProblem): number[] => pickPouches(p, linear).vector.slice(0, at['energy short']);
        expect(fed(twice)).toEqual(fed(once));
      }),
      runs,
    ));

  test.each(['ample', 'short', 'tight'] as const)(
    'no prefix of levels is worse than in the plain list, %s',
    (stock) => {
      for (let seed = 1; seed <= 2; seed += 1) {
        const problem = makeInstance({ eaters: 4, days: 3, meals: 2, pouches: 60, stock }, seed);
        const grid = makeGrid(problem);
        const list = { slots: handOut(grid, greedyState(grid)) };
        expect(checkPlan(problem, list)).toEqual([]);
        const [mine, plain] = [pickPouches(problem, linear).vector, countLevels(problem, list)];
        mine.forEach((_, k) => expect(compareVectors(mine.slice(0, k + 1), plain)).toBeLessThanOrEqual(0));
        expect(mine).not.toEqual(plain);
      }
    },
  );

  test('the same question twice: the same answer to the letter', () => {
    const problem = makeInstance({ eaters: 6, days: 4, meals: 3, pouches: 110, stock: 'tight' }, 2);
    expect(JSON.stringify(pickPouches(problem, linear))).toBe(JSON.stringify(pickPouches(problem, linear)));
  });

  test('without a solver the plan is checked all the same and only plain bounds are claimed', () => {
    const problem = small('short');
    const result = pickPouches(problem, undefined);
    expect(checkPlan(problem, result)).toEqual([]);
    const short = at['energy short'];
    const bound = plainBounds(makeGrid(problem), result.vector)[short]!;
    expect(result.levels[short]).toMatchObject({ bound, proven: false, gap: result.vector[short]! - bound });
    // No plan can be below it: the best that is found with the solver is not.
    expect(pickPouches(problem, linear).vector[short]).toBeGreaterThanOrEqual(bound);
    expect(result.status).toBe('best found');
  });

  test('a clock that ran out still answers with a checked plan and says so', () => {
    const problem = small('tight');
    const result = pickPouches(problem, linear, undefined, () => 0);
    expect(result.clockEnded).toBe(true);
    expect(checkPlan(problem, result)).toEqual([]);
  });

  test('more eaters at a slot than can be solved exactly share their dishes all the same', () => {
    const eaters = Array.from({ length: 23 }, (_, i) => ({
      key: `e${i}`,
      name: `E ${i}`,
      portionTwentieths: 20,
      sodiumLimitMg: null,
      energyKcal: null,
    }));
    const one = small('ample').lots[0]!;
    const problem: PicksProblem = {
      eaters,
      slots: [{ key: 's', day: 100, order: 0, eaters: eaters.map((e) => e.key) }],
      lots: [
        {
          ...one,
          bestBy: 500,
          pouches: Array.from({ length: 30 }, (_, i) => `P-${i}`),
          servingsTwentieths: 20,
        },
      ],
      safe: eaters.map((e) => ({ eater: e.key, meal: one.meal })),
      dislikes: [],
      wishes: [{ eater: 'e22', meal: one.meal, slot: 's', rank: 1 }],
    };
    const result = pickPouches(problem, linear);
    expect(result.vector.slice(0, at.expiring)).toEqual([0, 0, 0, -4, 0, 0, 0]);
    // Twenty-one pouches of one serving hold nine tenths of twenty-three portions.
    expect(result.slots[0]!.dishes[0]!.pouches).toHaveLength(21);
    expect(result.slots[0]!.dishes).toHaveLength(1);
  });
});
