// Witness: what a doubt leaves open by its plain words, by hand; the law holds for every claim, food and doubt below.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allergens, type Contents, nuts } from '#core/allergens.ts';
import { withoutDoubtedClaim } from '#foods/doubted-claims.ts';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';
import { neverClear } from './lines-never-clear.ts';

const table = openFoods(':memory:');
const held = (line: string): Contents | null => resolveLine(line, table).contents;

test.each([
  ['50 g butter (vegan?)', 'milk'],
  ['50 g butter (vegan or not)', 'milk'],
  ['50 g butter (unless vegan)', 'milk'],
  ['100 g cheese, ideally vegan', 'milk'],
  ['100 g cream, can be vegan', 'milk'],
  ['200 g pasta (gluten-free?)', 'wheat'],
  ['200 g pasta, gluten-free if needed', 'wheat'],
  ['200 g pasta (gluten free optional)', 'wheat'],
  ['200 g flour, gluten-free works too', 'wheat'],
  ['200 g bread, gluten-free for Pip', 'wheat'],
  ['200 g regular or gluten-free pasta', 'wheat'],
  ['100 g sausages (maybe vegetarian)', 'wheat'],
  ['2 tbsp oyster sauce (vegetarian?)', 'molluscs'],
])('%s: %s is not clear', (line, tag) => {
  const contents = held(line);
  expect(contents === null || [...contents.contains, ...contents.check].includes(tag as never)).toBe(true);
});

test.each([
  '50 g vegan butter',
  '50 g vegan butter (optional)',
  '50 g vegan butter for frying',
  '200 g gluten-free pasta',
  '200 g gluten-free flour',
  '100 g vegan mince, browned',
])('%s: the claim stands', (line) => {
  expect(withoutDoubtedClaim(line)).toBeUndefined();
});

const plain = ['butter', 'cheese', 'cream', 'milk', 'pasta', 'flour', 'bread', 'breadcrumbs', 'noodles', 'soy sauce', 'sausages', 'mince', 'yogurt', 'oyster sauce', 'mayonnaise', 'pesto', 'chocolate', 'ice cream', 'fish sauce', 'ham']; // prettier-ignore
const claims = ['vegan', 'vegetarian', 'gluten-free', 'gluten free', 'dairy-free', 'dairy free', 'egg-free', 'plant-based', 'lactose-free', 'non-dairy']; // prettier-ignore
const doubtful: readonly ((claim: string, food: string) => string)[] = [
  (claim, food) => `100 g ${food} (${claim}?)`,
  (claim, food) => `100 g ${food}, ${claim} if you like`,
  (claim, food) => `100 g ${food} (${claim} or not)`,
  (claim, food) => `100 g ${claim}? ${food}`,
  (claim, food) => `100 g ${food}, ideally ${claim}`,
  (claim, food) => `100 g ${food}, preferably ${claim}`,
  (claim, food) => `100 g ${food} (can be ${claim})`,
  (claim, food) => `100 g ${food} (${claim} works too)`,
  (claim, food) => `100 g ${food} (${claim} optional)`,
  (claim, food) => `100 g ${food} (${claim} for Noa)`,
  (claim, food) => `100 g regular or ${claim} ${food}`,
  (claim, food) => `100 g ${claim} or regular ${food}`,
  (claim, food) => `100 g ${food}, maybe ${claim}`,
  (claim, food) => `100 g ${food} when ${claim} is not at hand`,
];

test('what a food holds stays open where it is only perhaps free of it', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...plain),
      fc.constantFrom(...claims),
      fc.constantFrom(...doubtful),
      (food, claim, wording) => {
        const contents = held(wording(claim, food));
        if (contents === null) return;
        const shown = new Set([...contents.contains, ...contents.check]);
        const missing = held(`100 g ${food}`)!.contains.filter((tag) => !shown.has(tag));
        expect(missing, wording(claim, food)).toEqual([]);
      },
    ),
    { numRuns: 300 },
  );
});

describe('of what is in a line nothing is shown clear', () => {
  const tagsOf: Readonly<Record<string, readonly string[]>> = {
    gluten: ['wheat', 'rye', 'barley', 'oats'],
    nut: nuts,
    crustacean: ['crustaceans'],
    mollusc: ['molluscs'],
    sulphite: ['sulphites'],
  };
  test.each(neverClear)('$typed', ({ typed, there }) => {
    const contents = held(typed);
    const shown: readonly string[] =
      contents === null ? allergens : [...contents.contains, ...contents.check];
    expect(there.filter((what) => !(tagsOf[what] ?? [what]).some((tag) => shown.includes(tag)))).toEqual([]);
  });
});
