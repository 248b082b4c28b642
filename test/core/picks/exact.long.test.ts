import load from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { checkPlan } from '#core/picks/check.ts';
import type { Linear } from '#core/picks/linear.ts';
import { pickPouches } from '#core/picks/pick.ts';
import { linearFrom } from '../../../src/solver/highs.ts';
import { countLevels } from './count.ts';
import { tinyProblem, tryEverything } from './tiny.ts';

// Witness: trying every plan, written for these tests alone (tiny.ts, count.ts).
let linear: Linear;
beforeAll(async () => {
  linear = linearFrom(await load());
});

describe('tiny trips', { timeout: 30_000 }, () => {
  const seeds = Array.from({ length: 480 }, (_, i) => i + 1);
  const chunks = Array.from({ length: 12 }, (_, i) => seeds.slice(i * 40, i * 40 + 40));
  test.each(chunks.map((chunk) => [chunk[0]!, chunk] as const))(
    '40 from seed %i on equal trying everything, at every level',
    (_, chunk) => {
      for (const seed of chunk) {
        const problem = tinyProblem(seed);
        const result = pickPouches(problem, linear);
        const best = tryEverything(problem);
        expect({ seed, vector: result.vector }).toEqual({ seed, vector: best });
        expect(countLevels(problem, result)).toEqual(best);
        expect(checkPlan(problem, result)).toEqual([]);
        result.levels.forEach((l, k) =>
          expect(l.bound, `seed ${seed}, ${l.level}`).toBeLessThanOrEqual(best[k]!),
        );
      }
    },
  );
});
