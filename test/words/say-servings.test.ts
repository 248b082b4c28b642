// Witness: common practice, no source.
import { expect, test } from 'vitest';
import { sayServingsRoughly } from '#words/say.ts';

test.each([
  [0.1, 'about ½ serving'],
  [0.87, 'about 1 serving'],
  [1.19, 'about 1 serving'],
  [1.45, 'about 1½ servings'],
  [6, 'about 6 servings'],
])('%f servings on a label are %s', (servings, said) => {
  expect(sayServingsRoughly(servings)).toBe(said);
});
