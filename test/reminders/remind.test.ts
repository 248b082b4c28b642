// Witness: common practice, no source.
import { expect, test } from 'vitest';
import { openReminding } from '#reminders/clock.ts';
import { openOwnSeason } from '../season.ts';
import { openOwnHouse, type TestHouse } from '../house.ts';

/** Looks at the clock of the house and returns what was posted. */
function reminding(house: TestHouse) {
  const now = () => Date.parse(`${house.nowText().replace(' ', 'T')}:00Z`);
  const { look } = openReminding({ house: () => house.house, door: 'terminal', now, wake: () => undefined });
  return async () => {
    await look();
    const out = house.house.stores.messages.waiting('terminal');
    for (const { id } of out) house.house.stores.messages.sent(id);
    expect(house.faults).toEqual([]);
    return out;
  };
}
const texts = (out: Awaited<ReturnType<ReturnType<typeof reminding>>>) => out.map(({ reply }) => reply.group);

function loaded() {
  const house = openOwnHouse('2027-04-01 08:00');
  house.say('/recipe Barley soup, 6 servings: 300 g pearl barley; 400 g carrots; 1 l water; 6 g salt');
  house.say('/batch barley soup trays 812 798 g');
  return { house, posted: reminding(house) };
}

test('a load is to be weighed after a day, once, and again when it was not steady', async () => {
  const { house, posted } = loaded();
  expect(await posted()).toEqual([]);
  house.at('2027-04-02 07:59');
  expect(await posted()).toEqual([]);
  house.at('2027-04-02 08:00');
  const [first] = await posted();
  expect(first!.reply.group).toMatch(
    /^A reminder:\nB1, Barley soup: time to weigh\. In the dryer for 24 h\. \/weigh B1 and 2 weights\.$/,
  );
  expect(first!.reply.sounds).toBe(true);
  house.at(1);
  expect(await posted()).toEqual([]);
  house.say('/weigh B1 170 165 g');
  expect(await posted()).toEqual([]);
  house.at(2);
  expect(texts(await posted()).join()).toContain('its last weighing did not show it dry');
  house.say('/weigh B1 170 165 g');
  house.at(0.9);
  expect(await posted()).toEqual([]);
  house.at(0.1);
  expect(texts(await posted())).toEqual([
    'A reminder:\nB1, Barley soup: dry at Fri 2 Apr 11:00, not sealed. Dry food takes up moisture from the air within the hour: dry it on for about an hour, weigh it again and seal it. /weigh B1 and 2 weights.',
  ]);
  house.at(48);
  expect(await posted()).toEqual([]);
});

test('a load that nobody weighs is spoken of once more, and then no more', async () => {
  const { house, posted } = loaded();
  house.at('2027-04-02 08:00');
  expect(texts(await posted())).toHaveLength(1);
  house.at(3.9);
  expect(await posted()).toEqual([]);
  house.at(0.2);
  expect(texts(await posted()).join()).toMatch(/^A reminder, once more:\nB1, Barley soup: time to weigh/);
  for (const hours of [4, 12, 24, 48]) {
    house.at(hours);
    expect(await posted()).toEqual([]);
  }
});

test('a tap weighs: it asks for the weights, which whoever pressed says next', async () => {
  const { house, posted } = loaded();
  house.at('2027-04-02 08:00');
  const [out] = await posted();
  const [weigh, later] = out!.buttons;
  expect([weigh!.label, later!.label]).toEqual(['Weigh B1', 'Later']);
  expect(house.say('', 'Ben', { button: weigh!.id })).toContain('Answer this with just that.');
  expect(house.last[0]!.reply.awaits).toEqual({ request: '/weigh B1', person: 'ben' });
  expect(house.say('170 165 g', 'Ben')).toContain('B1, Barley soup: 335 g recorded. Not steady yet.');
});

test('put off it comes again, as often as it is put off, unless it was done', async () => {
  const { house, posted } = loaded();
  house.at('2027-04-02 08:00');
  let out = (await posted())[0]!;
  for (let i = 0; i < 3; i += 1) {
    house.at(0.5);
    const before = house.dump();
    expect(house.say('', 'Ben', { button: out.buttons[1]!.id })).toBe(
      'I say it again in 2 h, if it is still to be done.',
    );
    expect(house.dump()).toBe(before);
    house.at(1.9);
    expect(await posted()).toEqual([]);
    house.at(0.2);
    out = (await posted())[0]!;
    expect(out.reply.group).toMatch(/^A reminder, once more:\nB1, Barley soup: time to weigh/);
  }
  house.say('', 'Ben', { button: out.buttons[1]!.id });
  house.say('/weigh B1 170 165 g');
  house.at(2);
  expect(texts(await posted()).join()).toContain('its last weighing did not show it dry');
});

test('what can wait comes in one message a day, what is due now when it is due', async () => {
  const { house, posted } = loaded();
  house.at('2027-04-02 08:00');
  await posted();
  house.say('/weigh B1 170 165 g');
  house.at(2);
  house.say('/weigh B1 170 165 g');
  house.say('/seal 1 x 100 g B1');
  house.at(3);
  house.say('/weigh B1 234 g');
  house.say('/batch barley soup trays 700 g');
  const said: string[] = [];
  for (let hour = 0; hour < 96; hour += 1) {
    house.at(1);
    said.push(...texts(await posted()).map((text) => `${house.nowText()} ${text}`));
  }
  const days = said.filter((text) => text.includes('check the seals')).map((text) => text.slice(0, 10));
  expect(new Set(days).size).toBe(days.length);
  expect(said.filter((text) => text.includes('time to weigh'))).toHaveLength(2);
});

test('a forecast that falls between two milliseconds is looked at again like any other', async () => {
  const { house, posted } = loaded();
  house.at(25);
  await posted();
  house.say('/weigh B1 240 236 g');
  house.at(3);
  expect(await posted()).toEqual([]);
  house.at(24);
  expect(texts(await posted()).join()).toContain('time to weigh');
  expect(house.faults).toEqual([]);
});

test('a stopped pump is weighed again, not sealed', async () => {
  const { house, posted } = loaded();
  house.at(24);
  await posted();
  house.say('/weigh B1 500 490 g');
  house.at(2);
  house.say('/weigh B1 500 490 g');
  house.at(2);
  expect(texts(await posted()).join()).toMatch(/time to weigh[^\n]*\nIt hardly loses water any more/);
});

test('what was taken back is not reminded of', async () => {
  const { house, posted } = loaded();
  house.say('/undo');
  house.at(30);
  expect(await posted()).toEqual([]);
});

test('nothing comes at night, and missed ones come as one message', async () => {
  const { house, posted } = loaded();
  house.say('/house zone Pacific/Auckland');
  // 24 h after the loading it is 21:00 there: night.
  house.at('2027-04-02 08:00');
  expect(await posted()).toEqual([]);
  house.say('/batch barley soup trays 400 g');
  // Two days later by day in Auckland, UTC+13 until 4 April.
  house.at('2027-04-03 20:00');
  const late = await posted();
  expect(late).toHaveLength(1);
  expect(late[0]!.reply.group.split('\n')).toEqual([
    'While I was away this came due:',
    expect.stringContaining('B1, Barley soup'),
    expect.stringContaining('B2, Barley soup'),
  ]);
});

test('own load times count from the third load on', async () => {
  const house = openOwnHouse('2027-04-01 08:00');
  const posted = reminding(house);
  house.say('/recipe Rice, 6 servings: 300 g long grain rice; 1 l water');
  house.say('/house remind seal off');
  for (const no of [1, 2, 3]) {
    house.say('/batch rice trays 800 g');
    house.at(8);
    house.say(`/weigh B${no} 250 g sure`);
    house.at(2);
    house.say(`/weigh B${no} 250 g sure`);
    house.say(`/seal 2 x 100 g B${no}`);
  }
  await posted();
  house.at('2027-04-05 09:00');
  house.say('/batch rice trays 800 g');
  house.at(7.9);
  expect(await posted()).toEqual([]);
  // Each of the three weighed its last weight after 8 h.
  house.at(0.1);
  expect(texts(await posted()).join()).toContain('In the dryer for 8 h.');
});

test('seals are checked two days after, best-by once a month, and a short trip before it is too late', async () => {
  const house = openOwnSeason();
  const posted = reminding(house);
  const before = texts(await posted()).join('\n');
  house.at('2027-04-07 12:00');
  const seals = texts([...(await posted())]).join('\n');
  expect(`${before}\n${seals}`).toMatch(/B4-1 to B4-6, Lentil pot: check the seals/);
  expect(before).not.toContain('B4-1 to B4-6');
  expect(seals).not.toContain('near best-by');
  const bestBy = house.db.prepare('SELECT min(best_by_on) FROM pouch').pluck().get() as string;
  house.say('/trip Heron Lake over');
  house.at(`${bestBy.slice(0, 7)}-05 12:00`);
  const near = await posted();
  expect(texts(near).join('\n')).toContain(
    'near best-by (within 60 days; a planning date):\nB4-1 to B4-6 Lentil pot, best by',
  );
  expect(near.at(-1)!.reply.sounds).toBeUndefined();
  house.at(24);
  expect(await posted()).toEqual([]);
  house.at(31 * 24);
  expect(texts(await posted()).join('\n')).toContain('near best-by');
});

test('a trip that stock does not feed is named once', async () => {
  const house = openOwnSeason();
  const posted = reminding(house);
  house.say('/house reminders off');
  house.say('/house remind trip on');
  house.at('2027-05-20 12:00');
  expect(await posted()).toEqual([]);
  house.at('2027-06-08 12:00');
  const [named] = await posted();
  expect(named!.reply.group).toMatch(
    /Heron Lake starts Sat 12 Jun, and stock leaves \d meals? of it short\. Start drying by/,
  );
  expect(named!.buttons.map(({ label }) => label)).toEqual(['Cook for Heron Lake']);
  house.at(24);
  expect(await posted()).toEqual([]);
});

test('switched off, nothing comes', async () => {
  const { house, posted } = loaded();
  expect(house.say('/house reminders off')).toContain('reminders off');
  house.at(48);
  expect(await posted()).toEqual([]);
  expect(house.say('/house remind weigh on')).toContain('reminders weigh, none at night');
  expect(texts(await posted()).join()).toContain('time to weigh');
});

test('claimed with the message in one transaction: a failure leaves both for later', async () => {
  const { house, posted } = loaded();
  house.at(24);
  house.db.exec(
    `CREATE TEMP TRIGGER full BEFORE INSERT ON main.outbox BEGIN SELECT RAISE(ABORT, 'database or disk is full'); END`,
  );
  const { look } = openReminding({
    house: () => house.house,
    door: 'terminal',
    now: () => Date.parse('2027-04-02T08:00:00Z'),
    wake: () => undefined,
  });
  await look();
  expect(house.faults.splice(0)).toHaveLength(1);
  expect(house.db.prepare('SELECT count(*) FROM reminded').pluck().get()).toBe(0);
  house.db.exec('DROP TRIGGER full');
  house.at(1);
  expect(texts(await posted()).join()).toContain('time to weigh');
});

test('the clock set back posts nothing twice', async () => {
  const { house, posted } = loaded();
  house.at(25);
  expect(await posted()).toHaveLength(1);
  house.at(-10);
  expect(await posted()).toEqual([]);
  house.at(10);
  expect(await posted()).toEqual([]);
});

test('a seal check has an outcome: all drawn in, or some are loose', async () => {
  const house = openOwnSeason();
  const posted = reminding(house);
  house.say('/found B4-6 tight');
  await posted();
  house.at('2027-04-05 14:00');
  const answers = await posted();
  const check = answers.find(({ reply }) => reply.group.includes('check the seals'))!;
  expect(check.reply.group).toContain('B4-1 to B4-5, Lentil pot: check the seals, 49 h after sealing.');
  expect(check.reply.buttons).toContainEqual({
    label: 'B4-1 to B4-5: all drawn in',
    request: '/found B4-1 to B4-5 tight',
  });
  expect(check.reply.buttons).toContainEqual({
    label: 'B4-1 to B4-5: some are loose',
    request: '/found B4-1 to B4-5 some loose',
  });
});

test('what was looked at before two days have passed is not asked about, and sealed anew it is asked again', async () => {
  const house = openOwnSeason();
  const posted = reminding(house);
  await posted();
  house.say('/found B4-1 to B4-6 tight');
  house.say('/found B4-2 loose');
  house.say('/found B4-2 resealed 95 g');
  const sealed = house.nowText();
  house.at(47);
  expect(texts(await posted()).join()).not.toContain('B4-');
  house.at(1);
  // One message a day of what can wait: another seal was due that day.
  expect(texts(await posted()).join()).not.toContain('B4-');
  house.at('2027-04-06 08:00');
  expect(texts(await posted()).join()).toContain(`B4-2, Lentil pot: check the seals, 66 h after sealing`);
  expect(sealed).toBe('2027-04-03 14:00');
});
