import type { SlotMark } from '#core/records.ts';
import type { Db } from './db.ts';

export interface SlotBan {
  readonly slot: number;
  readonly mealKey: string;
}

export interface SlotPin {
  readonly slot: number;
  readonly pouch: number;
}

/**
 * What is said by hand of single meals of a trip: what is not to be there, which pouch is to be opened there, which stay as
 * they are planned or are spare.
 */
export function slotRuleStore(db: Db) {
  const ofTrip = 'slot IN (SELECT id FROM slot WHERE trip = ?) AND household = ?';
  const bans = db.prepare(`SELECT slot, meal_key AS mealKey FROM slot_ban WHERE ${ofTrip} ORDER BY id`);
  const pins = db.prepare(`SELECT slot, pouch FROM slot_pin WHERE ${ofTrip} ORDER BY id`);
  const ban = db.prepare('INSERT INTO slot_ban (household, slot, meal_key) VALUES (?, ?, ?)');
  const allow = db.prepare('DELETE FROM slot_ban WHERE household = ? AND slot = ? AND meal_key = ?');
  const pin = db.prepare(
    `INSERT INTO slot_pin (household, slot, pouch) VALUES (?, ?, ?)
     ON CONFLICT (pouch) DO UPDATE SET slot = excluded.slot`,
  );
  const unpin = db.prepare('DELETE FROM slot_pin WHERE household = ? AND pouch = ?');
  const mark = db.prepare('INSERT OR IGNORE INTO slot_mark (household, slot, mark) VALUES (?, ?, ?)');
  const unmark = db.prepare('DELETE FROM slot_mark WHERE household = ? AND slot = ? AND mark = ?');
  return (household: number) => ({
    bans: (trip: number): SlotBan[] => bans.all(trip, household) as SlotBan[],
    pins: (trip: number): SlotPin[] => pins.all(trip, household) as SlotPin[],
    ban: (slot: number, mealKey: string): void => void ban.run(household, slot, mealKey),
    allow: (slot: number, mealKey: string): void => void allow.run(household, slot, mealKey),
    pin: (slot: number, pouch: number): void => void pin.run(household, slot, pouch),
    mark: (slot: number, as: SlotMark): void => void mark.run(household, slot, as),
    unmark: (slot: number, as: SlotMark): void => void unmark.run(household, slot, as),
    unpin: (pouch: number): void => void unpin.run(household, pouch),
  });
}
