import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('pouches are ticked by buttons and by codes', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  const list = house.say('/pack');
  expect(list).toMatch(/^Heron Lake: 0 of \d+ pouches packed/);
  expect(house.press(1, 'Ben')).toMatch(/Heron Lake: [1-9]\d* of/);
  expect(house.say('/pack all')).toContain('All packed. After the trip: /back.');
  const all = house.say('/pack');
  const code = /B\d-\d/.exec(all)![0];
  expect(all).not.toContain('☐');
  expect(house.say(`/pack not ${code}`)).toMatch(new RegExp(`${code}[^;]* (?:☐|of \\d ✓)`));
});

refuses([
  ['/pack', /Nothing is kept for Heron Lake yet/],
  ['/pack B4-1', /Nothing is kept/],
]);

test('a pouch that is not kept is refused with those that are', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  expect(house.say('/pack B3-1')).toMatch(/B3-1 is not kept for Heron Lake\. Kept are B/);
});
