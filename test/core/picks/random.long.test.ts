import { describe, expect, test } from 'vitest';
import type { Occasion } from '#core/occasions.ts';
import { seeded } from '#core/picks/chance.ts';
import { checkPlan } from '#core/picks/check.ts';
import { fedByDay } from '#core/picks/fed.ts';
import { pickPouches, usualLimits } from '#core/picks/pick.ts';
import { at, type Lot, type PicksProblem } from '#core/picks/problem.ts';
import { countLevels } from './count.ts';

/** A trip as families have them: up to six people and five days, breakfasts, mains, sides and sweets, all of it drawn. */
function familyTrip(seed: number): PicksProblem {
  const chance = seeded(seed * 6151 + 29);
  const below = (n: number): number => chance.below(n);
  const eaters = Array.from({ length: 1 + below(6) }, (_, i) => ({
    key: `e${i}`,
    name: `E ${i}`,
    portionTwentieths: [8, 12, 20, 20, 30][below(5)]!,
    sodiumLimitMg: below(3) === 0 ? 1500 : null,
    sodiumHard: below(6) === 0,
    energyKcal: below(4) === 0 ? null : 1200 + 100 * below(20),
  }));
  const kinds: (readonly Occasion[])[] = [
    ['main'],
    ['main'],
    ['breakfast'],
    ['breakfast', 'main'],
    ['side'],
    ['sweet', 'snack'],
    ['drink'],
  ];
  const meals = Array.from({ length: 2 + below(6) }, (_, m) => ({ meal: `meal ${m}`, is: kinds[below(7)]! }));
  const days = 1 + below(5);
  const slots = Array.from({ length: days }, (_, day) =>
    (
      [
        ['breakfast', ['drink']],
        ['main', ['side', 'snack', 'drink']],
        ['main', ['side', 'sweet', 'snack', 'drink']],
      ] as const
    ).map(([carry, beside], order) => {
      const there = eaters.filter(() => below(7) > 0).map((e) => e.key);
      return {
        key: `s${day}-${order}`,
        day: 50 + day,
        order,
        eaters: there,
        carriedBy: [carry],
        beside,
        floors: there.flatMap((eater) => (below(5) === 0 ? [] : [{ eater, kcal: 200 + 50 * below(16) }])),
      };
    }),
  )
    .flat()
    .filter(() => below(6) > 0);
  const lots: Lot[] = Array.from({ length: 1 + below(10) }, (_, i) => ({
    code: `B${i}/90`,
    meal: meals[below(meals.length)]!.meal,
    pouches: Array.from({ length: 1 + below(6) }, (__, k) => `B${i}-${k + 1}`),
    servingsTwentieths: 7 + below(60),
    dryG: 50 + below(200),
    waterMl: 200,
    sodiumMgPerServing: below(9) === 0 ? null : 100 * below(15),
    kcalPerServing: below(9) === 0 ? null : 30 + 50 * below(16),
    bestBy: below(6) === 0 ? null : 49 + below(200),
    steady: below(15) > 0,
  }));
  const pairs = eaters.flatMap((e) => meals.map(({ meal }) => ({ eater: e.key, meal })));
  const draw = <T>(list: readonly T[], odds: number): T[] => list.filter(() => below(odds) === 0);
  const places = slots.flatMap((s) => meals.map(({ meal }) => ({ slot: s.key, meal })));
  return {
    lots,
    eaters,
    slots,
    uses: meals.filter(() => below(8) > 0),
    safe: pairs.filter(() => below(6) > 0),
    dislikes: draw(pairs, 5),
    barred: draw(places, 15).map((place) => ({ ...place, near: ['E 0'] })),
    banned: draw(places, 15),
    pinned: draw(
      lots.flatMap((lot) => lot.pouches),
      8,
    ).flatMap((pouch) => (slots.length > 0 ? [{ pouch, slot: slots[below(slots.length)]!.key }] : [])),
    wishes: Array.from({ length: slots.length > 0 ? below(6) : 0 }, () => ({
      eater: eaters[below(eaters.length)]!.key,
      meal: meals[below(meals.length)]!.meal,
      slot: below(2) === 0 ? null : slots[below(slots.length)]!.key,
      rank: 1 + below(4),
    })),
  };
}

/** What must hold holds for the first plan as for the best. */
const few = { ...usualLimits, rounds: 20 };

// Witness: check.ts and count.ts, which share nothing with the picks; and the eye, line by line.
describe('two thousand trips', { timeout: 120_000 }, () => {
  test.each(Array.from({ length: 40 }, (_, i) => [i * 50 + 1] as const))(
    '50 from seed %i on',
    async (from) => {
      await new Promise((done) => setImmediate(done));
      for (let seed = from; seed < from + 50; seed += 1) {
        const problem = familyTrip(seed);
        const plan = pickPouches(problem, undefined, few);
        expect({ seed, faults: checkPlan(problem, plan) }).toEqual({ seed, faults: [] });
        if (problem.slots.length > 0) expect(countLevels(problem, plan)).toEqual(plan.vector);
        // Nobody who misses a meal, or whose day is short of energy, is called fed.
        const missed = fedByDay(problem, plan).reduce((sum, fed) => sum + fed.missed.length, 0);
        expect(missed).toBe(plan.vector[at.unfed]);
        for (const { floorKcal, kcal, shortKcal, unknown } of fedByDay(problem, plan)) {
          const isShort = floorKcal !== null && unknown.length === 0 && kcal < 0.9 * floorKcal - 100;
          if (isShort) expect(shortKcal).toBeGreaterThan(0);
        }
      }
    },
  );
});
