// Witness: who a message is from and whom it means as in the Bot API reference (Message, MessageEntity); the order in
// which text is shown by Unicode's bidirectional algorithm (UAX 9) as bidi-js carries it out.
import bidiFactory from 'bidi-js';
import { afterEach, describe, expect, test } from 'vitest';
import { draw } from '#doors/telegram-draw.ts';
import { drawReply } from '#doors/terminal.ts';
import { openOwnHouse } from '../house.ts';
import { type OpenDoor, ana, ben, openDoor } from './group.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});

describe('who is meant', () => {
  test('a public name, a mention and "for them" in an answer mean that person', async () => {
    const door = (open = await openDoor());
    door.say(door.group, '/eater me', { from: { ...ben, username: 'BenOfTheHut' } });
    await door.answer(door.group, 1);
    door.say(door.group, '/eater @benofthehut no celery');
    expect((await door.answer(door.group, 2)).text).toMatch(/^Ben \(adult\): never celery/);
    door.say(door.group, '/eater Kim dislikes peas', {
      entities: [{ type: 'text_mention', offset: 7, length: 3, user: { ...ben, id: 77, first_name: 'Zoe' } }],
    });
    expect((await door.answer(door.group, 3)).text).toMatch(/^Zoe \(/);
    door.say(door.group, '/recipe Soup, 2 servings: 200 g carrots; 1 l water');
    door.say(door.group, '/trip Hut 12-14 June for all');
    await door.answer(door.group, 5);
    door.say(door.group, '/want soup for them', {
      from: ana,
      reply_to_message: { message_id: 11, date: 1, chat: door.group, from: ben },
    });
    expect((await door.answer(door.group, 6)).text).toContain('Wish: Soup for Ben');
  });

  test.each(['🥕', '42', 'x'.repeat(64), 'Ana 2', 'שרה', '/undo', '@ben', 'evil.com'])(
    '%s is a name like any other',
    async (first_name) => {
      const door = (open = await openDoor());
      door.say(door.group, '/eater me vegetarian', { from: { ...ana, first_name } });
      await door.answer(door.group, 1);
      expect(door.house.db.prepare('SELECT name FROM eater').pluck().all()).toEqual([first_name]);
      expect(door.platform.refusals).toEqual([]);
    },
  );

  test('two households of one title are told apart by who else is there', async () => {
    const door = (open = await openDoor());
    door.say(door.group, '/stock', { from: ben });
    door.say(door.group, '/stock');
    await door.answer(door.group, 2);
    const twin = door.platform.chat({ id: -1001234567999, type: 'supergroup', title: 'Kitchen' });
    door.say(twin, '/admit plum-42');
    await door.answer(twin, 1);
    const own = door.platform.chat({ id: ana.id, type: 'private', first_name: 'Ana' });
    door.say(own, '/start');
    const asked = await door.answer(own, 1);
    expect(asked.keys.flat().map(({ text }) => text)).toEqual([
      'Kitchen with Ben',
      'Kitchen with nobody else',
    ]);
  });
});

const bidi = bidiFactory();

/** What stands outside the isolated names must be read in the order in which it was written. */
function keepsOrder(line: string): boolean {
  const levels = bidi.getEmbeddingLevels(line, 'auto');
  const order = bidi.getReorderedIndices(line, levels);
  const inside = new Set<number>();
  for (const { 0: name, index } of line.matchAll(/\u2068[^\u2069]*\u2069/gu))
    for (let i = index; i < index + name.length; i += 1) inside.add(i);
  const outside = order.filter((i) => !inside.has(i));
  return outside.every((at, i) => i === 0 || outside[i - 1]! < at);
}

test('the order of what is not isolated is seen to be wrong where it is', () => {
  expect(keepsOrder('B4-1 \u2068מרק 3\u2069 6 pouches')).toBe(true);
  expect(keepsOrder('מרק עדשים: 6 pouches of 60 g, B4-1')).toBe(false);
});

test.each([
  ['מרק עדשים', 'נועה', 'אגם'],
  ['شوربة عدس 2', 'شهرزاد', 'بحيرة'],
  ['מרק BBQ (חריף)', "ג'ון", 'הר 12'],
])('%s beside figures moves nothing, in any answer', async (meal, eater, place) => {
  const house = openOwnHouse('2027-04-01 08:00');
  const seen: string[] = [];
  const look = () => {
    for (const out of house.last) {
      for (const part of draw(out)) if (part.is === 'text') seen.push(...part.text.split('\n'));
      seen.push(...drawReply(out, [], true));
    }
  };
  const say = (text: string) => {
    house.say(text, eater);
    look();
  };
  const ask = async (text: string) => {
    await house.ask(text, eater);
    look();
  };
  say('/house absorbers 100 300 500 ml');
  say(`/recipe ${meal}, 6 servings: 300 g red lentils; 1 l water; 40 g butter`);
  say(`/batch "${meal}" trays 600 600 g`);
  house.at(22);
  say('/weigh B1 145 145');
  house.at(3);
  say('/weigh B1 145 145');
  say('/seal 4 x 60 g B1');
  say('/eater me no milk');
  say('/eater "אבא 2" adult');
  say('/stock');
  say('/pouch B1-1');
  say('/pouch B1');
  say('/water B1-1');
  say(`/trip "${place}" 12-14 June dinner for all 1900 m`);
  say(`/want "${meal}" for me`);
  await ask('/pick');
  await ask('/pick keep');
  say('/pack');
  say('/trip');
  await ask('/cook');
  say('/use B1-1');
  say('/rate B1-1 20 ml more');
  say('/undo');
  say('/log');
  say('/recipe');
  say('/eater');
  expect(house.faults).toEqual([]);
  const withNames = seen.filter((line) => /\p{Script=Hebrew}|\p{Script=Arabic}/u.test(line));
  expect(withNames.length).toBeGreaterThan(40);
  expect(withNames.filter((line) => !keepsOrder(line))).toEqual([]);
});
