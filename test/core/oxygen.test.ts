import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chooseAbsorber,
  componentDensity,
  freeAirMl,
  oxygenMl,
  particleDensityGPerMl,
  pouchVolumeMl,
} from '#core/oxygen.ts';

// The figures are held against print in test/published/aiche-air, choi-okos-1986 and robin-2004; here edges and laws.

const none = { waterG: 0, proteinG: 0, fatG: 0, carbohydrateG: 0, fibreG: 0, ashG: 0 };

describe('the absorber', () => {
  const owned = [500, 100, 300];
  // Worked by hand: oxygen times safety against what is in the drawer.
  test.each([
    { oxygen: 0, safety: 1, packs: '100' },
    { oxygen: 99.9, safety: 1, packs: '100' },
    { oxygen: 100, safety: 1, packs: '100' },
    { oxygen: 100.1, safety: 1, packs: '300' },
    { oxygen: 300, safety: 1, packs: '300' },
    { oxygen: 192.2, safety: 1.5, packs: '300' },
    { oxygen: 200, safety: 1.5, packs: '300' },
    { oxygen: 201, safety: 1.5, packs: '500' },
    // One is too few; of two the least that does.
    { oxygen: 501, safety: 1, packs: '300 + 300' },
    { oxygen: 700, safety: 1, packs: '500 + 300' },
    { oxygen: 801, safety: 1, packs: '500 + 500' },
    { oxygen: 787, safety: 1.5, packs: '500 + 500 + 300' },
  ])('$oxygen ml × $safety: $packs', ({ oxygen, safety, packs }) => {
    const chosen = chooseAbsorber(oxygen, owned, safety);
    const each = chosen.packs.flatMap(({ sizeMl, count }) => Array<number>(count).fill(sizeMl));
    expect(each.join(' + ')).toBe(packs);
  });
  test('a hair of binary rounding asks for no second one', () => {
    expect(0.1 * 3 > 0.3).toBe(true);
    expect(chooseAbsorber(0.1, [0.3], 3).packs).toEqual([{ sizeMl: 0.3, count: 1 }]);
  });
  // Chosen: half as much again.
  test('unless told otherwise half as much again is taken up', () => {
    expect(chooseAbsorber(200, owned)).toMatchObject({
      packs: [{ sizeMl: 300, count: 1 }],
      neededMl: 300,
    });
  });
  test('refusals', () => {
    expect(() => chooseAbsorber(100, [], 1)).toThrow(expect.objectContaining({ code: 'no-absorbers' }));
    expect(() => chooseAbsorber(100, [0], 1)).toThrow(
      expect.objectContaining({ code: 'impossible-absorber' }),
    );
    expect(() => chooseAbsorber(NaN, owned, 1)).toThrow(
      expect.objectContaining({ code: 'impossible-oxygen' }),
    );
    expect(() => chooseAbsorber(100, owned, 0.9)).toThrow(
      expect.objectContaining({ code: 'impossible-safety' }),
    );
  });
  test('law: it covers oxygen times safety, in as few packs as can be, and no other so many of two sizes do with less', () => {
    const sizes = fc.array(fc.integer({ min: 20, max: 2000 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        sizes,
        fc.double({ min: 1, max: 3, noNaN: true }),
        (oxygen, list, safety) => {
          const needed = oxygen * safety * (1 - 1e-11);
          const { packs, capacityMl } = chooseAbsorber(oxygen, list, safety);
          const count = packs.reduce((sum, one) => sum + one.count, 0);
          expect(capacityMl).toBe(packs.reduce((sum, one) => sum + one.count * one.sizeMl, 0));
          expect(capacityMl).toBeGreaterThanOrEqual(needed);
          for (const { sizeMl } of packs) expect(list).toContain(sizeMl);
          expect(packs.length).toBeLessThanOrEqual(2);
          if (count > 1) expect((count - 1) * Math.max(...list)).toBeLessThan(oxygen * safety);
          // Every way to take so many of two sizes, tried one by one.
          for (const a of list)
            for (const b of list)
              for (let of = 0; of <= count; of++) {
                const other = of * a + (count - of) * b;
                if (other >= oxygen * safety) expect(other).toBeGreaterThanOrEqual(capacityMl);
              }
        },
      ),
    );
  });
});

describe('free air', () => {
  test('is never below 0, though the volume formula may be a little low', () => {
    expect(freeAirMl(1000, 1450, 1.45)).toBe(0);
    expect(freeAirMl(1000, 1550, 1.45)).toBe(0);
  });
  test('food that cannot go in is refused with both volumes', () => {
    expect(() => freeAirMl(500, 1450, 1.45)).toThrow('1450 g of food fill 1000 ml; the pouch holds 500 ml.');
  });
  test.each([
    [0, 100, 1.4, 'impossible-pouch'],
    [500, -1, 1.4, 'impossible-weight'],
    [500, 100, 0, 'impossible-density'],
    [500, 100, NaN, 'impossible-density'],
  ])('%s ml, %s g, %s g/ml', (volumeMl, foodG, density, code) => {
    expect(() => freeAirMl(volumeMl, foodG, density)).toThrow(expect.objectContaining({ code }));
  });
  test('oxygen refuses a vacuum and less than no air', () => {
    expect(() => oxygenMl(-1)).toThrow(expect.objectContaining({ code: 'impossible-air' }));
    expect(() => oxygenMl(100, 0)).toThrow(expect.objectContaining({ code: 'impossible-pressure' }));
  });
});

describe('the pouch', () => {
  test('which side is called width does not matter', () => {
    expect(pouchVolumeMl(150, 230)).toBe(pouchVolumeMl(230, 150));
  });
  test('twice the size in both ways holds eight times as much', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 400 }), fc.integer({ min: 50, max: 400 }), (w, h) => {
        expect(pouchVolumeMl(2 * w, 2 * h) / pouchVolumeMl(w, h)).toBeCloseTo(8, 9);
      }),
    );
  });
  test('a larger pouch never holds less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 900 }), fc.integer({ min: 50, max: 900 }), (w, h) => {
        expect(pouchVolumeMl(w, h + 1)).toBeGreaterThan(pouchVolumeMl(w, h));
      }),
    );
  });
  test.each([0, -10, 5, 3000, NaN])('%s mm wide is refused', (mm) => {
    expect(() => pouchVolumeMl(mm, 200)).toThrow(expect.objectContaining({ code: 'impossible-pouch' }));
    expect(() => pouchVolumeMl(200, mm)).toThrow(expect.objectContaining({ code: 'impossible-pouch' }));
  });
});

describe('the density of food', () => {
  test('lies between its lightest and its heaviest part', () => {
    const g = fc.double({ min: 0.1, max: 90, noNaN: true });
    fc.assert(
      fc.property(g, g, g, (waterG, fatG, ashG) => {
        const density = particleDensityGPerMl({ ...none, waterG, fatG, ashG });
        const parts = componentDensity(20);
        expect(density * 1000).toBeGreaterThan(parts.fat);
        expect(density * 1000).toBeLessThan(parts.ash);
      }),
    );
  });
  test('nothing known is refused, not guessed', () => {
    expect(() => particleDensityGPerMl(none)).toThrow(
      expect.objectContaining({ code: 'impossible-composition' }),
    );
    expect(() => particleDensityGPerMl({ ...none, fatG: -1 })).toThrow(
      expect.objectContaining({ code: 'impossible-composition' }),
    );
  });
  test('beyond the range of the equations is refused', () => {
    expect(() => componentDensity(-41)).toThrow(expect.objectContaining({ code: 'impossible-temperature' }));
    expect(() => componentDensity(151)).toThrow(expect.objectContaining({ code: 'impossible-temperature' }));
  });
});
