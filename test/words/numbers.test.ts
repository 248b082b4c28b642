import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { plain, readNumber, readNumberWord } from '#words/numbers.ts';
import { tries } from '../ring.ts';

// Witness for every expectation in this file: the value of the figure as anybody reads it (arithmetic), the
// decimal comma and the grouping of thousands as described in the BIPM SI brochure, 5.4.4 (from memory).

test('every decimal digit of the BMP becomes its ASCII twin', () => {
  // Unicode general category Nd; runs of ten that start at zero (Unicode Standard, 4.6, from memory).
  let run = 0;
  for (let code = 0; code < 0x10000; code++) {
    const char = String.fromCharCode(code);
    if (!/\p{Nd}/u.test(char)) continue;
    expect([code.toString(16), plain(char)]).toEqual([code.toString(16), String(run % 10)]);
    run++;
  }
  expect(run).toBeGreaterThan(300);
});

test.each([
  ['１５０ｇ（フル）', '150g(フル)'],
  ['½ cup “whole” milk – don’t', `½ cup "whole" milk - don't`],
  ['2 × 400\u00a0g', '2 × 400 g'],
  ['1⁄2', '1/2'],
  ['−5 °C', '-5 °C'],
  ['٣ أكواب', '3 أكواب'],
  ['12′ 3″', `12' 3"`],
])('%s in plain characters', (typed, expected) => expect(plain(typed)).toBe(expected));

test.each<[string, number, string]>([
  ['5', 5, ''],
  ['12 g', 12, ' g'],
  ['1.5 kg', 1.5, ' kg'],
  ['1,5 kg', 1.5, ' kg'],
  ['.5 cup', 0.5, ' cup'],
  ['0,25 l', 0.25, ' l'],
  ['½ cup', 0.5, ' cup'],
  ['1½lbs', 1.5, 'lbs'],
  ['1 ½ c', 1.5, ' c'],
  ['1 1/2 cups', 1.5, ' cups'],
  ['1-1/2 cups', 1.5, ' cups'],
  ['1 and 1/2 cups', 1.5, ' cups'],
  ['3/4 cup', 0.75, ' cup'],
  ['1⁄2 cup', 0.5, ' cup'],
  ['1 1⁄2 cup', 1.5, ' cup'],
  ['1¹⁄₂ cup', 1.5, ' cup'],
  ['¹⁄₂ cup', 0.5, ' cup'],
  ['2⅔', 2 + 2 / 3, ''],
  ['11/2', 5.5, ''],
  ['-5', -5, ''],
  ['-½', -0.5, ''],
  ['−5', -5, ''],
  ['1,500.5', 1500.5, ''],
  ['1.500,5', 1500.5, ''],
  ['1,500,000', 1500000, ''],
  ["1'500", 1500, ''],
  ['0.500', 0.5, ''],
  ['0,500', 0.5, ''],
  ['1234.567', 1234.567, ''],
  ['12,34', 12.34, ''],
  ['٢٥ g', 25, ' g'],
  ['１／２', 0.5, ''],
  ['2-3', 2, '-3'],
  ['400g/14oz', 400, 'g/14oz'],
  ['2x400', 2, 'x400'],
  ['1 400 g tin', 1, ' 400 g tin'],
  ['1, 2', 1, ', 2'],
  ['5.', 5, '.'],
  ['1,2,3', 1, ',2,3'],
])('reads %s', (typed, value, rest) => {
  const read = readNumber(typed, 0);
  expect(read?.value).toBeCloseTo(value, 12);
  expect(read?.otherwise).toBeUndefined();
  expect(typed.slice(read!.to)).toBe(rest);
});

test.each<[string, number, number]>([
  ['1,500', 1500, 1.5],
  ['1.500', 1.5, 1500],
  ['12,000 g', 12000, 12],
  ['125.250', 125.25, 125250],
  ['-1,500', -1500, -1.5],
])('%s can be read two ways', (typed, value, otherwise) =>
  expect(readNumber(typed, 0)).toMatchObject({ value, otherwise }),
);

test.each(['', 'a', '-', 'x5', '/2', ',5', '1/0', ' 5'])('no number starts %j', (typed) => {
  const read = readNumber(typed, 0);
  if (typed === '1/0') expect(read).toMatchObject({ value: 1, to: 1 });
  else expect(read).toBeUndefined();
});

test('a place inside a number, and a dash after a code, start none', () => {
  expect(readNumber('123', 1)).toBeUndefined();
  expect(readNumber('B4-2', 2)).toBeUndefined();
  expect(readNumber('B4-2', 3)).toEqual({ value: 2, from: 3, to: 4 });
  expect(readNumber('at -5 °C', 3)).toEqual({ value: -5, from: 3, to: 5 });
});

test.each<[string, number, string]>([
  ['two onions', 2, ' onions'],
  ['Twelve eggs', 12, ' eggs'],
  ['half an onion', 0.5, ' onion'],
  ['half a cup', 0.5, ' cup'],
  ['a dozen eggs', 12, ' eggs'],
  ['half a dozen eggs', 6, ' eggs'],
  ['two dozen eggs', 24, ' eggs'],
  ['one and a half cups', 1.5, ' cups'],
  ['three quarters of', 0.75, ' of'],
  ['a quarter of a cup', 0.25, ' cup'],
  ['a couple of carrots', 2, ' carrots'],
])('reads the words %s', (typed, value, rest) => {
  const read = readNumberWord(typed, 0);
  expect(read?.value).toBeCloseTo(value, 12);
  expect(typed.slice(read!.to)).toBe(rest);
});

test("'a' is one only where the caller says so", () => {
  expect(readNumberWord('a pinch', 0)).toBeUndefined();
  expect(readNumberWord('a pinch', 0, true)).toEqual({ value: 1, from: 0, to: 1 });
  expect(readNumberWord('apple', 0, true)).toBeUndefined();
  expect(readNumberWord('tender', 0)).toBeUndefined();
  expect(readNumberWord('often', 2)).toBeUndefined();
  expect(readNumberWord('constructor', 0)).toBeUndefined();
});

test('any text: same length, finite values, places inside the text', () =>
  fc.assert(
    fc.property(
      fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[\d.,/'½⅔ -]{0,60}$/)),
      fc.nat(60),
      (text, at) => {
        expect(plain(text)).toHaveLength(text.length);
        for (const read of [readNumber(text, at), readNumberWord(text, at, true)]) {
          if (!read) continue;
          expect(Number.isFinite(read.value) && Number.isFinite(read.otherwise ?? 0)).toBe(true);
          expect(read.from).toBe(at);
          expect(read.to > at && read.to <= text.length).toBe(true);
        }
      },
    ),
    { numRuns: tries(2000) },
  ));

test('any amount printed with a point is read back', () =>
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99999 }), fc.integer({ min: 0, max: 99 }), (whole, cents) => {
      const typed = `${whole}.${String(cents).padStart(2, '0')}`;
      expect(readNumber(`${typed} g`, 0)).toEqual({ value: Number(typed), from: 0, to: typed.length });
      expect(readNumber(`${typed.replace('.', ',')} g`, 0)).toEqual({
        value: Number(typed),
        from: 0,
        to: typed.length,
      });
    }),
  ));

// In time that grows with the square of the length this would not end within the test's limit.
test('a very long run of figures is passed over in linear time', () => {
  const text = '9'.repeat(200_000) + ' 1/2'.repeat(20_000);
  for (let at = 0; at < text.length; at++) readNumber(text, at);
  expect(readNumber(text, 0)).toBeUndefined();
});
