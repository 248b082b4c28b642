// Witness: the Bot API reference: 1 to 4096 characters, captions to 1024, entity offsets in UTF-16 units, at most
// 64 bytes of callback_data. Folding and cutting by lines: common practice, no source.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Outgoing } from '#core/talk.ts';
import { draw, keyboard } from '#doors/telegram-draw.ts';
import { cleaned, cutTo, intoPieces, isolated } from '#doors/telegram-text.ts';
import { png } from '../telegram/requests.ts';
import { tries } from '../ring.ts';

const plain = (reply: Outgoing['reply'], buttons: Outgoing['buttons'] = []) => draw({ reply, buttons });
const text = (part: ReturnType<typeof draw>[number]) => (part.is === 'text' ? part : undefined)!;

describe('notes for people', () => {
  test('one or two lines are a quote, from the third on the quote is folded', () => {
    const notes = ['Pip', 'Ana', 'Ben'].map((who) => ({ who, text: 'not for you: milk' }));
    const kinds = [1, 2, 3].map((n) => text(plain({ group: 'Soup', notes: notes.slice(0, n) })[0]!).entities);
    expect(kinds.map((entities) => entities.map(({ type }) => type))).toEqual([
      ['blockquote'],
      ['blockquote'],
      ['expandable_blockquote'],
    ]);
  });

  test('the quote is found where UTF-16 counts it, behind emoji and isolated names', () => {
    const { text: shown, entities } = text(
      plain({ group: '🥕🍲 Soup', notes: [{ who: '👩‍🍳', text: 'fine' }] })[0]!,
    );
    expect(shown).toBe('🥕🍲 Soup\n\u2068👩‍🍳\u2069: fine');
    // Each of the two emoji is 2 units, the rest of the line 5, the line end 1.
    expect(entities).toEqual([{ type: 'blockquote', offset: 10, length: shown.length - 10 }]);
  });

  test('a name keeps its script and loses what would turn the text around it', () => {
    expect(isolated('شهرزاد')).toBe('\u2068شهرزاد\u2069');
    expect(isolated('\u202Egnirts\u2069\u2067x')).toBe('\u2068gnirtsx\u2069');
    expect(isolated('<b>&_*[')).toBe('\u2068<b>&_*[\u2069');
  });
});

describe('head and fold', () => {
  test('the first line is bold, the notes are a quote, and the reasons fold', () => {
    const { text: shown, entities } = text(
      plain({
        group: 'Sealed B1-1 🥕\nWrite on it: code',
        notes: [{ who: 'Noa', text: 'not for you: milk' }],
        why: ['exactly 280.0 ml', 'foil, 20 °C\nand so on'],
      })[0]!,
    );
    const part = ({ offset, length }: { offset: number; length: number }) =>
      shown.slice(offset, offset + length);
    expect(entities.map((entity) => [entity.type, part(entity)])).toEqual([
      ['bold', 'Sealed B1-1 🥕'],
      ['blockquote', '\u2068Noa\u2069: not for you: milk'],
      ['expandable_blockquote', 'exactly 280.0 ml\nfoil, 20 °C\nand so on'],
    ]);
  });

  test('a line alone is plain, and one with reasons behind it is a head', () => {
    expect(text(plain({ group: 'Nothing is in stock.' })[0]!).entities).toEqual([]);
    expect(text(plain({ group: 'Noted.', why: ['because'] })[0]!).entities).toEqual([
      { type: 'bold', offset: 0, length: 6 },
      { type: 'expandable_blockquote', offset: 7, length: 7 },
    ]);
  });
});

describe('any answer', () => {
  const anyText = fc.string({ unit: 'grapheme', maxLength: 300 });
  const anyLine = fc.oneof(
    anyText,
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc.constantFrom('', ' ', '\t', '\uD83E', '🥕'.repeat(1800)),
  );
  const anyReply = fc.record({
    group: fc.array(anyLine, { maxLength: 40 }).map((lines) => lines.join('\n')),
    notes: fc.array(fc.record({ who: anyText, text: anyLine }), { maxLength: 30 }),
    why: fc.array(anyLine, { maxLength: 20 }),
  });

  test('is drawn within the limits, with whole characters and entities inside their text', () => {
    fc.assert(
      fc.property(
        anyReply,
        fc.array(fc.record({ id: fc.nat(), label: anyLine }), { maxLength: 12 }),
        (reply, buttons) => {
          const parts = plain(reply, buttons).map(text);
          expect(parts.length).toBeGreaterThan(0);
          for (const { text: shown, entities, keys } of parts) {
            expect(shown.trim()).not.toBe('');
            expect(shown).toBe(shown.trim());
            expect(shown.length).toBeLessThanOrEqual(3500);
            expect(shown).not.toMatch(/\p{Cs}/u);
            expect(entities.length).toBeLessThanOrEqual(100);
            for (const { offset, length } of entities) {
              expect(length).toBeGreaterThan(0);
              expect(offset + length).toBeLessThanOrEqual(shown.length);
              expect(offset === 0 || shown[offset - 1] === '\n').toBe(true);
              expect(offset + length === shown.length || shown[offset + length] === '\n').toBe(true);
            }
            for (const key of keys.flat()) {
              expect(key.text.trim()).not.toBe('');
              expect(key.text.length).toBeLessThanOrEqual(32);
              if ('callback_data' in key)
                expect(Buffer.byteLength(key.callback_data)).toBeLessThanOrEqual(64);
            }
          }
          expect(parts.flatMap(({ keys }) => keys.flat()).length).toBe(Math.min(8, buttons.length));
          expect(parts.slice(0, -1).every(({ keys }) => keys.length === 0)).toBe(true);
        },
      ),
      { numRuns: tries(150) },
    );
  });

  test('keeps every word, whatever is cut', () => {
    const words = fc.array(
      fc.string({ unit: fc.constantFrom('a', 'é', '🥕', 'ش'), minLength: 1, maxLength: 60 }),
      { minLength: 1, maxLength: 400 },
    );
    fc.assert(
      fc.property(
        fc.array(words, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 130, max: 3500 }),
        (lines, most) => {
          const pieces = intoPieces(
            lines.map((line) => ({ text: line.join(' '), is: 'plain' as const })),
            most,
          );
          const shown = pieces.map((piece) => piece.text).join('\n');
          expect(shown.split(/\s+/)).toEqual(lines.flat());
        },
      ),
      { numRuns: tries(100) },
    );
  });

  test('whose line has no blank is cut between characters as people see them', () => {
    const cook = '👩‍🍳';
    const pieces = intoPieces([{ text: cook.repeat(1000), is: 'note' }], 3500);
    expect(pieces.map((piece) => piece.text).join('')).toBe(cook.repeat(1000));
    for (const piece of pieces) expect(piece.text.length % cook.length).toBe(0);
    for (const piece of pieces)
      expect(piece.entities).toEqual([{ type: 'blockquote', offset: 0, length: piece.text.length }]);
  });

  test('without a word is still something, and one of a file alone is the file', () => {
    expect(plain({ group: ' \n\u0007' })).toEqual([{ is: 'text', text: '…', entities: [], keys: [] }]);
    const file = { name: 'a.csv', type: 'text/csv' as const, base64: 'YQ==', caption: 'c' };
    expect(plain({ group: '', files: [file] }).map(({ is }) => is)).toEqual(['document']);
    expect(plain({ group: '', files: [{ ...file, base64: '' }] })).toMatchObject([
      { is: 'text', text: 'c (nothing in it)' },
    ]);
  });
});

test('what the platform would change by itself is changed before offsets are counted', () => {
  expect(cleaned('a\tb\r\nc\u2028d\u0000e\u202Ef\uD83E')).toBe('a b\nc\ndef\uFFFD');
});

test.each([
  ['abcdef', 6, 'abcdef'],
  ['abcdefg', 6, 'abcde…'],
  ['🥕🥕🥕', 4, '🥕…'],
  ['👩‍🍳👩‍🍳', 8, '👩‍🍳…'],
])('%s cut to %i units is %s', (whole, most, cut) => {
  expect(cutTo(whole, most)).toBe(cut);
});

const rows = (...labels: string[]) =>
  keyboard(labels.map((label, i) => ({ id: i + 1, label }))).map((row) => row.map((key) => key.text));

describe('buttons', () => {
  test('stand two a row while they are short, alone when longer than 20', () => {
    expect(rows('Yes', 'No', 'Some other time')).toEqual([['Yes', 'No'], ['Some other time']]);
    expect(rows('Yes', 'x'.repeat(21), 'No', 'Perhaps')).toEqual([
      ['Yes'],
      ['x'.repeat(21)],
      ['No', 'Perhaps'],
    ]);
  });

  test('are cut so that they can still be told apart', () => {
    const [first, second] = rows(
      `Red lentil curry with coconut milk, B4`,
      `Red lentil curry with coconut milk, B7`,
    ).flat();
    expect(first).toMatch(/^Red.*B4$/);
    expect(second).toMatch(/^Red.*B7$/);
    expect(rows('Red lentil curry with coconut milk, B4')[0]![0]).toHaveLength(32);
  });

  test('beyond the eighth are told of', () => {
    const parts = plain(
      { group: 'Which?' },
      Array.from({ length: 11 }, (_, id) => ({ id, label: `n${id}` })),
    );
    expect(text(parts[0]!).keys.flat()).toHaveLength(8);
    expect(text(parts[0]!).text).toContain('8 of 11');
  });
});

test.each([
  [png(1279, 900), 'photo'],
  [png(1280, 900), 'document'],
  [png(1000, 40), 'document'],
  [png(0, 0), 'document'],
  [Buffer.from('no picture at all, only words'), 'document'],
])('a picture is a photo only where the platform shows it whole', (bytes, is) => {
  const file = { name: 'a.png', type: 'image/png' as const, base64: bytes.toString('base64'), caption: '' };
  expect(plain({ group: 'Chart', files: [file] })[1]).toMatchObject({ is });
});
