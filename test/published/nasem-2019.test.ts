import { expect, test } from 'vitest';
import { sodiumAdequateMg, sodiumLimitMg } from '#core/nutrition.ts';
import { near } from './near.ts';

// Read on a public page that repeats the table; the publication itself was not read. First and last year of each row.
test.each([
  { row: 'i-cdrr-1-3', ages: [1, 3], published: 1200, within: 0, witness: 'read' },
  { row: 'i-cdrr-4-8', ages: [4, 8], published: 1500, within: 0, witness: 'read' },
  { row: 'i-cdrr-9-13', ages: [9, 13], published: 1800, within: 0, witness: 'read' },
  { row: 'i-cdrr-14+', ages: [14, 90], published: 2300, within: 0, witness: 'read' },
])('$row: reduce above $published mg', ({ ages, ...row }) => {
  for (const age of ages) near(sodiumLimitMg(age) ?? NaN, row);
});

// Read in a summary of the release.
test.each([
  { row: 'i-ai-1-3', ages: [1, 3], published: 800, within: 0, witness: 'read' },
  { row: 'i-ai-4-8', ages: [4, 8], published: 1000, within: 0, witness: 'read' },
  { row: 'i-ai-9-13', ages: [9, 13], published: 1200, within: 0, witness: 'read' },
  { row: 'i-ai-14+', ages: [14, 90], published: 1500, within: 0, witness: 'read' },
])('$row: $published mg are adequate', ({ ages, ...row }) => {
  for (const age of ages) near(sodiumAdequateMg(age) ?? NaN, row);
});

// The same table has no row to reduce to for a child under one; none is made up.
test('a child under one has no figure', () => {
  expect(sodiumLimitMg(0)).toBeUndefined();
  expect(sodiumAdequateMg(0)).toBeUndefined();
});
