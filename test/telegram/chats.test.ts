// Witness: limits, codes and error texts as in the Bot API reference (ResponseParameters, sendMessage, sendPhoto,
// sendDocument) and the official server's source; retry and order of answers are common practice, no source.
import { afterAll, describe, expect, test } from 'vitest';
import { endAll, failing, outbox, sends, slowDown, start } from './failing.ts';
import { ana, until } from './group.ts';
import type { Fault } from './platform.ts';

afterAll(endAll);

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
