import load from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { linearFrom } from '../../../src/solver/highs.ts';
import { seeded } from '#core/picks/chance.ts';
import { checkPlan } from '#core/picks/check.ts';
import type { Linear } from '#core/picks/linear.ts';
import { pickPouches } from '#core/picks/pick.ts';
import { at, type PicksPlan, type PicksProblem, type Seat } from '#core/picks/problem.ts';
import { tinyProblem, tryEverything } from './tiny.ts';

// Witness: trying every plan, written for these tests alone (tiny.ts, count.ts).
let linear: Linear;
beforeAll(async () => {
  linear = linearFrom(await load());
});

const seatsOf = (plan: PicksPlan): Seat[] =>
  plan.slots.flatMap(({ slot, dishes, unfed }) => [
    ...dishes.flatMap(({ meal, eaters }) => eaters.map((eater) => ({ slot, eater, meal }))),
    ...unfed.map(({ eater }) => ({ slot, eater, meal: null })),
  ]);

/** One thing that happens to a kept plan: a pouch of it is eaten, somebody is away once, it starts a day later, a new wish. */
function touched(problem: PicksProblem, plan: PicksPlan, seed: number): PicksProblem {
  const chance = seeded(seed * 53 + 1);
  const codes = plan.slots.flatMap(({ dishes }) => dishes.flatMap(({ pouches }) => pouches));
  const kind = seed % 4;
  if (kind === 0 && codes.length > 0) {
    const eaten = codes[chance.below(codes.length)]!;
    return {
      ...problem,
      lots: problem.lots.map((lot) => ({ ...lot, pouches: lot.pouches.filter((code) => code !== eaten) })),
    };
  }
  if (kind === 1) {
    const away = chance.below(problem.slots.length);
    return {
      ...problem,
      slots: problem.slots.map((slot, i) => (i === away ? { ...slot, eaters: slot.eaters.slice(1) } : slot)),
    };
  }
  if (kind === 2) return { ...problem, slots: problem.slots.map((slot) => ({ ...slot, day: slot.day + 1 })) };
  const { eater, meal } = problem.safe[0] ?? { eater: '', meal: '' };
  return { ...problem, wishes: [...problem.wishes, { eater, meal, slot: null, rank: 1 }] };
}

describe('a kept plan that something happens to', { timeout: 30_000 }, () => {
  const seeds = Array.from({ length: 120 }, (_, i) => i + 1);
  test.each([0, 1, 2, 3].map((part) => [part, seeds.filter((seed) => seed % 4 === part)] as const))(
    'is repaired with no more seats changed than the best repair there is (%i)',
    (_, chunk) => {
      for (const seed of chunk) {
        const problem = { ...tinyProblem(seed), before: undefined } as unknown as PicksProblem;
        const plan = pickPouches(problem, linear);
        const next: PicksProblem = {
          ...touched(problem, plan, seed),
          before: { was: 'kept', seats: seatsOf(plan) },
        };
        const repaired = pickPouches(next, linear);
        const best = tryEverything(next);
        expect({ seed, moved: repaired.vector[at.moved] }).toEqual({ seed, moved: best[at.moved] });
        expect({ seed, vector: repaired.vector }).toEqual({ seed, vector: best });
      }
    },
  );

  test('what is said to stay as it is stays, whatever is wished and eaten elsewhere', () => {
    let looked = 0;
    for (const seed of seeds) {
      const problem = tinyProblem(seed);
      const plan = pickPouches(problem, linear);
      const first = plan.slots.find(({ dishes }) => dishes.length > 0);
      if (!first) continue;
      const fixed = seatsOf({ slots: [first] }).filter(({ meal }) => meal !== null);
      const pinned = first.dishes.flatMap(({ pouches }) =>
        pouches.map((pouch) => ({ slot: first.slot, pouch })),
      );
      const next: PicksProblem = {
        ...touched(problem, { slots: plan.slots.filter((one) => one !== first) }, 4 * seed + (seed % 2) * 3),
        fixed,
        pinned,
        wishes: problem.safe.map((pair, i) => ({ ...pair, slot: first.slot, rank: 1 + (i % 3) })),
      };
      const again = pickPouches(next, linear);
      const now = again.slots.find(({ slot }) => slot === first.slot)!;
      const seats = seatsOf({ slots: [now] });
      for (const seat of fixed)
        expect(
          seats.some(({ eater, meal }) => eater === seat.eater && (meal === seat.meal || meal === null)),
          `seed ${seed}: ${seat.eater}`,
        ).toBe(true);
      expect(checkPlan(next, again)).toEqual([]);
      looked += 1;
    }
    expect(looked).toBeGreaterThan(90);
  });

  test('a spare meal takes nothing from the meals that are planned', () => {
    for (const seed of seeds.slice(0, 60)) {
      const { before: _, ...problem } = tinyProblem(seed);
      const last = Math.max(...problem.slots.map(({ day }) => day));
      const spare = {
        key: 'spare',
        day: last + 1,
        order: 2,
        eaters: problem.eaters.map(({ key }) => key),
        isSpare: true,
      };
      const without = pickPouches(problem, linear);
      const withSpare = pickPouches({ ...problem, slots: [...problem.slots, spare] }, linear);
      expect({ seed, slots: withSpare.slots.filter(({ slot }) => slot !== 'spare') }).toEqual({
        seed,
        slots: without.slots,
      });
      expect(withSpare.vector).toEqual(without.vector);
      const codes = withSpare.slots.flatMap(({ dishes, beside = [] }) =>
        [...dishes, ...beside].flatMap(({ pouches }) => pouches),
      );
      expect(new Set(codes).size).toBe(codes.length);
    }
  });
});
