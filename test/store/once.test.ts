// Witness: that a read after a write sees the write, common practice, no source.
import { expect, test } from 'vitest';
import { counted, readOnce } from '#store/once.ts';
import { defaultSettings } from '#core/settings.ts';
import { openStores } from '#store/house.ts';
import { openDatabase } from '#store/open.ts';

test('a read is asked of the file once until something is written', () => {
  const { db, writes } = counted(openDatabase(':memory:'));
  db.exec('CREATE TABLE thing (name TEXT)');
  const put = db.prepare('INSERT INTO thing VALUES (?)');
  const count = db.prepare('SELECT count(*) FROM thing').pluck();
  let asked = 0;
  const store = readOnce(
    {
      count: () => {
        asked += 1;
        return count.get() as number;
      },
      put: (name: string) => put.run(name).changes,
    },
    writes,
  );
  expect([store.count(), store.count(), asked]).toEqual([0, 0, 1]);
  expect([store.put('a'), store.put('a')]).toEqual([1, 1]);
  expect([store.count(), store.count(), asked]).toEqual([2, 2, 2]);
});

test('what was taken back is not remembered', () => {
  const stores = openStores(openDatabase(':memory:'), defaultSettings);
  const message = {
    door: 'terminal',
    chatKey: 't',
    chatTitle: 't',
    isPrivate: false,
    sentAtMs: 5,
    person: { key: 'a', name: 'A' },
  };
  const own = stores.of(stores.households.admit(message as never));
  expect(own.settings.all().altitudeM).toBe(0);
  expect(() =>
    stores.together(() => {
      own.settings.set('altitudeM', 340);
      expect(own.settings.all().altitudeM).toBe(340);
      throw new Error('no');
    }),
  ).toThrow('no');
  expect(own.settings.all().altitudeM).toBe(0);
});
