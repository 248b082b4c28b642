import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mlPerDryG, pouchWaterMl, waterRemovedG } from '#core/balance.ts';
import { leftToSealG } from '#core/sealing.ts';
import { scaleTotals, shareOnTrays, totalsOf } from '#core/solids.ts';

// Mass is neither made nor lost: no publication is needed. Figures worked by hand.

describe('what is left', () => {
  test('six of 95 g from 760 g', () => expect(leftToSealG(760, [], Array(6).fill(95))).toBe(190));
  test('all of it', () => expect(leftToSealG(760, [380], [380])).toBe(0));
  test("the sum may pass the batch by the scale's step and no more", () => {
    expect(leftToSealG(760, [], [380, 381])).toBe(0);
    expect(() => leftToSealG(760, [], [380, 381.1])).toThrow(
      expect.objectContaining({ code: 'more-than-dried' }),
    );
  });
  test('more than there is: the figures are in the sentence', () => {
    expect(() => leftToSealG(760, [], Array(9).fill(95))).toThrow(
      'The batch gave 760 g; this would be 855 g.',
    );
    expect(() => leftToSealG(760, [700], [95])).toThrow(
      'The batch gave 760 g, 700 g of it are sealed already and 60 g are left; this would be 95 g.',
    );
  });
  test.each([0, -1, NaN])('a pouch of %s g', (g) => {
    expect(() => leftToSealG(760, [], [g])).toThrow(expect.objectContaining({ code: 'impossible-weight' }));
  });
});

const whole = (parts: readonly number[]) => parts.reduce((sum, x) => sum + x, 0);
const shares = fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 });
const g = fc.double({ min: 10, max: 5000, noNaN: true });

test('law: solids stay the same from recipe to batch to pouches and what is left', () => {
  const per100 = fc.record({
    waterG: fc.double({ min: 0, max: 99, noNaN: true }),
    kcal: fc.double({ min: 0, max: 900, noNaN: true }),
    proteinG: fc.constant(1),
    fatG: fc.constant(1),
    carbohydrateG: fc.constant(1),
    fibreG: fc.constant(1),
    ashG: fc.constant(1),
    sodiumMg: fc.double({ min: 0, max: 3000, noNaN: true }),
  });
  const parts = fc.array(fc.record({ grams: g, food: fc.constant('food'), per100 }), {
    minLength: 1,
    maxLength: 6,
  });
  fc.assert(
    fc.property(parts, fc.double({ min: 0.1, max: 1, noNaN: true }), shares, (recipe, loadedShare, cuts) => {
      const pot = totalsOf(recipe);
      const batch = scaleTotals(pot, shareOnTrays(pot.massG * loadedShare, pot.massG));
      const dryG = batch.solidsG;
      // One cut more than there are pouches: the last is what is left in the bowl.
      const pouchesG = cuts.map((cut) => (dryG * cut) / (whole(cuts) + 0.1));
      const leftG = leftToSealG(dryG, [], pouchesG);
      const solids = [...pouchesG, leftG].map((one) => scaleTotals(batch, one / dryG).solidsG);
      expect(whole(solids) / (pot.solidsG * loadedShare)).toBeCloseTo(1, 9);
      const sodium = [...pouchesG, leftG].map((one) => scaleTotals(batch, one / dryG).sodiumMg);
      expect(whole(sodium)).toBeCloseTo(pot.sodiumMg * loadedShare, 4);
    }),
  );
});

test('law: all pouches and what is left get back all the water the batch gave up', () => {
  fc.assert(
    fc.property(g, g, shares, (a, b, cuts) => {
      const [dryG, wetG] = [Math.min(a, b), Math.max(a, b)];
      const pouchesG = cuts.map((cut) => (dryG * cut) / (whole(cuts) + 0.1));
      const leftG = leftToSealG(dryG, [], pouchesG);
      const pouredMl = whole(pouchesG.map((one) => pouchWaterMl(one, wetG, dryG)));
      expect(pouredMl + leftG * mlPerDryG(wetG, dryG)).toBeCloseTo(waterRemovedG(wetG, dryG), 6);
    }),
  );
});
