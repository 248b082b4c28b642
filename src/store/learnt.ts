import type { Db } from './db.ts';

export interface LearntMeasure {
  readonly id: number;
  /** The measure or vessel; 'each' for one whole thing. */
  readonly unit: string;
  /** Folded words of the food, null for every food. */
  readonly food: string | null;
  readonly grams: number | null;
  readonly ml: number | null;
}

/** What a household taught about foods, measures and the names of its meals. */
export function learntStore(db: Db) {
  const foods = db.prepare('SELECT words, means FROM learnt_food WHERE household = ? ORDER BY id');
  const putFood = db.prepare(
    `INSERT INTO learnt_food (household, words, means) VALUES (?, ?, ?)
     ON CONFLICT (household, words) DO UPDATE SET means = excluded.means`,
  );
  const dropFood = db.prepare('DELETE FROM learnt_food WHERE household = ? AND words = ?');
  const measures = db.prepare(
    'SELECT id, unit, food_words AS food, grams, ml FROM learnt_measure WHERE household = ? ORDER BY id',
  );
  const putMeasure = db.prepare(
    `INSERT INTO learnt_measure (household, unit, food_words, grams, ml) VALUES (:household, :unit, :food, :grams, :ml)
     ON CONFLICT (household, unit, coalesce(food_words, '')) DO UPDATE SET grams = excluded.grams, ml = excluded.ml`,
  );
  const dropMeasure = db.prepare('DELETE FROM learnt_measure WHERE household = ? AND id = ?');
  const aliases = db.prepare(
    'SELECT words, meal_key AS meal FROM meal_alias WHERE household = ? ORDER BY id',
  );
  const putAlias = db.prepare(
    `INSERT INTO meal_alias (household, words, meal_key) VALUES (?, ?, ?)
     ON CONFLICT (household, words) DO UPDATE SET meal_key = excluded.meal_key`,
  );
  const dropAlias = db.prepare('DELETE FROM meal_alias WHERE household = ? AND words = ?');
  return (household: number) => ({
    /** Folded words → the food's name that they mean. */
    foods: (): ReadonlyMap<string, string> =>
      new Map(
        (foods.all(household) as { words: string; means: string }[]).map(({ words, means }) => [
          words,
          means,
        ]),
      ),
    learnFood: (words: string, means: string): void => void putFood.run(household, words, means),
    /** @returns whether there was such a food */
    forgetFood: (words: string): boolean => dropFood.run(household, words).changes > 0,
    measures: (): LearntMeasure[] => measures.all(household) as LearntMeasure[],
    learnMeasure: (measure: Omit<LearntMeasure, 'id'>): void =>
      void putMeasure.run({ household, ...measure }),
    forgetMeasure: (id: number): boolean => dropMeasure.run(household, id).changes > 0,
    /** Other names of meals: as typed → the meal's folded name. */
    aliases: (): ReadonlyMap<string, string> =>
      new Map(
        (aliases.all(household) as { words: string; meal: string }[]).map(({ words, meal }) => [words, meal]),
      ),
    learnAlias: (words: string, mealKey: string): void => void putAlias.run(household, words, mealKey),
    forgetAlias: (words: string): boolean => dropAlias.run(household, words).changes > 0,
  });
}

export type LearntStore = ReturnType<ReturnType<typeof learntStore>>;
