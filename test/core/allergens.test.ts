import { expect, test } from 'vitest';
import { allergens, euFourteen, nuts, usNine } from '#core/allergens.ts';

// U.S. FDA, food allergen labeling guidance, 5th edition (2025); Annex II of Regulation (EU) 1169/2011.
test('all tags together give the two laws in full', () => {
  expect(usNine(allergens).join(';')).toBe(
    'crustacean shellfish;egg;fish;milk;peanut;sesame;soy;tree nut;wheat',
  );
  expect(euFourteen(allergens).join(';')).toBe(
    'celery;cereals containing gluten;crustaceans;egg;fish;lupin;milk;molluscs;mustard;nuts;peanut;sesame;soy;sulphites',
  );
  expect(usNine(['coconut', 'chestnut', 'molluscs', 'barley', 'oats'])).toEqual([]);
  expect(euFourteen(['coconut', 'chestnut', 'pine nut'])).toEqual([]);
  expect(euFourteen(nuts)).toEqual(['nuts']);
});
