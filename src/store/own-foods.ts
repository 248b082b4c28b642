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

/** A food by the panel of the household's packet. */
export interface OwnFood {
  readonly id: number;
  readonly foodKey: string;
  readonly called: string;
  readonly baseNdb: string;
  readonly per100: Per100;
  readonly leastWaterG: number;
  readonly mostWaterG: number;
  readonly readBy: number;
  readonly readAtMs: number;
}

type Row = Omit<OwnFood, 'per100'> & { readonly per100Json: string };

/** Foods by their packets' panels; older ones stay for the recipes that count with them. */
export function ownFoodStore(db: Db) {
  const columns = `id, food_key AS foodKey, called, base_ndb AS baseNdb, per100_json AS per100Json,
    least_water_g AS leastWaterG, most_water_g AS mostWaterG, read_by AS readBy, read_at_ms AS readAtMs`;
  const current = db.prepare(
    `SELECT ${columns} FROM own_food WHERE household = ? AND is_current = 1 ORDER BY id`,
  );
  const byId = db.prepare(`SELECT ${columns} FROM own_food WHERE household = ? AND id = ?`);
  const retire = db.prepare(
    'UPDATE own_food SET is_current = 0 WHERE household = ? AND food_key = ? AND is_current = 1',
  );
  const insert = db.prepare(
    `INSERT INTO own_food (household, food_key, called, base_ndb, per100_json, least_water_g, most_water_g, read_by, read_at_ms)
     VALUES (:household, :foodKey, :called, :baseNdb, :per100Json, :leastWaterG, :mostWaterG, :readBy, :readAtMs)`,
  );
  const whole = ({ per100Json, ...row }: Row): OwnFood => ({
    ...row,
    per100: Per100Shape.parse(JSON.parse(per100Json)),
  });
  return (household: number) => ({
    all: (): OwnFood[] => (current.all(household) as Row[]).map(whole),
    byId: (id: number): OwnFood | undefined => {
      const row = byId.get(household, id) as Row | undefined;
      return row && whole(row);
    },
    keep: ({ per100, ...food }: Omit<OwnFood, 'id'>): void => {
      retire.run(household, food.foodKey);
      insert.run({ household, ...food, per100Json: JSON.stringify(per100) });
    },
    /** @returns whether there was such a food */
    forget: (foodKey: string): boolean => retire.run(household, foodKey).changes > 0,
  });
}

export type OwnFoodStore = ReturnType<ReturnType<typeof ownFoodStore>>;
