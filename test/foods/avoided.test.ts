import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { avoidanceNamed, avoidedFood } from '#foods/avoided.ts';
import { byName, kitchen, type KitchenFood } from '#foods/kitchen.ts';
import { foldName } from '#foods/words.ts';
import { verdictFor } from '#core/verdict.ts';
import { tries } from '../ring.ts';

const nameOf = (food: KitchenFood) => (food.state === null ? food.called : `${food.called}, ${food.state}`);
const is = (words: string, food: KitchenFood) => {
  const { contents, ndb } = food;
  return verdictFor([{ ingredient: nameOf(food), contents, ndb }], [avoidanceNamed(words)!]).is;
};
const food = (name: string) => byName().get(foldName(name))![0]!;

// What a kitchen means by a plain word: common practice, no source.
test.each([
  ['butter', 'butter', 'blocked'],
  ['butter', 'cheddar', 'blocked'],
  ['butter', 'puff pastry', 'blocked'],
  ['butter', 'peanut butter', 'clear'],
  ['butter', 'butter beans', 'clear'],
  ['anchovies', 'worcestershire sauce', 'blocked'],
  ['anchovies', 'oyster sauce', 'unknown'],
  ['steak', 'beef stock', 'blocked'],
  ['steak', 'chicken breast', 'clear'],
  ['chicken', 'turkey breast', 'blocked'],
  ['wine', 'sherry', 'blocked'],
  ['potatoes', 'potato starch', 'blocked'],
  ['potatoes', 'french fries', 'blocked'],
  ['potatoes', 'tomato', 'clear'],
  ['potatoes', 'sweet potato', 'clear'],
  ['chillies', 'chili oil', 'blocked'],
  ['chillies', 'jalapeno', 'blocked'],
  ['chillies', 'bell pepper', 'clear'],
  ['garlic', 'garlic butter', 'blocked'],
  ['garlic', 'vegetable stock', 'unknown'],
  ['mushrooms', 'vegetable stock', 'unknown'],
  ['mushrooms', 'cheddar', 'clear'],
  ['mushrooms', 'prawns', 'clear'],
  ['onion', 'raisins', 'clear'],
  ['onion', 'leek', 'blocked'],
  ['nightshades', 'tomatillo', 'blocked'],
  ['nightshades', 'potato starch', 'blocked'],
  ['nightshades', 'chili oil', 'blocked'],
  ['nightshades', 'kimchi', 'unknown'],
  ['alliums', 'garlic butter', 'blocked'],
  ['strawberries', 'raspberries', 'clear'],
  ['oranges', 'carrots', 'clear'],
  ['liver', 'chicken liver', 'blocked'],
  ['pesto', 'cheddar', 'clear'],
])('no %s: %s is %s', (words, name, verdict) => expect(is(words, food(name))).toBe(verdict));

test('a food alone may be meant though it stands for more', () => {
  expect(avoidedFood('butter')).toMatchObject({ isWide: true, tags: ['milk'] });
  const exact = avoidedFood('butter', true)!;
  const verdict = (name: string) =>
    verdictFor([{ ingredient: nameOf(food(name)), contents: food(name).contents }], [exact]).is;
  expect(verdict('butter')).toBe('blocked');
  expect(verdict('cheddar')).toBe('clear');
  expect(verdict('scone')).toBe('unknown'); // made with milk of some kind
});

test('no food of the kitchen is clear for somebody who avoids it by any of its names', () => {
  const pairs = kitchen().flatMap((one) => one.names.map((name) => ({ one, name })));
  fc.assert(
    fc.property(fc.constantFrom(...pairs), ({ one, name }) => {
      expect(is(name, one), `no ${name}: ${one.called}`).not.toBe('clear');
    }),
    { numRuns: tries(600) },
  );
});

test('an avoided food that is wide never lets a food pass that the narrow reading stops', () => {
  const rank = { clear: 0, unknown: 1, blocked: 2 };
  const names = [...byName().keys()];
  fc.assert(
    fc.property(fc.constantFrom(...names), fc.constantFrom(...kitchen()), (name, one) => {
      const judge = (isExact: boolean) =>
        rank[
          verdictFor(
            [{ ingredient: nameOf(one), contents: one.contents, ndb: one.ndb }],
            [avoidedFood(name, isExact) ?? avoidanceNamed(name)!],
          ).is
        ];
      expect(judge(false)).toBeGreaterThanOrEqual(judge(true));
    }),
  );
});
