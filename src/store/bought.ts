import { z } from 'zod';
import type { Per100 } from '#core/solids.ts';
import type { Db } from './db.ts';

const figure = z.number().nullable();
const Per100Shape: z.ZodType<Per100> = z.object({
  waterG: figure,
  kcal: figure,
  proteinG: figure,
  fatG: figure,
  carbohydrateG: figure,
  fibreG: figure,
  ashG: figure,
  sodiumMg: figure,
});

/** What the packets of bought food say. */
export function boughtStore(db: Db) {
  const insert = db.prepare(
    'INSERT INTO bought (household, batch, water_ml, per100_json) VALUES (:household, :batch, :waterMl, :json)',
  );
  const byId = db.prepare('SELECT per100_json AS json FROM bought WHERE household = ? AND id = ?').pluck();
  return (household: number) => ({
    /** @param batch the batch's row. @returns the row, by which its figures are found */
    keep: (batch: number, { waterMl, per100 }: { waterMl: number; per100: Per100 | null }): number =>
      Number(
        insert.run({
          household,
          batch,
          waterMl,
          json: per100 === null ? null : JSON.stringify(per100),
        }).lastInsertRowid,
      ),
    /** The figures of 100 g; undefined where the row is gone, or none were told. */
    byId: (id: number): Per100 | undefined => {
      const json = byId.get(household, id) as string | null | undefined;
      return json == null ? undefined : Per100Shape.parse(JSON.parse(json));
    },
  });
}

export type BoughtStore = ReturnType<ReturnType<typeof boughtStore>>;
