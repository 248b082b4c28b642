import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Balance,
  type Witness,
  dryVerdict,
  heard,
  isStale,
  isWet,
  since,
  waterLeft,
} from '#core/dry-verdict.ts';
import type { Steadiness } from '#core/dryness.ts';
import { tries } from '../ring.ts';

// Witness: mass is neither made nor lost, so the fractions are worked by hand. The limit of 10 % has its own file
// (test/published/oxygen-free-leaflet.test.ts); most of the water, the jar and the word are chosen rules of this project.

const steady: Steadiness = { is: 'steady', changeG: 0, thresholdG: 1, gapHours: 2, neededGapHours: 2 };
const losing: Steadiness = { ...steady, is: 'not yet', why: 'still losing' };
/** 1000 g loaded, 200 g of solids, 20 g of them fat: 800 g of water. */
const of = (dryG: number, more: Partial<Balance> = {}): Balance => ({
  wetG: 1000,
  dryG,
  solidsG: 200,
  fatG: 20,
  ...more,
});

describe('water left', () => {
  test('of the food without its fat, with 5 % of the solids either way', () => {
    // 240 g: 40 g of water in 220 g; 30 g if the solids were 210 g, 50 g if they were 190 g. 40 of 800 g are still there.
    expect(waterLeft(of(240))).toEqual({
      lowFraction: 30 / 220,
      fraction: 40 / 220,
      highFraction: 50 / 220,
      wholeFraction: 1 - 200 / 240,
      stillThereFraction: 40 / 800,
    });
  });
  test('never below none and never above all', () => {
    expect(waterLeft(of(190))).toEqual({
      lowFraction: 0,
      fraction: 0,
      highFraction: 0,
      wholeFraction: 0,
      stillThereFraction: 0,
    });
    expect(waterLeft(of(1000, { solidsG: 0, fatG: 0 }))).toEqual({
      lowFraction: 1,
      fraction: 1,
      highFraction: 1,
      wholeFraction: 1,
      stillThereFraction: 1,
    });
  });
  test('more solids than were loaded leave no water to go, and more fat than food is not believed', () => {
    expect(waterLeft(of(990, { solidsG: 1000 })).stillThereFraction).toBe(0);
    expect(waterLeft(of(100, { solidsG: 95, fatG: 120 }), 0).fraction).toBe(5 / 10);
  });
  test.each([
    [{ dryG: 0 }, 'impossible-weight'],
    [{ wetG: -1 }, 'impossible-weight'],
    [{ solidsG: NaN }, 'impossible-weight'],
  ])('%j is refused', (more, code) => {
    expect(() => waterLeft(of(200, more))).toThrow(expect.objectContaining({ code }));
  });
});

describe('wet by the balance', () => {
  // (D − 210) / (D − 20) > 10 %: 231.1 g is the limit.
  test.each([
    [231, false],
    [231.2, true],
    [980, true],
  ])('%f g: %s', (dryG, wet) => expect(isWet(waterLeft(of(dryG)))).toBe(wet));
  test('food that was loaded with little water is wet while most of it is there', () => {
    // 100 g with 4 g of water: 98.1 g still hold more than half of it, though the table's error hides it.
    const crackers = { wetG: 100, solidsG: 96, fatG: 0 };
    expect(waterLeft({ ...crackers, dryG: 98.1 }).lowFraction).toBe(0);
    expect(isWet(waterLeft({ ...crackers, dryG: 98.1 }))).toBe(true);
    expect(isWet(waterLeft({ ...crackers, dryG: 98 }))).toBe(false);
  });
  test('lines that could not be read count as water and never as solids', () => {
    expect(isWet(waterLeft(of(200)))).toBe(false);
    expect(isWet(waterLeft(of(200, { solidsG: 120 })))).toBe(true);
    expect(isWet(waterLeft(of(200, { solidsG: 0, fatG: 0 })))).toBe(true);
  });
});

describe('the verdict', () => {
  const jar = (atMs: number, humidityPercent: number): Witness => ({ atMs, by: 'Ben', humidityPercent });
  const word = (atMs: number): Witness => ({ atMs, by: 'Ana', words: 'six pieces opened' });

  test('a weight that is not steady, or not whole, is not dry whatever else is said', () => {
    expect(dryVerdict(losing, of(205), [jar(5, 10), word(6)], 1)).toEqual({
      is: 'not dry',
      because: 'not steady',
      steadiness: losing,
    });
    expect(dryVerdict(steady, undefined)).toMatchObject({ because: 'not steady' });
  });
  test('steady and dry by the balance', () => {
    expect(dryVerdict(steady, of(205))).toEqual({ is: 'dry', vouched: null, doubtedFraction: null });
  });
  // Chosen by simulation (test/bench/dry.test.ts).
  describe('what the recipe leaves in doubt', () => {
    const hour = 3_600_000;
    const pieces = (atMs: number, isCold: boolean): Witness => ({ atMs, by: 'Ben', isCold });
    const doubt = (witnesses: readonly Witness[] = [], weighedAtMs = 20 * hour) => {
      const said = dryVerdict(steady, of(214), witnesses, weighedAtMs);
      return said.is === 'dry' ? said.doubtedFraction : said.because;
    };
    test('is told above 6 %: 200 g of solids in 214 g, not in 212 g', () => {
      expect(doubt()).toBeCloseTo(14 / 214, 6);
      expect(dryVerdict(steady, of(212))).toMatchObject({ doubtedFraction: null });
    });
    test('is settled by crisp pieces, up to half a day before the last weighing', () => {
      expect(doubt([pieces(20 * hour, false)])).toBeNull();
      expect(doubt([pieces(8 * hour, false)])).toBeNull();
      expect(doubt([pieces(8 * hour - 1, false)])).toBeCloseTo(14 / 214, 6);
    });
    test('by a dry jar since the last weighing, not by one that is neither', () => {
      expect(doubt([jar(20 * hour, 30)])).toBeNull();
      expect(doubt([jar(20 * hour, 31)])).toBeCloseTo(14 / 214, 6);
      expect(doubt([jar(20 * hour - 1, 30)])).toBeCloseTo(14 / 214, 6);
    });
    test('and a piece that is cold is no doubt any more', () => {
      expect(doubt([pieces(19 * hour, false), pieces(20 * hour, true)])).toBe('cold inside');
    });
  });
  test('steady and wet: a stopped pump', () => {
    expect(dryVerdict(steady, of(980))).toMatchObject({
      is: 'not dry',
      because: 'wet by balance',
      mayBeVouched: false,
    });
  });
  test('a dry jar and a word after it stand against the balance, and are kept in sight', () => {
    expect(heard(of(260), [jar(5, 24), word(6)], 1)).toEqual({
      is: 'dry',
      vouched: { atMs: 6, by: 'Ana', words: 'six pieces opened', humidityPercent: 24 },
      doubtedFraction: null,
    });
  });
  test.each([
    ['a jar alone', [jar(5, 24)]],
    ['a word alone', [word(6)]],
    ['a word before the jar', [word(4), jar(5, 24)]],
    ['a jar that is not crisp', [jar(5, 31), word(6)]],
    ['a jar from before the last weighing', [jar(0, 24), word(6)]],
    ['a later jar that is not crisp', [jar(5, 24), word(6), jar(7, 45)]],
    ['a word that was said of an earlier jar', [jar(5, 24), word(6), jar(7, 24)]],
  ])('%s does not', (_, witnesses) => {
    expect(heard(of(260), witnesses, 1)).toMatchObject({ because: 'wet by balance', mayBeVouched: true });
  });
  test('nor does anything where more than 15 % of the water is still there', () => {
    // 800 g of water: 320 g dry still hold 120 g of it, 321 g more.
    expect(heard(of(320), [jar(5, 24), word(6)], 1).is).toBe('dry');
    expect(heard(of(321), [jar(5, 24), word(6)], 1)).toMatchObject({ is: 'not dry', mayBeVouched: false });
  });
  test('a damp jar refuses what scale and balance call dry', () => {
    expect(heard(of(205), [jar(5, 61)], 1)).toEqual({
      is: 'not dry',
      because: 'damp jar',
      humidityPercent: 61,
    });
    expect(heard(of(205), [jar(5, 61), jar(9, 40)], 1).is).toBe('dry');
    expect(heard(of(205), [jar(5, 61)], 6).is).toBe('dry');
  });
  test('what counts is the last reading and the last word with it or after it', () => {
    expect(since([jar(1, 20), word(1), word(2)], 1)).toEqual({ jar: jar(1, 20), word: word(2) });
    expect(since([word(1)], 0)).toEqual({ jar: undefined, word: undefined });
  });
  test('law: a heavier batch is never drier, and neither is one with fewer solids known', () => {
    const g = fc.double({ min: 1, max: 999, noNaN: true });
    fc.assert(
      fc.property(g, g, g, g, (a, b, s, t) => {
        const isDry = (dryG: number, solidsG: number) => heard(of(dryG, { solidsG, fatG: 0 })).is === 'dry';
        const [lighter, heavier] = [Math.min(a, b), Math.max(a, b)];
        const [fewer, more] = [Math.min(s, t), Math.max(s, t)];
        if (isDry(heavier, fewer)) expect(isDry(lighter, fewer)).toBe(true);
        if (isDry(lighter, fewer)) expect(isDry(lighter, more)).toBe(true);
      }),
      { numRuns: tries(500) },
    );
  });
});

test('steady lasts an hour', () => {
  expect(isStale(0, 3_600_000)).toBe(false);
  expect(isStale(0, 3_600_001)).toBe(true);
});
