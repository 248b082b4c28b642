import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

async function kept() {
  const house = openSeason();
  await house.ask('/pick keep');
  const codes = [...house.say('/pack').matchAll(/B\d-\d/g)].map((m) => m[0]);
  return { house, codes };
}

test('what came back is stock again, what was eaten and lost is gone', async () => {
  const { house, codes } = await kept();
  const [first, second] = codes as [string, string];
  const answer = house.say(`/back ${first} returned, ${second} lost, rest eaten`);
  expect(answer).toContain(`back in stock: ${first}`);
  expect(answer).toContain(`lost: ${second}`);
  expect(answer).toContain('The trip is done');
  expect(house.say(`/pouch ${first}`)).toContain('In stock.');
  expect(house.say(`/pouch ${second}`)).toMatch(/Discarded .*: lost at Heron Lake/);
  expect(house.say(`/pouch ${codes[2]}`)).toMatch(/Used .*: at Heron Lake/);
});

test('codes alone came back; what is open is said', async () => {
  const { house, codes } = await kept();
  const answer = house.say(`/back ${codes[0]}`);
  expect(answer).toContain(`back in stock: ${codes[0]}`);
  expect(answer).toContain('Still open: ');
});

test('one button settles all', async () => {
  const { house } = await kept();
  house.say('/back');
  expect(house.press(1)).toContain('The trip is done');
});

test('all of it can be taken back', async () => {
  const { house } = await kept();
  const before = house.say('/stock');
  house.say('/back all eaten');
  house.say('/undo');
  expect(house.say('/stock')).toBe(before);
});

refuses([['/back', /Nothing is kept/]]);

test('a pouch named twice is refused', async () => {
  const { house, codes } = await kept();
  expect(house.say(`/back ${codes[0]} eaten ${codes[0]} lost`)).toContain('named twice');
});
