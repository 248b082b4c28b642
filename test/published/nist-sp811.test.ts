import { test } from 'vitest';
import { celsiusFromF, fFromCelsius } from '#core/units.ts';
import { near } from './near.ts';

// NIST SP 811, App. B, exact relation; from memory.
test.each([
  { row: 'a-temp-f212', tempF: 212, published: 100, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-f165', tempF: 165, published: 73.8889, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-f140', tempF: 140, published: 60, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-f40', tempF: 40, published: 4.4444, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-f32', tempF: 32, published: 0, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-f-40', tempF: -40, published: -40, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-f0', tempF: 0, published: -17.7778, within: 0.001, witness: 'from memory' },
])('$row: $tempF °F is $published °C', ({ tempF, ...row }) => {
  near(celsiusFromF(tempF), row);
});

// The same the other way.
test.each([
  { row: 'a-temp-c100', tempC: 100, published: 212, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-c60', tempC: 60, published: 140, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-c-18', tempC: -18, published: -0.4, within: 0.001, witness: 'from memory' },
  { row: 'a-temp-c74', tempC: 74, published: 165.2, within: 0.001, witness: 'from memory' },
])('$row: $tempC °C is $published °F', ({ tempC, ...row }) => {
  near(fFromCelsius(tempC), row);
});

// Labuza & Schmidl: ten degrees Celsius are eighteen Fahrenheit; a difference takes no 32.
test('f-10c-in-f', () => {
  near(fFromCelsius(10) - fFromCelsius(0), {
    row: 'f-10c-in-f',
    published: 18,
    within: 1e-9,
    witness: 'read',
  });
});
