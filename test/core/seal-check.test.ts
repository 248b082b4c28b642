import { describe, expect, test } from 'vitest';
import {
  type Finding,
  afterEatingG,
  findings,
  gasGrowth,
  isByAltitude,
  mayFollow,
  regained,
  unsound,
} from '#core/seal-check.ts';

// What a loose seal asks for is common practice, no source; weights are worked by hand.

test('sound is what nobody looked at, what is tight and what was sealed anew', () => {
  expect([null, ...findings].filter((found) => unsound(found) === null)).toEqual([null, 'tight', 'resealed']);
});

test.each<[Finding | null, Finding[]]>([
  [null, ['tight', 'loose', 'drying', 'opened', 'swollen', 'smells']],
  ['tight', ['tight', 'loose', 'drying', 'opened', 'swollen', 'smells']],
  ['resealed', ['tight', 'loose', 'drying', 'opened', 'swollen', 'smells']],
  ['loose', ['loose', 'drying', 'resealed', 'opened', 'swollen', 'smells']],
  ['drying', ['loose', 'drying', 'resealed', 'opened', 'swollen', 'smells']],
  ['opened', ['loose', 'drying', 'resealed', 'opened', 'swollen', 'smells']],
  ['swollen', ['swollen', 'smells']],
  ['smells', ['swollen', 'smells']],
])('after %s may come %j', (before, then) => {
  expect(findings.filter((what) => mayFollow(before, what))).toEqual(then);
});

describe('sealed anew', () => {
  test.each([
    [95, 95, true, 0],
    [95, 96, true, 1],
    [95, 96.1, false, 1.1],
    [95, 80, true, -15],
    [400, 402, true, 2],
    [400, 402.1, false, 2.1],
  ])('%f g, now %f g: %s', (sealedG, nowG, isDry, gainedG) => {
    const now = regained(sealedG, nowG);
    expect(now.isDry).toBe(isDry);
    expect(now.gainedG).toBeCloseTo(gainedG, 9);
  });
});

// U.S. Standard Atmosphere 1976: 101325, 79495 and 61640 Pa at 0, 2000 and 4000 m (test/published/us-atmosphere-1976).
test.each([
  [0, 0, 1],
  [0, 2000, 101_325 / 79_495.2155],
  [0, 4000, 101_325 / 61_640.2353],
  [2000, 0, 79_495.2155 / 101_325],
])('sealed at %i m, gas at %i m takes %f times the room', (sealedAtM, openedAtM, times) => {
  expect(gasGrowth(sealedAtM, openedAtM)).toBeCloseTo(times, 5);
});
// Printed in the reference this project was given: x 1.26 at 1900 m, 1.45 at 3000 m, 1.64 at 4000 m from sea level.
test.each([
  [1900, '1.26'],
  [3000, '1.45'],
  [4000, '1.64'],
])('at %i m it is said as x %s', (altitudeM, said) => {
  expect(gasGrowth(0, altitudeM).toFixed(2)).toBe(said);
});

test.each([
  [0, undefined, false],
  [0, 499, false],
  [0, 500, true],
  [1600, 1900, false],
  [1600, 2100, true],
])('sealed at %i m, swollen at %s m: by the air alone %s', (sealedAtM, altitudeM, is) => {
  expect(isByAltitude(sealedAtM, altitudeM)).toBe(is);
});

test('what is left of an opened pouch', () => {
  expect(afterEatingG(95, { share: 0.5 })).toBe(47.5);
  expect(afterEatingG(95, { g: 95 })).toBe(0);
  for (const eaten of [{ g: 96 }, { g: -1 }, { g: NaN }])
    expect(() => afterEatingG(95, eaten)).toThrow(expect.objectContaining({ code: 'more-than-there-is' }));
});
