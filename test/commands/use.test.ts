import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('what is left is told', () => {
  const house = openSeason();
  expect(house.say('/use B4-2 B4-3')).toContain(
    'Left of Lentil pot: 4 pouches, B4-1 and B4-4 to B4-6.'.replace(' and B4-4', ' and B4-4'),
  );
  expect(house.say('/use B4-4 to 6')).toContain('Left of Lentil pot: 1 pouch, B4-1.');
});

test('a pouch that was kept for a trip is said to be missing there', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  const kept = /Kept for Heron Lake: (B\d-\d)/.exec(house.say('/stock'))![1]!;
  expect(house.say(`/use ${kept}`)).toMatch(/It was kept for .* at Heron Lake .*\/pick again/);
});

refuses([
  ['/use', /Which pouch/],
  ['/use B9-9', /no batch B9/],
  ['/use B4-2 B4-77', /no pouch B4-77/],
  ['/use B4', /still need a pouch code/],
  ['/use B4-2 maybe', /could not place "maybe"/],
  ['/use B4-6 to 2', /no row of codes/],
]);

test('a pouch is used once', () => {
  const house = openSeason();
  house.say('/use B4-2');
  const before = house.dump();
  expect(house.say('/use B4-1 B4-2')).toContain('B4-2 was used already');
  expect(house.dump()).toBe(before);
});
