import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Contents } from '#core/allergens.ts';
import { account } from '#foods/account.ts';
import { kitchen } from '#foods/kitchen.ts';
import { resolveLine } from '#foods/line.ts';
import { closedWords } from '#foods/manner.ts';
import { namings, wordsOfNamings } from '#foods/namings.ts';
import { keyOf, tokensOf } from '#foods/tokens.ts';
import { foldedWords, foldName } from '#foods/words.ts';
import { openFoods } from '#store/foods.ts';
import { tries } from '../ring.ts';

const table = openFoods(':memory:');
/** Every pair with every connective takes an hour: SECOND_FOODS=200000 npx vitest run … for a longer run. */
const runs = Number(process.env['SECOND_FOODS'] ?? tries(1500));

const names = [...new Set(kitchen().flatMap((food) => food.names))].filter((name) => !/ or /.test(name));
/** What a food holds by itself, in the state that its bare name means. */
const known = new Map<string, Contents>();
function contentsOf(name: string): Contents {
  const before = known.get(name);
  if (before) return before;
  const line = resolveLine(`200 g ${name}`, table);
  const alone = line.is === 'asked' ? namings().get(foldName(name))!.contents : line.contents!;
  known.set(name, alone);
  return alone;
}
const holding = names.filter((name) => {
  const { contains, check, kinds, checkKinds } = contentsOf(name);
  return contains.length + check.length + kinds.length + checkKinds.length > 0;
});

/** What the second food holds, certain or to be checked, and the line shows clear. */
function leaks(line: string, second: Contents): string[] {
  const { contents } = resolveLine(line, table);
  if (contents === null) return [];
  const shown = new Set<string>([...contents.contains, ...contents.check]);
  const shownKinds = new Set<string>([...contents.kinds, ...contents.checkKinds]);
  return [
    ...[...second.contains, ...second.check].filter((tag) => !shown.has(tag)),
    ...[...second.kinds, ...second.checkKinds].filter((kind) => !shownKinds.has(kind)),
  ];
}

const joins = [
  ' with ', ' in ', ' and ', ' & ', ' + ', ', ', '; ', ' - ', ': ', ' / ', '/', ' or ', ' and/or ', ' plus ', ' plus extra ', ', plus a little ',
  ' stuffed with ', ' topped with ', ', topped wiht ', ' dusted with ', ', coated in ', ' fried in ', ', cooked in ', ' on ', ' on a bed of ', ' over ', ' under ', ' w/ ', ' w ',
  ' mit ', ' und ', ' avec ', ' n ', ', served with ', ', to serve: ', ' for garnish, ', ', optional ', ' such as ', ' may contain ', ' (contains ', ' (', ' [', ' instead of ', ' not ',
  ', then ', '. ', '! ', ' … ', ' — ', ' = ', ' > ', ' | ', ' x ', ' the ', ' of ', ' a ', ' from ', ' by ', ' zzyx ', ' gronkled with ', ' und etwas ', ' con poco ',
]; // prettier-ignore

const sayable = fc.constantFrom(...names);
const bringing = fc.constantFrom(...holding);
const join = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...joins) },
  // A connective of any spelling, so long as it is no food, no manner and no negation itself.
  fc
    .stringMatching(/^ ?[a-z]{1,12}[ ,/(]$/)
    .map((text) => ` ${text.trim()} `)
    .filter(
      (text) =>
        foldedWords(text).every((word) => !wordsOfNamings().words.has(word)) &&
        tokensOf(text).every(({ breaks }) => breaks !== 'without') &&
        !/free/.test(text),
    ),
  fc.stringMatching(/^[^\p{L}\p{N}\s'’%°#~™®`-]{1,3}$/u),
);

test('what the second food holds is never shown clear, whatever stands between', () =>
  fc.assert(
    fc.property(sayable, join, bringing, (first, between, second) => {
      const line = `200 g ${first}${between}${second}`;
      expect([line, leaks(line, contentsOf(second))]).toEqual([line, []]);
    }),
    { numRuns: runs },
  ));

test('nor what the first food holds', () =>
  fc.assert(
    fc.property(bringing, join, sayable, (first, between, second) => {
      // 'roast beef, cooked in …' is another row of roast beef than the slices from a packet.
      if (/cooked|fried/.test(between)) return;
      const line = `200 g ${first}${between}${second}`;
      expect([line, leaks(line, contentsOf(first))]).toEqual([line, []]);
    }),
    { numRuns: runs },
  ));

/** One letter lost, doubled, changed or swapped with its neighbour. */
const slipped = (word: string, at: number, how: number, letter: string) => {
  const i = at % word.length;
  if (how === 0) return word.slice(0, i) + word.slice(i + 1);
  if (how === 1) return word.slice(0, i) + word[i] + word.slice(i);
  if (how === 2) return word.slice(0, i) + letter + word.slice(i + 1);
  return word.slice(0, i) + (word[i + 1] ?? '') + word[i] + word.slice(i + 2);
};

test('a name put right never reaches over what parts two foods', () => {
  for (const line of [
    '200 g rice + nnoodle',
    '200 g quick cook rice, nnoodle',
    '200 g rice & nnoodles',
    '200 g rice / nodle',
  ])
    expect([line, leaks(line, contentsOf('noodle'))]).toEqual([line, []]);
});

test('nor where a letter of the second food slipped', () =>
  fc.assert(
    fc.property(
      sayable,
      fc.constantFrom(...joins),
      bringing,
      fc.nat(40),
      fc.nat(3),
      fc.constantFrom('a', 'e', 'i', 'o', 'u', 's', 't', 'r', 'n'),
      (first, between, second, at, how, letter) => {
        const words = second.split(' ');
        const which = at % words.length;
        if (words[which]!.length < 4) return;
        words[which] = slipped(words[which]!, at, how, letter);
        // A slip that makes another word of it, such as 'beer' of 'beef', nobody can see.
        if (
          foldedWords(words[which]).some((word) => wordsOfNamings().words.has(word) || closedWords.has(word))
        )
          return;
        if (tokensOf(words[which]).some(({ breaks }) => breaks !== null)) return;
        const line = `200 g ${first}${between}${words.join(' ')}`;
        expect([line, leaks(line, contentsOf(second))]).toEqual([line, []]);
      },
    ),
    { numRuns: runs },
  ));

test('a food by itself holds what the kitchen says of its name, and no more than its rows', () => {
  for (const name of names) {
    const line = `200 g ${name}`;
    const { contents, unknown } = resolveLine(line, table);
    expect([name, unknown]).toEqual([name, []]);
    expect([name, contents !== null]).toEqual([name, true]);
  }
});

test('every word has exactly one class', () =>
  fc.assert(
    fc.property(fc.array(fc.oneof(sayable, join, fc.string({ maxLength: 8 })), { maxLength: 6 }), (parts) => {
      const tokens = tokensOf(parts.join(' '));
      const sheet = account(tokens, []);
      expect(keyOf(tokens)).toBe(sheet.words.map(({ word }) => word).join(' '));
      expect(sheet.unknown.length).toBeGreaterThanOrEqual(
        sheet.words.filter(({ is }) => is === 'not understood').length,
      );
    }),
    { numRuns: tries(300) },
  ));

test.each([
  '400 g beef stew',
  '300 g potato salad',
  '100 g rice pudding',
  '300 g chicken schnitzel',
  '200 g vegetable tempura',
  '4 ham croquettes',
  '1 chicken kiev',
  '1 can lobster bisque',
  '200 g chicken and leek pie',
])('%s is a dish: never counted as one plain ingredient, and its contents are known', (typed) => {
  const { is, food, contents, grams } = resolveLine(typed, table);
  expect([is, food]).toEqual(['asked', null]);
  expect(contents!.contains.length + contents!.check.length).toBeGreaterThan(2);
  if (/ g /.test(typed)) expect(grams).toBeGreaterThan(0);
});

test('where the table has the dish itself, it is that row', () => {
  const { food, contents } = resolveLine('400 g lasagne', table);
  expect(food?.group).toBe('Meals, Entrees, and Side Dishes');
  expect(contents!.contains).toContain('wheat');
  expect(contents!.check).toEqual(expect.arrayContaining(['milk', 'egg', 'celery']));
});

test('a tin of meat or fish that nobody tins by itself is a dish', () => {
  expect(resolveLine('1 can steak', table).contents!.check).toContain('wheat');
  expect(resolveLine('1 tin tuna', table).contents!.check).not.toContain('wheat');
});

test.each<[string, string[], string[]]>([
  ['200 g pasta without nuts', ['wheat'], ['almond']],
  ['200 g chicken, no nuts', [], ['almond', 'peanut']],
  ['100 g nut-free chocolate spread', [], ['lupin']],
  ['3 tbsp gluten-free soy sauce', ['soy'], ['barley']],
  ['200 g sugar-free peanut butter', ['peanut'], ['milk']],
])('%s: a negation keeps out what it names, and adds nothing', (typed, there, absent) => {
  const { contents } = resolveLine(typed, table);
  expect(contents!.contains).toEqual(expect.arrayContaining(there));
  for (const tag of absent) expect([...contents!.contains, ...contents!.check]).not.toContain(tag);
});

test.each<[string, string]>([
  ['butter, beans', 'milk'],
  ['2 tbsp oil, plus a little butter for greasing', 'milk'],
  ['200 g potatoes (buttered)', 'milk'],
  ['4 chicken thighs, dusted with flour', 'wheat'],
  ['100 g almnods', 'almond'],
  ['3 tbsp peanutbutter', 'peanut'],
  ['300 g curry sauce (contains peanuts)', 'peanut'],
])('%s holds %s', (typed, tag) => {
  const { contents } = resolveLine(typed, table);
  expect([...contents!.contains, ...(typed === 'butter, beans' ? contents!.check : [])]).toContain(tag);
});

test.each([
  '100 ml water or milk',
  '100 ml water / milk',
  '100 ml water (may contain milk)',
  '100 ml water, such as milk',
])('%s: one of two may be in it, and is not certain', (typed) => {
  const { contents } = resolveLine(typed, table);
  expect(contents!.contains).not.toContain('milk');
  expect(contents!.check).toContain('milk');
});
