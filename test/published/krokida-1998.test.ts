import { describe, expect, test } from 'vitest';
import { oxygenOfAirFraction, pressedVolumeMl } from '#core/oxygen.ts';

// Krokida et al., J. Food Eng. 35 (1998) 369-380, as given in the reference of this project: the porosity of freeze-dried
// food is 70 to 95 %. Worked: meals of 5 to 30 % solids by volume keep that much of their wet room as holes.
test.each([0.05, 0.15, 0.3])(
  'a meal of %f solids by volume keeps a porosity within the printed band',
  (solids) => {
    const wetG = 103;
    const roomMl = pressedVolumeMl(wetG, 1);
    // 100 ml of wet room hold 100 x solids ml of dry food.
    const porosity = 1 - (100 * solids) / roomMl;
    expect(porosity).toBeGreaterThanOrEqual(0.7 - 1e-9);
    expect(porosity).toBeLessThanOrEqual(0.95 + 1e-9);
  },
);

describe('60 g of soup from 356 g wet', () => {
  // The same reference: 64 to 112 ml of oxygen between a poured puree and loose pieces, of 60 g at 1.4 g/ml.
  test.each([
    [1, 64],
    [0.6, 112],
  ])('packed %f: %i ml of oxygen', (packing, printedMl) => {
    const oxygenMl = oxygenOfAirFraction * (pressedVolumeMl(356, packing) - 60 / 1.4);
    expect(Math.abs(oxygenMl - printedMl)).toBeLessThanOrEqual(1);
  });
});

test.each([0.59, 1.01, NaN])('a packing of %f is refused', (packing) => {
  expect(() => pressedVolumeMl(100, packing)).toThrow(
    expect.objectContaining({ code: 'impossible-packing' }),
  );
});
