import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('every weighing is kept with its time, and two that agree mean steady', () => {
  const house = openSeason();
  expect(house.say('/weigh B2 420 g')).toContain('Not steady yet: tray 1 was weighed once only');
  house.at(1);
  expect(house.say('/weigh B2 419 g')).toContain('it takes 2 h of further drying to show');
  expect(house.say('/weigh B2 400 g')).toContain('tray 1 changed by 20 g in 1 h; the limit is 2 g');
  house.at(2);
  // 2 h after it: 400 to 399 g is within max(1 g, 0.5 %) = 2.0 g (common practice, no source).
  expect(house.say('/weigh B2 399 g')).toContain('Steady: the most that changed is tray 1, by 1 g, in 2 h');
  expect(
    house.db
      .prepare('SELECT count(*) FROM weighing JOIN batch ON batch.id = batch WHERE no = 2')
      .pluck()
      .get(),
  ).toBe(4);
});

test('a loss above the threshold is told with the threshold', () => {
  const house = openSeason();
  house.say('/weigh B2 420 g');
  house.at(3);
  expect(house.say('/weigh B2 417 g')).toMatch(
    /Not steady yet: tray 1 changed by 3 g in 3 h; the limit is 2\.1 g/,
  );
});

test('one tray at a time', () => {
  const house = openSeason();
  house.say('/batch barley soup trays 700 710 g');
  house.at(20);
  expect(house.say('/weigh B5 tray 2 209')).toContain('tray 2 209 g recorded');
});

test('ounces and a time that has passed', () => {
  const house = openSeason();
  const answer = house.say('/weigh B2 15 oz 2027-04-01 18:00');
  expect(answer).toContain('B2 was loaded after that');
  expect(house.say('/weigh B2 15 oz 2 h ago')).toContain('425 g recorded');
});

test('a weight below the solids is questioned, and one button settles it', () => {
  const house = openSeason();
  const asked = house.say('/weigh B2 300 g');
  expect(asked).toMatch(/300 g is less than the \d+ g of solids/);
  expect(asked).toContain('Nothing is recorded yet');
  expect(house.press(1)).toContain('300 g recorded');
});

test('a weight above the last one is questioned', () => {
  const house = openSeason();
  house.say('/weigh B2 420 g');
  house.at(3);
  expect(house.say('/weigh B2 460 g')).toContain('weighed 420 g last time and 460 g now');
});

refuses([
  ['/weigh', /Which load/],
  ['/weigh B2', /still need the weights/],
  ['/weigh B99 400 g', /no batch B99\. The latest are/],
  ['/weigh B2 900 g', /was loaded with 600 g and cannot weigh 900 g/],
  ['/weigh B2 400 410 g', /lies on one tray, and I read 2 weights\. Give one\./],
  ['/weigh B2 tray 3 200 g', /there is no tray 3/],
  ['/weigh B2 -3 g', /not a weight/],
  ['/weigh B2 0', /not a weight/],
  ['/weigh B2 400 g at 2031-01-01', /has not come yet/],
  ['/weigh B4 190 190 190 190', /sealed, so its trays no longer hold the whole batch/],
  ['/weigh B2 1,400 g', /can be read two ways/],
  ['/weigh B2 400 ml', /still need the weights/],
]);
