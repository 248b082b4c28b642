import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Contents } from '#core/allergens.ts';
import { account } from '#foods/account.ts';
import { kitchen } from '#foods/kitchen.ts';
import { resolveLine } from '#foods/line.ts';
import { closedWords } from '#foods/manner.ts';
import { namings, namingWords } from '#foods/namings.ts';
import { keyOf, tokensOf } from '#foods/tokens.ts';
import { foldedWords, foldName } from '#foods/words.ts';
import { openFoods } from '#store/foods.ts';

const table = openFoods(':memory:');
/** Every pair with every connective takes an hour: SECOND_FOODS=200000 npx vitest run … for a longer run. */
const runs = Number(process.env['SECOND_FOODS'] ?? 1500);

const names = [...new Set(kitchen.flatMap((food) => food.names))].filter((name) => !/ or /.test(name));
/** What a food holds by itself, in the state that its bare name means. */
const known = new Map<string, Contents>();
function contentsOf(name: string): Contents {
  const before = known.get(name);
  if (before) return before;
  const line = resolveLine(`200 g ${name}`, table);
  const alone = line.is === 'asked' ? namings.get(foldName(name))!.contents : line.contents!;
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
        foldedWords(text).every((word) => !namingWords.has(word)) &&
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
        if (foldedWords(words[which]).some((word) => namingWords.has(word) || closedWords.has(word))) return;
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
    { numRuns: 300 },
  ));
