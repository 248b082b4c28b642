import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';

test('what stock cannot cover becomes meals, servings, loads and a day', async () => {
  const house = openSeason();
  const answer = await house.ask('/cook');
  // Noa has nothing clear in stock; of the recipes only rice and beans is clear of milk and peanuts.
  expect(answer).toMatch(
    /Rice and beans: [\d.]+ servings for .*\. \/scale Rice and beans x[\d.]+ makes [\d.]+, \d+ % of a dryer load/,
  );
  // 12 June less one load (a day until three are recorded), a day to seal and pack, two days to the seal check.
  expect(answer).toContain('Start drying by Tue 8 Jun.');
});

test('nothing clear at all is said', async () => {
  const house = openSeason();
  house.say('/eater Noa no beans, no rice, no barley');
  expect(await house.ask('/cook')).toContain('No recipe of yours is clear for Noa');
});

test('enough in stock', async () => {
  const house = openSeason();
  house.say('/trip Swan Bay 5 May dinner Ana');
  expect(await house.ask('/cook Swan Bay')).toContain('Stock covers Swan Bay: nothing has to be cooked');
});

test('no trip', async () => {
  const house = openSeason();
  house.say('/trip Heron Lake cancelled');
  expect(await house.ask('/cook')).toContain('No trip is planned');
});
