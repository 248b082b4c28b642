// Witness: EXPLAIN QUERY PLAN (sqlite.org, eqp.html) says SCAN where every row of a table is read.
import { expect, test } from 'vitest';
import { defaultSettings } from '#core/settings.ts';
import { deliveryStore } from '#store/deliveries.ts';
import { openStores } from '#store/house.ts';
import { openDatabase } from '#store/open.ts';

/** Rare, and asked by whoever runs the bot or at the start alone. */
const mayScan = [
  /count\(\*\) FROM outbox/,
  /DELETE FROM (outbox|seen|heard|button)/,
  /max\(at_ms\) FROM seen/,
  /FROM unfinished/,
  /UPDATE unfinished/,
  /FROM temp\.writing|FROM writing/,
  /json_each|pragma_/,
  // Walked in the order of its index and ended at the first row that fits.
  /FROM watch WHERE/,
  /FROM household WHERE admitted_by/,
  /^UPDATE (entry|wrong_code|member|outbox) SET (chat_key|person_key)/,
];

test('no request reads every row of a table that all households share', () => {
  const db = openDatabase(':memory:');
  const asked: string[] = [];
  const prepare = db.prepare.bind(db);
  db.prepare = (sql: string) => {
    asked.push(sql);
    return prepare(sql);
  };
  const stores = openStores(db, defaultSettings);
  deliveryStore(db);
  stores.of(1);
  stores.prepareAll();
  expect(asked.length).toBeGreaterThan(100);
  const scans = asked
    .filter(
      (sql) => /^\s*(SELECT|UPDATE|DELETE|WITH)/i.test(sql) && !mayScan.some((known) => known.test(sql)),
    )
    .flatMap((sql) => {
      const plan = prepare(`EXPLAIN QUERY PLAN ${sql}`).all(
        ...Array.from({ length: (sql.match(/\?/g) ?? []).length }, () => null),
        Object.fromEntries([...sql.matchAll(/:([a-z]\w*)/gi)].map((m) => [m[1]!, null])),
      ) as { detail: string }[];
      return plan
        .filter(({ detail }) => /^SCAN (?!\(|CONSTANT|weight\b)/.test(detail))
        .map(({ detail }) => `${detail}: ${sql.replace(/\s+/g, ' ').slice(0, 140)}`);
    });
  expect(scans).toEqual([]);
});
