// Food safety that has a publication stands in test/published (Iowa State, University of Illinois, Foods 10); thickness,
// fat, syrup and garlic in oil are common practice, no source. Table names, groups and water are SR28's as printed.
import { describe, expect, test } from 'vitest';
import {
  type CautionLine,
  fatty,
  hasRice,
  isGarlicInOil,
  rawAnimals,
  rawBeside,
  syrups,
  thickPieces,
} from '#core/cautions.ts';

const line = (
  tableName: string | null,
  group: string | null,
  more: Partial<CautionLine> = {},
): CautionLine => ({
  called: tableName ?? '?',
  typed: `100 g ${tableName ?? '?'}`,
  tableName,
  group,
  grams: 100,
  waterG: 50,
  fatG: 5,
  ...more,
});
const meat = line('Beef, ground, 90% lean meat / 10% fat, raw', 'Beef Products', {
  typed: '500 g beef mince',
});
const honey = line('Honey', 'Sweets', { grams: 100, waterG: 17.1, fatG: 0 });

describe('raw animal food', () => {
  test.each([
    ['Beef, ground, 90% lean meat / 10% fat, raw', 'Beef Products', true],
    ['Beef, ground, 90% lean meat / 10% fat, patty, cooked, broiled', 'Beef Products', false],
    ['Pork, cured, bacon, unprepared', 'Pork Products', true],
    ['Sausage, Italian, pork, raw', 'Sausages and Luncheon Meats', true],
    ['Salami, cooked, beef', 'Sausages and Luncheon Meats', false],
    ['Fish, tuna, light, canned in water, drained solids', 'Finfish and Shellfish Products', false],
    ['Egg, whole, raw, fresh', 'Dairy and Egg Products', true],
    ['Egg, whole, cooked, hard-boiled', 'Dairy and Egg Products', false],
    ['Eggnog', 'Dairy and Egg Products', false],
    ['Carrots, raw', 'Vegetables and Vegetable Products', false],
    ['Rice, white, long-grain, regular, raw, unenriched', 'Cereal Grains and Pasta', false],
    // 'raw' inside another word is no state.
    ['Beef, strawberry glazed, cooked', 'Beef Products', false],
  ])('%s: %3$s', (name, group, isRaw) => {
    expect(rawAnimals([line(name, group)]).length === 1).toBe(isRaw);
  });
  test('a line that no food stands for is not judged here', () => {
    expect(rawAnimals([line(null, null)])).toEqual([]);
  });
});

test.each([
  ['500 g chicken breast', true],
  ['500 g chicken breast, diced', false],
  ['500 g beef mince', false],
  ['500 g minced beef', false],
  ['2 tins tuna', false],
  ['500 g ground beef', false],
])('%s: thick %s', (typed, isThick) => {
  const raw = line('Chicken, raw', 'Poultry Products', { typed });
  expect(thickPieces([raw])).toHaveLength(isThick ? 1 : 0);
});
test('an egg is no piece', () => {
  expect(
    thickPieces([line('Egg, whole, raw, fresh', 'Dairy and Egg Products', { typed: '3 eggs' })]),
  ).toEqual([]);
});

describe('fat', () => {
  const oil = line('Oil, olive, salad or cooking', 'Fats and Oils', { fatG: 100 });
  const butter = line('Butter, salted', 'Dairy and Egg Products', { fatG: 81.11 });
  const nuts = line('Nuts, walnuts, english', 'Nut and Seed Products', { fatG: 65.21 });
  test.each([
    [0.199, false],
    [0.2, true],
  ])('%f of the dry food: fatty %s', (fraction, isFatty) =>
    expect(fatty(fraction, []).isFatty).toBe(isFatty),
  );
  test('what is fat itself is named, what only holds it is not', () => {
    const unknown = line('?', null, { fatG: null });
    expect(fatty(0.3, [oil, butter, nuts, meat, unknown]).pure).toEqual([oil, butter]);
  });
});

describe('syrups', () => {
  // 100 g of honey hold 82.9 g of solids: a tenth of 829 g.
  test('count from a tenth of the solids on', () => {
    expect(syrups([honey], 829.1)).toEqual([]);
    expect(syrups([honey], 828.9)).toEqual([honey]);
  });
  test('together with jam, but never sugar, which holds no water', () => {
    const jam = line('Jams and preserves', 'Sweets', { grams: 50, waterG: 30.47 });
    const sugar = line('Sugars, granulated', 'Sweets', { grams: 500, waterG: 0.02 });
    // 82.9 + 34.765 g of solids: more than a tenth of 1176 g, less than one of 1177 g.
    expect(syrups([honey, jam, sugar], 1176)).toEqual([honey, jam]);
    expect(syrups([honey, jam, sugar], 1177)).toEqual([]);
    expect(syrups([sugar], 10)).toEqual([]);
  });
  test('without weight or solids nothing is said', () => {
    expect(syrups([{ ...honey, grams: null }], 100)).toEqual([]);
    expect(syrups([honey], 0)).toEqual([]);
  });
});

test('garlic in oil takes both', () => {
  const garlic = line('Garlic, raw', 'Vegetables and Vegetable Products');
  const oil = line('Oil, olive, salad or cooking', 'Fats and Oils');
  expect(isGarlicInOil([garlic, oil])).toBe(true);
  expect(isGarlicInOil([garlic])).toBe(false);
  expect(isGarlicInOil([oil, meat])).toBe(false);
});

test('rice is rice, raw or cooked, and no rice noodles by a word inside', () => {
  expect(hasRice([line('Rice, brown, medium-grain, raw', 'Cereal Grains and Pasta')])).toBe(true);
  expect(hasRice([line('Licorice', 'Sweets'), meat])).toBe(false);
});

describe('raw beside ready-to-eat', () => {
  const hour = 3_600_000;
  const load = (no: number, isRaw: boolean, hours: number, isDone = false) => ({
    no,
    isRaw,
    loadedAtMs: hours * hour,
    isDone,
  });
  test.each([
    [load(1, false, 0), [1]],
    [load(1, false, 22), [1]],
    [load(1, false, -2.1), []],
    [load(1, true, 0), []],
    [load(1, false, 0, true), []],
    [load(2, false, 0), []],
  ])('%j', (other, nos) => {
    expect(rawBeside(load(2, true, 10), [other]).map(({ no }) => no)).toEqual(nos);
  });
});
