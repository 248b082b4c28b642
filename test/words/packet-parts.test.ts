import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { allergens, nuts } from '#core/allergens.ts';
import { packetLarder, packetReading } from '#foods/packet-things.ts';
import { type PacketTold, readPacket } from '#words/packet-parts.ts';
import { tries } from '../ring.ts';

const read = (text: string) => {
  const told = readPacket(text, packetLarder)!;
  return {
    food: told.food,
    said: told.said.map(({ words, is }) => `${is}: ${words}`).join('; '),
    claims: told.claims.join(),
  };
};

// How people copy a packet: common practice, no source.
test.each([
  ['vegetable stock contains celery, no milk, no egg, no wheat', 'contains: celery; free: milk; free: egg; free: wheat'],
  ['parmesan contains no egg', 'free: egg'],
  ['chicken stock may contain nuts', 'may contain: nuts'],
  ['stock cube: no egg, milk or wheat', 'free: egg; free: milk; free: wheat'],
  ["stock doesn't contain egg or milk", 'free: egg; free: milk'],
  ['stock is free from milk and egg', 'free: milk; free: egg'],
  ['stock is egg free', 'free: egg'],
  ['stock is egg-free and milk-free', 'free: egg; free: milk'],
  ['stock contains milk but no egg', 'contains: milk; free: egg'],
  ['stock contains soya and celery. May contain milk, egg', 'contains: soya; contains: celery; may contain: milk; may contain: egg'],
  ['stock has traces of nuts', 'may contain: nuts'],
  ['stock has no traces of nuts', 'free: nuts'],
  ['stock made in a factory that also handles nuts', 'may contain: nuts'],
  ['dark chocolate contains neither milk nor nuts', 'free: milk; free: nuts'],
  ['sausages contain pork, no beef, wheat free', 'contains: pork; free: beef; free: wheat'],
])('%s', (text, said) => expect(read(text).said).toBe(said)); // prettier-ignore

test.each([
  ['wine is suitable for vegans', 'vegan'],
  ['stock cube is gluten-free', 'gluten-free'],
  ['stock cube is gluten free', 'gluten free'],
])('%s is a claim', (text, claims) => expect(read(text).claims).toBe(claims));

test.each([
  'vegetable stock contains celery, no milk, egg',
  'stock may not contain egg',
  "stock isn't gluten-free",
  'stock not egg-free',
  'stock contains gronk',
  'stock contains no',
])('%s is asked about', (text) => expect(() => readPacket(text, packetLarder)).toThrow());

test('no part of an allergen settles the whole, and no nuts settles no peanut', () => {
  const free = (text: string) => packetReading(readPacket(text, packetLarder)!);
  expect(free('stock contains no whey')).toMatchObject({ reading: { free: [] }, idle: ['whey'] });
  expect(free('stock contains no butter').reading.free).toEqual([]);
  expect(free('stock contains no tahini').reading.free).toEqual([]);
  expect(free('stock contains no prawns').reading.free).toEqual([]);
  expect(free('stock contains no lactose').reading.free).toEqual([]);
  expect(free('stock contains no nuts').reading.free).not.toContain('peanut');
  expect(free('stock contains no gluten').reading).toMatchObject({ free: [], claims: ['gluten-free'] });
});

test('"no nuts" clears the nuts of the EU list, no more', () => {
  // Annex II of Regulation (EU) 1169/2011 names eight; pine nuts, chestnuts and coconut are not among them.
  const { free } = packetReading(readPacket('stock contains no nuts', packetLarder)!).reading;
  expect(free.toSorted()).toEqual(nuts.filter((nut) => nut !== 'pine nut').toSorted());
});

const things = [
  ...allergens.filter((tag) => tag !== 'oats'),
  'pork',
  'gelatine',
  'nuts',
  'gluten',
  'shellfish',
  'butter',
  'onion',
  'wine',
];
const verbs = [
  'contains',
  'has',
  'includes',
  'is made with',
  'ingredients:',
  'contains traces of',
  'may contain',
  ':',
];
const negations = ['no ', 'not ', 'without ', 'non ', 'never ', 'free from '];

test('adding a negation never makes a food contain the thing', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...verbs),
      fc.uniqueArray(fc.constantFrom(...things), { minLength: 1, maxLength: 4 }),
      fc.array(fc.constantFrom('', '', ...negations), { minLength: 4, maxLength: 4 }),
      fc.constantFrom(', ', ' and ', ' or ', '; '),
      fc.nat(3),
      fc.constantFrom(...negations),
      (verb, list, signs, between, place, negation) => {
        const at = place % list.length;
        const sentence = (more: string) =>
          `stock ${verb} ${list.map((thing, i) => `${i === at ? more : ''}${signs[i]!}${thing}`).join(between)}`;
        let told: PacketTold;
        try {
          told = readPacket(sentence(negation), packetLarder)!;
        } catch {
          return; // asked about
        }
        const of = told.said.find(({ words }) => words === list[at]);
        expect(of?.is ?? 'a claim', sentence(negation)).not.toMatch(/contain/);
      },
    ),
    { numRuns: tries(2000) },
  );
});

test('every thing of a sentence that is read is in what was read', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...verbs),
      fc.uniqueArray(fc.constantFrom(...things), { minLength: 1, maxLength: 4 }),
      fc.array(fc.constantFrom('', ...negations), { minLength: 4, maxLength: 4 }),
      (verb, list, signs) => {
        let told: PacketTold;
        try {
          told = readPacket(
            `stock ${verb} ${list.map((thing, i) => signs[i]! + thing).join(', ')}`,
            packetLarder,
          )!;
        } catch {
          return;
        }
        const said = told.said.map(({ words }) => words);
        for (const thing of list) expect([...said, ...told.claims]).toContain(thing);
      },
    ),
    { numRuns: tries(1000) },
  );
});
