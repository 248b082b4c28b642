// Witness: SQLITE_FULL and SQLITE_READONLY come from SQLite itself, by its own page limit and query_only switch
// (sqlite.org, pragma.html); what people read then is this project's promise, no source.
import { afterEach, expect, test } from 'vitest';
import { type OpenDoor, openDoor, until } from './group.ts';
import { realRequests, testRequests } from './requests.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});

const pageCount = ({ house }: OpenDoor) => Number(house.db.pragma('page_count', { simple: true }));
const soup = (i: number) =>
  `/recipe Soup ${i}, 6 servings: 300 g pearl barley; ${'400 g carrots; '.repeat(20)}1 l water`;

test('a full disk is said in the chat, nothing is half recorded, and all goes on once there is room', async () => {
  const door = await openDoor({ commands: [...realRequests, ...testRequests(() => Promise.resolve())] });
  open = door;
  door.say(door.group, soup(0));
  await door.answer(door.group, 1);
  door.house.db.pragma(`max_page_count = ${pageCount(door)}`);
  let n = 1;
  let full: string | undefined;
  for (; n < 40 && full === undefined; n += 1) {
    const before = door.house.dump();
    const stored = () =>
      door.house.db.prepare('SELECT (SELECT count(*) FROM seen), (SELECT count(*) FROM heard)').raw().get();
    const rows = stored();
    const { messageId } = door.say(door.group, soup(n));
    const { text, replyTo } = await door.answer(door.group, n + 1);
    expect(replyTo).toBe(messageId);
    if (!text.includes('disk is full')) continue;
    full = text;
    expect(text).toContain('Nothing of this message was recorded');
    expect(door.house.dump()).toBe(before);
    expect(stored()).toEqual(rows);
  }
  expect(full).toBeDefined();
  expect(door.logged.join('\n')).not.toContain('barley');
  door.house.db.pragma('max_page_count = 100000');
  door.say(door.group, soup(n));
  expect((await door.answer(door.group, n + 1)).text).toContain(`Recorded: Soup ${n}`);
  await door.quiet();
  expect(door.answers(door.group)).toHaveLength(n + 1);
});

test('records that may not be written are said too, and an answer that arrived is not sent again and again', async () => {
  const door = await openDoor({ commands: [...realRequests, ...testRequests()] });
  open = door;
  const { platform, house } = door;
  // The answer is on its way when the records can no longer be written.
  platform.fault = (method) => {
    if (method !== 'sendMessage') return undefined;
    house.db.pragma('query_only = ON');
    platform.fault = () => undefined;
    return undefined;
  };
  door.say(door.group, '/house altitude 340 m');
  await door.answer(door.group, 1);
  door.say(door.group, '/house altitude 350 m');
  const refused = await door.answer(door.group, 2);
  expect(refused.text).toContain('may not write to my records');
  house.db.pragma('query_only = OFF');
  door.say(door.group, '/house altitude 360 m');
  expect((await door.answer(door.group, 3)).text).toContain('360 m');
  await until(() => house.db.prepare("SELECT 1 FROM outbox WHERE state = 'waiting'").all().length === 0);
  expect(door.answers(door.group)).toHaveLength(3);
  expect(house.db.prepare('SELECT did FROM entry ORDER BY id').pluck().all()).toEqual([
    'set altitude 340 m',
    'set altitude 360 m',
  ]);
});

test('long sums whose answer cannot be stored end with a word in the chat', async () => {
  let ready: (() => void) | undefined;
  const summed = new Promise<void>((resolve) => (ready = resolve));
  const door = await openDoor({ commands: [...realRequests, ...testRequests(() => summed)] });
  open = door;
  door.say(door.group, '/slow');
  await until(() => door.house.db.prepare('SELECT 1 FROM unfinished').get());
  door.house.db.pragma('query_only = ON');
  ready!();
  expect((await door.answer(door.group, 1)).text).toContain('may not write to my records');
  expect(door.house.db.prepare('SELECT 1 FROM unfinished').all()).toHaveLength(1);
});
