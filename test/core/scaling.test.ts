import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sodiumMgOfTableSalt } from '#core/nutrition.ts';
import {
  depthMm,
  factorFromIngredient,
  factorFromPouches,
  factorFromServings,
  factorFromTrays,
  loads,
  saltRoomG,
} from '#core/scaling.ts';

// Plain arithmetic, worked by hand; no publication is needed for a proportion.
describe('factors', () => {
  test('from servings', () => expect(factorFromServings(10, 4)).toBe(2.5));
  test('from pouches', () => expect(factorFromPouches(14, 90, 420)).toBe(3));
  test('from trays', () => expect(factorFromTrays(4, 800, 1600)).toBe(2));
  test('from what is at hand', () => expect(factorFromIngredient(1200, 400)).toBe(3));
  test.each([0, -1, NaN, Infinity])('%s is refused on either side', (bad) => {
    expect(() => factorFromServings(bad, 4)).toThrow(
      expect.objectContaining({ code: 'impossible-servings' }),
    );
    expect(() => factorFromServings(4, bad)).toThrow(
      expect.objectContaining({ code: 'impossible-servings' }),
    );
    expect(() => factorFromPouches(bad, 90, 420)).toThrow(
      expect.objectContaining({ code: 'impossible-pouches' }),
    );
    expect(() => factorFromPouches(14, 90, bad)).toThrow(
      expect.objectContaining({ code: 'impossible-weight' }),
    );
    expect(() => factorFromTrays(bad, 800, 1600)).toThrow(
      expect.objectContaining({ code: 'impossible-trays' }),
    );
    expect(() => factorFromIngredient(1200, bad)).toThrow(
      expect.objectContaining({ code: 'impossible-weight' }),
    );
  });
  test('law: there and back is the identity', () => {
    const n = fc.double({ min: 0.01, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(n, n, (a, b) => {
        expect(factorFromServings(a, b) * factorFromServings(b, a)).toBeCloseTo(1, 9);
        expect(factorFromIngredient(a, b) * factorFromIngredient(b, a)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('loads', () => {
  test.each([
    [1, 4000, 1],
    [4000, 4000, 1],
    [4000.1, 4000, 2],
    [8000, 4000, 2],
    [0.3, 0.1, 3],
  ])('%f g at %f g a load: %i', (wetG, limitG, count) => expect(loads(wetG, limitG)).toBe(count));
  test('a dryer that takes nothing is refused', () => {
    expect(() => loads(4000, 0)).toThrow(expect.objectContaining({ code: 'impossible-limit' }));
    expect(() => loads(0, 4000)).toThrow(expect.objectContaining({ code: 'impossible-weight' }));
  });
});

test('depth: 900 g at 1 g/ml on 20 x 45 cm lie 10 mm deep', () => {
  expect(depthMm(900, 20 * 45)).toBe(10);
  expect(depthMm(900, 20 * 45, 0.5)).toBe(20);
  expect(() => depthMm(900, 0)).toThrow(expect.objectContaining({ code: 'impossible-tray' }));
  expect(() => depthMm(900, 900, 0)).toThrow(expect.objectContaining({ code: 'impossible-density' }));
});

describe('room for salt', () => {
  // SR28 02047: 38758 mg in 100 g, 6.0 g a teaspoon (read). 4 × 500 − 450 = 1550 mg.
  test('4 servings of 500 mg with 450 mg in the pot', () => {
    const room = saltRoomG(500, 4, 450);
    expect(room).toMatchObject({
      saltG: expect.closeTo(1550 / 387.58, 9),
      teaspoons: expect.closeTo(0.66653, 4),
    });
  });
  test('exactly full has no room, and is not over', () => {
    expect(saltRoomG(500, 4, 2000)).toEqual({ saltG: 0, teaspoons: 0 });
  });
  test('too much already is told in mg for the pot', () => {
    expect(saltRoomG(500, 4, 2600)).toEqual({ over: 600 });
  });
  test.each([-1, NaN])('%s is refused', (bad) => {
    expect(() => saltRoomG(bad, 4, 0)).toThrow(expect.objectContaining({ code: 'impossible-target' }));
    expect(() => saltRoomG(500, bad, 0)).toThrow(expect.objectContaining({ code: 'impossible-servings' }));
    expect(() => saltRoomG(500, 4, bad)).toThrow(expect.objectContaining({ code: 'impossible-sodium' }));
  });
  test('law: the salt it allows meets the target and never passes it', () => {
    const mg = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(mg, fc.integer({ min: 1, max: 40 }), mg, (target, servings, inPot) => {
        const room = saltRoomG(target, servings, inPot);
        if ('over' in room) expect(room.over).toBeCloseTo(inPot - target * servings, 6);
        else expect(inPot + sodiumMgOfTableSalt(room.saltG)).toBeCloseTo(target * servings, 6);
      }),
    );
  });
});
