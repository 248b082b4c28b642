import { describe, expect, test } from 'vitest';
import { seeded } from '#core/picks/chance.ts';
import {
  joinIn,
  joinPriced,
  keepCheaper,
  type Keys,
  makeKeys,
  never,
  splitInTables,
  splitPriced,
  tablesOf,
} from '#core/picks/seating.ts';

// Witness: trying every way to give each party one dish, written here.
const parties = 4;
const full = (1 << parties) - 1;

/** What each dish costs for every set: drawn, and endless for sets with somebody who may not have it. */
function drawDishes(seed: number, dishes: number): { cost: number[][][]; allowed: number[] } {
  const chance = seeded(seed);
  const allowed = Array.from({ length: dishes }, () => chance.below(full + 1));
  const cost = allowed.map((mask) =>
    Array.from({ length: full + 1 }, (_, set) =>
      set === 0 || (set & ~mask) !== 0
        ? [set === 0 ? 0 : never, 0, 0, 0]
        : [chance.below(3), chance.below(3), chance.below(3), chance.below(4)],
    ),
  );
  return { cost, allowed };
}

const add = (a: readonly number[], b: readonly number[]): number[] => a.map((n, i) => n + b[i]!);
const isLess = (a: readonly number[], b: readonly number[]): boolean => {
  const i = a.findIndex((n, k) => n !== b[k]);
  return i >= 0 && a[i]! < b[i]!;
};

/** The cheapest of all ways to give everybody of a set one dish, each dish at one table. */
function cheapestWay(set: number, cost: readonly number[][][]): number[] {
  const at = Array.from({ length: cost.length }, () => 0);
  let best = [never, 0, 0, 0];
  const go = (party: number): void => {
    if (party === parties) {
      const sum = at.reduce((total, sub, d) => add(total, cost[d]![sub]!), [0, 0, 0, 0]);
      if (sum[0] !== never && isLess(sum, best)) best = sum;
      return;
    }
    if ((set & (1 << party)) === 0) return go(party + 1);
    for (let d = 0; d < cost.length; d += 1) {
      at[d]! |= 1 << party;
      go(party + 1);
      at[d]! &= ~(1 << party);
    }
  };
  go(0);
  return best;
}

function keysOf(rows: readonly number[][]): Keys {
  const keys = makeKeys(full + 1);
  rows.forEach((row, set) => row.forEach((n, k) => (keys[k]![set] = n)));
  return keys;
}
const at = (keys: Keys, set: number): number[] =>
  keys[0][set] === never ? [never, 0, 0, 0] : keys.map((key) => key[set]!);

describe('parties share themselves out among dishes', () => {
  test.each(Array.from({ length: 60 }, (_, i) => [i + 1]))(
    'as cheaply as trying every way, seed %i',
    (seed) => {
      const { cost, allowed } = drawDishes(seed, 2 + (seed % 3));
      const f = makeKeys(full + 1);
      f[0].fill(never);
      f[0][0] = 0;
      cost.forEach((rows, d) => joinIn(f, keysOf(rows), full, allowed[d]!));
      for (let set = 0; set <= full; set += 1) expect(at(f, set)).toEqual(cheapestWay(set, cost));
    },
  );

  test.each(Array.from({ length: 60 }, (_, i) => [i + 1]))(
    'in tables: never dearer, and the same where no dish is at two tables, seed %i',
    (seed) => {
      const { cost, allowed } = drawDishes(seed, 2 + (seed % 4));
      const [best, f] = [makeKeys(full + 1), makeKeys(full + 1)];
      const [tableOf, dishOf] = [new Int32Array(full + 1), new Int32Array(full + 1)];
      best[0].fill(never);
      cost.forEach((rows, d) => keepCheaper(best, keysOf(rows), allowed[d]!, dishOf, d));
      splitInTables(f, best, full, tableOf);
      for (let set = 1; set <= full; set += 1) {
        const exact = cheapestWay(set, cost);
        expect(isLess(exact, at(f, set))).toBe(false);
        if (f[0][set] === never) continue;
        const served = tablesOf(set, tableOf, dishOf);
        if (!served) continue;
        expect(at(f, set)).toEqual(exact);
        expect(served.reduce((sum, { sub }) => sum | sub, 0)).toBe(set);
        expect(served.reduce((total, { sub, dish }) => add(total, cost[dish]![sub]!), [0, 0, 0, 0])).toEqual(
          exact,
        );
      }
    },
  );

  test('one dish at two tables is told apart', () => {
    const tableOf = Int32Array.of(0, 1, 2, 1);
    expect(tablesOf(3, tableOf, Int32Array.of(0, 5, 5, 0))).toBeUndefined();
    expect(tablesOf(3, tableOf, Int32Array.of(0, 5, 6, 0))).toEqual([
      { sub: 1, dish: 5 },
      { sub: 2, dish: 6 },
    ]);
  });

  test.each(Array.from({ length: 40 }, (_, i) => [i + 1]))(
    'by price, somebody staying unfed, seed %i',
    (seed) => {
      const chance = seeded(seed * 7);
      const unfed = Float64Array.from({ length: parties }, () => 1 + chance.below(4));
      const dishes = Array.from({ length: 1 + chance.below(3) }, () =>
        Array.from({ length: full + 1 }, (_, set) => (set === 0 ? 0 : chance.below(6) + chance.below(2) / 2)),
      );
      const exact = new Float64Array(full + 1);
      for (let set = 1; set <= full; set += 1)
        exact[set] = exact[set & (set - 1)]! + unfed[31 - Math.clz32(set & -set)]!;
      for (const dish of dishes) joinPriced(exact, Float64Array.from(dish), full, full);
      const best = new Float64Array(full + 1).fill(Infinity);
      const dishOf = new Int32Array(full + 1);
      dishes.forEach((dish, d) =>
        dish.forEach((price, set) => {
          if (set > 0 && price < best[set]!) [best[set], dishOf[set]] = [price, d];
        }),
      );
      const [f, tableOf] = [new Float64Array(full + 1), new Int32Array(full + 1)];
      splitPriced(f, best, unfed, full, tableOf);
      for (let set = 1; set <= full; set += 1) {
        expect(f[set]).toBeLessThanOrEqual(exact[set]! + 1e-9);
        if (tablesOf(set, tableOf, dishOf)) expect(f[set]).toBeCloseTo(exact[set]!, 9);
      }
    },
  );
});
