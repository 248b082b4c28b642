import { expect, test } from 'vitest';
import { byName, kitchen, states } from '#foods/kitchen.ts';
import { knownWeights } from '#foods/scales.ts';
import { unitNamed } from '#foods/units.ts';
import { openFoods } from '#store/foods.ts';

const table = openFoods(':memory:');

test('there are at least 800 names, and every number is in the table', () => {
  expect(byName().size).toBeGreaterThan(800);
  expect(
    kitchen()
      .filter(({ ndb }) => table.byNdb(ndb) === undefined)
      .map(({ ndb, called }) => `${ndb} ${called}`),
  ).toEqual([]);
});

test('no name leads to two rows of the same state', () => {
  const twice = [...byName()].flatMap(([name, entries]) =>
    [...states, null]
      .filter((state) => entries.filter((entry) => entry.state === state).length > 1)
      .map((state) => `${name} ${state}`),
  );
  expect(twice).toEqual([]);
});

// Witness: the word of the state in SR28's own description, or in the water it gives (dry foods under 25 g, cooked over 40 g).
test('the state of a row is the state of its food', () => {
  const wrong: string[] = [];
  for (const entry of kitchen().filter(({ standsIn }) => !standsIn)) {
    const food = table.byNdb(entry.ndb)!;
    const water = food.per100.waterG ?? NaN;
    const bad =
      (entry.state === 'dry' && !(water < 25)) ||
      (entry.state === 'dried' && !(water < 45)) ||
      (entry.state === 'cooked' &&
        !/cook|boil|roast|prepared|canned|poached|scrambled|stewed|baked|steamed|mashed|drained|heated|cured|brewed/i.test(
          food.name,
        )) ||
      (entry.state === 'frozen' && !/frozen|raw/i.test(food.name)) ||
      (entry.state === 'canned' && !/can|drained|bottled|solids|juice pack|pickled|raw/i.test(food.name)) ||
      (entry.state === 'smoked' && !/smoked|kippered/i.test(food.name));
    if (bad) wrong.push(`${entry.ndb} ${entry.called}, ${entry.state}: ${food.name}, water ${water}`);
  }
  expect(wrong).toEqual([]);
});

test('a dry pulse, grain or pasta is dry by water, and its cooked row is not', () => {
  for (const entry of kitchen().filter(({ state }) => state === 'dry')) {
    const cooked = byName()
      .get(entry.names[0]!.toLowerCase())
      ?.find(({ state }) => state === 'cooked');
    if (cooked)
      expect([entry.called, table.byNdb(cooked.ndb)!.per100.waterG! > 40]).toEqual([entry.called, true]);
  }
});

test('weights are sane and their units are known', () => {
  const sizes = new Set(['each', 'small', 'medium', 'large', 'extra large', 'fruit']);
  for (const { called, weights, drainedFraction } of kitchen()) {
    for (const { unit, grams } of weights) {
      expect([called, unit, sizes.has(unit) || unitNamed(unit) !== undefined]).toEqual([called, unit, true]);
      expect(grams).toBeGreaterThan(0);
      expect(grams).toBeLessThan(6001);
    }
    if (drainedFraction !== null) expect(drainedFraction > 0.4 && drainedFraction < 0.9).toBe(true);
  }
});
test('cups and spoons of one food say the same density, within reason', () => {
  const wild: string[] = [];
  for (const entry of kitchen()) {
    const plain = knownWeights({ food: table.byNdb(entry.ndb)!, entry }).filter(
      ({ unit, how }) => how.length === 0 && (unit === 'cup' || unit === 'tbsp' || unit === 'tsp'),
    );
    const perMl = plain.map(({ unit, grams }) => grams / unitNamed(unit)!.ml!);
    // Whole leaves pack differently in a cup and on a spoon; liquids and powders do not.
    const [low, high] = [Math.min(...perMl), Math.max(...perMl)];
    if (plain.length > 1 && high / low > 2.6)
      wild.push(`${entry.called}: ${plain.map(({ unit, grams }) => `${unit} ${grams}`).join(', ')}`);
  }
  expect(wild).toEqual([]);
});
