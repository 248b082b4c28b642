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

test('several meals for several people; who wished is counted once', () => {
  const house = openSeason();
  const answer = house.say('/want soup and lentil pot saturday dinner for Ben and Rosa');
  expect(answer).toContain('Wish: Barley soup for Ben and Rosa, Heron Lake, Sat 12 Jun dinner.');
  expect(answer).toContain('Wish: Lentil pot for Ben and Rosa, Heron Lake, Sat 12 Jun dinner.');
  expect(house.say('/want soup for Noa')).toContain('Also wished for by Ben and Rosa: it counts 3 times.');
  expect(house.say('/undo')).toContain('Taken back');
  expect(house.say('soup and lentil pot for saturday dinner please', 'Ana')).toMatch(
    /Wish: Barley soup for Ana,[^]*Wish: Lentil pot for Ana,/,
  );
});

test('what is withdrawn is named, and all of it where no day is', () => {
  const house = openSeason();
  house.say('/want soup saturday dinner for all');
  house.say('/want soup sunday dinner for Ben');
  expect(house.say('/want not soup for Ben')).toBe(
    'Taken back: Barley soup for Ben, Heron Lake, Sat 12 Jun dinner.\nTaken back: Barley soup for Ben, Heron Lake, Sun 13 Jun dinner.',
  );
  const before = house.dump();
  expect(house.say('/want not soup for Ben')).toContain('Ben has no wish for Barley soup');
  expect(house.dump()).toBe(before);
});

test('a meal of the day alone is asked about, not dropped', () => {
  const house = openSeason();
  expect(house.say('/want soup for dinner')).toContain('Which meal is meant?');
  expect(house.press(2)).toContain('Wish: Barley soup for Ana, Heron Lake, Sun 13 Jun dinner.');
});

test('a meal kept away from a meal is not there; a wish for just there lifts it', async () => {
  const house = openSeason();
  await house.ask('/pick');
  expect(house.say('/want no lentil pot sunday dinner')).toContain('No Lentil pot at Sun 13 Jun dinner');
  expect(house.say('/want')).toContain('No Lentil pot at Sun 13 Jun dinner');
  expect(await house.ask('/pick')).not.toMatch(/Sun 13 Jun:\n[^]*Dinner:[^\n]*Lentil pot/);
  house.say('/want no soup sunday dinner');
  expect(await house.ask('/pick')).toContain('is not to be there, as was said');
  expect(house.say('/want soup sunday dinner')).toContain('that no longer holds');
  expect(await house.ask('/pick')).toMatch(/Sun 13 Jun:\n[^]*Dinner:[^\n]*Barley soup/);
  expect(house.say('/trip Heron Lake no dinner on sunday')).toContain('This would fall away');
  expect(house.press(1)).toContain('Sun 13 Jun: breakfast for');
  expect(house.faults).toEqual([]);
});

test('a pouch said to be for a meal is opened there', async () => {
  const house = openSeason();
  expect(house.say('/want B4-5 saturday dinner')).toContain(
    'B4-5, Lentil pot, is for Sat 12 Jun dinner, for Ana, Ben and Rosa',
  );
  expect(await house.ask('/pick')).toMatch(/Sat 12 Jun:\nDinner:[^\n]*B4-5/);
  house.say('/want B4-5 sunday dinner');
  expect(await house.ask('/pick')).toMatch(/Sun 13 Jun:\n[^]*Dinner:[^\n]*(?:B4-5|B4-\d to B4-6)/);
});

test('the code of a batch or a mixture means its meal', () => {
  const house = openSeason();
  expect(house.say('/want B1 saturday dinner')).toContain(
    'Wish: Barley soup for Ana, Heron Lake, Sat 12 Jun dinner.',
  );
  house.say('/weigh B4 190 g');
  house.say('/seal 2 x 60 g B4 + 15 g milk powder');
  expect(house.say('/want M5 sunday dinner')).toMatch(
    /^Wish: Lentil pot \+ .*milk.* for Ana, Heron Lake, Sun 13 Jun dinner\./,
  );
  expect(house.say('/want not M5 sunday dinner')).toMatch(/^Taken back: Lentil pot \+ /);
});

test('a meal is kept away from the whole trip where nobody wishes for it', () => {
  const house = openSeason();
  expect(house.say('no lentil pot on this trip')).toContain('No Lentil pot at any meal of Heron Lake');
  house.say('/want soup for Ben');
  expect(house.say('/want no soup', 'Ana')).toContain(
    'Ana has no wish for Barley soup on Heron Lake. Ben does: /want not Barley soup for Ben',
  );
  expect(house.say('/want no soup', 'Ben')).toContain('Taken back: Barley soup for Ben');
});

test('a sentence says which pouch is for which meal', async () => {
  const house = openSeason();
  expect(house.say('B4-2 for sunday dinner please')).toContain('B4-2, Lentil pot, is for Sun 13 Jun dinner');
  expect(await house.ask('could B4-2 be for sunday dinner?')).not.toContain('is for Sun 13 Jun dinner');
});
