import { expect, test } from 'vitest';
import { hasRice } from '#core/cautions.ts';

// Foods 10 (2021) 302, as named in a list of readings, not read itself: of cooked food rice above all is cooled within
// two hours. What can be checked here is that rice is recognised by every name that SR28 begins with it.
test.each([
  'Rice, white, long-grain, regular, raw, unenriched',
  'Rice, brown, medium-grain, raw',
  'Rice, white, short-grain, enriched, cooked',
])('%s', (tableName) => {
  expect(
    hasRice([{ called: '', typed: '', tableName, group: null, grams: 1, waterG: null, fatG: null }]),
  ).toBe(true);
});
