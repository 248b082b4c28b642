// Witness: limits, codes and error texts as in the Bot API reference (ResponseParameters, sendMessage, sendPhoto,
// sendDocument) and the official server's source; retry and order of answers are common practice, no source.
import { afterAll, describe, expect, test } from 'vitest';
import { type OpenDoor, ana, openDoor, until } from './group.ts';
import type { Fault } from './platform.ts';
import { realRequests, testRequests } from './requests.ts';

const opened: OpenDoor[] = [];
afterAll(() => Promise.all(opened.map((door) => door.end())));

async function start() {
  const door = await openDoor({ commands: [...realRequests, ...testRequests()] });
  opened.push(door);
  const other = door.platform.chat({ id: -1002222222222, type: 'supergroup', title: 'Cabin' });
  const household = door.house.house.stores.households.of('telegram', String(door.group.id))!;
  const joins = {
    door: 'telegram',
    chatKey: String(other.id),
    chatTitle: 'Cabin',
    isPrivate: false,
    sentAtMs: 0,
  };
  door.house.house.stores.households.join(joins as never, household);
  return { ...door, other };
}

const sends = ({ platform }: OpenDoor, chatId: number) =>
  platform.calls.filter(
    ({ method, payload }) => method.startsWith('send') && payload.fields['chat_id'] === chatId,
  );

/** Something that goes wrong with the first calls of a method in one chat. */
function failing(door: OpenDoor, chatId: number, faults: Fault[], method = 'sendMessage'): void {
  door.platform.fault = (called, { fields }) =>
    called === method && fields['chat_id'] === chatId ? faults.shift() : undefined;
}

const outbox = ({ house }: OpenDoor) =>
  house.db.prepare('SELECT chat_key AS chat, state, why_dropped AS why FROM outbox ORDER BY id').all() as {
    chat: string;
    state: string;
    why: string | null;
  }[];

const slowDown = (seconds: number): Fault => ({
  answer: {
    status: 429,
    description: `Too Many Requests: retry after ${seconds}`,
    parameters: { retry_after: seconds },
  },
});

describe.concurrent('a chat that is slowed down', () => {
  test('waits as long as it is told, in order, while another is answered at once', async () => {
    const door = await start();
    failing(door, door.group.id, [slowDown(1)]);
    door.say(door.group, '/echo first');
    door.say(door.group, '/echo second');
    await until(() => sends(door, door.group.id).length === 1);
    const askedMs = Date.now();
    door.say(door.other, '/echo elsewhere');
    const elsewhere = await door.answer(door.other, 1);
    expect(elsewhere.atMs - askedMs).toBeLessThan(500);
    expect(door.answers(door.group)).toEqual([]);
    await door.answer(door.group, 2);
    const [first, second] = door.answers(door.group);
    expect([first!.text, second!.text].map((text) => text.split('\n')[0])).toEqual([
      'Ana: first',
      'Ana: second',
    ]);
    const [refusedAt, againAt] = sends(door, door.group.id).map(({ atMs }) => atMs);
    expect(againAt! - refusedAt!).toBeGreaterThanOrEqual(990);
  });

  test('by the limit of 20 a minute gets its 21st answer later, and no other waits', async () => {
    const door = await start();
    door.platform.limit = { perMinute: 20, retryAfterS: 60 };
    for (let i = 1; i <= 21; i += 1) door.say(door.group, `/echo ${i}`);
    door.say(door.other, '/echo elsewhere');
    await door.answer(door.other, 1);
    await door.answer(door.group, 20);
    await until(() => sends(door, door.group.id).length === 21);
    // Nothing is tried again before its time.
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(sends(door, door.group.id)).toHaveLength(21);
    expect(door.answers(door.group)).toHaveLength(20);
    expect(outbox(door).filter(({ state }) => state === 'waiting')).toHaveLength(1);
  });

  test('by a call that hangs holds no other', async () => {
    const door = await start();
    failing(door, door.group.id, [{ delayMs: 700 }]);
    door.say(door.group, '/echo slow');
    door.say(door.other, '/echo quick');
    await door.answer(door.other, 1);
    expect(door.answers(door.group)).toEqual([]);
    await door.answer(door.group, 1);
  });
});

describe.concurrent('what fails for a while', () => {
  test.each<[string, Fault]>([
    ['502', { answer: { status: 502, description: 'Bad Gateway' } }],
    ['500', { answer: { status: 500, description: 'Internal Server Error' } }],
    ['a page in place of an answer', { html: 502 }],
    ['a connection cut before the message was taken', { cut: 'before' }],
  ])('%s: is sent again and arrives once', async (_, fault) => {
    const door = await start();
    failing(door, door.group.id, [fault]);
    door.say(door.group, '/echo hold on');
    await door.answer(door.group, 1);
    await until(() => outbox(door)[0]!.state === 'sent');
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(1);
  });

  test('a connection cut after the message was taken: comes again rather than never, its change once', async () => {
    const door = await start();
    failing(door, door.group.id, [{ cut: 'after' }]);
    door.say(door.group, '/house altitude 340 m');
    await door.answer(door.group, 2);
    await until(() => outbox(door)[0]!.state === 'sent');
    expect(door.answers(door.group)).toHaveLength(2);
    expect(door.house.db.prepare('SELECT count(*) FROM entry').pluck().get()).toBe(1);
  });

  test('the pauses grow', async () => {
    const door = await start();
    const away: Fault = { answer: { status: 502, description: 'Bad Gateway' } };
    failing(door, door.group.id, [away, away]);
    door.say(door.group, '/echo hold on');
    await door.answer(door.group, 1);
    const [a, b, c] = sends(door, door.group.id).map(({ atMs }) => atMs);
    expect(b! - a!).toBeGreaterThanOrEqual(490);
    expect(c! - b!).toBeGreaterThanOrEqual(990);
  });

  test('asking for updates: the next ones are answered all the same', async () => {
    const door = await start();
    let failed = false;
    door.platform.fault = (method) => {
      if (method !== 'getUpdates' || failed) return undefined;
      failed = true;
      return { html: 502 };
    };
    // The poll that is under way ends with this one; the next poll, or the first, fails.
    door.say(door.group, '/echo before');
    await until(() => failed);
    door.say(door.group, '/echo after all');
    expect((await door.answer(door.group, 2)).text).toContain('after all');
    expect(door.logged).toEqual([
      expect.stringMatching(/^The platform cannot be reached \(/),
      'The platform is reached again.',
    ]);
  }, 15_000);
});

describe.concurrent('what can never be delivered', () => {
  test.each([
    ['kicked', 'Forbidden: bot was kicked from the supergroup chat'],
    ['blocked', 'Forbidden: bot was blocked by the user'],
    ['deleted', 'Forbidden: the group chat was deleted'],
  ])('%s: is dropped with the reason, and the next message is answered again', async (_, forbidden) => {
    const door = await start();
    door.group.forbidden = forbidden;
    door.say(door.group, '/echo one');
    await until(() => outbox(door)[0]?.state === 'dropped');
    expect(outbox(door)[0]!.why).toContain(forbidden);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(sends(door, door.group.id)).toHaveLength(1);
    delete door.group.forbidden;
    door.say(door.group, '/echo two');
    expect((await door.answer(door.group, 1)).text).toContain('two');
  });

  test('a chat that is not found, or where the bot is muted', async () => {
    const door = await start();
    failing(door, door.group.id, [
      { answer: { status: 400, description: 'Bad Request: chat not found' } },
      {
        answer: {
          status: 400,
          description: 'Bad Request: not enough rights to send text messages to the chat',
        },
      },
    ]);
    door.say(door.group, '/echo one');
    await until(() => outbox(door)[0]?.state === 'dropped');
    door.say(door.group, '/echo two');
    await until(() => outbox(door)[1]?.state === 'dropped');
    expect(outbox(door).map(({ why }) => why)).toEqual([
      expect.stringContaining('chat not found'),
      expect.stringContaining('not enough rights'),
    ]);
    expect(sends(door, door.group.id)).toHaveLength(2);
  });

  test('a message that is refused as it stands is sent as bare text, then given up', async () => {
    const door = await start();
    const refused: Fault = { answer: { status: 400, description: "Bad Request: can't parse entities" } };
    failing(door, door.group.id, [refused]);
    door.say(door.group, '/echo hi');
    expect((await door.answer(door.group, 1)).entities).toEqual([]);
    failing(door, door.group.id, [refused, refused]);
    door.say(door.group, '/echo no');
    await until(() => outbox(door)[1]?.state === 'dropped');
    door.say(door.group, '/echo on');
    expect((await door.answer(door.group, 2)).text).toContain('on');
  });
});

describe.concurrent('a bot that is put out', () => {
  test('says nothing there until it is back, then what waited and one line', async () => {
    const door = await start();
    failing(door, door.group.id, [slowDown(1), slowDown(1)]);
    door.say(door.group, '/echo waits');
    await until(() => sends(door, door.group.id).length === 1);
    door.member(door.group, 'member', 'kicked');
    await door.quiet();
    await new Promise((resolve) => setTimeout(resolve, 1150));
    expect(sends(door, door.group.id)).toHaveLength(1);
    door.platform.fault = () => undefined;
    const back = door.member(door.group, 'kicked', 'member');
    await door.answer(door.group, 2);
    expect(door.answers(door.group).map(({ text }) => text.split('\n')[0])).toEqual([
      'Ana: waits',
      expect.stringMatching(/^Back\./),
    ]);
    expect(door.answers(door.group)[1]).toMatchObject({ silent: true, replyTo: null });
    await door.quiet();
    door.platform.update(
      {
        my_chat_member: {
          chat: door.group,
          from: ana,
          date: 1,
          old_chat_member: { status: 'left' },
          new_chat_member: { status: 'member' },
        },
      },
      back,
    );
    door.member(door.group, 'member', 'administrator');
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(2);
  });

  test('tells a new group how it is admitted, and a person who unblocks it nothing', async () => {
    const door = await start();
    const fresh = door.platform.chat({ id: -1003, type: 'group', title: 'New' });
    door.member(fresh, 'left', 'member');
    expect((await door.answer(fresh, 1)).text).toContain('/admit CODE');
    const own = door.platform.chat({ id: ana.id, type: 'private', first_name: 'Ana' });
    door.member(own, 'kicked', 'member');
    await door.quiet();
    expect(door.answers(own)).toEqual([]);
  });
});

async function moving() {
  const door = await start();
  const old = door.platform.chat({ id: -77, type: 'group', title: 'Kitchen' });
  const next = door.platform.chat({ id: -1000000000077, type: 'supergroup', title: 'Kitchen' });
  door.say(old, '/admit plum-42');
  await door.answer(old, 1);
  door.say(old, '/house altitude 340 m');
  await door.answer(old, 2);
  const told = {
    old: () => door.say(old, '', { text: undefined, migrate_to_chat_id: next.id }),
    next: () => door.say(next, '', { text: undefined, migrate_from_chat_id: old.id }),
  };
  return { ...door, old, next, told };
}

describe.concurrent('a group that becomes a supergroup', () => {
  test.each([
    ['the old chat tells', ['old']],
    ['the new chat tells', ['next']],
    ['both tell', ['old', 'next']],
    ['both tell, in the other order, twice', ['next', 'old', 'next', 'old']],
  ] as const)('%s: records, journal and undo go on in the new one', async (_, signals) => {
    const door = await moving();
    door.old.migratedTo = door.next.id;
    for (const signal of signals) door.told[signal]();
    door.say(door.next, '/undo');
    expect((await door.answer(door.next, 1)).text).toContain('340 m');
    expect(door.logged).toEqual([]);
  });

  test('the refusal of an answer tells: it is sent to the new one, without a reply to old numbers', async () => {
    const door = await moving();
    door.old.migratedTo = door.next.id;
    const asked = door.say(door.old, '/echo on the way');
    const sent = await door.answer(door.next, 1);
    expect(sent.text).toContain('on the way');
    expect(sent.replyTo).toBeNull();
    expect(asked.messageId).toBeGreaterThan(0);
    door.say(door.next, '/house');
    expect((await door.answer(door.next, 2)).text).toContain('340 m');
  });

  test('a message from the new chat before any notice learns nothing, and is no obstacle', async () => {
    const door = await moving();
    door.old.migratedTo = door.next.id;
    door.say(door.next, '/house');
    await door.quiet();
    door.told.next();
    door.say(door.next, '/house');
    expect((await door.answer(door.next, 1)).text).toContain('340 m');
  });
});

test('an answer to a message that is gone by now comes all the same, whole', async () => {
  const door = await start();
  failing(door, door.group.id, [slowDown(0)]);
  const { messageId } = door.say(door.group, '/choose');
  door.platform.remove(door.group.id, messageId);
  const sent = await door.answer(door.group, 1);
  expect(sent.keys.flat()).toHaveLength(2);
  expect(door.logged.join('\n')).not.toContain('bare text');
});

describe.concurrent('long answers and files', () => {
  test('several messages: in order, whole, the buttons on the last, one sound', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/long');
    await until(() => outbox(door)[0]?.state === 'sent');
    const parts = door.answers(door.group);
    expect(parts.length).toBeGreaterThan(3);
    for (const { text } of parts) expect(text.length).toBeLessThanOrEqual(3500);
    expect(
      parts
        .map(({ text }) => text)
        .join('\n')
        .match(/line \d+ 🥕/gu),
    ).toHaveLength(300);
    expect(
      parts
        .map(({ text }) => text)
        .join('\n')
        .match(/not for you/g),
    ).toHaveLength(60);
    expect(parts.map(({ replyTo }) => replyTo)).toEqual([messageId, ...parts.slice(1).map(() => null)]);
    expect(parts.map(({ silent }) => silent)).toEqual([false, ...parts.slice(1).map(() => true)]);
    expect(parts.map(({ keys }) => keys.length)).toEqual([...parts.slice(1).map(() => 0), 1]);
  });

  test('a part that has to wait goes on where it stopped', async () => {
    const door = await start();
    let count = 0;
    door.platform.fault = (method) => {
      count += method === 'sendMessage' ? 1 : 0;
      return method === 'sendMessage' && count === 3
        ? { answer: { status: 502, description: 'Bad Gateway' } }
        : undefined;
    };
    door.say(door.group, '/long');
    await until(() => outbox(door)[0]?.state === 'sent');
    const numbers = [
      ...door
        .answers(door.group)
        .map(({ text }) => text)
        .join('\n')
        .matchAll(/line (\d+) /g),
    ].map(([, n]) => Number(n));
    expect(numbers).toEqual(Array.from({ length: 300 }, (_, i) => i + 1));
  });

  test('files: a small picture as a photo, all else as a document, with names and captions', async () => {
    const door = await start();
    door.say(door.group, '/paper');
    await door.answer(door.group, 4);
    const [text, pdf, small, large] = door.answers(door.group);
    expect(text!.text).toBe('Three files.');
    expect(pdf).toMatchObject({ method: 'sendDocument', text: 'B4', file: { name: 'labels B4.pdf' } });
    expect(pdf!.file!.bytes.toString()).toBe('%PDF-1.4 tray');
    expect(small).toMatchObject({ method: 'sendPhoto' });
    expect(small!.text).toHaveLength(1024);
    expect(large).toMatchObject({ method: 'sendDocument', text: '', file: { name: 'large.png' } });
  });

  test('files that are refused leave a sentence', async () => {
    const door = await start();
    door.platform.fault = (method) =>
      method === 'sendDocument'
        ? { answer: { status: 413, description: 'Request Entity Too Large' } }
        : undefined;
    door.say(door.group, '/paper');
    await door.answer(door.group, 4);
    expect(door.answers(door.group)[1]!.text).toContain('labels B4.pdf could not be sent');
  });
});

test('an answer is on its way within milliseconds, and nothing is asked of the database meanwhile', async () => {
  const door = await start();
  await door.quiet();
  door.say(door.group, '/echo warm');
  await door.answer(door.group, 1);
  const times: number[] = [];
  for (let i = 0; i < 10; i += 1) {
    const fromMs = Date.now();
    door.say(door.group, `/echo ${i}`);
    times.push((await door.answer(door.group, 2 + i)).atMs - fromMs);
  }
  // The median: the machine may be busy with other tests.
  expect(times.toSorted((a, b) => a - b)[5]).toBeLessThan(60);
});

test('an answer that an earlier process left is sent at the start', async () => {
  const door = await start();
  door.platform.fault = (method) => (method === 'sendMessage' ? slowDown(1) : undefined);
  door.say(door.group, '/echo left over');
  await until(() => sends(door, door.group.id).length === 1);
  door.platform.fault = () => undefined;
  // As if another process had recorded and died; nothing wakes the sender but the answer before it.
  door.house.house.stores.messages.put(
    { door: 'telegram', chatKey: String(door.group.id), topicKey: null, person: { key: '1', name: 'Ana' } },
    null,
    { group: 'from before' },
    0,
  );
  await door.answer(door.group, 2);
  expect(door.answers(door.group).map(({ text }) => text.split('\n')[0])).toEqual([
    'Ana: left over',
    'from before',
  ]);
});
