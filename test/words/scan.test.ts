import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readScanPayload, scanPayload } from '#words/scan.ts';

// Telegram, Bot Features, Deep Linking: A-Z, a-z, 0-9, _ and -, up to 64 characters; read.
test('every pouch has a payload that the platform allows and that is read back', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 2 ** 40 }),
      fc.integer({ min: 1, max: 999_999 }),
      fc.integer({ min: 1, max: 99_999 }),
      (household, batch, no) => {
        const payload = scanPayload(household, { batch, no });
        expect(payload).toMatch(/^[A-Za-z0-9_-]{1,64}$/);
        expect(readScanPayload(payload)).toEqual({ household, code: { batch, no } });
      },
    ),
  );
});

test.each(['', 'B4-2', 'h0_B4-2', 'h1_B4', 'h1_B04-2', 'h1_B4-2x', 'h1-B4-2', 'h99999999999999999_B1-1'])(
  '%j is none of ours',
  (payload) => {
    expect(readScanPayload(payload)).toBeUndefined();
  },
);

test('capitals do not matter: some scanners change them', () => {
  expect(readScanPayload('H3_b4-2')).toEqual({ household: 3, code: { batch: 4, no: 2 } });
});
