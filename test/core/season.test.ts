// Witness: counts by hand.
import { expect, test } from 'vitest';
import { runningOut, seasonOf, type SeasonPouch } from '#core/season.ts';

const pouch = (
  meal: string,
  sealedAtMs: number,
  state: SeasonPouch['state'],
  goneAtMs: number | null = null,
) => ({
  meal,
  sealedAtMs,
  state,
  goneAtMs,
});

const rows = seasonOf(
  [
    pouch('Soup', 5, 'used', 50),
    pouch('Soup', 20, 'used', 60),
    pouch('Soup', 20, 'stock'),
    pouch('Stew', 20, 'discarded', 30),
    pouch('Stew', 1, 'stock'),
    pouch('Old', 1, 'used', 2),
  ],
  10,
);

test('what was sealed, eaten and thrown away since, and what is left whenever it was sealed', () => {
  expect(rows).toEqual([
    { meal: 'Soup', sealed: 2, eaten: 2, left: 1, wasted: 0 },
    { meal: 'Stew', sealed: 1, eaten: 0, left: 1, wasted: 1 },
  ]);
});

test('runs out what is eaten more than is left', () => {
  expect(runningOut(rows).map(({ meal }) => meal)).toEqual(['Soup']);
  expect(runningOut([])).toEqual([]);
});
