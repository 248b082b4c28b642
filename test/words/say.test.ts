import { expect, test } from 'vitest';
import { sayG } from '#words/say.ts';

// Witness: the avoirdupois ounce is 28.349523125 g exactly, a sixteenth of 0.45359237 kg (NIST Handbook 44, appendix C).
test.each([
  [28.349523125 * 31, '31 oz (879 g)'],
  [28.349523125 * 0.5, '0.5 oz (14 g)'],
  [850, '30 oz (850 g)'],
  [453.59237 * 100, '100 lb (45359 g)'],
])('%f g in ounces: %s', (g, said) => expect(sayG(g, 'ounces')).toBe(said));
