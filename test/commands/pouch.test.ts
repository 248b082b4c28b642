import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('the whole card', () => {
  const card = openSeason().say('/pouch B4-2');
  expect(card).toContain('B4-2: Lentil pot');
  expect(card).toMatch(/^95 g dry\. Best by \w+ 20\d\d\. In stock\.$/m);
  expect(card).toMatch(/Cooked and loaded .* 2027, sealed .* 2027, absorber/);
  expect(card).toContain('Best by is a planning date.');
  expect(card).toContain('Exactly 280.0 ml');
  expect(card).toMatch(/\d+ kcal, \d+ mg sodium \(\d+ % of the label's daily value\)/);
  expect(card).toContain('Contains: milk.');
  expect(card).toContain('In stock.');
});

test('a pouch that left says when and why', () => {
  const house = openSeason();
  house.say('/discard B4-3 seal failed');
  expect(house.say('/pouch B4-3')).toMatch(/Discarded .* 2027: seal failed/);
});

test('a batch', () => {
  expect(openSeason().say('/pouch B4')).toContain('Sealed: B4-1 to B4-6, 570 g.');
});

refuses([
  ['/pouch', /Which pouch/],
  ['/pouch B4-1 B4-2 B4-3 B3-1', /At most 3 cards at a time/],
  ['/pouch B9-1', /no batch B9/],
  ['/pouch 4', /still need a pouch code/],
]);
