import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { allergens, type Contents, kinds } from '#core/allergens.ts';
import { avoidanceOf } from '#core/avoidance.ts';
import { verdictFor } from '#core/verdict.ts';

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
  // It comes from pigs or cattle; which, only the label tells: common practice, no source.
  for (const animal of ['pork', 'beef', 'meat']) expect(is(gelatine, animal), animal).toBe('unknown');
  for (const animal of ['lamb', 'poultry']) expect(is(gelatine, animal), animal).toBe('clear');
  expect(verdictFor([mystery], [avoidanceOf('vegan')!]).is).toBe('unknown');
});

const plain = {
  is: 'food',
  names: [],
  isNamedIn: () => false,
  ndbs: [],
  tags: [],
  kinds: [],
  isWide: false,
} as const;
const seen = (word: string, item: { ingredient: string; contents: Contents | null }) =>
  verdictFor([item], [{ ...plain, word, names: word.toLowerCase() === 'coriander' ? ['cilantro'] : [] }]).is;

test('halal and kosher: what is not allowed is blocked, what depends on how it was made is unknown', () => {
  const is = (word: string, contents: Partial<Contents>) =>
    verdictFor([{ ingredient: 'it', contents: { ...nothing, hides: [], ...contents } }], [avoidanceOf(word)!])
      .is;
  for (const diet of ['halal', 'kosher']) {
    expect(is(diet, {})).toBe('clear');
    expect(is(diet, { kinds: ['pork', 'meat'] })).toBe('blocked');
    expect(is(diet, { kinds: ['beef', 'meat'] })).toBe('unknown');
    expect(is(diet, { kinds: ['gelatine'] })).toBe('unknown');
    expect(is(diet, { checkKinds: ['rennet'] })).toBe('unknown');
    expect(is(diet, { hides: ['mushroom'] })).toBe('unknown');
  }
  expect(is('halal', { kinds: ['alcohol'] })).toBe('blocked');
  expect(is('kosher', { kinds: ['alcohol'] })).toBe('unknown');
  expect(is('kosher', { kinds: ['shellfish'] })).toBe('blocked');
  expect(verdictFor([carrot], [avoidanceOf('low fodmap')!]).is).toBe('unknown');
});

test('what no label must declare is feared in mixtures alone', () => {
  const cheddar = {
    ...nothing,
    contains: ['milk'],
    kinds: ['dairy'],
    checkKinds: ['rennet'],
    hides: [],
  } as Contents;
  const stock = { ...nothing, check: ['celery', 'milk'], hides: ['mushroom', 'allium'] } as Contents;
  const old = { ...nothing, check: ['celery'] } as Contents;
  const is = (contents: Contents, word: string) =>
    verdictFor([{ ingredient: 'it', contents }], [avoidanceOf(word)!]).is;
  expect(is(cheddar, 'mushrooms')).toBe('clear');
  expect(is(stock, 'mushrooms')).toBe('unknown');
  expect(is(stock, 'nightshades')).toBe('clear');
  expect(is(old, 'mushrooms')).toBe('unknown'); // recorded before mixtures were told apart
});

test('plain foods are looked for in names, on both sides of the ocean', () => {
  const cilantro = { ingredient: 'cilantro', contents: nothing };
  expect(seen('coriander', cilantro)).toBe('blocked');
  expect(seen('Coriander', carrot)).toBe('clear');
  expect(seen('coriander', chocolate)).toBe('unknown'); // small print may hold anything
  expect(seen('coriander', mystery)).toBe('unknown');
  expect(seen('egg', { ingredient: 'eggplant', contents: nothing })).toBe('clear');
});

test('more avoided or more ingredients never make a meal clearer', () => {
  const rank = { clear: 0, unknown: 1, blocked: 2 };
  const someContents = fc.record({
    contains: fc.subarray([...allergens]),
    check: fc.subarray([...allergens]),
    kinds: fc.subarray([...kinds]),
    checkKinds: fc.subarray([...kinds]),
    hides: fc.option(fc.subarray([...kinds]), { nil: undefined }),
  });
  const item = fc.record({ ingredient: fc.string(), contents: fc.option(someContents) });
  const avoid = fc.oneof(
    fc.record({ is: fc.constant('allergen' as const), tags: fc.subarray([...allergens], { minLength: 1 }) }),
    fc.record({ is: fc.constant('kind' as const), kinds: fc.subarray([...kinds], { minLength: 1 }) }),
    fc.record({
      is: fc.constant('diet' as const),
      diet: fc.constantFrom('vegan' as const, 'vegetarian' as const, 'gluten-free' as const),
    }),
    fc.record({ is: fc.constant('untold' as const), word: fc.string() }),
    fc.record({
      is: fc.constant('food' as const),
      word: fc.string(),
      names: fc.array(fc.string()),
      isNamedIn: fc.constantFrom(
        () => true,
        () => false,
      ),
      ndbs: fc.constant([]),
      tags: fc.subarray([...allergens]),
      kinds: fc.subarray([...kinds]),
      isWide: fc.boolean(),
    }),
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
