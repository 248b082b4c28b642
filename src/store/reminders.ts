import { againKey, laterKey } from '#core/reminders.ts';
import type { Message } from '#core/talk.ts';
import { lightly } from './open.ts';
import type { Db } from './db.ts';

type Door = Message['door'];

/** Where a household is spoken to without having asked. */
export interface Post {
  readonly door: Door;
  readonly chatKey: string;
  readonly topicKey: string | null;
}

const dayMs = 24 * 3_600_000;

/** When households are to be looked at, what they were reminded of, and the few records that reminders need. */
export function reminderStore(db: Db) {
  const reachable = `SELECT 1 FROM chat WHERE chat.household = watch.household AND door = ? AND is_private = 0 AND is_away = 0`;
  const due = db
    .prepare(
      `SELECT household FROM watch WHERE next_at_ms <= ? AND EXISTS (${reachable}) ORDER BY next_at_ms LIMIT 1`,
    )
    .pluck();
  const next = db
    .prepare(`SELECT next_at_ms FROM watch WHERE EXISTS (${reachable}) ORDER BY next_at_ms LIMIT 1`)
    .pluck();
  const post = db.prepare(
    `SELECT door, chat_key AS chatKey, topic_key AS topicKey FROM chat
     WHERE household = ? AND door = ? AND is_private = 0 AND is_away = 0 ORDER BY admitted_at_ms, rowid LIMIT 1`,
  );
  const look = db.prepare('UPDATE watch SET next_at_ms = ? WHERE household = ?');
  const tripsLookedOn = db.prepare('SELECT trips_looked_on FROM watch WHERE household = ?').pluck();
  const lookedAtTrips = db.prepare('UPDATE watch SET trips_looked_on = ? WHERE household = ?');
  const was = db.prepare('SELECT at_ms FROM reminded WHERE household = ? AND about = ?').pluck();
  const gathered = db
    .prepare(
      `SELECT max(at_ms) FROM reminded WHERE household = ? AND (about GLOB 'seal *' OR about GLOB 'again seal *'
         OR about GLOB 'best-by *' OR about GLOB 'trip *')`,
    )
    .pluck();
  const put = db.prepare('INSERT INTO reminded (household, about, at_ms) VALUES (?, ?, ?)');
  const untell = db.prepare('DELETE FROM reminded WHERE household = ? AND about = ?');
  const drying = db
    .prepare(
      `SELECT no FROM batch WHERE household = ? AND loaded_at_ms > ? AND is_mixed = 0
         AND NOT EXISTS (SELECT 1 FROM pouch WHERE pouch.batch = batch.id)
         AND NOT EXISTS (SELECT 1 FROM mix_part WHERE mix_part.batch = batch.id) ORDER BY no`,
    )
    .pluck();
  const sealed = db.prepare(
    `SELECT batch, sealed_at_ms AS atMs FROM pouch WHERE household = :household AND state = 'stock' AND sealed_at_ms > :afterMs
       AND NOT EXISTS (SELECT 1 FROM batch WHERE batch.id = pouch.batch AND is_bought = 1)
       AND NOT EXISTS (SELECT 1 FROM finding WHERE finding.pouch = pouch.id)
     UNION SELECT batch, at_ms FROM finding JOIN pouch ON pouch.id = finding.pouch
       WHERE finding.household = :household AND at_ms > :afterMs AND what = 'resealed' AND state = 'stock'
         AND NOT EXISTS (SELECT 1 FROM finding AS later WHERE later.pouch = pouch.id AND later.id > finding.id)
     ORDER BY 2, 1`,
  );
  const firstBestBy = db
    .prepare(`SELECT min(best_by_on) FROM pouch WHERE household = ? AND state = 'stock'`)
    .pluck();
  const trips = db
    .prepare(
      `SELECT id FROM trip WHERE household = ? AND is_over = 0 AND starts_on > ? AND starts_on <= ? AND made_at_ms < ?
       ORDER BY starts_on`,
    )
    .pluck();

  return {
    /** A household that is to be looked at now; undefined when there is none. */
    due: (door: Door, nowMs: number): number | undefined => due.get(nowMs, door) as number | undefined,
    /** When the next household is to be looked at, ms; undefined when none is. */
    next: (door: Door): number | undefined => next.get(door) as number | undefined,
    of: (household: number) => ({
      /** Where it is posted; undefined while no group can be reached. */
      post: (door: Door): Post | undefined => post.get(household, door) as Post | undefined,
      lookAgainAt: (ms: number): void => void look.run(ms, household),
      /** The same outside a transaction, when nothing was due: if it is lost, the household is looked at once more. */
      rest: (ms: number, tripsLookedOn: string | null): void =>
        lightly(db, () => {
          look.run(ms, household);
          if (tripsLookedOn !== null) lookedAtTrips.run(tripsLookedOn, household);
        }),
      /** The ISO day on which trips were last held against stock. */
      tripsLookedOn: (): string | null => tripsLookedOn.get(household) as string | null,
      lookedAtTrips: (day: string): void => void lookedAtTrips.run(day, household),
      /** When the household was told of a thing, ms; undefined when it was not. */
      remindedAtMs: (about: string): number | undefined => was.get(household, about) as number | undefined,
      /** When it was last told of what can wait for a day, ms. */
      gatheredAtMs: (): number | null => gathered.get(household) as number | null,
      reminded: (about: string, atMs: number): void => void put.run(household, about, atMs),
      /** Somebody put it off: it is told once more, however often it was. */
      putOff: (about: string, untilMs: number): void => {
        untell.run(household, againKey(about));
        untell.run(household, laterKey(about));
        put.run(household, laterKey(about), untilMs);
      },
      /** Numbers of batches of which nothing is sealed, loaded in the last two months. */
      drying: (nowMs: number): number[] => drying.all(household, nowMs - 60 * dayMs) as number[],
      /** Pouches sealed in the last weeks and still in stock, by batch (its row) and moment. */
      sealed: (nowMs: number): { batch: number; atMs: number }[] =>
        sealed.all({ household, afterMs: nowMs - 20 * dayMs }) as { batch: number; atMs: number }[],
      firstBestByOn: (): string | null => firstBestBy.get(household) as string | null,
      /** Trips that start behind one day and not behind another, planned before a moment. */
      tripsBetween: (after: string, upTo: string, madeBeforeMs: number): number[] =>
        trips.all(household, after, upTo, madeBeforeMs) as number[],
    }),
  };
}

export type ReminderStore = ReturnType<typeof reminderStore>;
