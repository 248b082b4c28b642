import { describe, expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
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
  expect(answer).toContain('Water: start with 180 ml, up to 210 ml (⅞ cup).');
  // 90 g were 300 g wet: 300 / 1.03 / 0.6 = 485 ml of loose pieces, 63 ml of them food; 20.95 % of the rest is oxygen.
  expect(answer).toContain(
    'Absorber: 300 ml (89 ml of oxygen in about 485 ml of pouch with the air pressed out, times 1.5 for safety).',
  );
  expect(answer).toContain(
    "Best by Mar 2029: foil, dry by weight, 1 % fat in the dry food, 20 °C. Longer with a hygrometer's word before sealing and a cooler place.",
  );
  expect(answer).toContain('10 g of B1 are left unsealed.');
});

describe('the pouch as people pack it', () => {
  /** Soup that was dried from 356 g to 60 g a pouch: 6 parts wet to one dry. */
  const soup = () => {
    const house = openTestHouse('2027-04-01 08:00');
    house.say('/house pouch 20 x 30 cm');
    house.say('/house absorbers 100 200 300 500 ml');
    house.say('/recipe Soup, 8 servings: 320 g red lentils; 1.48 l water');
    house.say('/batch soup trays 890 890 g');
    house.at(20);
    house.say('/weigh B1 150 150');
    house.at(3);
    house.say('/weigh B1 150 150');
    return house;
  };
  test('60 g of soup in a large pouch takes one pack, not two of 500 ml', () => {
    expect(soup().say('/seal 1 x 60 g B1')).toContain(
      'Absorber: 200 ml (112 ml of oxygen in about 576 ml of pouch with the air pressed out, times 1.5 for safety).',
    );
  });
  test('measured in water it takes what it measured', () => {
    expect(soup().say('/seal 1 x 60 g B1 pressed 280 ml')).toContain(
      'Absorber: 100 ml (50 ml of oxygen in about 280 ml as measured,',
    );
  });
  test('a jar is pressed by nobody', () => {
    expect(soup().say('/seal 1 x 60 g B1 jar 1 l')).toContain(
      'Absorber: 500 ml (201 ml of oxygen in about 1000 ml of jar,',
    );
  });
  test('food and water that hardly fit are said', () => {
    const house = soup();
    expect(house.say('/seal 1 x 60 g B1 pouch 900 ml')).toContain('hardly fit this pouch');
    house.at(0.1);
    expect(house.say('/seal 1 x 60 g B1 pouch 1.1 l')).not.toContain('hardly fit');
  });
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
  expect(withFreshRest().say('/seal 1 x 90 g B1 unchecked')).toContain('Best by Mar 2029');
});

test('without an absorber the date is short', () => {
  const house = withFreshRest();
  // A quarter of the policy's months, and 6 at most (chosen policy, see core/bestby.ts).
  const answer = house.say('/seal 1 x 90 g B1 no absorber');
  expect(answer).toContain('Sealed without an absorber');
  expect(answer).toContain('Best by Sept 2027');
});

refuses([
  ['/seal', /Which load/],
  ['/seal B4', /still need how many pouches/],
  ['/seal 6 x 95 g', /B2 has no dry weight yet/],
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
