import { expect, test } from 'vitest';
import { allergens, usNine } from '#core/allergens.ts';

// U.S. FDA, Frequently asked questions: food allergen labeling guidance, 5th edition (2025).
test('the nine, in alphabetical order', () =>
  expect(usNine(allergens)).toEqual([
    'crustacean shellfish',
    'egg',
    'fish',
    'milk',
    'peanut',
    'sesame',
    'soy',
    'tree nut',
    'wheat',
  ]));

// FDA's tree nut table of January 2025: pine nuts are in it, coconut and chestnut were taken out.
test.each([
  'almond',
  'brazil nut',
  'cashew',
  'hazelnut',
  'macadamia',
  'pecan',
  'pine nut',
  'pistachio',
  'walnut',
] as const)('%s is a tree nut', (tag) => expect(usNine([tag])).toEqual(['tree nut']));
test.each([
  'coconut',
  'chestnut',
  'molluscs',
  'celery',
  'mustard',
  'lupin',
  'sulphites',
  'barley',
  'rye',
  'oats',
] as const)('%s is no major allergen there', (tag) => expect(usNine([tag])).toEqual([]));
