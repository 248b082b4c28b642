import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';

// The season: Lentil pot holds milk (cream), Barley soup may (stock). Ana and Ben avoid nothing.
test('what must not be near somebody is picked for nobody at their table', async () => {
  const house = openSeason();
  expect(await house.ask('/pick')).toMatch(/Lentil pot.*for Ana/s);
  house.say('/eater Noa no milk near');
  const picked = await house.ask('/pick');
  expect(picked).not.toMatch(/B4-\d|Lentil pot.*for Ana/);
  expect(picked).toContain('must not be near Noa');
});

test('what is kept and must not be near is named at once', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  expect(house.say('/eater Noa no milk near')).toMatch(/B4-\d, kept for .*: must not be near Noa/);
});
