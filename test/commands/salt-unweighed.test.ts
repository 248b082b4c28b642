// Witness: salt that nobody weighed is not in the sums, by hand; SR28 has 38,758 mg sodium in 100 g of salt, 56 in parsley, 2 in water.
import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';

function openDried(last: string): TestHouse {
  const house = openTestHouse();
  house.say('/eater Noa child 7');
  house.say(`/recipe Barley pot, 4 servings\n300 g pearl barley\n400 g carrots\n${last}`);
  house.say('/batch barley pot trays 700 g pot 700 g');
  house.at(24);
  house.say('/weigh B1 330');
  house.at(3);
  house.say('/weigh B1 330');
  house.say('/seal 3 x 82.5 g B1');
  return house;
}

test('"at least" stays with sodium on the card, the pouch, the water, the plan and in answers', async () => {
  const house = openDried('salt to taste');
  const card = house.say('/recipe barley pot');
  expect(card).toContain('3. salt to taste → salt, no amount: counted as 0; weigh it for the sodium');
  expect(card).toMatch(/at least \d+ mg sodium/);
  expect(house.say('/pouch B1-1')).toMatch(/kcal, at least \d+ mg sodium/);
  expect(house.say('/water B1-1')).toContain("Noa: at least 5 % of the day's sodium");
  expect(house.say('how much salt is in the barley pot?')).toMatch(/at least \d+ mg sodium/);
  house.say('/trip Heron Lake 2026-06-12 dinner for Noa');
  expect(await house.ask('/pick')).toMatch(/Noa: Fri sodium at least \d+ %/);
});

test.each(['1 tsp salt', 'water', 'parsley to garnish'])(
  'with %s there is no more sodium to come',
  (last) => {
    const house = openDried(last);
    expect(house.say('/recipe barley pot')).not.toContain('at least');
    expect(house.say('/pouch B1-1')).not.toContain('at least');
  },
);
