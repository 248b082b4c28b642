import type { Db } from './open.ts';

export interface LearntMeasure {
  readonly unit: string;
  readonly food: string | null;
  readonly grams: number | null;
  readonly ml: number | null;
}

/** What a household taught about foods and measures. */
export function learntStore(db: Db) {
  const foods = db.prepare('SELECT words, ndb FROM learnt_food WHERE household = ?');
  const measures = db.prepare(
    'SELECT unit, food_words AS food, grams, ml FROM learnt_measure WHERE household = ? ORDER BY id',
  );
  const putFood = db.prepare(
    `INSERT INTO learnt_food (household, words, ndb) VALUES (?, ?, ?)
     ON CONFLICT (household, words) DO UPDATE SET ndb = excluded.ndb`,
  );
  return (household: number) => ({
    foods: (): ReadonlyMap<string, string> =>
      new Map(
        (foods.all(household) as { words: string; ndb: string }[]).map(({ words, ndb }) => [words, ndb]),
      ),
    measures: (): LearntMeasure[] => measures.all(household) as LearntMeasure[],
    learnFood: (words: string, ndb: string): void => void putFood.run(household, words, ndb),
  });
}

export type LearntStore = ReturnType<ReturnType<typeof learntStore>>;
