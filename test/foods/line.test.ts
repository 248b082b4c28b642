import { expect, test } from 'vitest';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';
import { asked } from './lines-asked.ts';
import { counted } from './lines-counted.ts';
import { cups } from './lines-cups.ts';
import { forms } from './lines-forms.ts';
import { masses } from './lines-mass.ts';
import { spoons } from './lines-spoons.ts';

const table = openFoods(':memory:');

test.each([...cups, ...spoons, ...masses, ...counted, ...forms])('%s', (typed, grams, ndb) => {
  const result = resolveLine(typed, table);
  expect({ is: result.is, ndb: result.food?.ndb }).toEqual({ is: 'weighed', ndb });
  // Tables print two or three figures, so a spoon and a sixteenth of a cup differ a little.
  expect(Math.abs(result.grams! / grams! - 1)).toBeLessThan(0.015);
});

test.each(asked)('asks about %s', (typed, _, ndb) => {
  const result = resolveLine(typed, table);
  expect(result.is).toBe('asked');
  expect(result.question).not.toBeNull();
  expect(result.food?.ndb ?? null).toBe(ndb);
});

// Plain reading of how cooks write it, no source; with 'or' it is another food, as it was.
test.each([
  ['juice of 1 lime', []],
  ['the juice of half an orange', []],
  ['juice and zest of a lime', []],
  ['juice from 2 lemons', []],
  ['milk of coconut', []],
  ['juice or lime', ['juice', 'lime']],
  ['milk beside coconut', ['milk', 'coconut']],
  ['milk accompanied by coconut', ['coconut']],
] as const)('%s names beside what it counts: %j', (typed, named) => {
  const line = resolveLine(typed, table);
  expect(line.named.map(({ called }) => called).filter((called) => called !== line.called)).toEqual(
    expect.arrayContaining([...named]),
  );
  if (named.length === 0) expect(line.named).toEqual([]);
});
