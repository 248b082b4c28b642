import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { packsLeft } from '#core/absorber-packs.ts';

// Counted by hand; common practice, no source.
const counted = { sizeMl: 300, count: 20, countedAtMs: 100, openedOn: null };

test.each([
  [[], 20],
  [[{ sizeMl: 300, count: 1, atMs: 100 }], 19],
  // Another size, and one from before it was counted.
  [
    [
      { sizeMl: 500, count: 4, atMs: 200 },
      { sizeMl: 300, count: 3, atMs: 99 },
    ],
    20,
  ],
  [
    [
      { sizeMl: 300, count: 15, atMs: 200 },
      { sizeMl: 300, count: 15, atMs: 300 },
    ],
    0,
  ],
])('used %j: %d left', (used, left) => expect(packsLeft(counted, used)).toBe(left));

test('what nobody counted nobody knows', () => {
  expect(packsLeft({ ...counted, count: null }, [])).toBeNull();
});

test('law: what is used is gone, never more than there was, and never below none', () => {
  const used = fc.array(
    fc.record({ sizeMl: fc.constantFrom(100, 300), count: fc.nat(5), atMs: fc.nat(200) }),
  );
  fc.assert(
    fc.property(used, fc.nat(50), (list, count) => {
      const left = packsLeft({ ...counted, count }, list)!;
      const gone = list
        .filter(({ sizeMl, atMs }) => sizeMl === 300 && atMs >= 100)
        .reduce((sum, one) => sum + one.count, 0);
      expect(left).toBe(Math.max(0, count - gone));
    }),
  );
});
