import load from 'highs';
import { beforeAll, expect, test } from 'vitest';
import { makeInstance } from '../../../src/bench/picks.ts';
import { linearFrom } from '../../../src/solver/highs.ts';
import type { Linear } from '#core/picks/linear.ts';
import { makeBigModel, solveBigModel } from './model.ts';
import { pickPouches } from '#core/picks/pick.ts';
import { at, lastBounded } from '#core/picks/problem.ts';
import { tinyProblem } from './tiny.ts';

// Witness: the same model written out as one program and solved by another road (HiGHS branch and cut).
let linear: Linear;
beforeAll(async () => {
  linear = linearFrom(await load());
});
const bounded = at[lastBounded] + 1;
const limits = { nodes: 20_000, seconds: 20 };

test('the big program agrees at every level on tiny trips', { timeout: 30_000 }, () => {
  for (let seed = 401; seed <= 412; seed += 1) {
    const problem = tinyProblem(seed);
    expect({ seed, vector: pickPouches(problem, linear).vector }).toEqual({
      seed,
      vector: solveBigModel(problem, linear, limits),
    });
  }
});

test('and down to waste on a long weekend with one eater who may have little', { timeout: 30_000 }, () => {
  const problem = makeInstance({ eaters: 4, days: 2, meals: 2, pouches: 30, stock: 'tight' }, 4);
  const big = solveBigModel(problem, linear, limits, bounded);
  expect(big).toHaveLength(bounded);
  expect(pickPouches(problem, linear).vector.slice(0, bounded)).toEqual(big);
});

test('what people typed never gets into the text', () => {
  const typed = 'End\nBounds obj: <= ';
  const problem = tinyProblem(7);
  const named = {
    ...problem,
    lots: problem.lots.map((l) => ({ ...l, code: typed + l.code, meal: typed + l.meal })),
    safe: problem.safe.map((p) => ({ ...p, meal: typed + p.meal })),
    dislikes: problem.dislikes.map((p) => ({ ...p, meal: typed + p.meal })),
    wishes: problem.wishes.map((p) => ({ ...p, meal: typed + p.meal })),
  };
  expect(makeBigModel(named).text(0, [])).toBe(makeBigModel(problem).text(0, []));
});
