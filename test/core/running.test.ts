// Worked by hand; a clock that stands still is arithmetic, no source needed.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Stop, momentOf, runningMs, stopsOf } from '#core/running.ts';

const event = (atMs: number, what: 'stopped' | 'resumed' | 'moved') => ({ atMs, what, note: null });

test('stops are told by pairs; what comes twice changes nothing', () => {
  expect(
    stopsOf([
      event(10, 'stopped'),
      event(12, 'stopped'),
      event(20, 'resumed'),
      event(25, 'resumed'),
      event(26, 'moved'),
      event(30, 'stopped'),
    ]),
  ).toEqual([
    { fromMs: 10, toMs: 20 },
    { fromMs: 30, toMs: null },
  ]);
});

test.each([
  [5, 5],
  [10, 10],
  [15, 10],
  [20, 10],
  [25, 15],
  [30, 20],
  [99, 20],
])('at %i the clock of the dryer shows %i', (atMs, ran) => {
  const stops: Stop[] = [
    { fromMs: 10, toMs: 20 },
    { fromMs: 30, toMs: null },
  ];
  expect(runningMs(atMs, stops)).toBe(ran);
});

test('and back: while it stands still nobody knows when', () => {
  const stops: Stop[] = [
    { fromMs: 10, toMs: 20 },
    { fromMs: 30, toMs: null },
  ];
  expect([5, 10, 15, 19, 20].map((ran) => momentOf(ran, stops))).toEqual([5, 20, 25, 29, null]);
});

test('a moment in which it ran comes back from the clock of the dryer', () => {
  const gaps = fc.array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 1, max: 50 })), {
    maxLength: 5,
  });
  fc.assert(
    fc.property(gaps, fc.integer({ min: 0, max: 400 }), (pairs, at) => {
      let ms = 0;
      const stops = pairs.map(([run, stand]) => {
        const fromMs = ms + run;
        ms = fromMs + stand;
        return { fromMs, toMs: ms };
      });
      const stands = stops.some(({ fromMs, toMs }) => at >= fromMs && at < toMs);
      fc.pre(!stands);
      expect(momentOf(runningMs(at, stops), stops)).toBe(at);
    }),
  );
});
