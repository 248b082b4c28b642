// Witness: message fields, limits and error texts as in the Bot API reference; what is asked of the bot beyond
// them (silence, one answer for one request) is common practice, no source.
import { afterEach, describe, expect, test } from 'vitest';
import { type OpenDoor, ana, ben, dateS, openDoor, until } from './group.ts';
import { botUser } from './platform.ts';
import { realRequests, testRequests } from './requests.ts';

let open: OpenDoor | undefined;
afterEach(async () => {
  await open?.end();
  open = undefined;
});
const start = async (...options: Parameters<typeof openDoor>) =>
  (open = await openDoor({ commands: [...realRequests, ...testRequests()], ...options[0] }, options[1]));

const entries = ({ house }: OpenDoor) => house.db.prepare('SELECT did FROM entry ORDER BY id').pluck().all();

describe('a request', () => {
  test('is answered where it was made, as a reply, without previews and once', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/house altitude 340 m');
    const sent = await door.answer(door.group, 1);
    expect(sent).toMatchObject({ replyTo: messageId, topic: null, silent: true, method: 'sendMessage' });
    expect(sent.text).toContain('340 m');
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(1);
    expect(door.logged).toEqual([]);
  });

  test('arrives in order with the others of its chat', async () => {
    const door = await start();
    const words = Array.from({ length: 12 }, (_, i) => `n${i}`);
    for (const word of words) door.say(door.group, `/echo ${word}`);
    await door.answer(door.group, 12);
    expect(door.answers(door.group).map(({ text }) => text.split('\n')[0])).toEqual(
      words.map((w) => `Ana: ${w}`),
    );
  });

  test('that is delivered twice takes effect once and is answered once', async () => {
    const door = await start();
    const { updateId, messageId } = door.say(door.group, '/house altitude 340 m');
    await door.answer(door.group, 1);
    await door.quiet();
    const again = {
      message_id: messageId,
      date: dateS,
      chat: { id: door.group.id, type: 'supergroup', title: 'Kitchen' },
      from: ana,
    };
    door.platform.update({ message: { ...again, text: '/house altitude 340 m' } }, updateId + 1_000_000);
    await door.answer(door.group, 2);
    door.platform.update({ message: { ...again, text: '/house altitude 340 m' } }, updateId);
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(2);
    // A smaller number later on is no repeat: the platform's count starts anew after a quiet week.
    door.platform.update({ message: { ...again, message_id: 999, text: '/echo small' } }, 7);
    expect((await door.answer(door.group, 3)).text).toContain('small');
  });

  test('takes its time from the message, however late it comes', async () => {
    const door = await start();
    door.say(door.group, '/house altitude 340 m', { date: dateS - 80_000 });
    await door.answer(door.group, 1);
    expect(door.house.db.prepare('SELECT at_ms FROM entry').pluck().get()).toBe((dateS - 80_000) * 1000);
  });

  test.each(['/HOUSE@trailTESTbot', '/house@TrailTestBot'])('%s is for this bot', async (command) => {
    const door = await start();
    door.say(door.group, `${command} altitude 340 m`);
    expect((await door.answer(door.group, 1)).text).toContain('340 m');
  });

  test('that is not for this bot meets silence', async () => {
    const door = await start();
    door.say(door.group, '/house@another_bot altitude 340 m');
    door.say(door.group, '/roll 6');
    door.say(door.group, 'who feeds the cat?');
    door.say(door.group, 'x', { text: undefined, new_chat_members: [ben] });
    door.say(door.group, '/house altitude 1 m', { from: { ...ben, is_bot: true } });
    door.say(door.group, '/house altitude 1 m', {
      is_automatic_forward: true,
      sender_chat: { id: -5, type: 'channel', title: 'c' },
    });
    door.platform.update({
      channel_post: {
        message_id: 1,
        date: dateS,
        chat: { id: -9, type: 'channel', title: 'c' },
        text: '/house',
      },
    });
    await door.quiet();
    door.say(door.group, '/echo now');
    await door.answer(door.group, 1);
    expect(door.answers(door.group)).toHaveLength(1);
    expect(entries(door)).toEqual([]);
    expect(door.logged).toEqual([]);
  });

  test('needs no slash after a mention, in a reply to the bot, or in a private chat', async () => {
    const door = await start();
    door.say(door.group, '@trailtestbot: echo by mention');
    expect((await door.answer(door.group, 1)).text).toContain('Ana: by mention');
    door.say(door.group, 'echo by reply', {
      reply_to_message: { message_id: 11, date: dateS, from: botUser },
    });
    expect((await door.answer(door.group, 2)).text).toContain('Ana: by reply');
    const own = door.platform.chat({ id: ana.id, type: 'private', first_name: 'Ana' });
    door.say(own, '/start');
    expect((await door.answer(own, 1)).text).toContain('speaks for Kitchen');
    door.say(own, 'echo by oneself');
    expect((await door.answer(own, 2)).text).toContain('Ana: by oneself');
  });

  test('of somebody else, forwarded, is carried out by nobody', async () => {
    const door = await start();
    const forward_origin = { type: 'user', sender_user: ben, date: dateS };
    door.say(door.group, '/house altitude 340 m', { forward_origin });
    door.say(door.group, '/house@TrailTestBot altitude 340 m', { forward_origin });
    expect((await door.answer(door.group, 1)).text).toContain('forwarded messages');
    door.say(door.group, '', {
      text: undefined,
      sticker: {},
      reply_to_message: { message_id: 11, date: dateS, from: botUser },
    });
    await door.quiet();
    // Told once; stickers and the like meet silence for a while then.
    door.say(door.group, '/echo now');
    expect((await door.answer(door.group, 2)).text).toContain('Ana: now');
    expect(entries(door)).toEqual([]);
  });

  test('in a caption counts as typed', async () => {
    const door = await start();
    door.say(door.group, '', { text: undefined, photo: [], caption: '/echo from a caption' });
    expect((await door.answer(door.group, 1)).text).toContain('from a caption');
  });

  test('of an anonymous administrator is made by the group, never by a stand-in account; a channel is nobody', async () => {
    const door = await start();
    const standIn = { id: 1_087_968_824, is_bot: true, first_name: 'Group', username: 'GroupAnonymousBot' };
    door.say(door.group, '/echo a', {
      from: standIn,
      sender_chat: { id: door.group.id, type: 'supergroup', title: 'Kitchen' },
    });
    door.say(door.group, '/echo b', {
      from: { id: 136_817_688, is_bot: true, first_name: 'Channel' },
      sender_chat: { id: -1007, type: 'channel', title: 'Trail news' },
    });
    door.say(door.group, '/eater me vegetarian', {
      from: standIn,
      sender_chat: { id: door.group.id, type: 'supergroup', title: 'Kitchen' },
    });
    expect((await door.answer(door.group, 2)).text).not.toContain('vegetarian;');
    expect(door.house.db.prepare('SELECT name FROM eater').all()).toEqual([]);
    expect(door.answers(door.group)).toHaveLength(2);
    expect(door.house.db.prepare('SELECT person_key, name FROM member ORDER BY id').raw().all()).toEqual([
      [`chat:${door.group.id}`, 'Kitchen (admin)'],
    ]);
  });

  test('that meets a fault of the program gets a line, and the log gets no word of it', async () => {
    const door = await start();
    door.say(door.group, '/broken secretword');
    expect((await door.answer(door.group, 1)).text).toContain('nothing was recorded');
    door.say(door.group, '/echo next');
    await door.answer(door.group, 2);
    const all = [...door.logged, ...door.house.faults].join('\n');
    expect(all).toContain('/broken');
    expect(all).not.toContain('secretword');
  });

  test('that cannot even be stored is answered with a line, and the next one is served', async () => {
    let broken = true;
    const door = await openDoor();
    open = door;
    door.house.house.stores.messages.firstSight = (
      (first) =>
      (...args: Parameters<typeof first>) => {
        if (!broken) return first(...args);
        broken = false;
        throw new Error('no space for secretword');
      }
    )(door.house.house.stores.messages.firstSight);
    door.say(door.group, '/house altitude 340 m');
    expect((await door.answer(door.group, 1)).text).toContain('Something broke');
    door.say(door.group, '/house altitude 350 m');
    expect((await door.answer(door.group, 2)).text).toContain('350 m');
    expect(door.logged.join('\n')).not.toContain('secretword');
  });
});

describe('an edit', () => {
  test('of a refused request makes it anew', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/house altitude high');
    await door.answer(door.group, 1);
    door.edit(door.group, messageId, '/house altitude 340 m');
    const sent = await until(() => door.answers(door.group).find(({ text }) => text.includes('340 m')));
    expect(sent.replyTo).toBe(messageId);
    expect(door.answers(door.group)).toHaveLength(1);
  });

  test('of a recorded request changes nothing and offers the change', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/house altitude 340 m');
    const sent = await door.answer(door.group, 1);
    door.edit(door.group, messageId, '/house altitude 900 m');
    await until(() => sent.text.includes('Instead: set altitude 900 m?'));
    expect(sent.text).toContain('Recorded is: set altitude 340 m.');
    expect(entries(door)).toEqual(['set altitude 340 m']);
    const [instead] = sent.keys.flat();
    door.press(door.group, sent.messageId, instead!.callback_data);
    await until(() => sent.text.includes('Noted: altitude 900 m.'));
    expect(door.answers(door.group)).toHaveLength(1);
    const altitude = "SELECT value_json FROM setting WHERE name = 'altitudeM'";
    expect(door.house.db.prepare(altitude).pluck().all()).toEqual(['900']);
  });

  test('whose answer was deleted is answered anew', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/house altitude 340 m');
    const sent = await door.answer(door.group, 1);
    door.platform.remove(door.group.id, sent.messageId);
    door.edit(door.group, messageId, '/house altitude 900 m');
    expect((await door.answer(door.group, 2)).text).toContain('Instead: set altitude 900 m?');
  });

  test('into something else keeps saying what is recorded', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/house altitude 340 m');
    const sent = await door.answer(door.group, 1);
    door.edit(door.group, messageId, '/stock');
    await until(() => sent.text.includes('It stays as it is.'));
    expect(sent.text).toContain('Recorded is: set altitude 340 m.');
    expect(sent.keys.flat().map(({ text }) => text)).toEqual(['Undo']);
  });

  test('that changes no word is nothing', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/house altitude 340 m');
    await door.answer(door.group, 1);
    door.edit(door.group, messageId, '/house altitude 340 m');
    await door.quiet();
    door.say(door.group, '/echo now');
    await door.answer(door.group, 2);
    expect(door.answers(door.group)).toHaveLength(2);
  });
});

describe('a tap', () => {
  test('that takes back changes the answer it stands under, and puts it back there', async () => {
    const door = await start();
    door.say(door.group, '/house altitude 340 m', { date: Math.floor(Date.now() / 1000) });
    const sent = await door.answer(door.group, 1);
    door.press(door.group, sent.messageId, sent.keys.flat()[0]!.callback_data, ana);
    await until(() => sent.text.startsWith('Taken back: set altitude 340 m'));
    expect(sent.keys.flat().map(({ text }) => text)).toEqual(['Put back']);
    door.press(door.group, sent.messageId, sent.keys.flat()[0]!.callback_data, ana);
    await until(() => sent.text.startsWith('Noted: altitude 340 m.'));
    expect(sent.keys.flat().map(({ text }) => text)).toEqual(['Undo']);
    expect(door.answers(door.group)).toHaveLength(1);
  });

  test('on an answer that asks puts what came of it in its place', async () => {
    const door = await start();
    door.say(door.group, '@TrailTestBot maybe our altitude is 900 m');
    const sent = await door.answer(door.group, 1);
    expect(sent.text).toContain('Nothing is recorded yet');
    door.press(door.group, sent.messageId, sent.keys.flat()[0]!.callback_data);
    await until(() => sent.text.startsWith('Noted: altitude 900 m'));
    expect(door.answers(door.group)).toHaveLength(1);
  });
});

test('the menu is set for every kind of chat, and a refusal of it stops nothing', async () => {
  const door = await start();
  door.platform.fault = (method) =>
    method === 'setMyCommands'
      ? { answer: { status: 429, description: 'Too Many Requests', parameters: { retry_after: 9 } } }
      : undefined;
  door.say(door.group, '/echo a');
  await door.answer(door.group, 1);
  await door.end();
  const second = await start();
  await until(() => second.platform.calls.filter(({ method }) => method === 'setMyCommands').length === 3);
  const set = second.platform.calls
    .filter(({ method }) => method === 'setMyCommands')
    .map(({ payload }) => payload.fields);
  expect(set.map(({ scope }) => scope)).toEqual([
    { type: 'default' },
    { type: 'all_group_chats' },
    { type: 'all_private_chats' },
  ]);
  for (const { command, description } of set[0]!['commands'] as { command: string; description: string }[]) {
    expect(command).toMatch(/^[a-z0-9_]{1,32}$/);
    expect(description.length).toBeGreaterThan(0);
    expect(description.length).toBeLessThanOrEqual(256);
  }
  // Without /undo: a tap sends.
  expect(set[0]!['commands']).toHaveLength(realRequests.length + testRequests().length - 1);
});

test('updates are asked for by name and nothing said before the start is thrown away', async () => {
  const door = await start();
  await until(() => door.platform.calls.some(({ method }) => method === 'getUpdates'));
  const first = door.platform.calls.find(({ method }) => method === 'getUpdates')!;
  expect(first.payload.fields['allowed_updates']).toEqual([
    'message',
    'edited_message',
    'callback_query',
    'my_chat_member',
  ]);
  const hook = door.platform.calls.find(({ method }) => method === 'deleteWebhook')!;
  expect(hook.payload.fields['drop_pending_updates']).toBeUndefined();
});

test('long sums hold nobody up, and the chat hears that they run', async () => {
  let summed: () => void = () => undefined;
  const whenSummed = () => new Promise<void>((resolve) => (summed = resolve));
  const door = await start({ commands: [...realRequests, ...testRequests(whenSummed)] });
  door.say(door.group, '/slow');
  door.say(door.group, '/echo meanwhile');
  expect((await door.answer(door.group, 1)).text).toContain('meanwhile');
  const action = await until(() => door.platform.calls.find(({ method }) => method === 'sendChatAction'));
  expect(action.payload.fields).toEqual({ chat_id: door.group.id, action: 'typing' });
  summed();
  expect((await door.answer(door.group, 2)).text).toContain('Summed');
});

test('long sums that an earlier process did not end are taken up', async () => {
  const door = await start();
  door.house.house.stores.messages.begin({
    door: 'telegram',
    chatKey: String(door.group.id),
    chatTitle: 'Kitchen',
    isPrivate: false,
    addressed: false,
    deliveryKey: '4711:1',
    messageKey: '11',
    topicKey: null,
    person: { key: String(ana.id), name: 'Ana' },
    text: '/slow',
    sentAtMs: dateS * 1000,
    isEdit: false,
    button: null,
  });
  expect((await door.answer(door.group, 1)).text).toContain('Summed');
});

test('a clock fixed from outside holds for every message', async () => {
  const door = await start({}, { fixedNowMs: 86_400_000 });
  door.say(door.group, '/house altitude 340 m');
  await door.answer(door.group, 1);
  expect(door.house.db.prepare('SELECT at_ms FROM entry').pluck().get()).toBe(86_400_000);
});

test.each([
  [401, 'does not know this token'],
  [404, 'does not know this token'],
  [409, 'Another program is using this bot'],
])('%i ends the bot with exit code 1 and a sentence on what to do', async (status, sentence) => {
  const door = await openDoor();
  const method = status === 409 ? 'getUpdates' : 'getMe';
  door.platform.fault = (called) =>
    called === method ? { answer: { status, description: 'Unauthorized' } } : undefined;
  expect(await door.ended).toBe(1);
  expect(door.logged.at(-1)).toContain(sentence);
  await door.platform.close();
});
