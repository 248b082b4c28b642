import type { MeterReading } from '#core/costs.ts';
import type { Db } from './db.ts';

export interface Price {
  /** Folded name of the thing: two with one key are one thing. */
  readonly key: string;
  readonly called: string;
  readonly per: 'kg' | 'kWh' | 'piece';
  /** For one of `per`, in the currency. */
  readonly amount: number;
  /** As the household writes it; '' where none was said. */
  readonly currency: string;
}

/** What things cost, and what the dryer's meter showed. */
export function priceStore(db: Db) {
  const all = db.prepare(
    'SELECT thing_key AS key, called, per, amount, currency FROM price WHERE household = ? ORDER BY per, called',
  );
  const put = db.prepare(
    `INSERT INTO price (household, thing_key, called, per, amount, currency, told_at_ms)
     VALUES (:household, :key, :called, :per, :amount, :currency, :atMs)
     ON CONFLICT (household, thing_key) DO UPDATE SET
       called = excluded.called, per = excluded.per, amount = excluded.amount, currency = excluded.currency,
       told_at_ms = excluded.told_at_ms`,
  );
  const forget = db.prepare('DELETE FROM price WHERE household = ? AND thing_key = ?');
  const readings = db.prepare(
    'SELECT at_ms AS atMs, kwh FROM meter_reading WHERE household = ? ORDER BY at_ms, id',
  );
  const read = db.prepare('INSERT INTO meter_reading (household, at_ms, kwh) VALUES (?, ?, ?)');
  return (household: number) => ({
    all: (): Price[] => all.all(household) as Price[],
    put: (price: Price, atMs: number): void => void put.run({ household, ...price, atMs }),
    /** @returns whether there was one */
    forget: (key: string): boolean => forget.run(household, key).changes > 0,
    readings: (): MeterReading[] => readings.all(household) as MeterReading[],
    read: (atMs: number, kwh: number): void => void read.run(household, atMs, kwh),
  });
}
