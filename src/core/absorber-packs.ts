/** Absorbers of one size in a pouch. */
export interface Pack {
  /** Rated ml of oxygen of each. */
  readonly sizeMl: number;
  readonly count: number;
}

/** What a household counted of one size. */
export interface PackCounted {
  readonly sizeMl: number;
  /** null: never counted. */
  readonly count: number | null;
  readonly countedAtMs: number;
  /** ISO day on which its bag was opened; null: not told. */
  readonly openedOn: string | null;
}

/** So many packs of a size went into pouches at a moment. */
export interface PackUsed extends Pack {
  readonly atMs: number;
}

/** What is left of a size: as counted, less what was sealed in since. Never below 0; null where nobody counted. */
export function packsLeft(
  { sizeMl, count, countedAtMs }: PackCounted,
  used: readonly PackUsed[],
): number | null {
  if (count === null) return null;
  const since = used.filter((one) => one.sizeMl === sizeMl && one.atMs >= countedAtMs);
  return Math.max(0, count - since.reduce((sum, one) => sum + one.count, 0));
}
