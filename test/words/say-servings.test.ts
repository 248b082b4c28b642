// Witness: common practice, no source.
import { expect, test } from 'vitest';
import { sayHours, sayServings, sayServingsExactly } from '#words/say.ts';

test.each([
  [0.1, 'about ½ serving'],
  [0.5, '½ serving'],
  [0.87, 'about 1 serving'],
  [1, '1 serving'],
  [1.19, 'about 1 serving'],
  [1.45, 'about 1½ servings'],
  [6, '6 servings'],
  [7.13, 'about 7 servings'],
  [17.2, 'about 17 servings'],
])('%f servings are %s', (servings, said) => {
  expect(sayServings(servings)).toBe(said);
});

test.each([
  [1, '1 serving'],
  [1.19, '1.19 servings'],
])('%f servings are exactly %s', (servings, said) => {
  expect(sayServingsExactly(servings)).toBe(said);
});

test.each([
  [2, '2 h'],
  [6.17, '6 h 10 min'],
  [23.8, '23 h 48 min'],
  [0.75, '45 min'],
  [0, '0 min'],
  [1.999, '2 h'],
])('%f hours are %s', (hours, said) => {
  expect(sayHours(hours)).toBe(said);
});
