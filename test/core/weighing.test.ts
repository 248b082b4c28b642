import { describe, expect, test } from 'vitest';
import { isBelowSolids, netWeights, weighingDoubt } from '#core/weighing.ts';

// Subtractions, worked by hand; the doubts are common practice, no source.

describe('net weights', () => {
  test('as typed, or less the tray they stood on', () => {
    expect(netWeights([212, 209], false, [512])).toEqual([
      { netG: 212, tareG: 0 },
      { netG: 209, tareG: 0 },
    ]);
    expect(netWeights([724, 721], true, [512])).toEqual([
      { netG: 212, tareG: 512 },
      { netG: 209, tareG: 512 },
    ]);
    expect(netWeights([724, 721], true, [512, 500])).toEqual([
      { netG: 212, tareG: 512 },
      { netG: 221, tareG: 500 },
    ]);
  });
  test.each([
    [[724], [], 'no-tare'],
    [[724, 721, 700], [512, 500], 'tare-count'],
    [[512], [512], 'lighter-than-tray'],
    [[15_001], [512], 'absurd-weight'],
  ])('%j on trays of %j: %s', (weights, tares, code) => {
    expect(() => netWeights(weights, true, tares)).toThrow(expect.objectContaining({ code }));
  });
  test('the heaviest tray there is', () => expect(netWeights([15_000], false, [])[0]!.netG).toBe(15_000));
});

describe('doubts', () => {
  const tray = { loadedG: 800, lastG: 212, isTotal: false };
  test.each([
    [{ ...tray, netG: 801 }, 'above last'],
    [{ ...tray, netG: 801.1 }, 'above loaded'],
    [{ ...tray, lastG: null, netG: 801 }, undefined],
    // 212 g may gain 1.06 g on a scale of 1 g.
    [{ ...tray, netG: 213.06 }, undefined],
    [{ ...tray, netG: 213.1 }, 'above last'],
    // All together: 800 g may gain 4 g.
    [{ loadedG: 3200, lastG: 800, isTotal: true, netG: 804 }, undefined],
    [{ loadedG: 3200, lastG: 800, isTotal: true, netG: 804.1 }, 'above last'],
  ])('%j: %s', (claimed, doubt) => expect(weighingDoubt(claimed, 1)).toBe(doubt));
  test('one step of a coarse scale is no doubt', () => {
    expect(weighingDoubt({ ...tray, netG: 217 }, 5)).toBeUndefined();
    expect(weighingDoubt({ ...tray, netG: 217.1 }, 5)).toBe('above last');
  });
  test('5 % below the solids is within the food table', () => {
    expect(isBelowSolids(190, 200)).toBe(false);
    expect(isBelowSolids(189.9, 200)).toBe(true);
  });
});
