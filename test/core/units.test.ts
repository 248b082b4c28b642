import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  celsiusFromF,
  converted,
  energyKcal,
  fFromCelsius,
  massG,
  unitNamed,
  volumeMl,
} from '#core/units.ts';

// Witness: 28.349523125 g exactly (NIST Handbook 44, appendix C); 28 g is what labels round to.
test('an ounce is an ounce, not 28 g', () => {
  expect(massG('oz')).toBe(28.349523125);
  expect(16 * massG('oz')).toBe(massG('lb'));
  expect(converted(100, 'oz', 'g')).toBeCloseTo(2834.9523125, 9);
});

// Words cooks type: common practice, no source. The factors are held in test/published/us-customary.test.ts.
test.each([
  ['g', 'g'],
  ['Grams', 'g'],
  ['KG', 'kg'],
  ['kilos', 'kg'],
  ['lbs', 'lb'],
  ['Lb.', 'lb'],
  ['ounces', 'oz'],
  ['Tbsp.', 'tbsp'],
  ['TBSP', 'tbsp'],
  ['tablespoons', 'tbsp'],
  ['teaspoon', 'tsp'],
  ['T', 'tbsp'],
  ['t', 'tsp'],
  ['fl. oz.', 'fl oz'],
  ['fluid  ounces', 'fl oz'],
  ['c', 'cup'],
  ['Cups', 'cup'],
  ['imperial pint', 'imperial pint'],
  ['pints', 'pint'],
  ['ML', 'ml'],
  ['litres', 'l'],
  ['liter', 'l'],
  ['mm', 'mm'],
  ['"', 'in'],
  ['feet', 'ft'],
  ['°C', '°C'],
  ['fahrenheit', '°F'],
  ['hrs', 'h'],
  ['minutes', 'min'],
  ['kJ', 'kJ'],
  ['calories', 'kcal'],
])('%s is %s', (word, symbol) => {
  expect(unitNamed(word)?.symbol).toBe(symbol);
});

test('what is wanted decides a word with two meanings', () => {
  expect(unitNamed('oz')?.kind).toBe('mass');
  expect(unitNamed('oz', 'volume')?.symbol).toBe('fl oz');
  expect(unitNamed('c', 'temperature')?.symbol).toBe('°C');
  expect(unitNamed('kg', 'volume')).toBeUndefined();
});

test.each(['', 'lentils', 'clove', 'toString', '__proto__'])('"%s" is no unit', (word) => {
  expect(unitNamed(word)).toBeUndefined();
});

describe('refusals', () => {
  test('a word of another kind', () => {
    expect(() => massG('cup')).toThrow(expect.objectContaining({ code: 'unknown-unit' }));
    expect(() => volumeMl('metre')).toThrow(/"metre" is no unit of volume/);
    expect(() => energyKcal('kg')).toThrow(expect.objectContaining({ code: 'unknown-unit' }));
  });
  test('two kinds that do not meet, and a temperature, which has its own functions', () => {
    expect(() => converted(1, 'kg', 'l')).toThrow(expect.objectContaining({ code: 'units-do-not-match' }));
    expect(() => converted(1, '°C', '°F')).toThrow(expect.objectContaining({ code: 'units-do-not-match' }));
  });
  test('an ounce of liquid still finds its volume', () => {
    // 1 cup = 8 fl oz: U.S. definition.
    expect(converted(8, 'oz', 'cup')).toBeCloseTo(1, 12);
  });
});

describe('laws', () => {
  const amount = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
  test.each([
    ['g', 'lb'],
    ['ml', 'cup'],
    ['m', 'ft'],
    ['kcal', 'kJ'],
    ['tsp', 'imperial pint'],
    ['h', 's'],
  ])('%s to %s and back', (from, to) => {
    fc.assert(
      fc.property(amount, (x) => {
        expect(converted(converted(x, from, to), to, from) / x).toBeCloseTo(1, 12);
      }),
    );
  });
  test('temperature there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: -300, max: 1000, noNaN: true }), (t) => {
        expect(celsiusFromF(fFromCelsius(t))).toBeCloseTo(t, 9);
      }),
    );
  });
});
