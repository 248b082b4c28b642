import type { Eater } from '#core/records.ts';
import type { Db } from './db.ts';

type Food = 'never' | 'apart' | 'exact' | 'dislikes';
interface FoodRow {
  rule: 'never' | 'dislike';
  words: string;
  isApart: 0 | 1;
  isExact: 0 | 1;
}
type EaterRow = Omit<Eater, Food | 'isGone'> & { isGone: 0 | 1 };
export type NewEater = Omit<Eater, 'id' | 'isGone'>;

/** The people who eat, with what they must not and would rather not be served. */
export function eaterStore(db: Db) {
  const select = `SELECT id, name, kind, member, age_years AS ageYears, sex, activity, portion, sodium_mg AS sodiumMg,
      energy_kcal AS energyKcal, is_gone AS isGone FROM eater`;
  const all = db.prepare(`${select} WHERE household = ? ORDER BY id`);
  const byName = db.prepare(`${select} WHERE household = ? AND folded_name = ?`);
  const foods = db.prepare(
    'SELECT rule, words, is_apart AS isApart, is_exact AS isExact FROM eater_food WHERE eater = ? ORDER BY id',
  );
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
    `INSERT INTO eater_food (household, eater, rule, words, is_apart, is_exact)
     VALUES (:household, :eater, :rule, :words, :isApart, :isExact)
     ON CONFLICT (eater, words) DO UPDATE
       SET rule = excluded.rule, is_apart = excluded.is_apart, is_exact = excluded.is_exact
       WHERE rule <> excluded.rule OR is_apart <> excluded.is_apart OR is_exact <> excluded.is_exact`,
  );
  const dropFood = db.prepare('DELETE FROM eater_food WHERE household = ? AND eater = ? AND words = ?');

  const whole = (row: EaterRow): Eater => {
    const rows = foods.all(row.id) as FoodRow[];
    const of = (is: (food: FoodRow) => boolean) => rows.filter(is).map(({ words }) => words);
    return {
      ...row,
      isGone: row.isGone === 1,
      never: of(({ rule }) => rule === 'never'),
      apart: of(({ isApart }) => isApart === 1),
      exact: of(({ isExact }) => isExact === 1),
      dislikes: of(({ rule }) => rule === 'dislike'),
    };
  };
  const keepFoods = (
    household: number,
    eater: number,
    { never, apart, exact, dislikes }: Pick<Eater, Food>,
  ) => {
    const put = (rule: FoodRow['rule'], words: string) =>
      addFood.run({
        household,
        eater,
        rule,
        words,
        isApart: apart.includes(words) ? 1 : 0,
        isExact: exact.includes(words) ? 1 : 0,
      });
    for (const words of never) put('never', words);
    for (const words of dislikes) put('dislike', words);
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
      const id = Number(insert.run({ household, folded, ...eater }).lastInsertRowid);
      keepFoods(household, id, eater);
      return id;
    },
    change: (id: number, eater: Omit<NewEater, 'name'>): void => {
      update.run({ household, id, ...eater });
      const wanted = new Set([...eater.never, ...eater.dislikes]);
      for (const { words } of foods.all(id) as FoodRow[])
        if (!wanted.has(words)) dropFood.run(household, id, words);
      keepFoods(household, id, eater);
    },
    leave: (id: number): void => void leave.run(household, id),
  });
}

export type EaterStore = ReturnType<ReturnType<typeof eaterStore>>;
