// Witness: the plain meaning of each request, by hand; the scenario is invented.
import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';
import type { TestHouse } from '../house.ts';

/** Saturday's dinner opens other pouches than Sunday's. */
async function kept(): Promise<TestHouse> {
  const house = openSeason();
  await house.ask('/pick');
  await house.ask('/pick keep');
  return house;
}
const dinner = (house: TestHouse, day: string) =>
  /Dinner: (.*)/
    .exec(house.say(`/today ${day}`))?.[1]
    ?.replace(/, for .*/, '')
    .replace(/\.$/, '');

test.each([
  ['/exchange saturday dinner and sunday dinner'],
  ['/exchange saturday and sunday'],
  ['/exchange saturday and sunday dinner'],
  ['/exchange sunday dinner with saturday dinner Heron Lake'],
])('%s: the two meals change places, and /undo brings them back', async (said) => {
  const house = await kept();
  const [saturday, sunday] = [dinner(house, 'saturday'), dinner(house, 'sunday')];
  expect(saturday).not.toBe(sunday);
  expect(house.say(said)).toContain('changed places.');
  expect([dinner(house, 'saturday'), dinner(house, 'sunday')]).toEqual([sunday, saturday]);
  house.say('/undo');
  expect([dinner(house, 'saturday'), dinner(house, 'sunday')]).toEqual([saturday, sunday]);
});

test.each([
  ['/exchange saturday dinner and sunday', /Two days, or two meals with their days/],
  ['/exchange saturday lunch and sunday lunch', /has no lunch on Sat 12 Jun/],
  ['/exchange saturday and saturday', /is named twice/],
  ['/exchange saturday', /I still need two days or two meals/],
  ['/exchange sunday breakfast and monday breakfast', /Nothing is kept for those meals/],
])('%s is refused, and nothing moves', async (said, says) => {
  const house = await kept();
  const before = house.dump();
  expect(house.say(said)).toMatch(says);
  expect(house.dump()).toBe(before);
});

test('who is not at the other meal keeps the pouch where it is', async () => {
  const house = openSeason();
  house.say('/trip Heron Lake Rosa from sunday');
  await house.ask('/pick');
  await house.ask('/pick keep');
  const before = house.dump();
  expect(house.say('/exchange saturday dinner and sunday dinner')).toContain(
    'Rosa is not at Sat 12 Jun dinner. Nothing is moved.',
  );
  expect(house.dump()).toBe(before);
});

test('a wish that is no longer met is named', async () => {
  const house = openSeason();
  house.say('/want lentil pot saturday dinner');
  house.say('/want barley soup sunday dinner');
  await house.ask('/pick');
  await house.ask('/pick keep');
  const answer = house.say('/exchange saturday dinner and sunday dinner');
  expect(answer).toContain('Ana wished for Barley soup at Sun 13 Jun dinner.');
});
