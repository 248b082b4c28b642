import { z } from 'zod';
import { type Occasion, occasions } from '#core/occasions.ts';
import type { Db } from './db.ts';

const Uses = z.array(z.enum(occasions));

/** What meals are for, as far as the household said. */
export function mealUseStore(db: Db) {
  const all = db.prepare(
    'SELECT meal_key AS meal, uses_json AS uses FROM meal_use WHERE household = ? ORDER BY id',
  );
  const put = db.prepare(
    `INSERT INTO meal_use (household, meal_key, uses_json) VALUES (?, ?, ?)
     ON CONFLICT (household, meal_key) DO UPDATE SET uses_json = excluded.uses_json`,
  );
  return (household: number) => ({
    /** Folded names of meals → what they are for. */
    all: (): ReadonlyMap<string, readonly Occasion[]> =>
      new Map(
        (all.all(household) as { meal: string; uses: string }[]).map(({ meal, uses }) => [
          meal,
          Uses.parse(JSON.parse(uses)),
        ]),
      ),
    put: (mealKey: string, uses: readonly Occasion[]): void =>
      void put.run(household, mealKey, JSON.stringify(uses)),
  });
}
