import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { splitRecipe as split } from '#foods/recipe.ts';

/** The recipe taken apart, its lines as text alone. */
const splitRecipe = (text: string) => {
  const all = split(text);
  return { ...all, lines: all.lines.map(({ typed }) => typed) };
};

// Recipes of our own invention, laid out the ways people paste them.

test('bullets, numbering, boxes, headings and the method below', () => {
  const text = `Ingredients:
- 2 cups red lentils
• 1 large onion, diced
* 3 cloves garlic
[ ] 1 tin coconut milk
▢ 2 tbsp curry powder
1. 500 ml stock
2) salt to taste

For the topping:
a handful of coriander

Method
1. Fry the onion in a little oil until soft.
2. Add everything else and simmer for 20 minutes.
Serve hot.`;
  expect(split(text)).toEqual({
    servings: [],
    makes: [],
    lines: [
      '2 cups red lentils',
      '1 large onion, diced',
      '3 cloves garlic',
      '1 tin coconut milk',
      '2 tbsp curry powder',
      '500 ml stock',
      'salt to taste',
    ]
      .map((typed) => ({ typed, section: null as string | null, camp: null }))
      .concat({ typed: 'a handful of coriander', section: 'For the topping', camp: null }),
    headings: ['Ingredients:', 'For the topping:', 'Method'],
    method:
      '1. Fry the onion in a little oil until soft.\n2. Add everything else and simmer for 20 minutes.\nServe hot.',
  });
});

test('a method without a heading is set aside by how it reads', () => {
  const { lines, method } = splitRecipe(`200 g pasta
1 tin tomatoes
2 cloves garlic, sliced

Bring a large pan of salted water to the boil and cook the pasta.
Heat the oil in a frying pan, add the garlic and cook for one minute.
Stir through the pasta and serve.`);
  expect(lines).toEqual(['200 g pasta', '1 tin tomatoes', '2 cloves garlic, sliced']);
  expect(method.split('\n')).toHaveLength(3);
});

test('dashes glued to figures are bullets when there are several, and kept when there is one', () => {
  expect(splitRecipe('-2 cups rice\n-1 onion\n-salt').lines).toEqual(['2 cups rice', '1 onion', '-salt']);
  expect(splitRecipe('-5 g salt').lines).toEqual(['-5 g salt']);
});

test('lines that look like verbs but are food stay ingredients', () => {
  for (const line of [
    '2 cups chopped spinach',
    'roast chicken, 300 g',
    'chopped parsley',
    'melted butter, 2 tbsp',
    '1 cup mix of nuts',
    'season salt',
  ])
    expect([line, splitRecipe(line).lines]).toEqual([line, [line]]);
});

test('any text: nothing crashes, every line comes from the text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 500 }), (text) => {
      const { lines, headings, method } = splitRecipe(text);
      const letters = (some: string) => some.replace(/[^\p{L}\p{N}]/gu, '');
      for (const line of [...lines, ...headings]) expect(letters(text)).toContain(letters(line));
      expect(method.length).toBeLessThanOrEqual(text.length);
    }),
  );
});

// In time that grows with the square of the length this would not end within the test's limit.
test('a very long recipe is split in linear time', () => {
  expect(splitRecipe('1 cup flour\n'.repeat(20_000)).lines).toHaveLength(20_000);
});

test.each([
  "Chef's note: better the next day",
  'Tip: freezes well',
  'Source: grandma',
  'Notes: cook it thick',
  'P.S.: soak overnight',
  'Nutrition per serving: 320 kcal',
  'Course: dinner',
])('%s stands with the method', (line) => {
  const { lines, method } = splitRecipe(`200 g rice\n${line}\n2 carrots`);
  expect(lines).toEqual(['200 g rice', '2 carrots']);
  expect(method).toBe(line);
});
