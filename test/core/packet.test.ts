import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { allergens, type Contents, diets, kinds } from '#core/allergens.ts';
import type { Avoidance } from '#core/avoidance.ts';
import { liftedBy, nothingRead, type PacketReading, readAgain, settled } from '#core/packet.ts';
import { verdictFor } from '#core/verdict.ts';

const tags = fc.subarray([...allergens]);
const kindList = fc.subarray([...kinds]);
const contents: fc.Arbitrary<Contents> = fc.record({
  contains: tags,
  check: tags,
  kinds: kindList,
  checkKinds: kindList,
  hides: fc.option(kindList, { nil: undefined }),
});
const reading: fc.Arbitrary<PacketReading> = fc.record({
  contains: tags,
  may: tags,
  free: tags,
  kinds: kindList,
  mayKinds: kindList,
  freeKinds: kindList,
  claims: fc.subarray([...diets]),
});
const avoidance: fc.Arbitrary<Avoidance> = fc.oneof(
  fc.record({ is: fc.constant('allergen' as const), tags: fc.subarray([...allergens], { minLength: 1 }) }),
  fc.record({ is: fc.constant('kind' as const), kinds: fc.subarray([...kinds], { minLength: 1 }) }),
  fc.record({ is: fc.constant('diet' as const), diet: fc.constantFrom(...diets) }),
);
const rank = { clear: 0, unknown: 1, blocked: 2 };
const verdict = (known: Contents | null, avoid: Avoidance) =>
  rank[verdictFor([{ ingredient: 'it', contents: known }], [avoid]).is];

test('unknown becomes clear by nothing but what a reading says is not in it, or a diet that it claims', () => {
  fc.assert(
    fc.property(fc.option(contents), reading, avoidance, (known, read, avoid) => {
      const onlyWarns = { ...read, free: [], freeKinds: [], claims: [] };
      expect(verdict(settled(known, onlyWarns), avoid)).toBeGreaterThanOrEqual(
        // Of a food nobody knows, everything may be in it.
        known === null ? 1 : verdict(known, avoid),
      );
    }),
    { numRuns: 3000 },
  );
});

test('what a food is made of for certain stays blocked whatever the packet says', () => {
  fc.assert(
    fc.property(contents, reading, avoidance, (known, read, avoid) => {
      if (verdict(known, avoid) === rank.blocked)
        expect(verdict(settled(known, read), avoid)).toBe(rank.blocked);
    }),
  );
});

test('a reading settles exactly the allergens that it speaks of', () => {
  fc.assert(
    fc.property(contents, reading, fc.constantFrom(...allergens), (known, read, tag) => {
      if ([...read.contains, ...read.may, ...read.free].includes(tag)) return;
      const avoid: Avoidance = { is: 'allergen', tags: [tag] };
      expect(verdict(settled(known, read), avoid)).toBe(verdict(known, avoid));
    }),
  );
});

test('read again, the later word holds and the rest stays', () => {
  const first: PacketReading = { ...nothingRead, contains: ['celery'], may: ['milk'], free: ['egg'] };
  const again = readAgain(first, { ...nothingRead, free: ['milk'], contains: ['egg'] });
  expect(again).toEqual({ ...nothingRead, contains: ['celery', 'egg'], may: [], free: ['milk'] });
  expect(liftedBy(first, { ...nothingRead, free: ['milk'] })).toEqual(['milk']);
  expect(liftedBy(first, { ...nothingRead, contains: ['egg'] })).toEqual([]);
});
