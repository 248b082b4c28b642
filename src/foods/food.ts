/** One food of the table, and the table as the rest of the house sees it. */

/** Composition per 100 g of food as it is named. `null` is 'not in the file', never zero. */
export interface Per100 {
  readonly waterG: number | null;
  readonly kcal: number | null;
  readonly proteinG: number | null;
  readonly fatG: number | null;
  readonly carbohydrateG: number | null;
  readonly fibreG: number | null;
  readonly ashG: number | null;
  readonly sodiumMg: number | null;
}

/** A household weight as the file prints it: '1 cup, chopped' → 160 g. */
export interface Measure {
  readonly label: string;
  readonly grams: number;
}

export interface Food {
  /** Number in the table, five figures, leading zeros kept. */
  readonly ndb: string;
  readonly name: string;
  /** Food group of the table, such as 'Vegetables and Vegetable Products'. */
  readonly group: string;
  readonly per100: Per100;
  readonly measures: readonly Measure[];
}

export interface FoodTable {
  /** The food with this number; undefined when the table has none. */
  byNdb(ndb: string): Food | undefined;
  /** Foods whose description holds these words, best first; loosely when no food holds them all. */
  search(words: string, limit: number): Food[];
}
