import { expect, test } from 'vitest';
import { occasionsNamed, sayOccasions } from '#words/occasion-words.ts';
import { changesTyped } from '#words/recipe-changes.ts';

test.each([
  ['breakfast', ['breakfast']],
  ['a side dish', ['side']],
  ['lunch and dinner', ['main']],
  ['a dessert or a snack', ['snack', 'sweet']],
  ['breakfast, dinner', ['breakfast', 'main']],
])('%s', (text, is) => expect(occasionsNamed(text)).toEqual(is));

test.each(['', 'the', 'called Pearl soup', 'breakfast on Saturday', 'Ben'])('"%s" names none', (text) =>
  expect(occasionsNamed(text)).toBeUndefined(),
);

test.each([
  ['porridge is for breakfast', 'porridge', 'is', ['breakfast']],
  ['Porridge is a breakfast', 'Porridge', 'is', ['breakfast']],
  ['goulash is for breakfast too', 'goulash', 'also', ['breakfast']],
  ['goulash is also for breakfast', 'goulash', 'also', ['breakfast']],
  ['soup is not for breakfast', 'soup', 'not', ['breakfast']],
  ["the crisps aren't a dinner", 'the crisps', 'not', ['main']],
  ['peanut sauce is a side', 'peanut sauce', 'is', ['side']],
  ['apple rings are snacks and sweets', 'apple rings', 'is', ['snack', 'sweet']],
] as const)('%s', (typed, name, how, uses) =>
  expect(changesTyped(typed)).toEqual([{ is: 'use', name, how, uses }]),
);

test.each(['soup is called Pearl soup', 'soup is now called dinner', 'line 2 of soup is 3 carrots'])(
  '"%s" is another change',
  (typed) => expect(changesTyped(typed).every(({ is }) => is !== 'use')).toBe(true),
);

test('said back', () => {
  expect(sayOccasions(['breakfast', 'main'])).toBe('breakfast, lunch and dinner');
  expect(sayOccasions(['snack', 'sweet'])).toBe('a snack and a sweet beside');
});
