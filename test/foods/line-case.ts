/** typed, grams (null: it must ask), number in the food table, where the expectation comes from. */
export type LineCase = readonly [typed: string, grams: number | null, ndb: string | null, witness: string];
