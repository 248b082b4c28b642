import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason, refuses } from '../season.ts';

// The clock of the season stands on 3 April 2027, a Saturday.
test.each([
  ['/trip Swan Bay 12-14 June for all', 'Sat 12 Jun to Mon 14 Jun 2027: 9 meals'],
  ['/trip Swan Bay June 12-14 dinner', 'Sat 12 Jun to Mon 14 Jun 2027: 3 meals'],
  ['/trip Swan Bay 2027-06-12 to 2027-06-14 breakfast and dinner', 'Mon 14 Jun 2027: 6 meals'],
  ['/trip Swan Bay from dinner 12 June to breakfast 14 June', 'Mon 14 Jun 2027: 5 meals'],
  ['/trip Swan Bay fri to sun dinner', 'Fri 9 Apr to Sun 11 Apr 2027: 3 meals'],
  ['/trip Swan Bay 30 June to 2 July lunch', 'Wed 30 Jun to Fri 2 Jul 2027: 3 meals'],
  ['/trip Swan Bay 13 June for 3 days lunch', 'Sun 13 Jun to Tue 15 Jun 2027: 3 meals'],
  ['/trip Swan Bay 28 Dec to 2 January 2028 dinner', 'Tue 28 Dec to Sun 2 Jan 2028: 6 meals'],
  ['/trip Swan Bay tomorrow dinner', 'Sun 4 Apr: 1 meal'],
  ['/trip Swan Bay this weekend lunch', 'Swan Bay, Sat 3 Apr to Sun 4 Apr 2027: 2 meals'],
])('%s', (typed, says) => {
  expect(openSeason().say(typed)).toContain(says);
});

test('dinner before breakfast is from the first evening to the last morning', () => {
  const answer = openSeason().say('/trip Swan Bay 12-13 June dinner breakfast');
  expect(answer).toContain('Sat 12 Jun: dinner for');
  expect(answer).toContain('Sun 13 Jun: breakfast for');
});

test('who comes when', () => {
  const house = openSeason();
  const answer = house.say('/trip Heron Lake Rosa only sunday');
  expect(answer).toContain('Sat 12 Jun: dinner for Ana, Ben and Noa');
  expect(answer).toMatch(/Sun 13 Jun: breakfast and dinner for Ana, Ben, Noa and Rosa/);
  expect(house.say('/trip Heron Lake without Ben')).toContain('Sat 12 Jun: dinner for Ana and Noa');
  expect(house.say('/trip Heron Lake Noa to sunday breakfast')).toMatch(
    /Sun 13 Jun: breakfast for Ana, Noa and Rosa; dinner for Ana and Rosa/,
  );
});

test('altitude and water', () => {
  const answer = openSeason().say('/trip Heron Lake 2500 m water 5 C');
  // Published row g-boil-2500: 91.64 °C.
  expect(answer).toContain('2500 m, water boils at 91.6 °C; water starts at 5 °C.');
  expect(openSeason().say('/trip Heron Lake snow')).toContain('water from snow');
});

test('several trips at a time', () => {
  const house = openSeason();
  house.say('/trip Swan Lake 1-2 May dinner');
  expect(house.say('/trip')).toBe(
    'Swan Lake, Sat 1 May to Sun 2 May 2027: 2 meals.\nHeron Lake, Sat 12 Jun to Mon 14 Jun 2027: 4 meals.',
  );
});

test('a cancelled trip gives its pouches back', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  expect(house.say('/trip Heron Lake cancelled')).toContain('pouches are stock again');
  expect(house.say('/stock')).not.toContain('Kept for');
});

test('a date that could be read two ways is asked about, and a button settles it', () => {
  const house = openSeason();
  expect(house.say('/trip Swan Bay 5/6 dinner')).toContain('5/6 can be read two ways');
  expect(house.press(1)).toContain('Swan Bay, Sat 5 Jun');
});

test('"next friday" is asked about', () => {
  const house = openSeason();
  expect(house.say('/trip Swan Bay next friday dinner')).toContain('can be read two ways');
  expect(house.press(2)).toContain('Fri 16 Apr');
});

test('only what was shown to be dry and is sound counts as free: 2 and 6 pouches, neither B3-1 nor one found loose', () => {
  const house = openSeason();
  expect(house.say('/trip heron lake')).toContain('9.48 servings free in 8 pouches');
  house.say('/found B4-2 loose');
  expect(house.say('/trip heron lake')).toContain('8.48 servings free in 7 pouches');
});

refuses([
  ['/trip Swan Bay', /no days/],
  ['/trip Swan Bay 2027-02-30', /no day of the calendar/],
  ['/trip Swan Bay 31 June', /no day of the calendar/],
  ['/trip Swan Bay 2027-01-05 to 2027-01-07', /is past/],
  ['/trip Swan Bay 2027-06-14 to 2027-06-12', /before it starts/],
  ['/trip Swan Bay 1 May to 30 September', /longer than the 60 days/],
  ['/trip Heron Lake water 300 C', /0 to 60 °C can/],
  ['/trip Heron Lake 9000 m', /The altitude has to be between -500 and 5500 m; it was 9000 m/],
  ['/trip Nowhere cancelled', /no trip called Nowhere/],
]);

test('two members of one name are two eaters', () => {
  const house = openTestHouse();
  for (const key of ['1', '2']) house.say('/help', 'Ana', { person: { key, name: 'Ana' } });
  const answer = house.say('/trip Zebra Lake 12-14 June dinner for all', 'Ana', {
    person: { key: '2', name: 'Ana' },
  });
  expect(answer).toContain('Ana and Ana 2');
  expect(house.faults).toEqual([]);
});

test('a trip moved as a whole keeps who is there, wishes, kept pouches and how hard its days are', async () => {
  const house = openSeason();
  house.say('/trip Heron Lake Rosa only sunday');
  house.say('/trip Heron Lake sunday hard climb');
  house.say('/want soup saturday dinner for Ben');
  await house.ask('/pick keep');
  const kept = house.db.prepare('SELECT count(*) FROM promise').pluck();
  const before = kept.get() as number;
  for (const typed of ['/trip Heron Lake a week later', '/trip Heron Lake 19-21 June']) {
    const answer = house.say(typed);
    expect(answer).toContain('Sat 19 Jun: dinner for Ana, Ben and Noa');
    expect(answer).toContain('Sun 20 Jun is a hard day.');
    expect(answer).toContain(`Moved along: 1 wish and ${before} kept pouches.`);
    expect(house.say('/want')).toContain('for Ben, Sat 19 Jun dinner');
    expect(kept.get()).toBe(before);
    house.say('/undo');
  }
  // A day earlier: each day moves to where another was.
  expect(house.say('/trip Heron Lake 11-13 June')).toContain('Fri 11 Jun: dinner for Ana, Ben and Noa');
  expect(house.faults).toEqual([]);
});

test('what hangs on a meal that falls away is named: its pouches are free, its wishes stay open', async () => {
  const house = openSeason();
  house.say('/want soup saturday dinner for Ben');
  await house.ask('/pick keep');
  house.say('/trip Heron Lake 13-14 June');
  const answer = house.press(1);
  expect(answer).toMatch(/Free again: B\d-\d.*, kept for Sat 12 Jun dinner\./);
  expect(answer).toContain('Wished for at Sat 12 Jun dinner and now at any meal: Barley soup.');
  expect(house.say('/want')).toMatch(/for Ben$/);
});

test('which way a trip moves is asked', () => {
  const house = openSeason();
  expect(house.say('/trip Heron Lake by a week')).toContain('later or earlier?');
  expect(house.press(1)).toContain('Sat 19 Jun');
});

// Of 2700 kcal a day, 30 % at dinner: 810; a day of rest asks for 0.9 of it, a hard one for 1.15 (published sources).
test.each([
  ['/trip Swan Bay 12-13 June dinner for Ben', 'Sat 0 of 810 kcal'],
  ['/trip Swan Bay 12-13 June dinner for Ben, saturday hard climb', 'Sat 0 of 930 kcal'],
  ['/trip Swan Bay 12-13 June dinner for Ben, saturday rest', 'Sat 0 of 730 kcal'],
  ['/trip Swan Bay 12-13 June dinner for Ben, hard days', 'Sat 0 of 930 kcal'],
])('%s: %s', async (typed, says) => {
  const house = openTestHouse('2027-04-03 08:00');
  house.say('/eater me', 'Ben');
  house.say(typed, 'Ben');
  expect(await house.ask('/pick', 'Ben')).toContain(says);
});

test('a place may be called after rest', () => {
  expect(openSeason().say('/trip Rest Lake 12-14 June dinner')).toContain('Rest Lake, Sat 12 Jun');
});

test('somebody with a like name is not the one who stays at home', () => {
  const house = openSeason();
  house.say('/eater Oma adult');
  house.say('/eater Omar adult');
  house.press(2);
  house.say('/trip Swan Bay 12-13 June dinner for all');
  expect(house.say('/trip Swan Bay without Oma')).toContain('dinner for Ana, Ben, Noa, Rosa and Omar');
  const before = house.dump();
  expect(house.say('/trip Swan Bay without Opa')).toContain('Opa');
  expect(house.dump()).toBe(before);
});

test.each([
  ['/trip Camp 10-11 July', /^Camp, Sat 10 Jul to Sun 11 Jul 2027/],
  ['/trip Pine Camp 10-11 July', /^Pine Camp, Sat 10 Jul/],
  ['/trip 10-11 July', /^I read the days, but not where the trip goes\./],
])('a place called as such places are: %s', (typed, says) => {
  expect(openSeason().say(typed)).toMatch(says);
});

test('what hangs on meals that fall away is listed as lost before it is', async () => {
  const house = openSeason();
  house.say('/want soup sunday dinner', 'Ana');
  await house.ask('/pick keep');
  const slots = () => house.db.prepare('SELECT count(*) FROM slot').pluck().get();
  const before = slots();
  const doubt = house.say('/trip Heron Lake 12-13 June from dinner to breakfast');
  expect(doubt).toMatch(
    /^This would fall away:\nSun 13 Jun dinner: .*kept for it and the wish for Barley soup there\./,
  );
  expect(doubt).toContain('Nothing is recorded yet');
  expect(slots()).toBe(before);
  expect(house.press(1)).toContain('Free again:');
  expect(slots()).toBeLessThan(before as number);
});

test('a cancelled trip is taken up again with its wishes and the pouches that are still free', async () => {
  const house = openSeason();
  house.say('/want soup', 'Ana');
  await house.ask('/pick keep');
  const held = house.db.prepare('SELECT count(*) FROM promise WHERE came IS NULL').pluck();
  const kept = held.get() as number;
  house.say('/trip Heron Lake cancelled');
  house.say('/use B4-1');
  const again = house.say('Heron Lake is on again');
  expect(again).toContain('On again, with 1 wish.');
  expect(again).toContain('Kept for it again: ');
  expect(again).toContain('No longer free: 1 pouch that was kept for it.');
  expect(held.get()).toBe(kept - 1);
  expect(house.say('/trip Nowhere again')).toContain('No trip called Nowhere is off the list');
});

test('a spare dinner comes along and stays at home again', () => {
  const house = openSeason();
  const answer = house.say('we take a spare dinner along');
  expect(answer).toMatch(/A spare dinner comes along, for \w+ \d+ Jun dinner/);
  expect(house.say('/trip Heron Lake a spare dinner')).toContain('A spare dinner is planned already');
  expect(house.say('no spare dinner after all')).toContain('No spare dinner any more.');
  expect(house.say('/trip Heron Lake no spare lunch')).toContain('No spare lunch is planned');
});

test('a guest comes along in one line and a tap', () => {
  const house = openSeason();
  house.say('/eater Lena guest no walnuts');
  expect(house.press(1)).toMatch(/^For .*Lena/m);
  expect(house.say('/trip Heron Lake')).toMatch(/^For .*Lena/m);
});
