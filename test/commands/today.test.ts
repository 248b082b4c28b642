// Worked by hand: the season's lentil pot gave 3000 g wet and 760 g dry, so 95 g take 280 ml. The scenario is invented.
import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';
import type { TestHouse } from '../house.ts';

/** Heron Lake, 12 to 14 June, with a plan kept for Ana, Ben and Rosa; Noa may eat nothing of it. */
async function kept(): Promise<TestHouse> {
  const house = openSeason();
  await house.ask('/pick');
  await house.ask('/pick keep');
  return house;
}
const lines = (answer: string) => answer.split('\n');

test('before the trip it shows the first day; on the trip the day it is', async () => {
  const house = await kept();
  expect(lines(house.say('/today'))[0]).toBe('Heron Lake, Sat 12 Jun:');
  expect(house.last[0]!.reply.buttons ?? []).toEqual([]);
  house.at('2027-06-13 07:00');
  expect(lines(house.say('/today'))[0]).toBe('Heron Lake, Sun 13 Jun:');
  expect(lines(house.say('/today tomorrow'))[0]).toBe('Heron Lake, Mon 14 Jun:');
  expect(lines(house.say('/today saturday'))[0]).toBe('Heron Lake, Sat 12 Jun:');
});

test('a meal is told with pouches, for whom, water, soak at its altitude, and who has nothing', async () => {
  const house = await kept();
  const answer = house.say('/today');
  expect(answer).toContain('Dinner: Lentil pot, B4-');
  expect(answer).toMatch(/ml boiling, 21 min\./);
  expect(answer).toContain('Nothing for Noa.');
  expect(answer).toContain('Water boils at 93.6 °C there.');
});

test('one tap says that a meal was eaten; the day then shows it opened', async () => {
  const house = await kept();
  house.at('2027-06-12 19:00');
  house.say('/today');
  const labels = house.last[0]!.reply.buttons!.map(({ label }) => label);
  expect(labels).toContain('Dinner eaten');
  expect(house.press(labels.indexOf('Dinner eaten') + 1)).toContain('Used:');
  const after = house.say('/today');
  expect(after).toContain('Dinner: opened.');
  expect((house.last[0]!.reply.buttons ?? []).map(({ label }) => label)).not.toContain('Dinner eaten');
});

test('the last day offers the way home', async () => {
  const house = await kept();
  house.at('2027-06-14 12:00');
  house.say('/today');
  expect(house.last[0]!.reply.buttons!.map(({ label }) => label)).toContain('Home again');
});

test('the whole trip is one message', async () => {
  const house = await kept();
  const days = lines(house.say('/today whole trip')).filter((line) => line.startsWith('Heron Lake, '));
  expect(days).toEqual(['Heron Lake, Sat 12 Jun:', 'Heron Lake, Sun 13 Jun:', 'Heron Lake, Mon 14 Jun:']);
});

test('of two trips on one day the one that somebody is on is meant; whoever is on both is asked', async () => {
  const house = await kept();
  house.say('/trip Otter Bay 12-14 June dinner for Ben');
  house.at('2027-06-12 18:00');
  expect(lines(house.say('/today', 'Ana'))[0]).toBe('Heron Lake, Sat 12 Jun:');
  expect(house.say('/today', 'Ben')).toContain('Which trip is meant?');
  expect(house.last[0]!.reply.buttons!.map(({ label }) => label).toSorted()).toEqual([
    'Heron Lake',
    'Otter Bay',
  ]);
});

test('a day beyond the trip is refused with its days', async () => {
  const house = await kept();
  house.at('2027-06-14 18:00');
  expect(house.say('/today tomorrow')).toContain('Heron Lake goes from Sat 12 Jun to Mon 14 Jun.');
});

test('nothing is chosen yet: one tap chooses', () => {
  const house = openSeason();
  expect(house.say('/today')).toBe(
    'No trip today; Heron Lake begins Sat 12 Jun. Nothing is chosen for Heron Lake yet.',
  );
  expect(house.last[0]!.reply.buttons).toEqual([
    { label: 'Choose for Heron Lake', request: '/pick "Heron Lake"' },
  ]);
});
