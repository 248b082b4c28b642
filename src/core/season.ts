/** What became of a pouch, as far as a season counts it. */
export interface SeasonPouch {
  readonly meal: string;
  readonly sealedAtMs: number;
  readonly state: 'stock' | 'used' | 'discarded';
  readonly goneAtMs: number | null;
}

/** A meal over a season, in pouches. */
export interface SeasonRow {
  readonly meal: string;
  readonly sealed: number;
  readonly eaten: number;
  readonly left: number;
  readonly wasted: number;
}

/**
 * What was sealed, eaten and thrown away of each meal since a moment, and what is left now whenever it was sealed.
 * @param sinceMs when the season began
 * @returns a row a meal, what was eaten most first; nothing for a meal of which nothing happened and nothing is left
 */
export function seasonOf(pouches: readonly SeasonPouch[], sinceMs: number): SeasonRow[] {
  const rows = new Map<string, SeasonRow>();
  for (const { meal, sealedAtMs, state, goneAtMs } of pouches) {
    const row = rows.get(meal) ?? { meal, sealed: 0, eaten: 0, left: 0, wasted: 0 };
    const isGone = goneAtMs !== null && goneAtMs >= sinceMs;
    rows.set(meal, {
      meal,
      sealed: row.sealed + Number(sealedAtMs >= sinceMs),
      eaten: row.eaten + Number(state === 'used' && isGone),
      left: row.left + Number(state === 'stock'),
      wasted: row.wasted + Number(state === 'discarded' && isGone),
    });
  }
  return [...rows.values()]
    .filter(({ sealed, eaten, left, wasted }) => sealed + eaten + left + wasted > 0)
    .sort((a, b) => b.eaten - a.eaten || b.left - a.left || a.meal.localeCompare(b.meal));
}

/** Of which meals less is left than a season eats, the scarcest first. */
export const runningOut = (rows: readonly SeasonRow[]): SeasonRow[] =>
  rows
    .filter(({ eaten, left }) => eaten > left)
    .toSorted((a, b) => b.eaten - b.left - (a.eaten - a.left) || a.meal.localeCompare(b.meal));
