import fc from 'fast-check';
import { create } from 'fontkit';
import { beforeAll, describe, expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { openFaces } from '#draw/faces.ts';
import { line, lines } from '#draw/typeset.ts';
import { unpackWoff } from '#draw/woff.ts';

/** What stands on the page from left to right, letter by letter. */
function seen(text: string, base: 'ltr' | 'auto' = 'ltr'): string {
  const rtl = /\p{Script=Hebrew}/u;
  return line(text, { weight: 'regular', sizePt: 10 }, base)
    .pieces.toSorted((a, b) => a.xPt - b.xPt)
    .map((piece) => (rtl.test(piece.text) ? Array.from(piece.text).toReversed().join('') : piece.text))
    .join('');
}

describe('both directions', () => {
  beforeAll(() => openFaces(['abcdefghijklmnopqrstuvwxyz AB-12.?!:()[]', 'אבגדהוזחטיכלמנסעפצקרשת 3 kg ⅛ ½']));

  // Unicode Standard Annex #9, the examples of section 3.4 (rule L2), Hebrew letters for its capitals; from memory.
  test.each([
    { stored: 'car means אבג.', shown: 'car means גבא.', base: 'ltr' },
    { stored: 'אבג דהו car.', shown: '.car והד גבא', base: 'auto' },
  ] as const)('shows $stored as $shown', ({ stored, shown, base }) => {
    expect(seen(stored, base)).toBe(shown);
  });

  test('numbers keep their order inside words from right to left, brackets face the words', () => {
    expect(seen('אבג (12) דה', 'auto')).toBe('הד (12) גבא');
  });

  test('an isolated name does not carry the sentence with it', () => {
    expect(seen('for \u2068אבג\u2069: 3 kg')).toBe('for גבא: 3 kg');
  });
});

describe('lines', () => {
  const letters = 'abcdefghij klmnopqrstuvwxyz AB-12.?!';
  beforeAll(() => openFaces([letters]));
  const anyText = fc.string({ unit: fc.constantFrom(...letters.split('')), minLength: 1, maxLength: 80 });

  test('leave nothing out and stay as narrow as asked', () => {
    fc.assert(
      fc.property(
        anyText,
        fc.integer({ min: 12, max: 200 }),
        fc.constantFrom('regular', 'bold'),
        (text, widthPt, weight) => {
          const set = lines(text, { weight, sizePt: 10 }, () => widthPt);
          expect(
            set
              .map((one) => one.text)
              .join('')
              .replaceAll(' ', ''),
          ).toBe(text.replaceAll(/\s+/g, ''));
          for (const one of set)
            if (one.text.length > 1) expect(one.widthPt).toBeLessThanOrEqual(widthPt + 1e-6);
        },
      ),
    );
  });

  test('a line is as wide as its pieces', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const one = line(text, { weight: 'regular', sizePt: 7 });
        const sum = one.pieces.reduce((total, { widthPt }) => total + widthPt, 0);
        expect(one.widthPt).toBeCloseTo(sum, 6);
      }),
    );
  });
});

test('an unpacked font holds what the packed one does, by another reader', () => {
  const path = createRequire(import.meta.url).resolve(
    '@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff',
  );
  const packed = readFileSync(path);
  const [before, after] = [create(packed), create(unpackWoff(packed))];
  if (!('characterSet' in before) || !('characterSet' in after)) throw new Error('a font was expected');
  expect(after.characterSet).toEqual(before.characterSet);
  expect(after.layout('מרק').advanceWidth).toBe(before.layout('מרק').advanceWidth);
  expect(() => unpackWoff(Buffer.from('no font at all'))).toThrow('no WOFF');
});
