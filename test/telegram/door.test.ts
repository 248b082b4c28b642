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
    expect(sent).toMatchObject({ replyTo: messageId, topic: null, silent: false, method: 'sendMessage' });
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
    await door.answer(door.group, 2);
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(2);
    expect(entries(door)).toEqual([]);
  });

  test('in a caption counts as typed', async () => {
    const door = await start();
    door.say(door.group, '', { text: undefined, photo: [], caption: '/echo from a caption' });
    expect((await door.answer(door.group, 1)).text).toContain('from a caption');
  });

  test('of an anonymous administrator or a channel is made by that chat, never by a stand-in account', async () => {
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
    await door.answer(door.group, 2);
    expect(door.house.db.prepare('SELECT person_key, name FROM member ORDER BY id').raw().all()).toEqual([
      [`chat:${door.group.id}`, 'Kitchen (admin)'],
      ['chat:-1007', 'Trail news'],
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
    const sent = await door.answer(door.group, 2);
    expect(sent.text).toContain('340 m');
    expect(sent.replyTo).toBe(messageId);
  });

  test('of a recorded request changes nothing and says how to', async () => {
    const door = await start();
    const { messageId } = door.say(door.group, '/house altitude 340 m');
    await door.answer(door.group, 1);
    door.edit(door.group, messageId, '/house altitude 900 m');
    expect((await door.answer(door.group, 2)).text).toContain('/undo');
    expect(entries(door)).toHaveLength(1);
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

describe('in a group with topics', () => {
  const topics = new Map([
    [40, 'open' as const],
    [50, 'closed' as const],
  ]);

  test('the answer goes to the topic that asked', async () => {
    const door = await start();
    Object.assign(door.group, { is_forum: true, topics });
    door.say(door.group, '/echo here', { is_topic_message: true, message_thread_id: 40 });
    expect(await door.answer(door.group, 1)).toMatchObject({ topic: 40 });
  });

  test('the general place and chains of replies carry no topic', async () => {
    const door = await start();
    Object.assign(door.group, { is_forum: true, topics });
    door.say(door.group, '/echo general', { message_thread_id: 12 });
    expect(await door.answer(door.group, 1)).toMatchObject({ topic: null });
  });

  test('what "replies" to the creation of a topic is no reply to the bot', async () => {
    const door = await start();
    Object.assign(door.group, { is_forum: true, topics });
    const creation = {
      message_id: 40,
      date: dateS,
      from: botUser,
      forum_topic_created: { name: 'Trip', icon_color: 1 },
    };
    const more = { is_topic_message: true, message_thread_id: 40, reply_to_message: creation };
    door.say(door.group, 'echo chatter', more);
    door.say(door.group, '/echo asked', more);
    expect((await door.answer(door.group, 1)).text).toContain('asked');
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(1);
  });

  test.each([
    ['closed', 50],
    ['gone', 60],
  ])('an answer to a topic that is %s goes to the general place and says so', async (_, topic) => {
    const door = await start();
    Object.assign(door.group, { is_forum: true, topics });
    door.say(door.group, '/echo here', { is_topic_message: true, message_thread_id: topic });
    const sent = await door.answer(door.group, 1);
    expect(sent).toMatchObject({ topic: null, replyTo: null });
    expect(sent.text).toContain('closed or gone');
    expect(sent.text).toContain('Ana: here');
  });
});

describe('admission', () => {
  const stranger = { id: -1009, type: 'group' as const, title: 'Strangers' };

  test('takes the code that the owner sees', async () => {
    const door = await start();
    const chat = door.platform.chat({ ...stranger });
    expect(door.printed[0]).toBeUndefined();
    door.say(chat, '/echo let me in');
    door.say(chat, '/start@TrailTestBot');
    expect((await door.answer(chat, 1)).text).toContain('not admitted');
    door.say(chat, '/admit wrong-1');
    expect((await door.answer(chat, 2)).text).toContain('not the code');
    door.say(chat, '/admit PLUM-42');
    expect((await door.answer(chat, 3)).text).toContain('Admitted');
    door.say(chat, '/echo in');
    expect((await door.answer(chat, 4)).text).toContain('Ana: in');
    expect(door.printed.join('\n')).toContain('/admit plum-42');
  });

  test('falls silent after too many wrong codes, the right one included', async () => {
    const door = await start();
    const chat = door.platform.chat({ ...stranger });
    for (let i = 0; i < 7; i += 1) door.say(chat, `/admit wrong-${i}`);
    door.say(chat, '/admit plum-42');
    await door.answer(chat, 5);
    await door.quiet();
    door.say(door.group, '/echo still here');
    await door.answer(door.group, 1);
    expect(door.answers(chat)).toHaveLength(5);
  });

  test('keeps strangers out of private chats, and links from elsewhere do nothing', async () => {
    const door = await start();
    const own = door.platform.chat({ id: ben.id, type: 'private', first_name: 'Ben' });
    door.say(own, `/start ${'x'.repeat(65)}`, { from: ben });
    expect((await door.answer(own, 1)).text).toContain('members of an admitted household only');
    door.say(door.group, '/echo now a member', { from: ben });
    await door.answer(door.group, 1);
    door.say(own, '/start', { from: ben });
    await door.answer(own, 2);
    for (const payload of ['x'.repeat(65), 'a b;c', 'Zm9yZWlnbg', 'https://t.me/x'])
      door.say(own, `/start ${payload}`, { from: ben });
    await door.answer(own, 6);
    const help = door.answers(own, 2).map(({ text }) => text);
    expect(new Set(help).size).toBe(1);
    expect(help[0]).toContain('/help');
    door.say(own, '/start B4-2', { from: ben });
    expect((await door.answer(own, 7)).text).toContain('B4');
  });
});

describe('names', () => {
  test.each([
    ['<b>Ana</b> & _co_ [x](tg://user?id=1)', '<b>Ana</b> & _co_ [x](tg://user?id=1)'],
    ['شهرزاد', 'شهرزاد'],
    ['👩‍🍳🥕'.repeat(8), '👩‍🍳🥕'.repeat(8)],
    ['*', '*'],
    // Marks that turn the text around them are all that goes.
    ['\u202Eevil\u2069', 'evil'],
    // A filler is no name.
    ['\u3164', 'someone'],
  ])('%s is shown as %s and breaks nothing', async (first_name, shown) => {
    const door = await start();
    door.say(door.group, '/echo hi', { from: { ...ana, first_name, username: 'someone' } });
    const sent = await door.answer(door.group, 1);
    const { offset, length } = sent.entities[0]!;
    expect(sent.text.slice(offset, offset + length)).toBe(`\u2068${shown}\u2069: hi`);
    expect(door.logged).toEqual([]);
  });
});

async function asked(words = '') {
  const door = await start();
  door.say(door.group, `/choose ${words}`);
  const sent = await door.answer(door.group, 1);
  return { door, sent, low: sent.keys.flat()[0]!.callback_data, high: sent.keys.flat()[1]!.callback_data };
}
const toasts = ({ platform }: OpenDoor) =>
  platform.calls
    .filter(({ method }) => method === 'answerCallbackQuery')
    .map(({ payload }) => payload.fields);

describe('buttons', () => {
  test('do what they say for whoever asked, once, and go away', async () => {
    const { door, sent, low, high } = await asked();
    const press = door.press(door.group, sent.messageId, low);
    expect((await door.answer(door.group, 2)).text).toContain('100 m');
    await until(() => sent.keys.length === 0);
    expect(toasts(door)).toEqual([{ callback_query_id: press }]);
    door.press(door.group, sent.messageId, low);
    door.press(door.group, sent.messageId, high, ben);
    await until(() => toasts(door).length === 3);
    expect(
      toasts(door)
        .slice(1)
        .map(({ text }) => text),
    ).toEqual(['Already done.', 'This button is for the person who asked.']);
    await door.quiet();
    expect(door.answers(door.group)).toHaveLength(2);
    expect(entries(door)).toHaveLength(1);
    expect(door.logged).toEqual([]);
  });

  test('refuse another member with a word to them alone', async () => {
    const { door, sent, low } = await asked();
    door.press(door.group, sent.messageId, low, ben);
    await until(() => toasts(door)[0]);
    expect(toasts(door)[0]!['text']).toBe('This button is for the person who asked.');
    expect(sent.keys).not.toEqual([]);
    expect(entries(door)).toEqual([]);
  });

  test('for all can be pressed by anyone of the group, in their own name', async () => {
    const { door, sent, low } = await asked('all');
    door.press(door.group, sent.messageId, low, ben);
    await door.answer(door.group, 2);
    expect(
      door.house.db.prepare('SELECT name FROM entry JOIN member ON member.id = entry.member').pluck().get(),
    ).toBe('Ben');
  });

  test('of an anonymous administrator can be pressed, since the presser has another id than the asker', async () => {
    const door = await start();
    const sender_chat = { id: door.group.id, type: 'supergroup', title: 'Kitchen' };
    door.say(door.group, '/choose', {
      from: { id: 1_087_968_824, is_bot: true, first_name: 'Group' },
      sender_chat,
    });
    const sent = await door.answer(door.group, 1);
    door.press(door.group, sent.messageId, sent.keys.flat()[0]!.callback_data, ana);
    expect((await door.answer(door.group, 2)).text).toContain('100 m');
  });

  test.each(['999999', 'undo:all', '', '-1', '1e3', '99999999999999999999', "1' OR 1=1"])(
    'with data that no button has (%j) do nothing',
    async (data) => {
      const { door, sent } = await asked();
      door.press(door.group, sent.messageId, data);
      await until(() => toasts(door)[0]);
      expect(toasts(door)[0]!['text']).toContain('too old');
      expect(entries(door)).toEqual([]);
    },
  );

  test('of one chat do nothing in another', async () => {
    const { door, sent, low } = await asked('all');
    const other = door.platform.chat({ id: -1008, type: 'group', title: 'Other' });
    door.press(other, sent.messageId, low, ben);
    await until(() => toasts(door)[0]);
    expect(toasts(door)[0]!['text']).toContain('too old');
    expect(entries(door)).toEqual([]);
  });

  test('work when their message can no longer be read, and when the press can no longer be answered', async () => {
    const { door, sent, low } = await asked();
    door.platform.fault = (method) =>
      method === 'answerCallbackQuery'
        ? {
            answer: {
              status: 400,
              description:
                'Bad Request: query is too old and response timeout expired or query ID is invalid',
            },
          }
        : undefined;
    door.platform.remove(door.group.id, sent.messageId);
    door.press(door.group, sent.messageId, low, ana, { date: 0, from: undefined, text: undefined });
    expect((await door.answer(door.group, 2)).text).toContain('100 m');
    await door.quiet();
    expect(door.logged).toEqual([]);
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
  expect(set[0]!['commands']).toHaveLength(realRequests.length + testRequests().length);
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
