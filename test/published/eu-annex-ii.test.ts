import { expect, test } from 'vitest';
import { allergens, euFourteen } from '#core/allergens.ts';

// Regulation (EU) 1169/2011, Annex II, as listed by the University of Reading, Food Labelling in the UK.
test('the fourteen, in alphabetical order', () =>
  expect(euFourteen(allergens)).toEqual([
    'celery',
    'cereals containing gluten',
    'crustaceans',
    'egg',
    'fish',
    'lupin',
    'milk',
    'molluscs',
    'mustard',
    'nuts',
    'peanut',
    'sesame',
    'soy',
    'sulphites',
  ]));

// The nuts that Annex II names; pine nuts, coconut and chestnuts are not among them.
test.each([
  'almond',
  'brazil nut',
  'cashew',
  'hazelnut',
  'macadamia',
  'pecan',
  'pistachio',
  'walnut',
] as const)('%s is a nut', (tag) => expect(euFourteen([tag])).toEqual(['nuts']));
test.each(['pine nut', 'coconut', 'chestnut'] as const)('%s is not named', (tag) =>
  expect(euFourteen([tag])).toEqual([]),
);
test.each(['wheat', 'rye', 'barley', 'oats'] as const)('%s is a cereal containing gluten', (tag) =>
  expect(euFourteen([tag])).toEqual(['cereals containing gluten']),
);
