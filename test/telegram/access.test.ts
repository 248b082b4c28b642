// Witness: what nobody may see or do is this project's promise, no source.
import { afterEach, expect, test } from 'vitest';
import { type OpenDoor, ben, openDoor, until } from './group.ts';
import { realRequests } from './requests.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});

/** Two groups of two households; Ben belongs to both. */
async function start() {
  const door = await openDoor({ commands: realRequests });
  open = door;
  const cabin = door.platform.chat({ id: -1003333333333, type: 'supergroup', title: 'Cabin' });
  const own = door.platform.chat({ id: ben.id, type: 'private', first_name: 'Ben' });
  door.say(cabin, '/admit plum-42', { from: ben });
  await door.answer(cabin, 1);
  door.say(door.group, '/house altitude 340 m', { from: ben });
  await door.answer(door.group, 1);
  door.say(cabin, '/house altitude 1200 m', { from: ben });
  await door.answer(cabin, 2);
  const write = async (text: string) => {
    const before = door.answers(own).length;
    door.say(own, text, { from: ben });
    return door.answer(own, before + 1);
  };
  const press = async (label: string) => {
    const before = door.answers(own).length;
    const carrier = door.answers(own).findLast(({ keys }) => keys.flat().some(({ text }) => text === label))!;
    const { callback_data } = carrier.keys.flat().find(({ text }) => text === label)!;
    door.press(own, carrier.messageId, callback_data, ben);
    return door.answer(own, before + 1);
  };
  return { door, own, write, press };
}

test('a member of several households chooses which one a private chat speaks for, and may change it', async () => {
  const { write, press } = await start();
  const asked = await write('/start');
  expect(asked.text).toContain('Which one');
  expect(asked.keys.flat().map(({ text }) => text)).toEqual(['Kitchen', 'Cabin']);
  expect((await press('Cabin')).text).toContain('speaks for Cabin now');
  expect((await write('/house')).text).toContain('altitude 1200 m');
  await write('/start');
  expect((await press('Kitchen')).text).toContain('speaks for Kitchen now');
  expect((await write('/house')).text).toContain('altitude 340 m');
});

test('undo and buttons of one household do nothing in the other', async () => {
  const { door, own, write, press } = await start();
  await write('/start');
  await press('Cabin');
  await write('/house altitude 1300 m');
  const doubt = await write('/house dryer limit 1,500 g');
  const [kept] = doubt.keys.flat();
  await write('/start');
  await press('Kitchen');
  expect((await write('/undo')).text).toContain('nothing left to take back');
  expect(kept).toBeDefined();
  door.press(own, doubt.messageId, kept!.callback_data, ben);
  await until(() =>
    door.platform.calls.some(
      ({ method, payload }) =>
        method === 'answerCallbackQuery' && String(payload.fields['text']).includes('too old'),
    ),
  );
  expect((await write('/house')).text).toContain('altitude 340 m');
});

test('nobody chooses a household that is not theirs', async () => {
  const { door } = await start();
  const zoe = { id: 5_000_000_009, is_bot: false, first_name: 'Zoe' };
  const own = door.platform.chat({ id: zoe.id, type: 'private', first_name: 'Zoe' });
  for (const [i, text] of ['/start', '/start household 1', 'start household 2', '/house'].entries()) {
    door.say(own, text, { from: zoe });
    if (text === '/house') continue;
    expect((await door.answer(own, i + 1)).text).toContain('members of an admitted household only');
  }
  await door.quiet();
  expect(door.answers(own)).toHaveLength(3);
});

test("a scanned label shows the card of its own household, and to that household's members only", async () => {
  const { door, own, write } = await start();
  const seal =
    '/recipe lentils, 2 servings, pot 500 g: 200 g red lentils\n/batch lentils trays 500 g\n/weigh B1 190 g\n/seal 1 x 90 g B1 unchecked';
  for (const line of seal.split('\n')) {
    const before = door.answers(door.group).length;
    door.say(door.group, line, { from: ben });
    await door.answer(door.group, before + 1);
  }
  const household = door.house.db
    .prepare('SELECT household FROM chat WHERE chat_key = ?')
    .pluck()
    .get(String(door.group.id));
  const card = await write(`/start h${String(household)}_B1-1`);
  expect(card.text).toContain('B1-1');
  expect(card.text).toContain('lentils');
  // The cabin has no such pouch, and nobody learns whether household 999 exists.
  expect((await write('/start h2_B1-1')).text).not.toContain('lentils');
  expect((await write('/start h999_B1-1')).text).toContain('another household');
  const strange = door.platform.chat({ id: 7001, type: 'private', first_name: 'Zed' });
  door.say(strange, `/start h${String(household)}_B1-1`, { from: { ...ben, id: 7001, first_name: 'Zed' } });
  const refused = await door.answer(strange, 1);
  expect(refused.text).toContain('members of an admitted household only');
  expect(refused.text).not.toContain('lentils');
  expect(own.id).toBe(ben.id);
});
