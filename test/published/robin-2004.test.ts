import { describe, expect, test } from 'vitest';
import { pouchVolumeMl } from '#core/oxygen.ts';
import { near } from './near.ts';

// A. C. Robin, Paper Bag Problem, Mathematics Today 40 (2004): formula and figures read in an encyclopaedia's article on
// the paper bag problem; the paper itself was not read.
describe('a square sealed all round', () => {
  test('holds roughly 0.19 of its side cubed', () => {
    near(pouchVolumeMl(100, 100) / 1000, { row: 'square', published: 0.19, within: 0.005, witness: 'read' });
  });

  // Kepert's construction gives 0.2055 and his upper bound is 0.217.
  test('stays below the true figure, by no more than an eighth', () => {
    const share = pouchVolumeMl(100, 100) / 1000;
    expect(share).toBeLessThan(0.2055);
    expect(share).toBeGreaterThan(0.217 * (1 - 1 / 8));
  });
});

// Geometry, no source needed: a pouch much longer than wide is a tube whose girth is twice the width.
test('a long pouch comes near a tube', () => {
  const widthMm = 100;
  const heightMm = 2000;
  const tubeMl = (Math.PI * (widthMm / Math.PI) ** 2 * heightMm) / 1000;
  const share = pouchVolumeMl(widthMm, heightMm) / tubeMl;
  expect(share).toBeLessThan(1);
  expect(share).toBeGreaterThan(0.97);
});
