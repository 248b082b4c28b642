// Witness: the fields of Update, Message, CallbackQuery and ChatMemberUpdated as in the Bot API reference.
import { expect, test } from 'vitest';
import { type Update, hear } from '#doors/telegram-hear.ts';

const me = { id: 4711, username: 'TrailTestBot' };
const group = { id: -1001234567890, type: 'supergroup', title: 'Kitchen' };
const ana = { id: 5_000_000_001, is_bot: false, first_name: 'Ana' };
const update = (body: object) => ({ update_id: 9, ...body }) as unknown as Update;
const message = (more: object) =>
  hear(update({ message: { message_id: 31, date: 1_700_000_000, chat: group, from: ana, ...more } }), me, 5);
const heard = (more: object) => {
  const found = message(more);
  if (found.is !== 'message') throw new Error(`heard ${found.is}`);
  return found.message;
};

test('a message is taken over whole', () => {
  expect(heard({ text: '/water B4-2' })).toEqual({
    door: 'telegram',
    chatKey: '-1001234567890',
    chatTitle: 'Kitchen',
    isPrivate: false,
    addressed: false,
    deliveryKey: '4711:9',
    messageKey: '31',
    topicKey: null,
    person: { key: '5000000001', name: 'Ana' },
    text: '/water B4-2',
    sentAtMs: 1_700_000_000_000,
    isEdit: false,
    button: null,
  });
});

test.each([
  ['/water@TRAILTESTBOT B4-2', '/water B4-2', true],
  ['/water@trailtestbot\nB4-2', '/water\nB4-2', true],
  ['@TrailTestBot water B4-2', 'water B4-2', true],
  ['@trailtestbot, water B4-2', 'water B4-2', true],
  ['how much water for B4-2, @TrailTestBot?', 'how much water for B4-2,  ?', true],
  ['/recipe Soup\n300 g barley @TrailTestBot', '/recipe Soup\n300 g barley', true],
  ['write to me@TrailTestBot.example', 'write to me@TrailTestBot.example', false],
  ['@TrailTestBot2 water', '@TrailTestBot2 water', false],
  ['/start abc', '/start abc', false],
  [`/start ${'x'.repeat(64)}`, `/start ${'x'.repeat(64)}`, false],
  [`/start ${'x'.repeat(65)}`, '/start', false],
  ['/start a;b', '/start', false],
])('%j is %j', (typed, text, addressed) => {
  expect(heard({ text: typed })).toMatchObject({ text, addressed });
});

test.each([
  ['/water@another_bot B4-2', {}],
  ['a channel', { chat: { id: -7, type: 'channel', title: 'c' }, text: '/water' }],
  ['another bot', { from: { ...ana, is_bot: true }, text: '/water' }],
  [
    'an automatic forward',
    { is_automatic_forward: true, sender_chat: { id: -7, type: 'channel', title: 'c' }, text: '/water' },
  ],
  ['a pin of its own', { pinned_message: { message_id: 3 } }],
  ['somebody who joins', { new_chat_members: [ana] }],
])('%s is nothing', (text, more) => {
  expect(message({ text, ...more })).toEqual({ is: 'nothing' });
});

test.each([
  [{ first_name: 'Ana' }, 'Ana'],
  [{ first_name: '\u3164', last_name: 'Reyes' }, 'Reyes'],
  [{ first_name: ' \u200B', username: 'ana' }, 'ana'],
  [{ first_name: '' }, 'member 1'],
  [{ first_name: 'A\nB' }, 'A B'],
  [{ first_name: '<3 & _x_' }, '<3 & _x_'],
])('%j is called %s', (names, called) => {
  expect(heard({ text: 'x', from: { id: 1, is_bot: false, ...names } }).person.name).toBe(called);
});

test('topics count only where they are topics', () => {
  expect(heard({ text: 'x', message_thread_id: 40, is_topic_message: true }).topicKey).toBe('40');
  expect(heard({ text: 'x', message_thread_id: 40 }).topicKey).toBeNull();
});

test('an edit has the time of the edit and the number of the message it changes', () => {
  const edited_message = {
    message_id: 31,
    date: 100,
    edit_date: 200,
    chat: group,
    from: ana,
    text: '/stock',
  };
  expect(hear(update({ edited_message }), me, 5)).toMatchObject({
    is: 'message',
    message: { isEdit: true, messageKey: '31', sentAtMs: 200_000 },
  });
});

test('a message that only one member sees has no number to reply to', () => {
  expect(heard({ text: 'x', message_id: 0 }).messageKey).toBe('delivery 4711:9');
});

test('a press has the time of its arrival; without a message it belongs to no chat', () => {
  const press = { id: '1', from: ana, chat_instance: 'c', data: '12' };
  expect(hear(update({ callback_query: press }), me, 5)).toMatchObject({
    carrier: null,
    message: { chatKey: '', button: 12, sentAtMs: 5 },
  });
  const gone = { message_id: 7, date: 0, chat: group };
  expect(hear(update({ callback_query: { ...press, message: gone } }), me, 5)).toMatchObject({
    is: 'press',
    carrier: { chatKey: '-1001234567890', messageId: 7 },
    message: { person: { key: '5000000001' } },
  });
});

test.each([
  ['left', 'member', 'joined'],
  ['kicked', 'administrator', 'joined'],
  ['member', 'kicked', 'left'],
  ['administrator', 'left', 'left'],
  ['member', 'administrator', 'nothing'],
])('from %s to %s is %s', (was, is, expected) => {
  const my_chat_member = {
    chat: group,
    from: ana,
    date: 1,
    old_chat_member: { status: was },
    new_chat_member: { status: is },
  };
  expect(hear(update({ my_chat_member }), me, 5).is).toBe(expected);
});
