// Witness: RFC 5545 as ical.js reads it, another library than wrote it; days by hand. The scenario is invented.
import ICAL from 'ical.js';
import { afterEach, describe, expect, test } from 'vitest';
import { type TestHouse, openTestHouse } from '../house.ts';
import { openSeason } from '../season.ts';

/** What a calendar would show: by id, its words and times. */
function read(house: TestHouse, typed = '/calendar') {
  house.say(typed);
  const file = house.last[0]!.reply.files!.find(({ name }) => name === 'tray-to-trail.ics')!;
  const text = Buffer.from(file.base64, 'base64').toString();
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
  return {
    text,
    events: new Map(
      events.map((event) => [
        event.uid,
        {
          says: event.summary,
          from: event.startDate.toString(),
          to: event.endDate.toString(),
          isDay: event.startDate.isDate,
          sequence: event.sequence,
        },
      ]),
    ),
  };
}

describe('a trip', () => {
  test('stands on its days, with the last day to start drying for it', () => {
    const house = openTestHouse('2027-05-01 08:00');
    house.say('/eater me');
    house.say('/trip Pine Hut 12-14 June for all');
    const { events } = read(house);
    // A day to dry, a day to seal and pack, two until the seals are checked: the 8th. The end of a day is the next one.
    expect([...events]).toEqual([
      [
        'h1-trip-1@tray-to-trail',
        expect.objectContaining({ says: 'Pine Hut', from: '2027-06-12', to: '2027-06-15', isDay: true }),
      ],
      [
        'h1-trip-1-dry@tray-to-trail',
        expect.objectContaining({ says: 'Start drying for Pine Hut', from: '2027-06-08', to: '2027-06-09' }),
      ],
    ]);
  });

  test('moved, it keeps its id and counts one up, so that a second import moves it', () => {
    const house = openTestHouse('2027-05-01 08:00');
    house.say('/eater me');
    house.say('/trip Pine Hut 12-14 June for all');
    const before = read(house).events.get('h1-trip-1@tray-to-trail')!;
    house.at(1);
    house.say('/trip Pine Hut 19-21 June');
    const after = read(house).events.get('h1-trip-1@tray-to-trail')!;
    expect(after.from).toBe('2027-06-19');
    expect(after.sequence).toBe(before.sequence + 60);
  });
});

test('a load is weighed when it should be ready, and pouches are eaten before their date', () => {
  const house = openSeason();
  house.say('/dryer');
  const { events } = read(house);
  const weigh = events.get('h1-weigh-B2@tray-to-trail')!;
  expect(weigh.says).toBe('Weigh B2, Rice and beans');
  expect(weigh.isDay).toBe(false);
  const eat = [...events].filter(([id]) => id.startsWith('h1-eat-B4-'));
  expect(eat.map(([, { says }]) => says)).toEqual(['Eat first: Lentil pot']);
});

test('the export carries it, and an empty household says that nothing is ahead', () => {
  expect(read(openSeason(), '/export').events.size).toBeGreaterThan(0);
  const empty = openTestHouse();
  expect(empty.say('/calendar')).toBe(
    'Nothing is ahead yet: no trip, no load in the dryer, no pouch with a date.',
  );
});

describe('wherever the machine stands', () => {
  const zone = process.env['TZ'];
  afterEach(() => {
    if (zone === undefined) delete process.env['TZ'];
    else process.env['TZ'] = zone;
  });
  test.each(['Pacific/Auckland', 'America/Los_Angeles', 'UTC'])('%s: a day is that day', (place) => {
    process.env['TZ'] = place;
    const house = openTestHouse('2027-05-01 08:00');
    house.say('/eater me');
    house.say('/trip Pine Hut 12-14 June for all');
    expect(read(house).events.get('h1-trip-1@tray-to-trail')).toMatchObject({
      from: '2027-06-12',
      to: '2027-06-15',
    });
  });
});

test('a name cannot break the file: lines are folded, marks escaped', () => {
  const house = openTestHouse('2027-05-01 08:00');
  house.say('/eater me');
  const name = 'Hüttentopf am See; mit 🥕 und einem recht langen Namen';
  house.say(`/recipe ${name.replace(';', '')}, 4 servings: 300 g rice flour; 1.3 l water`);
  house.say('/batch Hüttentopf trays 1600 g');
  const { text, events } = read(house);
  expect([...events.values()].some(({ says }) => says.includes('🥕'))).toBe(true);
  for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
});

test.each(['put the trips into our calendar', 'can I have a calendar file?'])('%s', (typed) => {
  const house = openSeason();
  expect(house.say(typed, 'Ana', { addressed: true })).toContain('for your calendar');
});
