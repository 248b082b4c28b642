// Witness: common practice, no source.
import { expect, test } from 'vitest';
import { deliveryStore } from '#store/deliveries.ts';
import { openDatabase } from '#store/open.ts';
import { openOwnHouse } from '../house.ts';

const to = (chatKey: string) => ({
  door: 'telegram' as const,
  chatKey,
  topicKey: '4',
  person: { key: '1', name: 'Ana' },
});

function open() {
  const house = openOwnHouse();
  const { messages } = house.house.stores;
  const put = (...answer: Parameters<typeof messages.put>) => messages.put(...answer);
  return { house, ...deliveryStore(house.db), put };
}

test('the oldest answer of each chat is next, and a paused chat waits until it is resumed', () => {
  const { put, heads, head, pause, resume, tried, sent } = open();
  const [a1, b1, a2] = ['a', 'b', 'a'].map((chat, i) =>
    put(to(chat), String(i), { group: `${chat}${i}` }, 0),
  );
  expect(heads('telegram')).toEqual([
    { chatKey: 'a', nextTryAtMs: 0 },
    { chatKey: 'b', nextTryAtMs: 0 },
  ]);
  tried(b1!, 77);
  expect(head('telegram', 'b')).toMatchObject({ id: b1, tries: 1, nextTryAtMs: 77, reply: { group: 'b1' } });
  pause('telegram', 'a');
  expect(head('telegram', 'a')!.nextTryAtMs).toBeGreaterThan(Date.UTC(9999));
  resume('telegram', 'a');
  resume('telegram', 'b');
  expect(head('telegram', 'a')).toMatchObject({ id: a1, nextTryAtMs: 0 });
  expect(head('telegram', 'b')!.nextTryAtMs).toBe(77);
  sent(a1!);
  expect(head('telegram', 'a')!.id).toBe(a2);
  expect(heads('terminal')).toEqual([]);
});

test('a chat moves with its household, its journal and its waiting answers, and moving again changes nothing', () => {
  const { house, put, head, moveChat } = open();
  house.say('/house altitude 340 m');
  const { db } = house;
  db.exec(
    `UPDATE chat SET door = 'telegram', chat_key = '-7'; UPDATE entry SET door = 'telegram', chat_key = '-7'`,
  );
  put(to('-7'), '31', { group: 'x' }, 0);
  expect(moveChat('telegram', '-7', '-1007')).toBe(true);
  const after = () =>
    ['chat', 'entry', 'outbox', 'member'].map((table) => db.prepare(`SELECT * FROM ${table}`).all());
  const once = after();
  expect(
    db
      .prepare(
        'SELECT chat_key FROM chat UNION SELECT chat_key FROM entry UNION SELECT chat_key FROM outbox WHERE door = ?',
      )
      .pluck()
      .all('telegram'),
  ).toEqual(['-1007']);
  expect(head('telegram', '-1007')).toMatchObject({ replyToKey: null, topicKey: null });
  expect(moveChat('telegram', '-7', '-1007')).toBe(true);
  expect(after()).toEqual(once);
});

test('a new chat that has records of its own by now is left alone; an empty one gives way', () => {
  const { house, moveChat } = open();
  const { households } = house.house.stores;
  const admit = (chatKey: string) =>
    households.admit({ ...to(chatKey), chatTitle: chatKey, isPrivate: false, sentAtMs: 0 } as never);
  const old = admit('-7');
  admit('-1007');
  expect(moveChat('telegram', '-7', '-1007')).toBe(true);
  expect(households.of('telegram', '-1007')).toBe(old);
  const [next, own] = [admit('-8'), admit('-1008')];
  const message = {
    ...to('-1008'),
    chatTitle: 'x',
    isPrivate: false,
    addressed: true,
    deliveryKey: 'd',
    messageKey: 'm',
    text: '/house altitude 1 m',
    sentAtMs: 0,
    isEdit: false,
    button: null,
  };
  house.say('/house altitude 1 m', 'Ana', message);
  expect(moveChat('telegram', '-8', '-1008')).toBe(false);
  expect([households.of('telegram', '-8'), households.of('telegram', '-1008')]).toEqual([next, own]);
});

test('deliveries are forgotten a month after the latest one, by their own dates', () => {
  const db = openDatabase(':memory:');
  const see = db.prepare("INSERT INTO seen (door, delivery_key, at_ms) VALUES ('telegram', ?, ?)");
  const dayMs = 24 * 3_600_000;
  for (const day of [0, 5, 31, 40]) see.run(String(day), day * dayMs);
  deliveryStore(db).forget('telegram');
  expect(db.prepare('SELECT delivery_key FROM seen ORDER BY at_ms').pluck().all()).toEqual(['31', '40']);
});

test('what was said half a year ago is dropped, unless it still waits', () => {
  const { house, put, sent, forget } = open();
  const dayMs = 24 * 3_600_000;
  const ids = [0, 0, 100, 200].map((day) => put(to('a'), null, { group: `on day ${day}` }, day * dayMs));
  for (const id of ids.slice(1)) sent(id);
  house.db
    .prepare("INSERT INTO seen (door, delivery_key, at_ms) VALUES ('telegram', 'x', ?)")
    .run(200 * dayMs);
  forget('telegram');
  expect(house.db.prepare("SELECT id FROM outbox WHERE door = 'telegram' ORDER BY id").pluck().all()).toEqual(
    [ids[0], ids[2], ids[3]],
  );
});

test('an answer that leaves its topic says so first', () => {
  const { put, head, leaveTopic } = open();
  leaveTopic(put(to('a'), '31', { group: 'Soup' }, 0), '(gone)');
  expect(head('telegram', 'a')).toMatchObject({
    topicKey: null,
    replyToKey: null,
    reply: { group: '(gone)\nSoup' },
  });
});
