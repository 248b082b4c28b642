import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import { openTestHouse } from './house.ts';
import { openSeason } from './season.ts';
import { tries } from './ring.ts';

const commands = (await readCommands()).filter((c) => c.planned === null && c.name !== 'undo');
const examples = commands.flatMap((c) => c.examples);
const pieces = examples.flatMap((example) => example.split(' '));

/** Requests spliced from real ones, with numbers, marks and scripts thrown in. */
const spliced = fc
  .tuple(
    fc.constantFrom(...commands.map((c) => `/${c.name}`)),
    fc.array(
      fc.oneof(
        fc.constantFrom(...pieces),
        fc.constantFrom(
          'B4-2',
          'B4',
          'x',
          '-5 g',
          '1e999 kg',
          '0',
          '½',
          '９５ｇ',
          '٩٥',
          '🍲',
          '\u202eevil',
          "'; DROP TABLE pouch; --",
          '%s',
          '../../etc',
          '<b>',
          'sure',
          '999999999999999999 g',
          '"',
          '\n',
          ' '.repeat(40),
        ),
        fc.string({ maxLength: 12, unit: 'grapheme' }),
        fc.double().map(String),
      ),
      { maxLength: 9 },
    ),
  )
  .map(([name, words]) => `${name} ${words.join(' ')}`);

const failed =
  /For example: \/|could not place|Which is meant|Nothing is recorded|Nothing was recorded|Something broke|I know no request/;

test('no typed text breaks a request, and an answer that is a refusal changed nothing', () => {
  const house = openSeason();
  fc.assert(
    fc.property(
      fc.oneof({ weight: 4, arbitrary: spliced }, fc.string({ maxLength: 200, unit: 'binary' })),
      (typed) => {
        const before = house.dump();
        const answer = house.say(typed);
        expect(house.faults).toEqual([]);
        expect(answer).not.toContain('Something broke');
        expect(answer).not.toMatch(/\bNaN\b|\bInfinity\b|undefined/);
        if (failed.test(answer) && !/^Recorded|^Line \d/.test(answer)) expect(house.dump()).toBe(before);
      },
    ),
    { numRuns: tries(700), seed: 20270403 },
  );
});

test('a very long message is answered, and the time grows with its length alone', () => {
  const house = openSeason();
  for (const piece of ['B4-2 ', '1/2 ', '6 x ', 'lentil ', '½', '(', '-', 'no milk, ']) {
    const answer = house.say(`/seal ${piece.repeat(4000)}`);
    expect(answer.length).toBeGreaterThan(0);
  }
  expect(house.faults).toEqual([]);
});

test('the water of all pouches and of what is left adds up to the water that went', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 400, max: 3000 }),
      fc.array(fc.integer({ min: 20, max: 90 }), { minLength: 1, maxLength: 4 }),
      (wetG, pouches) => {
        const house = openTestHouse('2027-01-01 08:00');
        const dryG = pouches.reduce((sum, g) => sum + g, 0) + 30;
        house.say(`/recipe Pot, 4 servings: ${dryG - 1} g sugar; ${Math.max(1, wetG - dryG)} g water`);
        house.say(`/batch pot trays ${Math.max(wetG, dryG + 50)} g`);
        house.at(20);
        house.say(`/weigh B1 ${dryG} g sure`);
        house.at(3);
        house.say(`/weigh B1 ${dryG} g sure`);
        const exact = (text: string) => [...text.matchAll(/exactly ([\d.]+) ml/gi)].map((m) => Number(m[1]));
        const poured = pouches.map((g) => {
          house.at(0.1);
          return exact(house.say(`/seal 1 x ${g} g B1`))[0]!;
        });
        const left = Number(/Exactly ([\d.]+) ml/.exec(house.say('/water 30 g B1'))![1]);
        const total = poured.reduce((sum, ml) => sum + ml, 0) + left;
        // Each figure is printed to a tenth.
        expect(Math.abs(total - (Math.max(wetG, dryG + 50) - dryG))).toBeLessThan(
          0.06 * (pouches.length + 1),
        );
      },
    ),
    { numRuns: 25, seed: 7 },
  );
});

test('scaling there and back is the identity', () => {
  const house = openSeason();
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60 }), (servings) => {
      const there = Number(
        /times ([\d.]+):/.exec(house.say(`/scale lentil pot to ${servings} servings`))![1],
      );
      expect(there).toBeCloseTo(servings / 8, 1);
      const grams = /([\d.]+) (k?)g red lentils/.exec(
        house.say(`/scale lentil pot to ${servings} servings`),
      )!;
      const lentilsG = Number(grams[1]) * (grams[2] ? 1000 : 1);
      const back = house.say(`/scale lentil pot with ${lentilsG} g red lentils`);
      expect(Number(/: ([\d.]+) servings?/.exec(back)![1])).toBeCloseTo(servings, 0);
    }),
    { numRuns: 30, seed: 3 },
  );
});

test('two households with the same names never see each other', () => {
  const house = openTestHouse();
  const other = { chatKey: 'other', chatTitle: 'other' };
  house.say('/recipe Pot, 4 servings: 300 g sugar; 700 g water');
  house.say('/recipe Pot, 2 servings: 100 g milk', 'Ana', other);
  house.say('/batch pot trays 900 g');
  expect(house.say('/pouch B1', 'Ana', other)).toContain('There is no batch B1');
  expect(house.say('/recipe pot', 'Ana', other)).toContain('Pot, 2 servings');
  expect(house.say('/recipe pot')).toContain('Pot, 4 servings');
  house.say('/eater me no milk', 'Ana', other);
  expect(house.say('/eater')).toContain('Nobody is recorded');
  expect(house.say('/log')).not.toContain('eater');
  // What must never be served to somebody is given up by a tap alone.
  expect(house.say('/undo', 'Ana', other)).toContain('Nothing is changed yet');
  const tap = house.last.flatMap((out) => out.buttons)[0]!;
  expect(house.say('', 'Ana', { ...other, button: tap.id })).toContain('added the eater Ana');
});
