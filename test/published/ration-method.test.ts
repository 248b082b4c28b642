import { expect, test } from 'vitest';
import { kcalPerG, trailFoodG, trailRations } from '#core/trail.ts';
import { near } from './near.ts';

// Rumble, Oliver & Finke, Cooking in the Outdoors (read): pounds of food a person-day and the kcal they stand for.
test('k-kcal: the three rations', () => {
  expect(trailRations).toEqual([
    { days: 'hot days, warm nights', lb: 1.5, lowKcal: 2500, highKcal: 3000 },
    { days: 'full packs, cool or warm', lb: 1.75, lowKcal: 3000, highKcal: 3500 },
    { days: 'cold days, very cold nights', lb: 2.5, lowKcal: 4000, highKcal: 5000 },
  ]);
});

// The same presentation: four people, eight days, 1.75 lb.
test('k-total', () => {
  near(trailFoodG(4, 8, 1.75) / 453.59237, { row: 'k-total', published: 56, within: 1e-9, witness: 'read' });
});

// Worked from the middle of the printed band, 3250 kcal on 1.75 lb.
test('k-density', () => {
  near(kcalPerG(3250, trailFoodG(1, 1, 1.75)), {
    row: 'k-density',
    published: 4.09,
    within: 0.02,
    witness: 'read, worked',
  });
});
