import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

/** The rest of B1, 100 g, weighed again: more of it may be sealed within the hour. */
function withFreshRest() {
  const house = openSeason();
  house.say('/weigh B1 100 g');
  return house;
}

test('pouches get codes, water, an absorber and a planning date', () => {
  const house = withFreshRest();
  const answer = house.say('/seal 1 x 90 g B1 pouch 15 x 20 cm');
  expect(answer).toContain('Sealed B1-3: 90 g Barley soup');
  // Water by the balance: 90 x (1000 − 300) / 300 = 210 ml (published rows c-water-per-pouch: same sum).
  expect(answer).toContain('Water: 210 ml (⅞ cup) (exactly 210.0 ml).');
  // Robin's formula: 15 x 20 cm holds at most 975 ml; 90 g of this food fill 62 ml of it; 20.95 % of the rest is oxygen.
  expect(answer).toContain(
    'Absorber: 300 ml (191 ml of oxygen in at most 975 ml of pouch, times 1.5 for safety).',
  );
  expect(answer).toContain('Best by Mar 2030: a planning date, from 1 % fat in the dry food and 20 °C.');
  expect(answer).toContain('10 g of B1 are left unsealed.');
});

test('two sizes in one message', () => {
  const house = openSeason();
  const answer = house.say('/seal B4 1 x 95 g 1 x 90 g');
  expect(answer).toContain('Sealed B4-7: 95 g');
  expect(answer).toContain('Sealed B4-8: 90 g');
});

test('more than the batch holds is refused with the figures', () => {
  const house = withFreshRest();
  const before = house.dump();
  const answer = house.say('/seal 2 x 100 g B1');
  expect(answer).toContain(
    'The batch gave 300 g, 200 g of it are sealed already and 100 g are left; this would be 200 g.',
  );
  expect(house.dump()).toBe(before);
});

test("the sum may pass the batch by the scale's step", () => {
  const house = withFreshRest();
  expect(house.say('/seal 1 x 101 g B1')).toContain('Nothing of B1 is left');
});

test('an unchecked pouch gets no absorber and no date, and says why', () => {
  const house = openSeason();
  const answer = house.say('/seal 1 x 100 g B3 unchecked');
  expect(answer).toContain('UNCHECKED');
  expect(answer).toContain('a damp pouch without oxygen can grow botulism');
  expect(answer).not.toMatch(/Absorber:|Best by/);
  expect(house.say('/pouch B3-2')).toContain('UNCHECKED: not shown to be dry');
});

test('"unchecked" on a steady batch does not take its date away', () => {
  expect(withFreshRest().say('/seal 1 x 90 g B1 unchecked')).toContain('Best by Mar 2030');
});

test('without an absorber the date is short', () => {
  const house = withFreshRest();
  // A quarter of the policy's months, and 6 at most (chosen policy, see core/bestby.ts).
  const answer = house.say('/seal 1 x 90 g B1 no absorber');
  expect(answer).toContain('Sealed without an absorber');
  expect(answer).toContain('Best by Sept 2027');
});

refuses([
  ['/seal', /still need a batch code such as B4 and how many pouches/],
  ['/seal B4', /still need how many pouches/],
  ['/seal 6 x 95 g', /still need a batch code/],
  ['/seal 6 x 95 g B99', /no batch B99/],
  ['/seal 6 x 95 g B2', /has no dry weight yet/],
  ['/seal 1 x 95 g B3', /is not shown to be dry[\s\S]*botulism/],
  ['/seal 0 x 95 g B1', /0 is no number of pouches/],
  ['/seal -2 x 95 g B1', /-2 is no number of pouches/],
  ['/seal 1.5 x 95 g B1', /1\.5 is no number of pouches/],
  ['/seal 1 x 0 g B1', /not a weight/],
  ['/seal 1 x 95 ml B1', /still need how many pouches/],
  ['/seal 1 x 95 g B1 wombat', /could not place "wombat"/],
  ['/seal 1 x 1,095 g B1', /can be read two ways/],
]);
