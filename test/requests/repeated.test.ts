import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';

// A minute is this project's own choice.
const weigh = '/weigh B2 560 g';
const weighings = (house: ReturnType<typeof openSeason>) =>
  house.db
    .prepare('SELECT count(*) FROM weighing JOIN batch ON batch.id = weighing.batch WHERE no = 2')
    .pluck()
    .get();

function weighedOnce() {
  const house = openSeason();
  const minute = house.nowText();
  house.at(`${minute}:00`);
  house.say(weigh);
  return { house, minute };
}

test.each(['00', '01', '59'])('the same record :%s later is asked about, and recorded by a tap', (later) => {
  const { house, minute } = weighedOnce();
  const before = house.dump();
  house.at(`${minute}:${later}`);
  expect(house.say(weigh)).toContain('You sent exactly this a moment ago, and it is recorded.');
  expect(house.dump()).toBe(before);
  expect(weighings(house)).toBe(1);
  house.press(1);
  expect(weighings(house)).toBe(2);
});

test('within the minute to its end, and no longer', () => {
  const { house } = weighedOnce();
  house.at(1 / 60);
  expect(house.say(weigh)).toContain('a moment ago');
  house.at(1 / 3600);
  expect(house.say(weigh)).not.toContain('a moment ago');
  expect(weighings(house)).toBe(2);
});

test('by somebody else it is no repeat', () => {
  const { house } = weighedOnce();
  expect(house.say(weigh, 'Ben')).not.toContain('a moment ago');
  expect(weighings(house)).toBe(2);
});
