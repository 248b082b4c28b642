import { afterEach, expect, test } from 'vitest';
import { type OpenDoor, openDoor } from './group.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});

test('a request in a group is answered there, as a reply, without previews and once', async () => {
  const door = (open = await openDoor());
  const { messageId } = door.say(door.group, '/house altitude 340 m');
  const sent = await door.answer(door.group, 1);
  expect(sent).toMatchObject({ replyTo: messageId, topic: null, silent: false, method: 'sendMessage' });
  expect(sent.text).toContain('340 m');
  await door.quiet();
  expect(door.answers(door.group)).toHaveLength(1);
  expect(door.logged).toEqual([]);
});
