import { expect, test } from 'vitest';
import { sodiumClaim } from '#core/nutrition.ts';

const claims = [
  { row: 'i-claim-1', kind: 'food', sodiumMg: 4.9, massG: 100, published: 'sodium free', witness: 'read' },
  { row: 'i-claim-2', kind: 'food', sodiumMg: 35, massG: 100, published: 'very low sodium', witness: 'read' },
  { row: 'i-claim-3', kind: 'food', sodiumMg: 140, massG: 100, published: 'low sodium', witness: 'read' },
  { row: 'i-claim-4', kind: 'food', sodiumMg: 141, massG: 100, published: 'no claim', witness: 'read' },
  { row: 'i-claim-5', kind: 'meal', sodiumMg: 560, massG: 400, published: 'low sodium', witness: 'read' },
  { row: 'i-claim-6', kind: 'meal', sodiumMg: 600, massG: 400, published: 'no claim', witness: 'read' },
] as const;

// National Academies, Strategies to Reduce Sodium Intake, Table 7-1 (21 CFR 101.61; read). No salt was added. The first
// row prints no weight; 100 g is put in, which that rule does not look at.
test.each(claims)('$row: $sodiumMg mg in $massG g of $kind', ({ kind, sodiumMg, massG, published }) => {
  expect(sodiumClaim({ kind, sodiumMg, massG, saltAdded: false })).toBe(published);
});
