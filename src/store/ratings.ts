import type { Db } from './db.ts';

/** What somebody said of a meal they ate. */
export interface Rating {
  readonly mealKey: string;
  readonly batch: number | null;
  readonly eater: number | null;
  readonly byMember: number;
  readonly atMs: number;
  readonly balanceMl: number | null;
  readonly pouredMl: number | null;
  readonly moreMl: number | null;
  /** How long it stood by the figure of that day, and how much longer it should have, min. */
  readonly soakedMin: number | null;
  readonly soakMoreMin: number | null;
  readonly salt: 'too salty' | 'not salty enough' | null;
  readonly portion: 'too much' | 'hungry' | null;
  readonly again: boolean | null;
}

export interface StoveWeighed {
  readonly atMs: number;
  readonly burntG: number;
  readonly waterMl: number;
  readonly startC: number;
  readonly boilC: number;
  readonly lhvMJPerKg: number;
}

/** Ratings of meals and weighings of the stove: what figures are learnt from. */
export function ratingStore(db: Db) {
  const ofMeal = db.prepare(
    `SELECT meal_key AS mealKey, batch, eater, by_member AS byMember, at_ms AS atMs, balance_ml AS balanceMl,
       poured_ml AS pouredMl, more_ml AS moreMl, soaked_min AS soakedMin, soak_more_min AS soakMoreMin, salt, portion, again FROM rating
     WHERE household = ? AND meal_key = ? ORDER BY at_ms, id`,
  );
  const insert = db.prepare(
    `INSERT INTO rating (household, meal_key, batch, eater, by_member, at_ms, balance_ml, poured_ml, more_ml, soaked_min, soak_more_min, salt, portion, again)
     VALUES (:household, :mealKey, :batch, :eater, :byMember, :atMs, :balanceMl, :pouredMl, :moreMl, :soakedMin, :soakMoreMin, :salt, :portion, :again)`,
  );
  const portions = db
    .prepare('SELECT count(*) FROM rating WHERE household = ? AND eater = ? AND portion IS NOT NULL')
    .pluck();
  const stoves = db.prepare(
    `SELECT at_ms AS atMs, burnt_g AS burntG, water_ml AS waterMl, start_c AS startC, boil_c AS boilC,
       lhv_mj_per_kg AS lhvMJPerKg FROM stove WHERE household = ? ORDER BY at_ms, id`,
  );
  const insertStove = db.prepare(
    `INSERT INTO stove (household, at_ms, burnt_g, water_ml, start_c, boil_c, lhv_mj_per_kg)
     VALUES (:household, :atMs, :burntG, :waterMl, :startC, :boilC, :lhvMJPerKg)`,
  );
  return (household: number) => ({
    /** Oldest first. */
    ofMeal: (mealKey: string): Rating[] =>
      (ofMeal.all(household, mealKey) as (Omit<Rating, 'again'> & { again: 0 | 1 | null })[]).map((row) => ({
        ...row,
        again: row.again === null ? null : row.again === 1,
      })),
    /** How often an eater's portion was called too much or too little. */
    portionsOf: (eater: number): number => portions.get(household, eater) as number,
    rate: (rating: Rating): void =>
      void insert.run({ household, ...rating, again: rating.again === null ? null : rating.again ? 1 : 0 }),
    stoves: (): StoveWeighed[] => stoves.all(household) as StoveWeighed[],
    weighStove: (weighed: StoveWeighed): void => void insertStove.run({ household, ...weighed }),
  });
}

export type RatingStore = ReturnType<ReturnType<typeof ratingStore>>;
