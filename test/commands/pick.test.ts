import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason } from '../season.ts';

test('pouches for each meal, who eats what, water, what is short and why', async () => {
  const house = openSeason();
  const answer = await house.ask('/pick');
  expect(answer).toMatch(/^Heron Lake, Sat 12 Jun: NOT all are fed\./);
  expect(answer).toMatch(/Heron Lake, Sat 12 Jun:\nDinner: .* for .*\. Water \d+ ml\./);
  // Noa must have no milk; the pot holds cream, and the stock's small print is unknown.
  expect(answer).toMatch(/Nothing for Noa at .*: no meal in stock is clear for Noa/);
  expect(answer).not.toMatch(/for [^.]*Noa[^.]*\. Water/);
  expect(answer).toMatch(/Dry \d+ g; water to boil [\d.]+ l/);
  expect(answer).toMatch(/Gas: about \d+ g from 10 °C to 93\.6 °C/);
  expect(answer).toMatch(/Proven|Best found/);
  expect(house.faults).toEqual([]);
});

test('keep takes the pouches out of stock, and no other trip gets them', async () => {
  const house = openSeason();
  await house.ask('/pick');
  expect(await house.ask('/pick keep')).toContain('Kept for Heron Lake');
  const kept = house.db.prepare('SELECT count(*) FROM promise WHERE came IS NULL').pluck().get() as number;
  expect(kept).toBeGreaterThan(0);
  house.say('/trip Swan Bay 12-13 June dinner for all');
  const other = await house.ask('/pick Swan Bay');
  const codes = house.db
    .prepare(
      'SELECT batch.no AS b, pouch.no AS n FROM promise JOIN pouch ON pouch.id = pouch JOIN batch ON batch.id = pouch.batch',
    )
    .all() as { b: number; n: number }[];
  for (const { b, n } of codes) expect(other).not.toMatch(new RegExp(`Dinner: .*B${b}-${n}\\b`));
});

test('keeping is taken back by undo', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  expect(house.say('/undo')).toMatch(/Taken back: kept \d pouches for Heron Lake/);
  expect(house.db.prepare('SELECT count(*) FROM promise').pluck().get()).toBe(0);
});

test('a choice that changed since it was shown is shown, not kept', async () => {
  const house = openSeason();
  await house.ask('/pick');
  house.say('/use B4-1 B4-2 B1-1');
  expect(await house.ask('/pick keep')).toContain(
    'The choice changed since it was shown: nothing is kept yet.',
  );
  expect(await house.ask('/pick keep')).toContain('Kept for Heron Lake');
});

test('each pick can be explained', async () => {
  const house = openSeason();
  const answer = await house.ask('/pick');
  const code = /B\d-\d/.exec(answer)![0];
  expect(await house.ask(`/pick why ${code}`)).toMatch(
    new RegExp(`^${code} is for .* (without it|another choice)`),
  );
  expect(await house.ask('/pick why B3-1')).toContain('B3-1 is not among the picks');
});

test('an unchecked pouch is never offered', async () => {
  expect(await openSeason().ask('/pick')).not.toContain('B3-1');
});

test('the same question has the same answer', async () => {
  expect(await openSeason().ask('/pick')).toBe(await openSeason().ask('/pick'));
});

test.each([
  ['/pick B4-2', /not what about it/],
  ['/pick why', /not which pouch/],
  ['/pick Atlantis', /could not place "Atlantis"/],
])('refuses %s', async (typed, says) => {
  const house = openSeason();
  const before = house.dump();
  expect(await house.ask(typed)).toMatch(says);
  expect(house.dump()).toBe(before);
});

test('people and meals that are short for the same reason share a line', async () => {
  const house = openSeason();
  house.say('/use B4-1 B4-2 B4-3 B4-4 B4-5 B4-6');
  house.say('/trip Swan Bay 12-13 July dinner for Noa');
  const answer = await house.ask('/pick Swan Bay');
  expect(answer.match(/Nothing for Noa/g)).toHaveLength(1);
  expect(answer).toContain('Nothing for Noa at Mon 12 Jul dinner and Tue 13 Jul dinner');
  const bare = openTestHouse();
  bare.say('/eater Ana adult');
  bare.say('/eater Ben adult');
  bare.say('/trip Swan Bay 12-13 July dinner for all');
  expect(await bare.ask('/pick')).toMatch(
    /Nothing for Ana and Ben at \w+ 12 Jul dinner and \w+ 13 Jul dinner: nothing is in stock\./,
  );
  expect(bare.last[0]!.buttons.map(({ label }) => label)).not.toContain('Keep these');
  expect(await bare.ask('/pick keep')).toContain('there is nothing to keep');
});

test('part of a plan stays as it is, however the rest is planned anew', async () => {
  const house = openSeason();
  await house.ask('/pick');
  const kept = await house.ask('/pick keep sunday dinner');
  expect(kept).toMatch(/^Heron Lake: this meal stays as planned\.\nSun 13 Jun dinner: .*B\d-\d/);
  const codes = [...kept.matchAll(/B\d-\d+/g)].map(([code]) => code);
  // Wishes for just then would bring another meal there, were it not kept.
  house.say('/want lentil pot sunday dinner for Ben');
  house.say('/want soup sunday dinner for Ana');
  const again = await house.ask('/pick');
  const sunday = again.split('\n').find((line) => /^Sun dinner|^Dinner: /.test(line));
  expect(sunday ?? again).toBeTruthy();
  await house.ask('/pick keep');
  const held = house.db
    .prepare(
      `SELECT 'B' || batch.no || '-' || pouch.no FROM promise JOIN pouch ON pouch.id = pouch JOIN batch ON batch.id = pouch.batch
         JOIN slot ON slot.id = promise.slot WHERE slot.on_day = '2027-06-13' AND slot.meal = 'dinner' AND came IS NULL`,
    )
    .pluck()
    .all() as string[];
  const said = new Set(kept.includes(' to ') ? [] : codes);
  for (const code of said) expect(held).toContain(code);
  expect(house.say('/pick free sunday dinner')).toContain('Sun 13 Jun dinner may be planned anew: /pick.');
  expect(house.say('/pick free sunday dinner')).toContain('is not among the meals that stay as they are');
});

test('a day without what about it is asked for', async () => {
  expect(await openSeason().ask('/pick sunday dinner')).toContain('To let it stay as it is: /pick keep');
});

test('a day is kept by a sentence', async () => {
  const house = openSeason();
  await house.ask('/pick');
  expect(await house.ask('keep sunday as it is')).toContain('as planned.');
});
