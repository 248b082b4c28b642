// Witness: the promise of the design, no source: an allergen leaves what is sealed by a grown-up's tap alone.
import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

/** The lentil pot of B4 holds cream; its line is put right to coconut milk. Noa must never have milk. */
function putRight() {
  const house = openSeason();
  house.say('/eater Noa child 7 no milk');
  const answer = house.say('/recipe lentil pot line 3: 200 ml coconut milk');
  return { house, answer };
}

test('a line that takes an allergen out asks how the batch was cooked, and until then it stays blocked', () => {
  const { house, answer } = putRight();
  expect(answer).toContain('B4, cooked before, keeps the old line.');
  expect(house.last[0]!.reply.buttons!.map(({ label }) => label)).toContain('B4 was cooked this way too');
  expect(house.say('/pouch B4-2')).toContain('Contains: milk.');
  expect(house.say('may Noa eat B4-2?')).toContain('Noa: NO');
});

test('one tap of a grown-up settles it, and /undo brings it back', () => {
  const { house } = putRight();
  const at = house.last[0]!.reply.buttons!.findIndex(({ label }) => label === 'B4 was cooked this way too');
  const answer = house.press(at + 1);
  expect(answer).toContain('B4 counts as cooked by Lentil pot as it stands now.');
  expect(answer).toContain('B4-1 to B4-6 with it.');
  expect(house.say('/pouch B4-2')).not.toContain('milk.');
  expect(house.say('/pouch B4-2')).toContain('Contains: coconut.');
  house.say('/undo');
  expect(house.say('/pouch B4-2')).toContain('Contains: milk.');
});

test('typing it is not enough, and a child may not', () => {
  const { house } = putRight();
  const before = house.dump();
  expect(house.say('/fix B4 cooked as now')).toContain('Nothing is changed yet');
  expect(house.dump()).toBe(before);
  house.press(1);
  expect(house.dump()).not.toBe(before);
  const other = putRight().house;
  other.say('/eater me child 9', 'Kim');
  expect(other.say('/fix B4 cooked as now', 'Kim')).toContain('for a grown-up to say');
});

test('a mixture follows what it holds', () => {
  const { house } = putRight();
  house.say('/weigh B4 190 g');
  expect(house.say('/seal 2 x 60 g B4 + 10 g couscous')).toContain('M5-1');
  expect(house.say('may Noa eat M5-1?')).toContain('Noa: NO, milk');
  house.say('/fix B4 cooked as now');
  house.press(1);
  expect(house.say('may Noa eat M5-1?')).not.toContain('NO, milk');
});

refuses([['/fix B4 cooked as now', /counts by the recipe as it stands now already/]]);
