// Witness: that a list and the records agree at the end, however often the bot is killed and whoever presses what how
// often, is this project's promise, no source.
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import { chance } from '../../src/bench/chance.ts';
import { chatOf } from '../../src/bench/full-house.ts';
import { type Child, look, newFolder, startBot } from './child.ts';
import { peopleOn, until } from './group.ts';
import { packedNow, packingHouse } from './packing.ts';
import { openPlatform } from './platform.ts';

const ends: (() => unknown)[] = [];
afterAll(async () => {
  for (const end of ends.toReversed()) await end();
});

const pouches = 46;
const presses = 200;
const people = [
  { id: 5_000_000_000, is_bot: false, first_name: 'Ana' },
  { id: 5_000_000_077, is_bot: false, first_name: 'Ben' },
];

test(
  '46 pouches, 200 presses by two in random order with repeats, kills in between',
  { timeout: 300_000 },
  async () => {
    const random = chance(7);
    const pick = <T>(some: readonly T[]): T => some[Math.floor(random() * some.length)]!;
    const platform = await openPlatform();
    const folder = newFolder();
    ends.push(folder.remove, () => platform.close());
    packingHouse(folder.database, pouches);
    const group = platform.chat({ id: chatOf(0), type: 'supergroup', title: 'Kitchen 0' });
    const { say, press } = peopleOn(platform);
    let bot: Child = startBot(platform, folder.database);
    ends.push(() => bot.process.kill('SIGKILL'));
    say(group, '/pack', { from: people[0], date: Math.floor(Date.now() / 1000) });
    const list = await until(() => platform.sent[0]);

    /** Every button that was ever on the list: screens lag behind. */
    const seen = new Map<string, string>();
    let kills = 0;
    for (let i = 0; i < presses; i += 1) {
      for (const { text, callback_data: data } of list.keys.flat()) seen.set(data, text);
      const old = random() < 0.2 ? pick([...seen.keys()]) : undefined;
      press(group, list.messageId, old ?? pick(list.keys.flat()).callback_data, pick(people));
      if (random() < 0.06) {
        bot.process.kill('SIGKILL');
        await bot.exited;
        kills += 1;
        bot = startBot(platform, folder.database);
      }
      if (random() < 0.3) await new Promise((resolve) => setTimeout(resolve, random() * 120));
    }
    expect(kills).toBeGreaterThan(3);
    await until(() => platform.unconfirmed().length === 0, 120_000);
    await until(
      () => look(folder.database, 'SELECT 1 FROM live WHERE changed > shown').length === 0,
      120_000,
    );

    // Now every page is looked at, and each pouch stands as it is recorded.
    const db = new Database(folder.database, { readonly: true });
    const recorded = packedNow(db);
    const shown = new Map<string, boolean>();
    const pageOf = () => look<{ page: number }>(folder.database, 'SELECT page FROM live')[0]?.page;
    const read = () => {
      for (const { text } of list.keys.flat()) {
        const [, mark, code] = /^([✓☐]) (B\d+-\d+)$/.exec(text) ?? [];
        if (code) shown.set(code, mark === '✓');
      }
    };
    const turn = async (label: RegExp) => {
      const key = list.keys.flat().find(({ text }) => label.test(text));
      if (!key) return false;
      const before = pageOf();
      press(group, list.messageId, key.callback_data, people[0]);
      await until(
        () =>
          pageOf() !== before &&
          look(folder.database, 'SELECT 1 FROM live WHERE changed > shown').length === 0,
      );
      read();
      return true;
    };
    read();
    while (await turn(/^◀/)) continue;
    while (await turn(/▶$/)) continue;
    expect(shown).toEqual(recorded);
    expect(recorded.size).toBe(pouches);
    const packed = [...recorded.values()].filter(Boolean).length;
    expect(list.text).toContain(`${packed} of ${pouches} pouches packed`);
    // One message all the while, and no change recorded twice: pack and take out alternate for each pouch.
    expect(platform.sent.filter(({ text }) => text.includes('pouches packed'))).toHaveLength(1);
    const changes = db
      .prepare(
        `SELECT row_id AS id, after_json ->> '$.packed' AS packed FROM row_change JOIN entry ON entry.id = entry
       WHERE table_name = 'promise' ORDER BY row_change.id`,
      )
      .all() as { id: number; packed: number }[];
    const last = new Map<number, number>();
    const repeated = changes.filter(({ id, packed: is }) => {
      const same = last.get(id) === is;
      last.set(id, is);
      return same;
    });
    expect(repeated).toEqual([]);
    expect(changes.length).toBeGreaterThan(40);
    db.close();
  },
);
