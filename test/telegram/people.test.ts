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

  test('slows whoever tries too many wrong codes, says so, and takes the code from others', async () => {
    const door = await start();
    const chat = door.platform.chat({ ...stranger });
    for (let i = 0; i < 7; i += 1) door.say(chat, `/admit wrong-${i}`);
    door.say(chat, '/admit plum-42');
    expect((await door.answer(chat, 5)).text).toContain(
      'I take no code from you for 60 min. Others may try.',
    );
    await door.quiet();
    door.say(door.group, '/echo still here');
    await door.answer(door.group, 1);
    expect(door.answers(chat)).toHaveLength(5);
    const other = door.platform.chat({ id: -1010, type: 'group', title: 'Others' });
    door.say(other, '/admit plum-42', { from: ben });
    expect((await door.answer(other, 1)).text).toContain('Admitted');
    door.say(chat, '/admit plum-42', { date: dateS + 3601 });
    expect((await door.answer(chat, 6)).text).toContain('Admitted');
    door.say(chat, '/admit plum-42');
    expect((await door.answer(chat, 7)).text).toContain('admitted already');
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
    expect(help[0]).toContain('/\u2060help');
    door.say(own, '/start B4-2', { from: ben });
    expect((await door.answer(own, 7)).text).toContain('B4');
  });
});

describe('names', () => {
  test.each([
    ['<b>Ana</b> & _co_ [x](tg://user?id=1)', '<b>Ana</\u2060b> & _co_ [x](tg:\u2060//user?id=1)'],
    ['/undo', '/\u2060undo'],
    ['@TrailTestBot', '@\u2060TrailTestBot'],
    ['evil.com', 'evil\u2060.com'],
    ['42', '42'],
    ['x'.repeat(64), 'x'.repeat(64)],
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
    const { offset, length } = sent.entities.find(({ type }) => type === 'blockquote')!;
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
