import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('a wish is shown as understood: stock, whom it does not suit, what would', () => {
  const answer = openSeason().say('/want lentil sunday dinner');
  expect(answer).toContain('Wish: Lentil pot for Ana, Heron Lake, Sun 13 Jun dinner.');
  expect(answer).toContain('In stock: 6 pouches, B4-1 to B4-6.');
  expect(answer).toContain('Not for Noa: milk');
});

test('for a child', () => {
  expect(openSeason().say('/want soup for Noa', 'Ben')).toContain(
    'Wish: Barley soup for Noa, Heron Lake, any time.',
  );
});

test('the same wish by two counts twice; buttons let others join, each once', () => {
  const house = openSeason();
  house.say('/want soup', 'Ana');
  expect(house.press(1, 'Ben')).toContain('Also wished for by Ana: it counts 2 times.');
  house.say('/want soup for Rosa', 'Ben');
  const trip = house.say('/trip Heron Lake');
  expect(trip).toContain('3 wishes');
  expect(house.press(1, 'Ben')).toContain('Ben wishes for Barley soup already');
});

test('a wish is taken back', () => {
  const house = openSeason();
  house.say('/want soup sunday dinner');
  expect(house.say('/want not soup')).toContain('Taken back: Barley soup for Ana');
  expect(house.say('/want')).toContain('No wishes for Heron Lake yet');
});

test('a meal that nobody dried yet', () => {
  expect(openSeason().say('/want rice and beans')).toContain(
    'No free pouch of Rice and beans is in stock: it would have to be cooked',
  );
});

refuses([
  ['/want goulash', /could not place "goulash"/],
  ['/want soup monday dinner', /no such meal|not at/],
  ['/want soup 2027-07-01', /no such meal/],
  ['/want not soup', /has no wish for Barley soup/],
  ['/want sunday dinner', /no meal that I know/],
]);

test('somebody who is no eater yet is told how', () => {
  expect(openSeason().say('/want soup', 'Stranger')).toContain('/eater me');
});
