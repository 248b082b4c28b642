// Worked by hand; a clock that stands still is arithmetic, no source needed.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Loaded,
  type Stop,
  besideInRun,
  loadedWith,
  momentOf,
  runningMs,
  stopsOf,
} from '#core/running.ts';

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

describe('what dries in one run', () => {
  const hour = 3_600_000;
  const load = (no: number, hours: number, trays = 2, more: Partial<Loaded> = {}): Loaded => ({
    no,
    loadedAtMs: hours * hour,
    trays: Array.from({ length: trays }),
    events: [],
    mix: null,
    ...more,
  });
  const beside = (others: readonly Loaded[], mostTrays: number | null = null, of = load(1, 10)) =>
    besideInRun(of, others, mostTrays).map(({ no }) => no);
  // Chosen: two hours between the first tray and the last.
  test('is loaded within two hours, before or after, and is not the load itself', () => {
    expect(beside([load(1, 10), load(2, 12), load(3, 12.01), load(4, 8), load(5, 7.99)])).toEqual([2, 4]);
  });
  test('fits the dryer together, or lies in another one', () => {
    expect(beside([load(2, 11)], 4)).toEqual([2]);
    expect(beside([load(2, 11, 3)], 4)).toEqual([]);
    expect(loadedWith(load(1, 10), [load(2, 11, 3)]).map(({ no }) => no)).toEqual([2]);
  });
  test('was not moved, and is no mixture', () => {
    const moved = { events: [event(11 * hour, 'moved')] };
    expect(beside([load(2, 10, 2, moved), load(3, 10, 2, { mix: {} })])).toEqual([]);
    expect(beside([load(2, 10)], null, load(1, 10, 2, moved))).toEqual([]);
  });
});
