import { recordTables } from './journal.ts';
import type { Db } from './db.ts';

/** What the file says it is, so that another file is not taken for one. */
export const exportFormat = 'tray-to-trail household';
export const exportVersion = 1;

export type Cell = string | number | null;
export type Row = Readonly<Record<string, Cell>>;

/** Everything of one household, table by table; each row as it is stored, its household left out. */
export interface HouseholdExport {
  readonly format: typeof exportFormat;
  readonly version: typeof exportVersion;
  /** The form of the records: the number of the newest migration that shaped them. */
  readonly form: number;
  readonly made_at: string;
  readonly household: {
    readonly id: number;
    readonly made_at_ms: number;
    readonly admitted_by: string | null;
  };
  readonly tables: Readonly<Record<string, readonly Row[]>>;
}

/** Besides the records: who is who, where they write, who did what, what was shown and reminded of. */
const besides = ['member', 'chat', 'entry', 'row_change', 'shown_picks', 'reminded'] as const;

/** Every table of an export, parents before children. */
export const exportedTables: readonly string[] = ['member', 'chat', ...recordTables, ...besides.slice(2)];

/** The columns of a table as this program knows it, the household's own left out. */
export function columnsOf(db: Db, table: string): string[] {
  return (db.pragma(`table_info(${table})`) as { name: string }[])
    .map(({ name }) => name)
    .filter((name) => name !== 'household');
}

/** A household's own data, whole or as plain lists. */
export function exportStore(db: Db) {
  const head = db.prepare('SELECT id, made_at_ms, admitted_by FROM household WHERE id = ?');
  const recipes = db.prepare(
    `SELECT recipe.name AS recipe, servings, pot_g, position AS line, typed, called AS food, ndb AS usda_no, grams, state
     FROM recipe JOIN recipe_line ON recipe_line.recipe = recipe.id
     WHERE recipe.household = ? AND is_current = 1 ORDER BY recipe.name, position`,
  );
  const batches = db.prepare(
    `SELECT 'B' || batch.no AS batch, recipe.name AS meal, what, tray, strftime('%Y-%m-%dT%H:%M:%SZ', at_ms / 1000, 'unixepoch') AS at, net_g
     FROM (
       SELECT batch.id AS batch, 'loaded' AS what, tray.no AS tray, loaded_at_ms AS at_ms, wet_g AS net_g, tray.id AS place
       FROM tray JOIN batch ON batch.id = tray.batch WHERE batch.household = :household
       UNION ALL
       SELECT batch.id, 'weighed', nullif(tray_no, 0), at_ms, net_g, weighing.id
       FROM weighing JOIN batch ON batch.id = weighing.batch WHERE batch.household = :household
     ) AS weight JOIN batch ON batch.id = weight.batch JOIN recipe ON recipe.id = batch.recipe
     ORDER BY batch.no, at_ms, place`,
  );
  const pouches = db.prepare(
    `SELECT iif(is_bought, 'S', iif(is_mixed, 'M', 'B')) || batch.no || '-' || pouch.no AS code, recipe.name AS meal, dry_g,
       strftime('%Y-%m-%dT%H:%M:%SZ', sealed_at_ms / 1000, 'unixepoch') AS sealed_at, checked, volume_ml, absorber_ml,
       absorber_count, best_by_on, state, strftime('%Y-%m-%dT%H:%M:%SZ', gone_at_ms / 1000, 'unixepoch') AS gone_at, gone_why
     FROM pouch JOIN batch ON batch.id = pouch.batch JOIN recipe ON recipe.id = batch.recipe
     WHERE batch.household = ? ORDER BY batch.no, pouch.no`,
  );

  const rows = (table: string, household: number): Row[] => {
    const columns = columnsOf(db, table).map((name) => `${table}.${name}`);
    // Changed rows have their household through their entry; an entry without words is the request at hand.
    const from =
      table === 'row_change'
        ? "row_change JOIN entry ON entry.id = row_change.entry WHERE entry.household = ? AND did <> ''"
        : `${table} WHERE household = ?${table === 'entry' ? " AND did <> ''" : ''}`;
    const order = columns.slice(0, 2).join(', ');
    return db.prepare(`SELECT ${columns.join(', ')} FROM ${from} ORDER BY ${order}`).all(household) as Row[];
  };

  return (household: number) => ({
    whole: (nowMs: number): HouseholdExport => ({
      format: exportFormat,
      version: exportVersion,
      form: Number(db.pragma('user_version', { simple: true })),
      made_at: new Date(nowMs).toISOString(),
      household: head.get(household) as HouseholdExport['household'],
      tables: Object.fromEntries(exportedTables.map((table) => [table, rows(table, household)])),
    }),
    /** Plain lists for a spreadsheet; units are in the names of the columns. */
    lists: (): Readonly<Record<'recipes' | 'batches' | 'pouches', readonly Row[]>> => ({
      recipes: recipes.all(household) as Row[],
      batches: batches.all({ household }) as Row[],
      pouches: pouches.all(household) as Row[],
    }),
  });
}
