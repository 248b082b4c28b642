import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { blendedPer100, blendNumber, blendOf } from '#core/blend.ts';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';

const table = openFoods(':memory:');
const resolve = (line: string) => resolveLine(line, table);

// Witness: SR28 (2015): the rows' own names and their sodium and fat per 100 g.
test.each<[string, string, number]>([
  ['100 g unsalted butter, browned', 'Butter, without salt', 11],
  ['100 g salted butter', 'Butter, salted', 643],
  ['400 g tinned tomatoes, no added salt', 'no salt added', 10],
  ['50 g salted peanuts', 'dry-roasted, with salt', 410],
  ['250 g low-sodium soy sauce', 'low sodium', 3598],
])('%s is counted as "%s"', (line, name, sodiumMg) => {
  const { food, remarks } = resolve(line);
  expect(food!.name).toContain(name);
  expect(food!.per100.sodiumMg).toBe(sodiumMg);
  expect(remarks.join()).not.toContain('not in the figures');
});

test.each<[string, number]>([
  ['500 g 12% fat mince', 12],
  ['500 g beef mince, 12 % fat', 12],
  ['500 g 88% lean ground beef', 12],
  ['500 g 5% fat beef mince', 5],
  ['200 ml 1.5% milk', 1.5],
  ['200 ml 30% cream', 30],
  ['200 g 20% fat pork mince', 20],
])('%s has %d %% fat', (line, fat) => {
  const { food } = resolve(line);
  expect(Math.abs(food!.per100.fatG! - fat)).toBeLessThan(0.25);
  // What is recorded is the number alone: the table gives the same composition for it.
  expect(table.byNdb(food!.ndb)!.per100.fatG).toBeCloseTo(food!.per100.fatG!, 6);
});

test.each<[string, string]>([
  ['500 g 12% fat mince', "12 % fat: between the food table's 10 and 15 %"],
  ['200 g 10% fat greek yogurt', '10 % fat is beyond the food table: counted with 5 %'],
  ['400 g sausages, reduced fat', '"reduced fat" is not in the figures: counted with 31.3 % fat'],
  ['200 g reduced-salt bacon', '"reduced-salt" is not in the figures: counted with 662 mg sodium per 100 g'],
  [
    '400 ml no added salt vegetable stock',
    '"no added salt" is not in the figures: counted with 296 mg sodium per 100 g',
  ],
])('%s says: %s', (line, remark) => expect(resolve(line).remarks).toContain(remark));

// Worked by hand: what the packet or the cook says is left.
test.each<[string, number, string]>([
  ['2 cans (400 g / 240 g drained) chickpeas', 480, 'chickpeas, drained'],
  ['1 can chickpeas (drained weight 240 g)', 240, 'chickpeas, drained'],
  ['1.2 kg potatoes (about 1 kg peeled)', 1000, 'potatoes'],
  ['1 tin tuna (160 g, 112 g net)', 112, 'tuna, canned'],
  ['600 g chicken, cooked weight', 600, 'chicken breast, cooked'],
  ['1 kg squash, 700 g prepared', 700, 'winter squash'],
])('%s counts %d g', (line, grams, called) => expect(resolve(line)).toMatchObject({ grams, called }));

test('what lies between two rows lies between them in everything, and its number says so', () => {
  const per100 = fc.record({
    waterG: fc.double({ min: 0, max: 100, noNaN: true }),
    kcal: fc.double({ min: 0, max: 900, noNaN: true }),
    proteinG: fc.constant(null),
    fatG: fc.double({ min: 0, max: 100, noNaN: true }),
    carbohydrateG: fc.constant(0),
    fibreG: fc.constant(0),
    ashG: fc.constant(1),
    sodiumMg: fc.double({ min: 0, max: 9000, noNaN: true }),
  });
  fc.assert(
    fc.property(per100, per100, fc.integer({ min: 0, max: 100 }), (a, b, percent) => {
      const share = percent / 100;
      const mixed = blendedPer100(a, b, share);
      for (const key of ['waterG', 'kcal', 'fatG', 'sodiumMg'] as const) {
        expect(mixed[key]!).toBeGreaterThanOrEqual(Math.min(a[key], b[key]) - 1e-9);
        expect(mixed[key]!).toBeLessThanOrEqual(Math.max(a[key], b[key]) + 1e-9);
      }
      expect(mixed.proteinG).toBeNull();
      const blend = { of: ['23562', '23567'] as const, share };
      expect(blendOf(blendNumber(blend))).toEqual(blend);
    }),
  );
});
