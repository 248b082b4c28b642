import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  allergens,
  avoidanceOf,
  type Contents,
  euFourteen,
  kinds,
  nuts,
  usNine,
  verdictFor,
} from '#core/allergens.ts';

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
  ['halal', undefined],
  ['kosher', undefined],
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

const nothing: Contents = { contains: [], check: [], kinds: [], checkKinds: [] };
const butter = {
  ingredient: 'butter',
  contents: { ...nothing, contains: ['milk'], kinds: ['dairy'] } as Contents,
};
const carrot = { ingredient: 'carrot', contents: nothing };
const mystery = { ingredient: 'gronk', contents: null };
const chocolate = {
  ingredient: 'dark chocolate',
  contents: { ...nothing, check: ['milk', 'soy'], checkKinds: ['dairy', 'legume'] } as Contents,
};

test('clear, blocked, unknown; blocked wins, unknown is never clear', () => {
  const milk = [avoidanceOf('milk')!];
  expect(verdictFor([carrot], milk)).toEqual({ is: 'clear' });
  expect(verdictFor([carrot, butter], milk)).toEqual({
    is: 'blocked',
    by: [{ what: 'milk', ingredient: 'butter' }],
  });
  expect(verdictFor([carrot, chocolate], milk)).toEqual({
    is: 'unknown',
    because: [{ what: 'milk', ingredient: 'dark chocolate' }],
  });
  expect(verdictFor([mystery], milk)).toEqual({
    is: 'unknown',
    because: [{ what: 'milk', ingredient: 'gronk' }],
  });
  expect(verdictFor([mystery, butter, chocolate], milk)).toEqual({
    is: 'blocked',
    by: [{ what: 'milk', ingredient: 'butter' }],
  });
  expect(verdictFor([], milk).is).toBe('unknown');
  expect(verdictFor([mystery], [])).toEqual({ is: 'clear' });
});

test('diets', () => {
  const wine = {
    ingredient: 'red wine',
    contents: { ...nothing, check: ['fish'], kinds: ['alcohol'], checkKinds: ['fish'] } as Contents,
  };
  const oats = { ingredient: 'oats', contents: { ...nothing, contains: ['oats'] } as Contents };
  const glutenFreeOats = {
    ingredient: 'gluten-free oats',
    contents: { ...nothing, check: ['oats'] } as Contents,
  };
  const gelatine = { ingredient: 'gelatine', contents: { ...nothing, kinds: ['gelatine'] } as Contents };
  const is = (item: typeof butter, word: string) => verdictFor([item], [avoidanceOf(word)!]).is;
  expect(is(butter, 'vegetarian')).toBe('clear');
  expect(is(butter, 'vegan')).toBe('blocked');
  expect(is(wine, 'vegan')).toBe('unknown');
  expect(is(oats, 'coeliac')).toBe('blocked');
  expect(is(glutenFreeOats, 'coeliac')).toBe('unknown');
  expect(is(gelatine, 'vegetarian')).toBe('blocked');
  expect(is(gelatine, 'pork')).toBe('unknown');
  expect(verdictFor([mystery], [avoidanceOf('vegan')!]).is).toBe('unknown');
});

const seen = (word: string, item: { ingredient: string; contents: Contents | null }) =>
  verdictFor([item], [{ is: 'food', word }]).is;

test('plain foods are looked for in names, on both sides of the ocean', () => {
  const cilantro = { ingredient: 'cilantro', contents: nothing };
  expect(seen('coriander', cilantro)).toBe('blocked');
  expect(seen('Coriander', carrot)).toBe('clear');
  expect(seen('coriander', chocolate)).toBe('unknown'); // small print may hold anything
  expect(seen('coriander', mystery)).toBe('unknown');
  expect(seen('egg', { ingredient: 'eggplant', contents: nothing })).toBe('clear');
  for (const word of ['halal', 'kosher', 'halal food']) expect(seen(word, carrot)).toBe('unknown');
});

test('more avoided or more ingredients never make a meal clearer', () => {
  const rank = { clear: 0, unknown: 1, blocked: 2 };
  const someContents = fc.record({
    contains: fc.subarray([...allergens]),
    check: fc.subarray([...allergens]),
    kinds: fc.subarray([...kinds]),
    checkKinds: fc.subarray([...kinds]),
  });
  const item = fc.record({ ingredient: fc.string(), contents: fc.option(someContents) });
  const avoid = fc.oneof(
    fc.record({ is: fc.constant('allergen' as const), tags: fc.subarray([...allergens], { minLength: 1 }) }),
    fc.record({ is: fc.constant('kind' as const), kinds: fc.subarray([...kinds], { minLength: 1 }) }),
    fc.record({
      is: fc.constant('diet' as const),
      diet: fc.constantFrom('vegan' as const, 'vegetarian' as const, 'gluten-free' as const),
    }),
    fc.record({ is: fc.constant('food' as const), word: fc.string() }),
  );
  fc.assert(
    fc.property(
      fc.array(item, { minLength: 1, maxLength: 5 }),
      item,
      fc.array(avoid, { maxLength: 4 }),
      avoid,
      (items, more, avoids, another) => {
        const now = rank[verdictFor(items, avoids).is];
        expect(rank[verdictFor([...items, more], avoids).is]).toBeGreaterThanOrEqual(now);
        expect(rank[verdictFor(items, [...avoids, another]).is]).toBeGreaterThanOrEqual(now);
        if (items.some(({ contents }) => contents === null) && avoids.length > 0)
          expect(now).toBeGreaterThan(0);
      },
    ),
  );
});
