// Witness: disable_notification and message_thread_id as in the Bot API reference (sendMessage); which reminder makes a
// sound is this project's choice, no source.
import { afterEach, expect, test } from 'vitest';
import { openReminding } from '#reminders/clock.ts';
import { type OpenDoor, openDoor, until } from './group.ts';
import { realRequests } from './requests.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});

/** The door with a clock of its own; returns what moves it. */
async function start() {
  let nowMs = Date.parse('2027-04-01T08:00:00Z');
  let look: (() => Promise<void>) | undefined;
  const door = await openDoor(
    { commands: realRequests },
    {
      posting: (wake) => {
        const reminding = openReminding({
          house: () => open!.house.house,
          door: 'telegram',
          now: () => nowMs,
          wake,
        });
        look = reminding.look;
        return reminding;
      },
    },
  );
  open = door;
  const say = (text: string, more: Record<string, unknown> = {}) =>
    door.say(door.group, text, { date: nowMs / 1000, ...more });
  const at = async (iso: string) => {
    nowMs = Date.parse(iso);
    await look!();
  };
  return { door, say, at };
}

test('a load is named with sound in the topic that asked, a seal check without', async () => {
  const { door, say, at } = await start();
  door.platform.chat({ ...door.group, is_forum: true, topics: new Map([[7, 'open']]) });
  const topic = { message_thread_id: 7, is_topic_message: true };
  say('/recipe Rice, 6 servings: 300 g long grain rice; 1 l water', topic);
  say('/batch rice trays 800 g', topic);
  await door.answer(door.group, 2);
  await at('2027-04-02T08:00:00Z');
  const named = await door.answer(door.group, 3);
  expect(named.text).toContain('time to weigh');
  expect(named).toMatchObject({ topic: 7, silent: false, replyTo: null });
  const arrived = (text: string) =>
    until(() => door.answers(door.group).find((message) => message.text.includes(text)));
  const steps = [
    ['12:00', '/weigh B1 250 g sure', 'weighed once only'],
    ['15:00', '/weigh B1 250 g sure', 'Steady'],
    ['15:30', '/seal 2 x 100 g B1', 'Sealed B1-1'],
  ] as const;
  for (const [clock, text, answered] of steps) {
    await at(`2027-04-02T${clock}:00Z`);
    say(text, topic);
    await arrived(answered);
  }
  await at('2027-04-04T18:30:00Z');
  expect(await arrived('check the seals')).toMatchObject({ topic: 7, silent: true });
  const count = door.answers(door.group).length;
  await at('2027-04-04T19:30:00Z');
  await door.quiet();
  expect(door.answers(door.group)).toHaveLength(count);
  expect(door.logged).toEqual([]);
});

test('put out of the group, nothing is posted until the bot is back; then all comes as one', async () => {
  const { door, say, at } = await start();
  say('/recipe Rice, 6 servings: 300 g long grain rice; 1 l water');
  say('/batch rice trays 800 g');
  await door.answer(door.group, 2);
  door.member(door.group, 'member', 'kicked');
  await door.quiet();
  await at('2027-04-02T09:00:00Z');
  await at('2027-04-03T09:00:00Z');
  expect(door.house.db.prepare('SELECT count(*) FROM reminded').pluck().get()).toBe(0);
  door.member(door.group, 'kicked', 'member');
  await door.answer(door.group, 3);
  await at('2027-04-03T10:00:00Z');
  const late = await door.answer(door.group, 4);
  expect(late.text).toContain('While I was away');
  await until(() => door.house.db.prepare("SELECT 1 FROM outbox WHERE state = 'waiting'").all().length === 0);
});
