import type { Eater } from '#core/records.ts';
import type { Db } from './db.ts';

type EaterRow = Omit<Eater, 'never' | 'dislikes' | 'isGone'> & { isGone: 0 | 1 };
export type NewEater = Omit<Eater, 'id' | 'isGone'>;

/** The people who eat, with what they must not and would rather not be served. */
export function eaterStore(db: Db) {
  const select = `SELECT id, name, kind, member, age_years AS ageYears, sex, activity, portion, sodium_mg AS sodiumMg,
      energy_kcal AS energyKcal, is_gone AS isGone FROM eater`;
  const all = db.prepare(`${select} WHERE household = ? ORDER BY id`);
  const byName = db.prepare(`${select} WHERE household = ? AND folded_name = ?`);
  const foods = db.prepare('SELECT rule, words FROM eater_food WHERE eater = ? ORDER BY id');
  const insert = db.prepare(
    `INSERT INTO eater (household, name, folded_name, kind, member, age_years, sex, activity, portion, sodium_mg, energy_kcal)
     VALUES (:household, :name, :folded, :kind, :member, :ageYears, :sex, :activity, :portion, :sodiumMg, :energyKcal)`,
  );
  const update = db.prepare(
    `UPDATE eater SET kind = :kind, member = :member, age_years = :ageYears, sex = :sex, activity = :activity,
       portion = :portion, sodium_mg = :sodiumMg, energy_kcal = :energyKcal, is_gone = 0 WHERE household = :household AND id = :id`,
  );
  const leave = db.prepare('UPDATE eater SET is_gone = 1 WHERE household = ? AND id = ?');
  const addFood = db.prepare(
    `INSERT INTO eater_food (household, eater, rule, words) VALUES (?, ?, ?, ?)
     ON CONFLICT (eater, words) DO UPDATE SET rule = excluded.rule`,
  );
  const dropFood = db.prepare('DELETE FROM eater_food WHERE household = ? AND eater = ? AND words = ?');

  const whole = (row: EaterRow): Eater => {
    const rules = foods.all(row.id) as { rule: 'never' | 'dislike'; words: string }[];
    const of = (rule: string) => rules.filter((r) => r.rule === rule).map((r) => r.words);
    return { ...row, isGone: row.isGone === 1, never: of('never'), dislikes: of('dislike') };
  };
  return (household: number) => ({
    /** Everyone who still eats here. */
    here: (): Eater[] => (all.all(household) as EaterRow[]).filter((row) => row.isGone === 0).map(whole),
    all: (): Eater[] => (all.all(household) as EaterRow[]).map(whole),
    find: (folded: string): Eater | undefined => {
      const row = byName.get(household, folded) as EaterRow | undefined;
      return row && whole(row);
    },
    add: (folded: string, eater: NewEater): number => {
      const { never, dislikes, ...head } = eater;
      const id = Number(insert.run({ household, folded, ...head }).lastInsertRowid);
      for (const words of never) addFood.run(household, id, 'never', words);
      for (const words of dislikes) addFood.run(household, id, 'dislike', words);
      return id;
    },
    change: (id: number, eater: Omit<NewEater, 'name'>): void => {
      const { never, dislikes, ...head } = eater;
      update.run({ household, id, ...head });
      const wanted = new Set([...never, ...dislikes]);
      for (const { words } of foods.all(id) as { words: string }[])
        if (!wanted.has(words)) dropFood.run(household, id, words);
      for (const words of never) addFood.run(household, id, 'never', words);
      for (const words of dislikes) addFood.run(household, id, 'dislike', words);
    },
    leave: (id: number): void => void leave.run(household, id),
  });
}

export type EaterStore = ReturnType<ReturnType<typeof eaterStore>>;
