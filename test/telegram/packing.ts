import { fillHouseholds } from '../../src/bench/full-house.ts';
import { openDatabase } from '#store/open.ts';
import type { Db } from '#store/db.ts';

export const place = 'Heron Lake';

/** Straight into the tables: a trip of three days with pouches kept for its meals, from whatever is in stock. */
export function keepPouches(db: Db, household: number, count: number): void {
  const trip = db
    .prepare(
      `INSERT INTO trip (household, place, folded_place, starts_on, ends_on, made_at_ms)
       VALUES (?, ?, 'heron lake', '2029-01-12', '2029-01-14', 0)`,
    )
    .run(household, place).lastInsertRowid;
  const slots = ['2029-01-12', '2029-01-13', '2029-01-14'].flatMap((day) =>
    ['breakfast', 'lunch', 'dinner'].map(
      (meal) =>
        db
          .prepare('INSERT INTO slot (household, trip, on_day, meal) VALUES (?, ?, ?, ?)')
          .run(household, trip, day, meal).lastInsertRowid,
    ),
  );
  const pouches = db
    .prepare("SELECT id FROM pouch WHERE household = ? AND state = 'stock' ORDER BY id LIMIT ?")
    .pluck()
    .all(household, count) as number[];
  if (pouches.length < count) throw new Error(`only ${pouches.length} pouches to keep`);
  pouches.forEach((pouch, i) =>
    db
      .prepare("INSERT INTO promise (household, trip, slot, pouch, eaters_json) VALUES (?, ?, ?, ?, '[]')")
      .run(household, trip, slots[i % slots.length], pouch),
  );
}

/** A household's file with as many pouches kept. @returns its chat is that of the first household of `full-house` */
export function packingHouse(path: string, count: number): void {
  fillHouseholds(path, 1, 10 * Math.ceil(count / 10));
  const db = openDatabase(path);
  keepPouches(db, 1, count);
  db.close();
}

/** Every kept pouch by its code, and whether it is packed. */
export const packedNow = (db: Db): Map<string, boolean> =>
  new Map(
    (
      db
        .prepare(
          `SELECT 'B' || batch.no || '-' || pouch.no AS code, packed FROM promise
             JOIN pouch ON pouch.id = promise.pouch JOIN batch ON batch.id = pouch.batch WHERE came IS NULL`,
        )
        .all() as { code: string; packed: number }[]
    ).map(({ code, packed }) => [code, packed === 1]),
  );
