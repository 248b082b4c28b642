import { z } from 'zod';
import { allergens, type Contents, diets, kinds } from '#core/allergens.ts';
import type { NamedFood, Recipe, RecipeLine } from '#core/records.ts';
import type { Db } from './db.ts';

const ContentsShape: z.ZodType<Contents> = z.object({
  contains: z.array(z.enum(allergens)),
  check: z.array(z.enum(allergens)),
  kinds: z.array(z.enum(kinds)),
  checkKinds: z.array(z.enum(kinds)),
  hides: z.array(z.enum(kinds)).optional(),
  claims: z.array(z.enum(diets)).optional(),
});
const Remarks = z.array(z.string());
const Named = z.array(z.object({ called: z.string(), contents: ContentsShape }));
const namedIn = (json: string): NamedFood[] => Named.parse(JSON.parse(json));

interface RecipeRow {
  id: number;
  name: string;
  servings: number;
  potG: number | null;
  method: string;
  eaten: Recipe['eaten'];
  mentionsJson: string;
}

export interface LineRow {
  typed: string;
  state: RecipeLine['state'];
  called: string;
  ndb: string | null;
  grams: number | null;
  contentsJson: string | null;
  remarksJson: string;
  namedJson: string;
  question: string | null;
  section: string | null;
  camp: RecipeLine['camp'];
}

/** A line as its row keeps it, and back. */
export const lineIn = ({ contentsJson, remarksJson, namedJson, ...line }: LineRow): RecipeLine => ({
  ...line,
  contents: contentsJson === null ? null : ContentsShape.parse(JSON.parse(contentsJson)),
  remarks: Remarks.parse(JSON.parse(remarksJson)),
  named: namedIn(namedJson),
});
export const lineRow = ({ contents, remarks, named, ...line }: RecipeLine): LineRow => ({
  ...line,
  contentsJson: contents === null ? null : JSON.stringify(contents),
  remarksJson: JSON.stringify(remarks),
  namedJson: JSON.stringify(named),
});

/** Raise it when lines recorded before must be read again. */
export const currentReader = 1;

export type NewRecipe = Omit<Recipe, 'id'>;

/** Recipes: the row of today for each name, and the older ones that batches were cooked from. */
export function recipeStore(db: Db) {
  const columns = 'id, name, servings, pot_g AS potG, method, eaten, mentions_json AS mentionsJson';
  const current = db.prepare(
    `SELECT ${columns} FROM recipe WHERE household = ? AND folded_name = ? AND is_current = 1`,
  );
  const byId = db.prepare(`SELECT ${columns} FROM recipe WHERE household = ? AND id = ?`);
  const names = db
    .prepare('SELECT name FROM recipe WHERE household = ? AND is_current = 1 ORDER BY folded_name')
    .pluck();
  const lines = db.prepare(
    `SELECT typed, state, called, ndb, grams, contents_json AS contentsJson, remarks_json AS remarksJson,
       named_json AS namedJson, question, section, camp
     FROM recipe_line WHERE recipe = ? ORDER BY position`,
  );
  const retire = db.prepare(
    'UPDATE recipe SET is_current = 0 WHERE household = ? AND folded_name = ? AND is_current = 1',
  );
  const insert = db.prepare(
    `INSERT INTO recipe (household, name, folded_name, servings, pot_g, method, eaten, mentions_json, made_at_ms, is_current)
     VALUES (:household, :name, :folded, :servings, :potG, :method, :eaten, :mentionsJson, :atMs, :isCurrent)`,
  );
  const insertLine = db.prepare(
    `INSERT INTO recipe_line (household, recipe, position, typed, state, called, ndb, grams, contents_json, remarks_json, named_json, question, section, camp, reader)
     VALUES (:household, :recipe, :position, :typed, :state, :called, :ndb, :grams, :contentsJson, :remarksJson, :namedJson, :question, :section, :camp, ${currentReader})`,
  );
  const updateLine = db.prepare(
    `UPDATE recipe_line SET typed = :typed, state = :state, called = :called, ndb = :ndb, grams = :grams,
       contents_json = :contentsJson, remarks_json = :remarksJson, named_json = :namedJson, question = :question,
       section = :section, camp = :camp, reader = ${currentReader}
     WHERE household = :household AND recipe = :recipe AND position = :position`,
  );
  const deleteLine = db.prepare(
    'DELETE FROM recipe_line WHERE household = ? AND recipe = ? AND position = ?',
  );
  const setMethod = db.prepare('UPDATE recipe SET method = ? WHERE household = ? AND id = ?');
  const setMentions = db.prepare('UPDATE recipe SET mentions_json = ? WHERE household = ? AND id = ?');
  const everNamed = db
    .prepare('SELECT 1 FROM recipe WHERE household = ? AND folded_name = ? LIMIT 1')
    .pluck();
  const rename = db.prepare(
    'UPDATE recipe SET name = :name, folded_name = :to WHERE household = :household AND folded_name = :from',
  );
  // What else goes by a meal's name; a wish or rating is of the meal, whatever it is called.
  const renameElsewhere = [
    ...['rating', 'meal_alias', 'meal_use'].map(
      (table) => `UPDATE ${table} SET meal_key = :to WHERE household = :household`,
    ),
    'UPDATE slot_ban SET meal_key = :to WHERE slot IN (SELECT id FROM slot WHERE household = :household)',
    // By its trips: wishes are found by the trip they are for.
    'UPDATE wish SET meal_key = :to WHERE trip IN (SELECT id FROM trip WHERE household = :household)',
  ].map((update) => db.prepare(`${update} AND meal_key = :from`));
  const setEaten = db.prepare('UPDATE recipe SET eaten = ? WHERE household = ? AND folded_name = ?');
  const setPot = db.prepare('UPDATE recipe SET pot_g = ? WHERE household = ? AND id = ?');

  const withLines = ({ mentionsJson, ...row }: RecipeRow): Recipe => ({
    ...row,
    mentions: namedIn(mentionsJson),
    lines: (lines.all(row.id) as LineRow[]).map(lineIn),
  });

  return (household: number) => {
    // Batches of one recipe share it within a message; a change forgets what was read.
    const known = new Map<number, Recipe>();
    const keepRow = (folded: string, recipe: NewRecipe, atMs: number, isCurrent: 0 | 1): number => {
      const { lines: recipeLines, mentions, ...head } = recipe;
      const row = { household, folded, atMs, isCurrent, mentionsJson: JSON.stringify(mentions), ...head };
      const id = Number(insert.run(row).lastInsertRowid);
      recipeLines.forEach((line, i) =>
        insertLine.run({ household, recipe: id, position: i + 1, ...lineRow(line) }),
      );
      return id;
    };
    return {
      /** Names of the recipes of today. */
      names: (): string[] => names.all(household) as string[],
      /** @param folded the name as `fold` gives it */
      find: (folded: string): Recipe | undefined => {
        const row = current.get(household, folded) as RecipeRow | undefined;
        return row && withLines(row);
      },
      byId: (id: number): Recipe => {
        const recipe = known.get(id) ?? withLines(byId.get(household, id) as RecipeRow);
        known.set(id, recipe);
        return recipe;
      },
      /** Keeps a recipe as the one of today; an earlier one of that name stays for the batches cooked from it. */
      keep: (folded: string, recipe: NewRecipe, atMs: number): number => {
        retire.run(household, folded);
        return keepRow(folded, recipe, atMs, 1);
      },
      /** Keeps lines that are no recipe of today: what came from the cupboard into a pouch. */
      keepBeside: (folded: string, recipe: NewRecipe, atMs: number): number =>
        keepRow(folded, recipe, atMs, 0),
      /**
       * Puts one line right where it stands, for the batches cooked from it too; the journal keeps what it said.
       * @param position counts from 1
       */
      mendLine: (recipe: number, position: number, line: RecipeLine): void => {
        known.delete(recipe);
        updateLine.run({ household, recipe, position, ...lineRow(line) });
      },
      /** Adds a line behind the last. */
      addLine: (recipe: number, position: number, line: RecipeLine): void => {
        known.delete(recipe);
        insertLine.run({ household, recipe, position, ...lineRow(line) });
      },
      /** Takes a line out where it stands, for the batches cooked from it too; the journal keeps it. @param left the others */
      takeOut: (recipe: number, left: readonly RecipeLine[]): void => {
        known.delete(recipe);
        left.forEach((line, i) => updateLine.run({ household, recipe, position: i + 1, ...lineRow(line) }));
        deleteLine.run(household, recipe, left.length + 1);
      },
      /** The method's text; the journal keeps what it said. */
      describe: (recipe: number, method: string): void => {
        known.delete(recipe);
        setMethod.run(method, household, recipe);
      },
      /** What of headings and method is still open. */
      settleMentions: (recipe: number, left: readonly NamedFood[]): void => {
        known.delete(recipe);
        setMentions.run(JSON.stringify(left), household, recipe);
      },
      /** Whether a recipe, of today or older, ever had this name. */
      everNamed: (folded: string): boolean => everNamed.get(household, folded) !== undefined,
      /** Calls a meal something else: its recipes, also the older ones, its wishes, ratings and other names. */
      rename: (from: string, to: string, name: string): void => {
        known.clear();
        rename.run({ household, from, to, name });
        if (from !== to) for (const statement of renameElsewhere) statement.run({ household, from, to });
      },
      /** No longer a recipe of today; batches that were cooked from it keep it. */
      retire: (folded: string): void => {
        retire.run(household, folded);
      },
      /** How a meal is eaten, in every wording of it. */
      eat: (folded: string, eaten: 'dry' | 'soaked'): void => {
        known.clear();
        setEaten.run(eaten, household, folded);
      },
      /** What the finished pot weighed; the journal keeps what was told before. */
      weighPot: (recipe: number, potG: number): void => {
        known.delete(recipe);
        setPot.run(potG, household, recipe);
      },
    };
  };
}

export type RecipeStore = ReturnType<ReturnType<typeof recipeStore>>;
