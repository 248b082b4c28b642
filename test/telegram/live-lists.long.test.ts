// Witness: what can be edited and pinned, and the refusals, as in the Bot API reference (editMessageText,
// pinChatMessage, setMessageReaction); what a list must show (what the records hold) is this project's promise, no source.
import { afterEach, describe, expect, test } from 'vitest';
import { type OpenDoor, ana, ben, openDoor, until } from './group.ts';
import { packedNow } from './packing.ts';
import type { Sent } from './rules.ts';
import { openOwnSeason } from '../season.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});

/** The season's household in a group, with pouches kept for its trip. */
async function start(): Promise<OpenDoor> {
  const season = openOwnSeason();
  await season.ask('/pick keep');
  open = await openDoor({}, {}, season);
  return open;
}

const button = (door: OpenDoor, label: RegExp | string, n = 0) => {
  const sent = door.answers(door.group)[n]!;
  const key = sent.keys
    .flat()
    .find(({ text }) => (typeof label === 'string' ? text === label : label.test(text)));
  if (!key)
    throw new Error(
      `no button ${label} among ${sent.keys
        .flat()
        .map(({ text }) => text)
        .join(', ')}`,
    );
  return key.callback_data;
};
const shows = ({ keys }: Sent, label: string) => keys.flat().some(({ text }) => text === label);
const told = (door: OpenDoor, press: string) =>
  until(() =>
    door.platform.calls.find(
      ({ method, payload }) =>
        method === 'answerCallbackQuery' && payload.fields['callback_query_id'] === press,
    ),
  ).then(({ payload }) => payload.fields['text']);

describe('the pack list', () => {
  test('changes in place, and each of two who press hears what came of it', async () => {
    const door = await start();
    door.say(door.group, '/pack');
    const list = await door.answer(door.group, 1);
    const total = packedNow(door.house.db).size;
    expect(list.text).toContain(`0 of ${total} pouches packed`);
    const data = button(door, '☐ B4-1');
    const first = door.press(door.group, list.messageId, data, ana);
    const second = door.press(door.group, list.messageId, data, ben);
    expect(await told(door, first)).toBe(`Packed B4-1: 1 of ${total} packed.`);
    expect(await told(door, second)).toBe(`B4-1 is packed already: 1 of ${total} packed.`);
    await until(() => list.text.includes(`1 of ${total}`));
    expect(list.keys.flat().map(({ text }) => text)).toContain('✓ B4-1');
    expect(door.answers(door.group)).toHaveLength(1);
    expect(packedNow(door.house.db).get('B4-1')).toBe(true);
    // A screen from before still has the old button; it packs and never takes out.
    const third = door.press(door.group, list.messageId, data, ben);
    expect(await told(door, third)).toContain('packed already');
    const out = door.press(door.group, list.messageId, button(door, '✓ B4-1'), ben);
    expect(await told(door, out)).toBe(`Taken out B4-1: 0 of ${total} packed.`);
    expect(door.logged).toEqual([]);
  });

  test('follows what is typed, with a sign at the message instead of an answer', async () => {
    const door = await start();
    door.say(door.group, '/pack');
    const list = await door.answer(door.group, 1);
    const { messageId } = door.say(door.group, '/pack B4-1');
    await until(() => shows(list, '✓ B4-1'));
    await until(() => door.platform.reactions.get(`${door.group.id} ${messageId}`) === '👌');
    expect(door.answers(door.group)).toHaveLength(1);
    // What is taken back shows as well.
    door.say(door.group, '/undo');
    await until(() => shows(list, '☐ B4-1'));
  });

  test('on a server that knows no signs the answer is a line without sound, with the way back', async () => {
    const door = await start();
    door.platform.unknown = new Set(['setMessageReaction']);
    door.say(door.group, '/pack');
    await door.answer(door.group, 1);
    door.say(door.group, '/pack B4-1');
    expect(await door.answer(door.group, 2)).toMatchObject({ silent: true });
    expect(door.answers(door.group)[1]!.text).toMatch(/^Packed B4-1: 1 of/);
    expect(button(door, 'Undo', 1)).toBeDefined();
  });

  test('that was deleted goes on in a new message', async () => {
    const door = await start();
    door.say(door.group, '/pack');
    const list = await door.answer(door.group, 1);
    door.platform.remove(door.group.id, list.messageId);
    door.say(door.group, '/pack B4-1');
    const anew = await door.answer(door.group, 2);
    expect(shows(anew, '✓ B4-1')).toBe(true);
    door.press(door.group, anew.messageId, button(door, '☐ B4-2', 1));
    await until(() => shows(anew, '✓ B4-2'));
  });

  test('asked for again, the older one says where it goes on', async () => {
    const door = await start();
    door.say(door.group, '/pack');
    const first = await door.answer(door.group, 1);
    door.say(door.group, '/pack');
    await door.answer(door.group, 2);
    await until(() => first.text.includes('further down'));
    expect(first.keys).toEqual([]);
  });

  test('a slow-down of one chat loses no change', async () => {
    const door = await start();
    door.say(door.group, '/pack');
    const list = await door.answer(door.group, 1);
    const slow = [1, 1];
    door.platform.fault = (method) =>
      method === 'editMessageText' && slow.pop()
        ? { answer: { status: 429, description: 'Too Many Requests', parameters: { retry_after: 1 } } }
        : undefined;
    door.press(door.group, list.messageId, button(door, 'All'));
    await until(() => list.text.includes('All packed'));
  });
});

describe('a trip at the top of the chat', () => {
  test('stays true: who comes, wishes, who is short, what is packed', async () => {
    const door = await start();
    door.say(door.group, '/trip Heron Lake pin');
    const board = await door.answer(door.group, 1);
    await until(() => door.platform.pinned.get(door.group.id)?.has(board.messageId));
    expect(board.text).toContain('No wishes yet.');
    door.say(door.group, '/want soup for Rosa');
    await until(() => board.text.includes('Wished for: Barley soup (Rosa).'));
    door.say(door.group, '/pack B4-1');
    await until(() => /1 of \d+ pouches packed/.test(board.text));
    door.say(door.group, '/trip Heron Lake without Ben');
    await until(() => !/For [^.]*Ben/.test(board.text));
    door.say(door.group, '/trip Heron Lake unpin');
    await until(() => door.platform.pinned.get(door.group.id)?.size === 0);
    expect(door.logged).toEqual([]);
  });

  test('where the bot may not pin, the group is told once and the message stays true', async () => {
    const door = await start();
    door.platform.mayPin = false;
    door.say(door.group, '/trip Heron Lake pin');
    const board = await door.answer(door.group, 1);
    expect((await door.answer(door.group, 2)).text).toContain('I may not pin here.');
    door.say(door.group, '/want soup for Rosa');
    await until(() => board.text.includes('Wished for: Barley soup (Rosa).'));
    await door.quiet();
    expect(door.answers(door.group).filter(({ text }) => text.includes('may not pin'))).toHaveLength(1);
  });
});

test("a load's message follows its weighings", async () => {
  open = await openDoor();
  const door = open;
  const nowS = Math.floor(Date.now() / 1000);
  const say = (text: string, hours: number) =>
    door.say(door.group, text, { date: nowS - 3600 * (30 - hours) });
  say('/recipe Barley soup, 6 servings: 300 g pearl barley; 1 l water; 6 g salt', 0);
  say('/batch barley soup trays 600 600 g', 0);
  const load = await door.answer(door.group, 2);
  expect(load.text).toMatch(/^B1: Barley soup, 1200 g on 2 trays\./);
  say('/weigh B1 160 160 g', 20);
  await until(() => /^B1, Barley soup: drying\.\nWeighed .* 320 g now, not steady\./.test(load.text));
  say('/weigh B1 142 142 g', 25);
  say('/weigh B1 142 142 g', 28);
  await until(() => load.text.startsWith('B1, Barley soup: to be sealed.'));
  say('/seal 2 x 100 g B1', 28.5);
  await until(() => load.text.startsWith('B1, Barley soup: sealed as B1-1 and B1-2.'));
});

test('what is taken back by hand is no longer shown as recorded, and put back it is', async () => {
  open = await openDoor();
  const door = open;
  const date = Math.floor(Date.now() / 1000);
  door.say(door.group, '/house altitude 340 m', { date });
  const noted = await door.answer(door.group, 1);
  door.say(door.group, '/undo', { date });
  const undone = await door.answer(door.group, 2);
  await until(() => noted.text.startsWith('Taken back: set altitude 340 m.'));
  expect(noted.keys).toEqual([]);
  door.press(door.group, undone.messageId, undone.keys.flat()[0]!.callback_data);
  await until(() => noted.text.startsWith('Noted: altitude 340 m.'));
  expect(noted.keys.flat().map(({ text }) => text)).toEqual(['Undo']);
});

describe('after an outage', () => {
  test('what was asked long ago is answered in one message that says so', async () => {
    open = await openDoor();
    const door = open;
    const date = Math.floor(Date.now() / 1000) - 3600;
    for (const text of ['/house altitude 340 m', '/stock', '/nonsense@TrailTestBot', '/house units ounces'])
      door.say(door.group, text, { date });
    const sent = await door.answer(door.group, 1);
    expect(sent.text.replaceAll('\u2060', '')).toMatch(
      /^Late, for I was away:\n"\/house altitude 340 m"\nNoted: altitude 340 m\./,
    );
    expect(sent.text).toContain('stock"\nNothing is free in stock');
    expect(sent.text).toContain('I know no request');
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(1);
    // Its Undo takes one thing back and leaves the other answers where they are.
    const press = sent.keys.flat().find(({ text }) => text === 'Undo')!;
    door.press(door.group, sent.messageId, press.callback_data);
    await until(() => door.answers(door.group)[1]);
    expect(sent.text).toContain('Nothing is free in stock');
  });
});
