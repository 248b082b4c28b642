import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { boilingPointC, boilingPointK, pressurePa } from '#core/boiling.ts';

// Values are held against print in test/published: us-atmosphere-1976, iapws-if97.

test('water boils cooler the higher one stands, by about 0.3 °C for each 100 m', () => {
  // Slope from the printed rows 0 and 5000 m: (99.97 − 83.25) / 50 = 0.334 °C per 100 m.
  const m = fc.double({ min: -500, max: 5400, noNaN: true });
  fc.assert(
    fc.property(m, (altitudeM) => {
      const fall = boilingPointC(altitudeM) - boilingPointC(altitudeM + 100);
      expect(fall).toBeGreaterThan(0.3);
      expect(fall).toBeLessThan(0.36);
      expect(pressurePa(altitudeM + 100)).toBeLessThan(pressurePa(altitudeM));
    }),
  );
});

test.each([-501, 5501, NaN, Infinity])('%s m is refused', (m) => {
  expect(() => pressurePa(m)).toThrow(expect.objectContaining({ code: 'impossible-altitude' }));
  expect(() => boilingPointC(m)).toThrow(expect.objectContaining({ code: 'impossible-altitude' }));
});

test('the sentence carries the limits and the figure', () => {
  expect(() => pressurePa(8848)).toThrow('The altitude has to be between -500 and 5500 m; it was 8848 m.');
});

test.each([0, 0.0006, 22.1, NaN])('%s MPa is beyond the saturation line', (mpa) => {
  expect(() => boilingPointK(mpa)).toThrow(expect.objectContaining({ code: 'impossible-pressure' }));
});

// IAPWS: triple point 273.16 K at 611.657 Pa, critical point 647.096 K at 22.064 MPa (from memory).
test('the ends of the line', () => {
  expect(boilingPointK(611.657e-6)).toBeCloseTo(273.16, 2);
  expect(boilingPointK(22.064)).toBeCloseTo(647.096, 2);
});
