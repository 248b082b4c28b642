import { expect, test } from 'vitest';
import { type PartlySealed, freshness, goneG, restG } from '#core/rest.ts';

// Mass is neither made nor lost: worked by hand. That steady lasts an hour is common practice, no source.
const hour = 3_600_000;
const batch: PartlySealed = {
  dryG: 760,
  sealed: [{ dryG: 380, sealedAtMs: hour }],
  rest: [
    { atMs: 2 * hour, what: 'used', netG: 30 },
    { atMs: 3 * hour, what: 'discarded', netG: 50 },
    { atMs: 10 * hour, what: 'weighed', netG: 301 },
  ],
};

test('what is left is what came off less what was sealed, eaten and thrown away', () => {
  expect(restG(batch)).toBe(300);
  expect(restG(batch, 2 * hour)).toBe(350);
  expect(restG(batch, 0)).toBe(760);
  expect(goneG(batch.rest)).toBe(80);
  expect(restG({ ...batch, dryG: 400 })).toBe(0);
});

test('the whole batch holds for an hour from its weighing', () => {
  const whole = { dryG: 760, sealed: [], rest: [] };
  expect(freshness(whole, 5 * hour, 6 * hour)).toEqual({ is: 'fresh' });
  expect(freshness(whole, 5 * hour, 6.1 * hour)).toEqual({ is: 'stale', weighedAtMs: 5 * hour });
});

test('the rest holds for an hour from its own weighing', () => {
  expect(freshness(batch, 0, 9 * hour)).toEqual({ is: 'stale', weighedAtMs: 0 });
  expect(freshness(batch, 0, 11 * hour)).toEqual({ is: 'fresh' });
  expect(freshness(batch, 0, 11.5 * hour)).toEqual({ is: 'stale', weighedAtMs: 10 * hour });
});

test('a rest that gained is not sealed: 300 g may weigh 302 g, the limit of 2 g included', () => {
  const weighing = (netG: number) => [
    ...batch.rest.slice(0, 2),
    { atMs: 10 * hour, what: 'weighed' as const, netG },
  ];
  expect(freshness({ ...batch, rest: weighing(302) }, 0, 10 * hour).is).toBe('fresh');
  expect(freshness({ ...batch, rest: weighing(302.1) }, 0, 10 * hour)).toEqual({
    is: 'gained',
    gainedG: 302.1 - 300,
    thresholdG: 2,
    weighedAtMs: 10 * hour,
  });
});

test('what is sealed after it was weighed does not make the rest look heavier', () => {
  const later = { ...batch, sealed: [...batch.sealed, { dryG: 95, sealedAtMs: 10.5 * hour }] };
  expect(freshness(later, 0, 11 * hour).is).toBe('fresh');
});
