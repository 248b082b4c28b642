import { expect, test } from 'vitest';
import { euFourteen, usNine } from '#core/allergens.ts';
import { plainContents } from '#foods/loose.ts';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';

const table = openFoods(':memory:');
const contents = (typed: string) => resolveLine(typed, table).contents;

// Witness: UK Food Standards Agency 14-allergens leaflet (copy), 21 CFR 139 for egg noodles (from memory), SR28 names
// for the soy sauces; US nine against EU fourteen. Rows marked from memory in the source list stay so.
test.each<[string, string, string]>([
  ['fish sauce', 'fish', 'fish'],
  ['worcestershire sauce', 'fish', 'fish'],
  ['oyster sauce', '', 'molluscs'],
  ['shrimp paste', 'crustacean shellfish', 'crustaceans'],
  ['egg noodles', 'egg;wheat', 'cereals containing gluten;egg'],
  ['plain flour', 'wheat', 'cereals containing gluten'],
  ['couscous', 'wheat', 'cereals containing gluten'],
  ['butter', 'milk', 'milk'],
  ['mayonnaise', 'egg', 'egg'],
  ['celery', '', 'celery'],
  ['mustard powder', '', 'mustard'],
  ['lupin flour', '', 'lupin'],
  ['soy sauce (shoyu)', 'soy;wheat', 'cereals containing gluten;soy'],
  ['soy sauce (tamari)', 'soy', 'soy'],
  ['coconut milk', '', ''],
  ['pine nuts', 'tree nut', ''],
  ['goat milk', 'milk', 'milk'],
  ['duck egg', 'egg', 'egg'],
  ['barley', '', 'cereals containing gluten'],
  ['oats', '', 'cereals containing gluten'],
  ['tahini', 'sesame', 'sesame'],
  ['miso', 'soy', 'soy'],
  ['tofu', 'soy', 'soy'],
  ['peanut butter', 'peanut', 'peanut'],
  ['dried apricots, sulphured', '', 'sulphites'],
  ['ghee', 'milk', 'milk'],
])('%s', (typed, us, eu) => {
  const { contains } = contents(`100 g ${typed}`)!;
  expect([usNine(contains).join(';'), euFourteen(contains).join(';')]).toEqual([us, eu]);
});

// Witness: the leaflet's notes ('check the bottle for wheat, barley and soy too', 'many bottles add wheat and soy') and
// labels of common makes (common practice, no source).
test.each<[string, string[]]>([
  ['worcestershire sauce', ['wheat', 'barley', 'soy']],
  ['oyster sauce', ['wheat', 'soy']],
  ['miso', ['barley']],
  ['vegetable stock cube', ['celery', 'wheat', 'milk']],
  ['Thai red curry paste', ['crustaceans', 'fish']],
  ['dark chocolate', ['milk', 'soy']],
  ['pork sausages', ['wheat', 'sulphites', 'milk']],
  ['tamari', ['wheat']],
  ['chicken stock', ['celery']],
  ['gluten-free oats', ['oats']],
  ['baking powder', ['wheat']],
  ['vegan cheese', ['cashew', 'soy']],
  ['corn tortillas', ['wheat']],
])('the small print of %s may name %j', (typed, tags) => {
  const { check, contains } = contents(`100 g ${typed}`)!;
  for (const tag of tags) expect(check).toContain(tag);
  for (const tag of tags) expect(contains).not.toContain(tag);
});

test.each<[string, string]>([
  ['coconut milk', 'milk'],
  ['peanut butter', 'milk'],
  ['butter beans', 'milk'],
  ['cream of tartar', 'milk'],
  ['cocoa butter', 'milk'],
  ['buckwheat groats', 'wheat'],
  ['eggplant', 'egg'],
  ['nutmeg', 'hazelnut'],
  ['water chestnuts', 'chestnut'],
  ['oyster mushrooms', 'molluscs'],
  ['butternut squash', 'walnut'],
  ['rice milk', 'milk'],
  ['vegan butter', 'milk'],
])('%s holds no %s', (typed, tag) => {
  const known = contents(`100 g ${typed}`)!;
  expect([...known.contains, ...known.check]).not.toContain(tag);
});

test.each<[string, string]>([
  ['parmesan', 'rennet'],
  ['gelatine', 'gelatine'],
  ['marshmallows', 'gelatine'],
  ['honey', 'honey'],
  ['lard', 'pork'],
  ['bacon', 'meat'],
  ['chicken stock', 'poultry'],
  ['red wine', 'alcohol'],
  ['tomatoes', 'nightshade'],
  ['garlic powder', 'allium'],
  ['shiitake', 'mushroom'],
  ['anchovies', 'fish'],
  ['prawns', 'shellfish'],
  ['coffee', 'caffeine'],
])('%s is of the kind %s', (typed, kind) => expect(contents(`100 g ${typed}`)!.kinds).toContain(kind));

// Cautious: where no curated name leads, only one plain raw fruit or vegetable is known; the rest is unknown.
test('contents of foods that no curated name knows', () => {
  expect(plainContents(table.byNdb('09111')!)).toBeNull(); // Grapefruit, raw, pink and red and white, all areas
  expect(plainContents(table.byNdb('11003')!)).not.toBeNull(); // Amaranth leaves, raw
  expect(plainContents(table.byNdb('06618')!)).toBeNull(); // Sauce, peanut
  expect(plainContents(table.byNdb('11450')!)).toBeNull(); // Soybeans, green, raw
  expect(plainContents(table.byNdb('11143')!)).toBeNull(); // Celery, raw
  expect(plainContents(table.byNdb('22899')!)).toBeNull(); // a ready meal
  expect(contents('100 g flurbs')).toBeNull();
});
