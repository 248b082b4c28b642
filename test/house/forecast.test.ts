// Witness: hours and weights are worked by hand from the straight line of the root (Pilsworth 1972, see
// test/published); that a load takes about a day is common practice, no source. The scenario is invented.
import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';

/** 1600 g with 300 g of solids: about 309 g dry. */
function loaded() {
  const house = openTestHouse('2027-04-01 08:00');
  house.say('/recipe Carrot mash, 6 servings: 300 g rice flour; 1.3 l water');
  return house;
}
/** The fullest line of those that begin so: in the fold stands how far the hour may be off. */
const lineOf = (answer: string, start: string) =>
  answer.split('\n').findLast((line) => line.startsWith(start));

test('at loading the hour is said with its band, before any load is known', () => {
  const house = loaded();
  expect(lineOf(house.say('/batch carrot mash trays 1600 g'), 'Dry about')).toBe(
    'Dry about Fri 2 Apr 08:00, between 04:00 and Sat 3 Apr 08:00. Weigh it then.',
  );
});

test('an hour in the night is said so; early morning is no night', () => {
  const house = loaded();
  house.at('2027-04-01 23:00');
  expect(house.say('/batch carrot mash trays 1600 g')).toContain('That is in the night');
  house.at('2027-04-02 07:00');
  expect(house.say('/batch carrot mash trays 1600 g')).not.toContain('in the night');
});

test('after a weight or two the hour follows them, and the question gets the same', () => {
  const house = loaded();
  house.say('/batch carrot mash trays 1600 g');
  house.at(8);
  // Dry at 275 g: the root of what is to go fell from 36.4 to 22.9 g^½ in 8 h, so 13.6 h more, less 4 %.
  expect(lineOf(house.say('/weigh B1 800 g'), 'Dry about')).toMatch(
    /^Dry about Fri 2 Apr 05:00, between Thu 1 Apr 19:30 and 07:30\. Weigh it again then\.$/,
  );
  house.at(4);
  expect(lineOf(house.say('/weigh B1 560 g'), 'Dry about')).toMatch(/^Dry about Fri 2 Apr 0\d:\d0, between /);
  expect(house.say('when will it be ready?')).toContain('Dry about Fri 2 Apr');
  expect(house.say('/pouch B1')).toContain('Dry about Fri 2 Apr');
});

test('a pump that stopped is asked about instead of an hour', () => {
  const house = loaded();
  house.say('/batch carrot mash trays 1600 g');
  house.at(8);
  house.say('/weigh B1 800 g');
  house.at(4);
  const answer = house.say('/weigh B1 795 g');
  expect(answer).toContain('It hardly loses water any more');
  expect(answer).not.toContain('Dry about');
});

test('three loads of one own give the hours by water, and how much would be ready in the evening', () => {
  const house = loaded();
  const load = (no: number, wetG: number, hours: number) => {
    house.say(`/batch carrot mash x${wetG / 1600} trays ${wetG} g`);
    const dryG = Math.round(wetG * 0.172);
    house.at(hours - 4);
    house.say(`/weigh B${no} ${dryG + 60} g sure`);
    house.at(4);
    house.say(`/weigh B${no} ${dryG} g sure`);
    house.at(2);
    house.say(`/weigh B${no} ${dryG} g sure`);
    house.say(`/seal 1 x ${dryG - 5} g B${no}`);
    house.at(4);
  };
  house.say('/recipe carrot mash pot 1600 g');
  load(1, 1600, 20);
  load(2, 2400, 26);
  load(3, 3200, 32);
  house.at('2027-04-10 22:00');
  const answer = house.say('/batch carrot mash x1.5 trays 2400 g');
  // 26 h by the line through the three: midnight of the next day.
  expect(lineOf(answer, 'Dry about')).toBe(
    'Dry about Mon 12 Apr 00:00, between Sun 11 Apr 22:30 and 01:30. Weigh it then.',
  );
  // Nine in the evening is 23 h after loading: 3 h less, 400 g less.
  expect(lineOf(answer, 'That is in the night')).toBe(
    'That is in the night: about 2000 g would be ready at 21:00. Or it waits under vacuum.',
  );
});

test('trays of two meals in one run count together: the dryer, its limit, the water and the hour', () => {
  const house = openTestHouse('2027-04-01 08:00');
  house.say('/house dryer 4 trays 20 x 45 cm 2.5 kg');
  house.say('/recipe Carrot mash, 6 servings: 300 g rice flour; 1.3 l water');
  house.say('/recipe Barley stew, 6 servings: 300 g rice flour; 900 ml water');
  house.say('/batch carrot mash trays 800 800 g');
  const fits = house.say('/batch barley stew trays 600 g');
  expect(fits).toContain("88 % of your dryer's limit, with B1.");
  house.say('/undo');
  expect(house.say('/batch barley stew trays 600 600 g')).toContain(
    "With B1 2800 g: over your dryer's limit of 2500 g by 300 g.",
  );
  house.say('/undo');
  const many = house.say('/batch barley stew trays 400 400 400 g');
  expect(many).toContain(
    'With B1 that makes 5 trays; your dryer has 4. In another one? /dryer B2 moved to the small one',
  );
  expect(many).toContain("48 % of your dryer's limit.");
  house.say('/dryer B2 moved to the small one');
  expect(house.say('/batch barley stew anew trays 300 g')).toContain("76 % of your dryer's limit, with B1.");
});

test('the hours of loads in one run are learnt from all their water', () => {
  const house = openTestHouse('2027-04-01 08:00');
  house.say('/recipe Carrot mash, 6 servings: 300 g rice flour; 1.3 l water');
  house.say('/recipe Rice cream, 6 servings: 300 g rice flour; 1.3 l water');
  let no = 0;
  // 1600 g in one meal took 20 h, 800 g and 800 g of two meals as long, 800 g alone 12 h: it is the water that counts.
  const run = (hours: number, ...loads: readonly (readonly [string, number])[]) => {
    for (const [meal, g] of loads) house.say(`/batch ${meal} anew x${g / 1600} trays ${g} g`);
    const weigh = () =>
      loads.forEach(([, g], i) => house.say(`/weigh B${no + 1 + i} ${Math.round(g * 0.172)} g sure`));
    house.at(hours);
    weigh();
    house.at(3);
    weigh();
    no += loads.length;
    house.at(10);
  };
  run(20, ['carrot mash', 1600]);
  run(20, ['carrot mash', 800], ['rice cream', 800]);
  run(12, ['rice cream', 800]);
  house.at('2027-04-20 08:00');
  expect(lineOf(house.say('/batch carrot mash anew trays 1600 g'), 'Dry about')).toContain(
    'Dry about Wed 21 Apr 04:00',
  );
  house.say('/undo');
  house.say('/batch carrot mash anew x0.5 trays 800 g');
  expect(lineOf(house.say('/batch rice cream anew x0.5 trays 800 g'), 'Dry about')).toContain(
    'Dry about Wed 21 Apr 04:00',
  );
});
