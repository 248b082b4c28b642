import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kitchenMeasureMl } from '#core/measures.ts';

const cupMl = 236.5882365; // U.S. cup, exact (NIST)

const said = (ml: number) => {
  const measure = kitchenMeasureMl(ml);
  if (measure === undefined) return undefined;
  return `${measure.whole > 0 ? measure.whole : ''}${measure.fractionText} ${measure.of}`;
};

// 1 cup = 16 tbsp = 48 tsp (U.S. definition); which fractions are sold is common practice, no source.
test.each([
  [cupMl, '1 cup'],
  [cupMl * 2.25, '2¼ cup'],
  [cupMl / 3, '⅓ cup'],
  [cupMl * 0.66, '⅔ cup'],
  [cupMl * 1.97, '2 cup'],
  [cupMl / 8, '⅛ cup'],
  [cupMl / 16, '1 tbsp'],
  [(cupMl / 16) * 1.5, '1½ tbsp'],
  [cupMl / 32, '½ tbsp'],
  [cupMl / 48, '1 tsp'],
  [(cupMl / 48) * 2, '2 tsp'],
  [cupMl / 64, '¾ tsp'],
  [cupMl / 96, '½ tsp'],
  [cupMl / 192, '¼ tsp'],
  [cupMl / 384, '⅛ tsp'],
  [cupMl / 384 / 2.1, undefined],
  [0, undefined],
])('%f ml is %s', (ml, words) => {
  expect(said(ml)).toBe(words);
});

test('every fraction holds what its name says', () => {
  for (const share of [1 / 8, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4, 1]) {
    expect(kitchenMeasureMl(cupMl * share)?.costMl).toBeCloseTo(0, 9);
    expect(kitchenMeasureMl(cupMl * (4 + share))?.costMl).toBeCloseTo(0, 9);
  }
  for (const spoons of [1 / 8, 1 / 4, 1 / 2, 3 / 4, 1, 2, 3, 4.5, 6, 7.5, 9]) {
    expect(kitchenMeasureMl((cupMl / 48) * spoons)?.costMl).toBeCloseTo(0, 9);
  }
});

test('what rounding costs, with its sign', () => {
  // 3 cups of 240 ml asked as 720 ml: 3 U.S. cups are 709.76 ml.
  const measure = kitchenMeasureMl(720);
  expect(measure).toMatchObject({ whole: 3, of: 'cup', costMl: expect.closeTo(-10.235, 3) });
  expect(measure?.costFraction).toBeCloseTo(-10.2353 / 720, 6);
});

test('a cup of another size changes cups, never spoons: 4 U.S. teaspoons are 19.716 ml', () => {
  for (const cup of [cupMl, 240, 250, 284.130625]) {
    expect(kitchenMeasureMl((cupMl / 48) * 4, cup), `${cup} ml`).toMatchObject({ whole: 4, of: 'tsp' });
    expect(kitchenMeasureMl(cup * 2.5, cup), `${cup} ml`).toMatchObject({
      whole: 2,
      fraction: 1 / 2,
      of: 'cup',
    });
  }
});

describe('refusals', () => {
  test.each([-1, NaN])('%s ml', (bad) => {
    expect(() => kitchenMeasureMl(bad)).toThrow(expect.objectContaining({ code: 'impossible-volume' }));
    expect(() => kitchenMeasureMl(100, bad)).toThrow(expect.objectContaining({ code: 'impossible-measure' }));
  });
});

test('law: the measure is what it says, its cost is the gap, and from ½ tsp up it is out by a fifth at most', () => {
  fc.assert(
    fc.property(fc.double({ min: cupMl / 96, max: 5000, noNaN: true }), (ml) => {
      const measure = kitchenMeasureMl(ml);
      expect(measure).toBeDefined();
      if (measure === undefined) return;
      const unitMl = { cup: cupMl, tbsp: cupMl / 16, tsp: cupMl / 48 }[measure.of];
      expect((measure.whole + measure.fraction) * unitMl).toBeCloseTo(measure.ml, 9);
      expect(ml + measure.costMl).toBeCloseTo(measure.ml, 9);
      expect(Math.abs(measure.costFraction)).toBeLessThan(0.2 + 1e-9);
    }),
  );
});
