import { expect, test } from 'vitest';
import { allergens, kinds, nuts } from '#core/allergens.ts';
import { avoidanceOf } from '#core/avoidance.ts';

// What the words mean in a kitchen: common practice, no source; 'nuts' is read widely on purpose.
test.each<[string, unknown]>([
  ['milk', { is: 'allergen', tags: ['milk'] }],
  ['Dairy', { is: 'allergen', tags: ['milk'] }],
  ['dairy-free', { is: 'allergen', tags: ['milk'] }],
  ['lactose', { is: 'allergen', tags: ['milk'] }],
  ['eggs', { is: 'allergen', tags: ['egg'] }],
  ['peanuts', { is: 'allergen', tags: ['peanut'] }],
  ['nuts', { is: 'allergen', tags: [...nuts, 'chestnut', 'peanut'] }],
  ['tree nuts', { is: 'allergen', tags: [...nuts] }],
  ['walnuts', { is: 'allergen', tags: ['walnut'] }],
  ['shellfish', { is: 'allergen', tags: ['crustaceans', 'molluscs'] }],
  ['molluscs', { is: 'allergen', tags: ['molluscs'] }],
  ['prawns', { is: 'allergen', tags: ['crustaceans'] }],
  ['seafood', { is: 'allergen', tags: ['fish', 'crustaceans', 'molluscs'] }],
  ['gluten', { is: 'allergen', tags: ['wheat', 'rye', 'barley', 'oats'] }],
  ['oats', { is: 'allergen', tags: ['oats'] }],
  ['sulfites', { is: 'allergen', tags: ['sulphites'] }],
  ['coeliac', { is: 'diet', diet: 'gluten-free' }],
  ['gluten-free', { is: 'diet', diet: 'gluten-free' }],
  ['Vegan', { is: 'diet', diet: 'vegan' }],
  ['vegetarian', { is: 'diet', diet: 'vegetarian' }],
  ['pork', { is: 'kind', kinds: ['pork'] }],
  ['red meat', { is: 'kind', kinds: ['beef', 'lamb', 'pork', 'game'] }],
  ['nightshades', { is: 'kind', kinds: ['nightshade'] }],
  ['mushrooms', { is: 'kind', kinds: ['mushroom'] }],
  ['alcohol', { is: 'kind', kinds: ['alcohol'] }],
  ["cow's milk", { is: 'allergen', tags: ['milk'] }],
  ['monkey nuts', { is: 'allergen', tags: ['peanut'] }],
  ['shell fish', { is: 'allergen', tags: ['crustaceans', 'molluscs'] }],
  ['animal products', { is: 'diet', diet: 'vegan' }],
  ['plant-based diet', { is: 'diet', diet: 'vegan' }],
  ['halal', { is: 'diet', diet: 'halal' }],
  ['kosher food', { is: 'diet', diet: 'kosher' }],
  ['low FODMAP', { is: 'untold', word: 'low fodmap' }],
  ['coriander', undefined],
  ['constructor', undefined],
  ['', undefined],
])('%s', (word, expected) => expect(avoidanceOf(word)).toEqual(expected));

test('every tag and every kind can be named by itself', () => {
  for (const tag of allergens)
    expect(avoidanceOf(tag)).toMatchObject({ is: 'allergen', tags: expect.arrayContaining([tag]) });
  for (const kind of kinds.filter((one) => !['fish', 'shellfish', 'dairy', 'egg'].includes(one)))
    expect(avoidanceOf(kind)).toMatchObject({ is: 'kind' });
});
