// Witness: the words by hand; 40 letters a line of a phone, common practice.
import { expect, test } from 'vitest';
import { type Allergen, allergens } from '#core/allergens.ts';
import { nothing } from '#core/contents.ts';
import { containsLines, containsOnPaper, containsWhy } from '#words/phrases.ts';

const food = (ingredient: string, contains: Allergen[], check: Allergen[]) => ({
  ingredient,
  contents: { ...nothing, contains, check },
});
const phoneLines = (text: string) => Math.ceil(text.length / 40);

test('what is short is told whole', () => {
  const contents = [food('pasta', ['wheat'], ['egg']), food('cheese', ['milk'], [])];
  expect(containsLines({ contents })).toEqual([
    'Contains: wheat, milk.',
    'Read the small print: pasta (egg?).',
  ]);
  expect(containsWhy({ contents })).toEqual([]);
  expect(containsOnPaper({ contents })).toEqual(containsLines({ contents }));
});

test('what is long names the foods, and the rest is folded; paper has all of it', () => {
  const names = ['stock cube', 'white wine', 'parmesan', 'curry paste', 'noodles', 'sausages', 'pesto'];
  const contents = names.map((name) => food(name, [], ['celery', 'egg', 'mustard', 'soy']));
  const [, small] = containsLines({ contents });
  expect(small).toBe('Read the small print: stock cube, white wine, parmesan, curry paste and 3 more.');
  expect(containsWhy({ contents })[0]).toContain('pesto (celery, egg, mustard, soy?)');
  expect(containsOnPaper({ contents }).at(-1)).toContain('pesto (celery, egg, mustard, soy?)');
});

test('nobody needs more than four lines of a phone for any of them', () => {
  const contents = [
    food('everything bar', [...allergens].slice(0, 14), []),
    ...Array.from({ length: 30 }, (_, i) => food(`good number ${i}`, [], [...allergens].slice(14, 22))),
    ...Array.from({ length: 30 }, (_, i) => ({ ingredient: `unknown thing ${i}`, contents: null })),
  ];
  const lines = containsLines({ contents });
  expect(lines.map(phoneLines).every((count) => count <= 4)).toBe(true);
  expect(lines.join('\n')).toContain('and 26 more');
});
