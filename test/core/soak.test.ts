import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { byEvening, meanOf } from '#core/evenings.ts';
import { coldSoakMinutes, hasPieces, learntExtraMin, soakFactor, soakMinutes } from '#core/soak.ts';

// Chosen figures, written out by hand; the published factor is held in test/published/boletus-2005.test.ts.
test.each([
  [100, 0, 15],
  [93.6, 0, 21],
  [87, 0, 28],
  [100, 5, 20],
  [92, -5, 18],
])('water that boils at %f °C, %d min more: %d min', (boilC, extra, minutes) => {
  expect(soakMinutes(boilC, extra)).toBe(minutes);
});

test.each([
  [[], 0],
  [[5], 5],
  // Each evening counts twice the one before: (5 + 2 x -5) / 3.
  [[5, -5], -5 / 3],
  [[40, 40], 30],
  [[-15], -10],
])('evenings %j: %f min more', (evenings, minutes) =>
  expect(learntExtraMin(evenings)).toBeCloseTo(minutes, 9),
);

test.each([
  ['400 g chicken, in chunks', true],
  ['2 carrots, cubed', true],
  ['1 head broccoli, florets', true],
  ['2 carrots, grated', false],
  ['1 l whole milk', false],
])('%s has pieces: %s', (line, has) => expect(hasPieces([line])).toBe(has));

test('what is said within twelve hours of the first word is one evening', () => {
  const at = (hours: number) => ({ atMs: hours * 3_600_000 });
  expect(byEvening([at(0), at(1), at(12), at(13), at(30)]).map((one) => one.length)).toEqual([3, 1, 1]);
  expect(meanOf([1, 2, 6])).toBe(3);
});

test('law: no word is lost, and no evening is longer than twelve hours', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 1e9 })), (times) => {
      const all = times.toSorted((a, b) => a - b).map((atMs) => ({ atMs }));
      const evenings = byEvening(all);
      expect(evenings.flat()).toEqual(all);
      for (const one of evenings) expect(one.at(-1)!.atMs - one[0]!.atMs).toBeLessThanOrEqual(12 * 3_600_000);
    }),
  );
});

test('law: cooler water never soaks faster; cold is never faster than boiling', () => {
  const degC = fc.double({ min: 0, max: 100, noNaN: true });
  fc.assert(
    fc.property(degC, degC, (a, b) => {
      expect(soakFactor(Math.min(a, b))).toBeGreaterThanOrEqual(soakFactor(Math.max(a, b)));
      expect(coldSoakMinutes(Math.min(a, 60))).toBeGreaterThanOrEqual(15);
    }),
  );
});
