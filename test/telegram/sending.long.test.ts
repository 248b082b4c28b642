// Witness: limits, codes and error texts as in the Bot API reference (ResponseParameters, sendMessage, sendPhoto,
// sendDocument) and the official server's source; retry and order of answers are common practice, no source.
import { afterAll, describe, expect, test } from 'vitest';
import { endAll, failing, outbox, sends, slowDown, start } from './failing.ts';
import { until } from './group.ts';
import type { Fault } from './platform.ts';

afterAll(endAll);

describe.concurrent('a chat that is slowed down', () => {
  test('waits as long as it is told, in order, while another is answered at once', async () => {
    const door = await start();
    failing(door, door.group.id, [slowDown(3)]);
    door.say(door.group, '/echo first');
    door.say(door.group, '/echo second');
    await until(() => sends(door, door.group.id).length === 1);
    door.say(door.other, '/echo elsewhere');
    const elsewhere = await door.answer(door.other, 1);
    expect(door.answers(door.group)).toEqual([]);
    await door.answer(door.group, 2);
    const [first, second] = door.answers(door.group);
    expect([first!.text, second!.text].map((text) => text.split('\n')[0])).toEqual([
      'Ana: first',
      'Ana: second',
    ]);
    const [refusedAt, againAt] = sends(door, door.group.id).map(({ atMs }) => atMs);
    expect(againAt! - refusedAt!).toBeGreaterThanOrEqual(2990);
    expect(elsewhere.atMs).toBeLessThan(againAt!);
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

  test('what fails is tried again after half a second, then as often as the platform is asked whether it is back', async () => {
    const door = await start();
    const away: Fault = { answer: { status: 502, description: 'Bad Gateway' } };
    failing(door, door.group.id, [away, away]);
    door.say(door.group, '/echo hold on');
    await door.answer(door.group, 1);
    const [a, b, c] = sends(door, door.group.id).map(({ atMs }) => atMs);
    expect(b! - a!).toBeGreaterThanOrEqual(490);
    expect(c! - b!).toBeGreaterThanOrEqual(400);
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

test.concurrent('an answer to a message that is gone by now comes all the same, whole', async () => {
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
    expect(door.answers(door.group)[1]!.text).toContain('labels B4 (pdf) could not be sent');
  });
});

test.concurrent('an answer that an earlier process left is sent at the start', async () => {
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
