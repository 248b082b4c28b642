// Worked by hand; what counts as the rest of a pot is chosen.
import { describe, expect, test } from 'vitest';
import { type PotLoad, isLoadBefore, mayBeRest, sharedPotG } from '#core/pot.ts';

const load = (wetG: number, hours = 0, more: Partial<PotLoad> = {}): PotLoad => ({
  wetG,
  potG: null,
  factor: 1,
  loadedAtMs: hours * 3_600_000,
  ...more,
});

describe('whether a load may be the rest of a pot of 2000 g', () => {
  test.each([
    [load(1000), load(900, 24), true],
    [load(1000), load(900, 72), true],
    [load(1000), load(900, 73), false],
    [load(1699), load(600, 24), true],
    [load(1700), load(300, 24), false],
    [load(1000), load(1300, 24), true],
    [load(1000), load(1301, 24), false],
    [load(1000), load(900, 24, { factor: 2 }), false],
    [load(1000, 0, { potG: 2000 }), load(900, 24), false],
    [load(1000), load(900, 24, { potG: 900 }), false],
    [load(1000, 5), load(900, 4), false],
  ])('%j, then %j: %s', (earlier, later, may) => {
    expect(mayBeRest(earlier, later, 2000)).toBe(may);
  });
  test('a weighed pot asks nothing, and is still a load before', () => {
    expect(isLoadBefore(load(1000, 0, { potG: 2000 }), load(900, 24))).toBe(true);
  });
});

test.each([
  [[load(1000)], 900, 1900],
  [[load(1000, 0, { potG: 2400 })], 900, 2400],
  // The pot was the sum of the first two: a third adds to it.
  [[load(1000, 0, { potG: 1900 }), load(900, 24, { potG: 1900 })], 300, 2200],
  [[load(1000, 0, { potG: 2400 }), load(900, 24, { potG: 2400 })], 300, 2400],
])('loads of one pot %j and %i g: %i g', (before, wetG, potG) => {
  expect(sharedPotG(before, wetG)).toBe(potG);
});
