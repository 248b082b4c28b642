// Witness: mass is neither made nor lost, and the design's promises: unknown is never shown as clear, and what is not shown
// to be dry has neither best-by nor trip. Sums of its own, by hand from what was typed.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { seenBy } from '#chat/answerer.ts';
import { allergens } from '#core/allergens.ts';
import { verdictOn, mealOfBatch, mealsInStock } from '#house/verdicts.ts';
import { openFoods } from '#store/foods.ts';
import { foodTablePath } from './food-table.ts';
import { openSeason } from './season.ts';
import { tries } from './ring.ts';

const foods = openFoods(foodTablePath);

/** From the cupboard: whether it is dry, what it surely brings. */
const cupboard = [
  { words: 'milk powder', isDry: true, brings: ['milk'] },
  { words: 'potato flakes', isDry: true, brings: [] },
  { words: 'olive oil', isDry: true, brings: [] },
  // 4 g of water beside 35 g that is no fat: 12 %.
  { words: 'walnuts', isDry: false, brings: ['walnut'] },
  { words: 'almond flour', isDry: true, brings: ['almond'] },
  { words: 'peanut flour', isDry: true, brings: ['peanut'] },
  { words: 'cheddar', isDry: false, brings: ['milk'] },
  { words: 'strawberry jam', isDry: false, brings: [] },
  { words: 'xylomagic', isDry: false, brings: null },
  { words: 'flurb milk powder', isDry: false, brings: null },
] as const;

/** Batches of the season: B1 and B4 are dry, B3 is not. B4 holds milk. */
const batches = [
  { no: 1, isDry: true, leftG: 100, brings: ['barley'] },
  { no: 3, isDry: false, leftG: 200, brings: ['barley'] },
  { no: 4, isDry: true, leftG: 190, brings: ['milk'] },
] as const;

const grams = fc.integer({ min: 5, max: 60 });
const mixed = fc.record({
  count: fc.integer({ min: 1, max: 3 }),
  parts: fc.uniqueArray(fc.record({ batch: fc.constantFrom(...batches), g: grams }), {
    selector: ({ batch }) => batch.no,
    minLength: 1,
    maxLength: 3,
  }),
  goods: fc.uniqueArray(fc.record({ good: fc.constantFrom(...cupboard), g: grams }), {
    selector: ({ good }) => good.words,
    maxLength: 3,
  }),
  unchecked: fc.boolean(),
});

test('mixed pouches: masses balance to the gram, no part is forgotten, no damp part passes', () => {
  fc.assert(
    fc.property(mixed, ({ count, parts, goods, unchecked }) => {
      fc.pre(parts.length + goods.length > 1);
      const house = openSeason();
      house.say('/weigh B1 100 g');
      house.say('/weigh B4 190 g');
      const before = house.dump();
      const pieces = [
        ...parts.map(({ batch, g }) => `${g} g B${batch.no}`),
        ...goods.map(({ good, g }) => `${g} g ${good.words}`),
      ];
      const answer = house.say(`/seal ${count} x ${pieces.join(' + ')}${unchecked ? ' unchecked' : ''}`);
      const isDry = [...parts.map(({ batch }) => batch), ...goods.map(({ good }) => good)].every(
        (one) => one.isDry,
      );
      const isThere = parts.every(({ batch, g }) => g * count <= batch.leftG + 1);
      if (!isThere || (!isDry && !unchecked)) {
        expect(answer).toContain('For example:');
        expect(house.dump()).toBe(before);
        return;
      }
      expect(answer).toContain('Sealed M5-1');
      const seen = seenBy({ ...house.house, foods }, 1, {
        member: house.house.stores.households.members(1)[0]!,
        journal: {
          lastHere: () => [],
          standingOn: () => [],
          undo: () => '',
          redo: () => '',
          latest: () => [],
        },
        status: null,
        sure: false,
        tapped: false,
        nowMs: 0,
      });
      const pouches = seen.pouches.ofBatch(5);
      // Masses: what lies in the pouches is what was typed, and what is left of each batch is the rest of it.
      const eachG = [...parts, ...goods].reduce((sum, { g }) => sum + g, 0);
      expect(pouches.map(({ dryG }) => dryG)).toEqual(Array(count).fill(eachG));
      for (const { batch, g } of parts) {
        const taken = seen.batches.mixedFrom(batch.no).reduce((sum, one) => sum + one.dryG, 0);
        expect(taken).toBeCloseTo(g * count, 9);
        const left = Math.max(0, batch.leftG - g * count);
        expect(answer).toContain(
          left <= 1 ? `Nothing of B${batch.no} is left.` : `${left} g of B${batch.no}`,
        );
      }
      // Dry: any part that is not keeps the whole from shelf, date and trip.
      for (const pouch of pouches) {
        expect(pouch.checked).toBe(isDry);
        expect(pouch.bestByOn !== null).toBe(isDry);
        if (!isDry) expect(pouch.absorbers).toEqual([]);
      }
      // Allergens: what any part brings is never clear, and nothing is where a part is not understood.
      const brought = new Set(parts.flatMap(({ batch }) => [...batch.brings]));
      for (const { good } of goods) for (const one of good.brings ?? []) brought.add(one as never);
      const isUnknown = goods.some(({ good }) => good.brings === null);
      const meal = mealOfBatch(seen, 5);
      const inStock = mealsInStock(seen).find(({ name }) => name === meal.name)!;
      for (const allergen of allergens)
        for (const shown of [meal, inStock]) {
          const { is } = verdictOn({ never: [allergen], exact: [] }, shown);
          if (brought.has(allergen as never)) expect(is).toBe('blocked');
          else if (isUnknown) expect(is).not.toBe('clear');
        }
      house.say('/undo');
      expect(house.db.prepare('SELECT count(*) FROM mix_part').pluck().get()).toBe(0);
    }),
    { numRuns: tries(60) },
  );
});
