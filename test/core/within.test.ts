import { expect, test } from 'vitest';
import { above, between, figure } from '#core/within.ts';

test.each([
  [0, '0'],
  [760, '760'],
  [353.1578947, '353.2'],
  [12345.6, '12346'],
  [0.000611213, '0.0006112'],
  [-501, '-501'],
  [NaN, 'no number'],
])('%f reads %s', (value, words) => expect(figure(value)).toBe(words));

test('limits', () => {
  expect(above('code', 'It', 0.1, 0, 'g')).toBe(0.1);
  expect(between('code', 'It', 1, 1, 2, 'g')).toBe(1);
  expect(between('code', 'It', 2, 1, 2, 'g')).toBe(2);
  expect(() => above('code', 'It', 0, 0, 'g')).toThrow('It has to be more than 0 g; it was 0 g.');
  expect(() => above('code', 'It', Infinity, 0, 'g')).toThrow(
    'It has to be more than 0 g; it was no number.',
  );
  expect(() => between('code', 'It', 3, 1, 2, '')).toThrow('It has to be between 1 and 2; it was 3.');
  expect(() => between('code', 'It', -1, 0, Infinity, 'ml')).toThrow(
    'It has to be 0 ml or more; it was -1 ml.',
  );
});
