import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tries } from '../ring.ts';
import { openSeason, refuses } from '../season.ts';

test('every record of a season can be taken back, one by one, to an empty house', () => {
  const house = openSeason();
  let answer = '';
  for (let i = 0; i < 200 && !answer.includes('nothing left'); i++) {
    const who = i % 2 ? 'Ana' : 'Ben';
    answer = house.say('/undo', who);
    // What must never be served to somebody is given up by a tap alone.
    if (answer.includes('Nothing is changed yet')) answer = house.press(1, who);
  }
  expect(answer).toContain('nothing left to take back');
  for (const table of ['recipe', 'batch', 'tray', 'weighing', 'pouch', 'eater', 'trip', 'slot', 'setting']) {
    expect(house.db.prepare(`SELECT count(*) FROM ${table}`).pluck().get(), table).toBe(0);
  }
  expect(house.faults).toEqual([]);
});

test('a code that was taken back is given again', () => {
  const house = openSeason();
  house.say('/batch rice and beans trays 500 g');
  house.say('/undo');
  expect(house.say('/batch rice and beans trays 510 g')).toContain('B5:');
});

refuses([
  ['/undo the pudding', /could not place "pudding"/],
  ['/undo the rating of B4', /Nothing about "rated" is on record of B4/],
  ['/undo redo', /Nothing was taken back in this chat/],
]);

test.each([
  ['undo the sealing of B4', 'sealed B4-1 to B4-6'],
  ['undo the last two', 'these 2'],
  ['/undo the sealing', 'sealed B4-1 to B4-6'],
  ['B2 was loaded twice', 'loaded B2'],
  ['/fix B3 never happened', 'these 3'],
])('%s names what would go and waits for a tap', (typed, names) => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say(typed)).toContain(names);
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('Taken back: ');
  expect(house.faults).toEqual([]);
});

test('one thing out of the middle goes, what came after it stays', () => {
  const house = openSeason();
  house.say('/use B4-1');
  house.say('/use B4-2');
  house.say('/undo B4-1');
  house.press(1);
  expect(house.say('/pouch B4-1')).not.toContain('Used');
  expect(house.say('/pouch B4-2')).toContain('Used');
});

test('a pouch of several that was not eaten after all comes back alone', () => {
  const house = openSeason();
  house.say('/use B4-1 B4-2 B4-3');
  house.say('/house altitude 400 m');
  expect(house.say('we did not eat B4-2')).toContain('back in stock');
  expect(house.press(1)).toContain('B4-2 is in stock again');
  expect(house.say('/stock lentil')).toContain('B4-2 and B4-4 to B4-6');
});

test("what somebody else recorded is named and asked about; one's own is not", () => {
  const house = openSeason();
  house.say('/use B4-1', 'Ben');
  expect(house.say('/undo', 'Ana')).toContain('Ben: used B4-1');
  expect(house.say('/undo', 'Ben')).toBe('Taken back: used B4-1 (Lentil pot).');
});

/** Whether the answer asks before it takes something back. */
const asks = (house: ReturnType<typeof openSeason>): boolean =>
  house.last[0]!.reply.buttons?.some(({ label }) => label !== 'Put back') === true;

test('law: put back, all is as before it was taken back', () => {
  const house = openSeason();
  for (const typed of [
    '/use B4-1 B4-2',
    '/eater Noa no fish',
    '/trip Heron Lake without Ben',
    '/weigh B2 500 g',
  ]) {
    house.say(typed);
    const before = house.dump();
    house.say('/undo');
    if (asks(house)) house.press(1);
    expect(house.dump(), typed).not.toBe(before);
    expect(house.say('put it back'), typed).toContain('Put back: ');
    expect(house.dump(), typed).toBe(before);
  }
});

test('what has changed since is not put back over it', () => {
  const house = openSeason();
  house.say('/house altitude 400 m');
  house.say('/undo');
  house.say('/house altitude 500 m');
  house.say('/undo');
  house.say('/house altitude 600 m');
  const before = house.dump();
  expect(house.say('/undo redo')).toContain('cannot be put back as it was');
  expect(house.dump()).toBe(before);
});

test('law: whatever is taken back first, nothing is left half, and in the end nothing is left', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(40), { minLength: 3, maxLength: 8 }), (picks) => {
      const house = openSeason();
      const entries = () =>
        house.db
          .prepare('SELECT id FROM entry WHERE undone_at_ms IS NULL ORDER BY id')
          .pluck()
          .all() as number[];
      for (const pick of [...picks, ...Array.from({ length: 40 }, () => 0)]) {
        const all = entries();
        if (all.length === 0) break;
        house.say(`/undo entry ${all[pick % all.length]}`);
        for (let taps = 0; taps < 2 && asks(house); taps++) house.press(1);
        expect(house.db.pragma('foreign_key_check')).toEqual([]);
      }
      expect(house.faults).toEqual([]);
      expect(entries()).toEqual([]);
      for (const table of ['recipe', 'batch', 'tray', 'weighing', 'pouch', 'eater', 'trip', 'setting'])
        expect(house.db.prepare(`SELECT count(*) FROM ${table}`).pluck().get(), table).toBe(0);
    }),
    { numRuns: tries(10), seed: 21 },
  );
}, 60_000);

test('what was taken back can be sent again at once; what stands is not doubled', () => {
  const house = openSeason();
  house.say('/batch rice and beans trays 500 g');
  house.say('/undo');
  expect(house.say('/batch rice and beans trays 500 g')).toContain('B5:');
  expect(house.say('/batch rice and beans trays 500 g')).toContain('Nothing was recorded twice');
  expect(house.press(1)).toContain('B6:');
});

test('undoing what is kept from somebody takes a tap of a grown-up', () => {
  const house = openSeason();
  house.say('/eater me child 9', 'Kit');
  house.say('/eater Noa no fish');
  const before = house.dump();
  expect(house.say('/undo', 'Kit')).toContain('Only a grown-up of the household');
  expect(house.say('/undo sure')).toContain('fish must never be served to Noa. Nothing is changed yet');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toBe('Taken back: changed the eater Noa: no fish.');
  expect(house.say('/eater Noa')).not.toContain('fish');
});

describe('the button under what was recorded', () => {
  test('takes back that record alone, whatever came after, and can be put back', () => {
    const house = openSeason();
    house.say('/use B4-1');
    const [first] = house.last;
    const undo = first!.buttons.find(({ label }) => label === 'Undo')!;
    house.say('/use B4-2');
    expect(house.say('', 'Ana', { button: undo.id })).toContain('Taken back: used B4-1');
    expect(house.say('/pouch B4-1')).toContain('In stock.');
    expect(house.say('/pouch B4-2')).toContain('Used');
    expect(house.say('', 'Ana', { button: undo.id })).toContain('Already done.');
    house.at(0.1);
    house.say('/use B4-3');
    const own = { button: house.last[0]!.buttons[0]!.id };
    expect(house.say('', 'Tomas', own)).toContain('for the person who asked');
    house.say('', 'Ana', own);
    expect(house.last[0]!.buttons.map(({ label }) => label)).toEqual(['Put back']);
    expect(house.press(1)).toContain('Put back: used B4-3');
    expect(house.say('/pouch B4-3')).toContain('Used');
  });

  test('asks once a day has passed', () => {
    const house = openSeason();
    house.say('/use B4-1');
    house.at(24);
    expect(house.press(1)).toContain('Take back this? Nothing is changed yet.');
    expect(house.press(1)).toContain('Taken back: used B4-1');
  });

  test('is not there where nothing was recorded', () => {
    const house = openSeason();
    for (const typed of ['/stock', '/water B4-1', '/use B4-1?', '/use B99-1']) {
      house.say(typed);
      expect(house.last.flatMap(({ buttons }) => buttons).map(({ label }) => label)).not.toContain('Undo');
    }
  });
});
