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
    { oxygen: 0, safety: 1, sizeMl: 100, count: 1 },
    { oxygen: 99.9, safety: 1, sizeMl: 100, count: 1 },
    { oxygen: 100, safety: 1, sizeMl: 100, count: 1 },
    { oxygen: 100.1, safety: 1, sizeMl: 300, count: 1 },
    { oxygen: 300, safety: 1, sizeMl: 300, count: 1 },
    { oxygen: 192.2, safety: 1.5, sizeMl: 300, count: 1 },
    { oxygen: 200, safety: 1.5, sizeMl: 300, count: 1 },
    { oxygen: 201, safety: 1.5, sizeMl: 500, count: 1 },
    { oxygen: 501, safety: 1, sizeMl: 500, count: 2 },
    { oxygen: 787, safety: 1.5, sizeMl: 500, count: 3 },
  ])('$oxygen ml × $safety: $count of $sizeMl', ({ oxygen, safety, sizeMl, count }) => {
    expect(chooseAbsorber(oxygen, owned, safety)).toMatchObject({ sizeMl, count });
  });
  test('a hair of binary rounding asks for no second one', () => {
    expect(0.1 * 3 > 0.3).toBe(true);
    expect(chooseAbsorber(0.1, [0.3], 3)).toMatchObject({ count: 1 });
  });
  // Chosen: half as much again.
  test('unless told otherwise half as much again is taken up', () => {
    expect(chooseAbsorber(200, owned)).toMatchObject({ sizeMl: 300, count: 1, neededMl: 300 });
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
  test('law: capacity always covers oxygen times safety, and no smaller owned one would', () => {
    const sizes = fc.array(fc.integer({ min: 20, max: 2000 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        sizes,
        fc.double({ min: 1, max: 3, noNaN: true }),
        (oxygen, list, safety) => {
          const chosen = chooseAbsorber(oxygen, list, safety);
          expect(chosen.sizeMl * chosen.count).toBeGreaterThanOrEqual(oxygen * safety * (1 - 1e-11));
          expect(chosen.capacityMl).toBe(chosen.sizeMl * chosen.count);
          expect(list).toContain(chosen.sizeMl);
          if (chosen.count === 1) {
            for (const size of list) if (size < chosen.sizeMl) expect(size).toBeLessThan(oxygen * safety);
          } else {
            expect(chosen.sizeMl).toBe(Math.max(...list));
            expect(chosen.sizeMl * (chosen.count - 1)).toBeLessThan(oxygen * safety);
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
