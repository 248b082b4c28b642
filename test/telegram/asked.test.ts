// Witness: ForceReply and CopyTextButton as in the Bot API reference.
import { afterEach, expect, test } from 'vitest';
import { type OpenDoor, openDoor } from './group.ts';
import { botUser } from './platform.ts';
import { openOwnSeason } from '../season.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});
const start = async () =>
  (open = await openDoor({}, { fixedNowMs: Date.parse('2027-04-03T16:00Z') }, openOwnSeason()));

test('a request from the menu offers the loads, asks for the weights and takes the answer', async () => {
  const door = await start();
  const { messageId } = door.say(door.group, '/weigh@TrailTestBot');
  const asked = await door.answer(door.group, 1);
  expect(asked.text).toMatch(/^Which load is it\?/);
  const key = asked.keys.flat().find(({ text }) => text === 'B2 Rice and beans')!;
  door.press(door.group, asked.messageId, key.callback_data);
  const wants = await door.answer(door.group, 2);
  // It opens for whoever asked, and for nobody else.
  expect(wants).toMatchObject({ asksOne: true, replyTo: messageId });
  expect(wants.text).toContain('Answer this with just that.');
  await door.quiet();
  expect(asked.keys).toEqual([]);
  door.say(door.group, '400 g', {
    reply_to_message: { message_id: wants.messageId, date: 1, from: botUser },
  });
  expect((await door.answer(door.group, 3)).text).toContain('B2, Rice and beans: tray 1 400 g recorded.');
});

test('a line that works is copied whole by a key; on a server that knows no such keys by a tap on it', async () => {
  const door = await start();
  door.say(door.group, '/water B9-9');
  const first = await door.answer(door.group, 1);
  const line = /For example: (.*)/.exec(first.text)![1]!.replaceAll('\u2060', '');
  expect(first.keys.flat()[0]).toEqual({ text: `Copy: ${line}`, copy_text: { text: line } });
  door.platform.knowsCopying = false;
  for (const n of [2, 3]) {
    door.say(door.group, '/water B9-9');
    const next = await door.answer(door.group, n);
    expect(next.keys).toEqual([]);
    expect(next.text).toBe(first.text);
    expect(next.entities).toEqual(first.entities);
    expect(next.entities.some(({ type }) => type === 'code')).toBe(true);
  }
  const refused = door.platform.calls.filter(({ payload }) =>
    JSON.stringify(payload.fields['reply_markup'] ?? '').includes('copy_text'),
  );
  // Asked once with it, once refused; after that not again.
  expect(refused).toHaveLength(2);
  expect(door.logged).toEqual([]);
});
