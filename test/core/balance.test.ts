import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dryBasis,
  expectedDryG,
  finalMassG,
  learntCorrection,
  mlPerDryG,
  moistureAfterRemoving,
  pouchWaterMl,
  residualMoistureBand,
  residualMoistureFraction,
  waterRemovedG,
  wetBasis,
} from '#core/balance.ts';

// The sums are held against print in test/published/irri-moisture.test.ts; here their edges and laws, worked by hand.

describe('refusals carry the figures', () => {
  test('heavier dry than wet', () => {
    expect(() => waterRemovedG(700, 760)).toThrow(
      'The batch cannot weigh more dry (760 g) than it did wet (700 g).',
    );
  });
  test.each([
    [3200, 0],
    [3200, -1],
    [-5, -6],
    [0, 0],
    [NaN, 700],
    [3200, NaN],
    [Infinity, 700],
  ])('wet %s g, dry %s g', (wetG, dryG) => {
    expect(() => mlPerDryG(wetG, dryG)).toThrow(expect.objectContaining({ code: 'no-water-figure' }));
  });
  test.each([0, -95, NaN])('a pouch of %s g', (g) => {
    expect(() => pouchWaterMl(g, 3200, 760)).toThrow(expect.objectContaining({ code: 'no-water-figure' }));
  });
  test.each([0.69, 1.31, NaN])('a correction of %s', (t) => {
    expect(() => pouchWaterMl(95, 3200, 760, t)).toThrow(
      expect.objectContaining({ code: 'no-water-figure' }),
    );
  });
  test.each([-0.01, 1, 1.2, NaN])('a moisture of %s', (m) => {
    expect(() => expectedDryG(500, m)).toThrow(expect.objectContaining({ code: 'impossible-moisture' }));
    expect(() => dryBasis(m)).toThrow(expect.objectContaining({ code: 'impossible-moisture' }));
    expect(() => finalMassG(500, 0.8, m)).toThrow(expect.objectContaining({ code: 'impossible-moisture' }));
  });
  test('drying to more moisture than there was', () => {
    expect(() => finalMassG(500, 0.5, 0.6)).toThrow(expect.objectContaining({ code: 'impossible-moisture' }));
  });
  test('more than all the water', () => {
    expect(() => moistureAfterRemoving(0.8, 1.1)).toThrow(
      expect.objectContaining({ code: 'impossible-moisture' }),
    );
  });
});

describe('water for a pouch', () => {
  // 3040 − 760 = 2280 ml on 760 g: 3 ml a gram.
  test('three millilitres a gram, times what was learnt', () => {
    expect(mlPerDryG(3040, 760)).toBe(3);
    expect(pouchWaterMl(100, 3040, 760)).toBe(300);
    expect(pouchWaterMl(100, 3040, 760, 1.2)).toBeCloseTo(360, 9);
    expect(pouchWaterMl(100, 3040, 760, 0.7)).toBeCloseTo(210, 9);
  });
  test('a batch that lost nothing needs none', () => {
    expect(pouchWaterMl(100, 760, 760)).toBe(0);
  });
});

describe('the second witness', () => {
  test('a batch lighter than its solids shows below zero: something was weighed wrong', () => {
    expect(residualMoistureFraction(190, 200)).toBeCloseTo(-10 / 190, 12);
  });
  test('the band never starts below zero, and 25 g of water in 225 g shows through 5 %', () => {
    expect(residualMoistureBand(205, 200, 0.05).lowFraction).toBe(0);
    expect(residualMoistureBand(225, 200, 0.05).lowFraction).toBeCloseTo(15 / 225, 12);
  });
  test('an error of the solids beyond all of them is refused', () => {
    expect(() => residualMoistureBand(205, 200, 1.5)).toThrow(
      expect.objectContaining({ code: 'impossible-error' }),
    );
  });
});

// How ratings are weighed is chosen (common practice, no source); the figures are worked by hand.
describe('the learnt correction', () => {
  const said = (moreMl: number, pouredMl = 400, balanceMl = 400) => ({ balanceMl, pouredMl, moreMl });

  test('is 1 until rated', () => {
    expect(learntCorrection([])).toEqual({ correction: 1, ratings: 0, held: false });
  });
  test('one rating is believed', () => {
    expect(learntCorrection([said(40)]).correction).toBeCloseTo(1.1, 12);
    expect(learntCorrection([said(-40)]).correction).toBeCloseTo(0.9, 12);
  });
  test('a rating of water already corrected counts from what was poured', () => {
    // 440 poured of a plain 400, and 20 more: 460 / 400.
    expect(learntCorrection([said(20, 440)]).correction).toBeCloseTo(1.15, 12);
  });
  test('the later of two counts twice', () => {
    expect(learntCorrection([said(0), said(60)]).correction).toBeCloseTo(1.1, 12);
    expect(learntCorrection([said(60), said(0)]).correction).toBeCloseTo(1.05, 12);
  });
  test.each([
    [400, 1.3],
    [-300, 0.7],
  ])('%i ml is held back to %f', (moreMl, correction) => {
    expect(learntCorrection([said(moreMl)])).toEqual({ correction, ratings: 1, held: true });
  });
  test.each([
    { balanceMl: 0, pouredMl: 0, moreMl: 10 },
    { balanceMl: 400, pouredMl: 400, moreMl: -400 },
    { balanceMl: 400, pouredMl: -1, moreMl: 40 },
    { balanceMl: 400, pouredMl: 400, moreMl: NaN },
  ])('$moreMl ml on $pouredMl of $balanceMl is refused', (rating) => {
    expect(() => learntCorrection([rating])).toThrow(expect.objectContaining({ code: 'impossible-rating' }));
  });
  test('always stays between 0.7 and 1.3, and between the ratings', () => {
    const moreMl = fc.double({ min: -399, max: 2000, noNaN: true });
    fc.assert(
      fc.property(fc.array(moreMl, { minLength: 1, maxLength: 60 }), (list) => {
        const { correction } = learntCorrection(list.map((ml) => said(ml)));
        const held = list.map((ml) => Math.min(1.3, Math.max(0.7, (400 + ml) / 400)));
        expect(correction).toBeGreaterThanOrEqual(0.7);
        expect(correction).toBeLessThanOrEqual(1.3);
        if (list.every((ml) => Math.abs(ml) <= 120)) {
          expect(correction).toBeGreaterThanOrEqual(Math.min(...held) - 1e-9);
          expect(correction).toBeLessThanOrEqual(Math.max(...held) + 1e-9);
        }
      }),
    );
  });
});

describe('laws', () => {
  const fraction = fc.double({ min: 0, max: 0.99, noNaN: true });
  const g = fc.double({ min: 1, max: 1e5, noNaN: true });
  test('dry basis and back', () => {
    fc.assert(
      fc.property(fraction, (m) => {
        expect(wetBasis(dryBasis(m))).toBeCloseTo(m, 12);
      }),
    );
  });
  test('solids stay: what a batch is expected to weigh gives its moisture back', () => {
    fc.assert(
      fc.property(g, fraction, (solidsG, m) => {
        expect(residualMoistureFraction(expectedDryG(solidsG, m), solidsG)).toBeCloseTo(m, 9);
      }),
    );
  });
  test('drying in two steps is drying in one', () => {
    fc.assert(
      fc.property(g, fc.uniqueArray(fraction, { minLength: 3, maxLength: 3 }), (massG, list) => {
        const [low = 0, middle = 0, high = 0] = list.toSorted((a, b) => a - b);
        const twice = finalMassG(finalMassG(massG, high, middle), middle, low);
        expect(twice / finalMassG(massG, high, low)).toBeCloseTo(1, 9);
      }),
    );
  });
});
