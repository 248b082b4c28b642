import { expect, test } from 'vitest';
import { coldSoakMinutes, soakFactor, soakMinutes } from '#core/soak.ts';
import { boilingPointC } from '#core/boiling.ts';

// J. Sci. Food Agric. 85 (2005) 1397: 19.2 kJ/mol for air-dried Boletus, as read; worked from it: what takes 15 min at sea
// level takes 17 at 1900 m and 19 at 4000 m.
test.each([
  { metres: 1900, publishedMin: 17 },
  { metres: 4000, publishedMin: 19 },
])(
  '15 min at sea level are $publishedMin at $metres m, and ours is no shorter',
  ({ metres, publishedMin }) => {
    const boilC = boilingPointC(metres);
    expect(Math.round(15 * soakFactor(boilC))).toBe(publishedMin);
    expect(soakMinutes(boilC)).toBeGreaterThanOrEqual(publishedMin);
  },
);

// Worked by hand: exp(19200 / 8.314 x (1 / 283.15 - 1 / 373.15)) = 7.15, so 15 min are 107, to the next five 110.
test('in water of 10 °C it takes seven times as long', () => {
  expect(soakFactor(100)).toBe(1);
  expect(soakFactor(10)).toBeCloseTo(7.15, 1);
  expect(coldSoakMinutes(10)).toBe(110);
});
