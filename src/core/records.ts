import type { Contents } from './allergens.ts';

/** One ingredient line of a recipe as it was understood. */
export interface RecipeLine {
  readonly typed: string;
  /** 'uncounted': no amount was given, counted as zero. 'asked': not understood, counted as zero, makes allergens unknown. */
  readonly state: 'weighed' | 'uncounted' | 'asked';
  readonly called: string;
  readonly ndb: string | null;
  readonly grams: number | null;
  readonly contents: Contents | null;
  readonly remarks: readonly string[];
  readonly question: string | null;
}

export interface Recipe {
  readonly id: number;
  readonly name: string;
  readonly servings: number;
  /** Weight of the finished pot, g; null until weighed. */
  readonly potG: number | null;
  readonly method: string;
  readonly lines: readonly RecipeLine[];
}

export interface Tray {
  readonly no: number;
  readonly tareG: number;
  readonly wetG: number;
}

/** One tray, or with tray 0 the whole batch, weighed during drying. */
export interface Weighing {
  readonly trayNo: number;
  readonly atMs: number;
  readonly netG: number;
}

export interface Batch {
  readonly id: number;
  readonly no: number;
  readonly recipe: Recipe;
  /** How often the recipe was cooked at once. */
  readonly factor: number;
  readonly potG: number | null;
  readonly loadedAtMs: number;
  /** Dried uncooked: to be cooked before eating. */
  readonly isRaw: boolean;
  readonly trays: readonly Tray[];
  readonly weighings: readonly Weighing[];
}

export interface Pouch {
  readonly id: number;
  readonly batch: number;
  readonly no: number;
  readonly meal: string;
  readonly dryG: number;
  readonly sealedAtMs: number;
  /** Sealed from a batch whose weight was steady. */
  readonly checked: boolean;
  readonly volumeMl: number | null;
  readonly absorberMl: number | null;
  readonly absorberCount: number | null;
  /** ISO day; null for an unchecked pouch, which gets none. */
  readonly bestByOn: string | null;
  readonly state: 'stock' | 'used' | 'discarded';
  readonly goneAtMs: number | null;
  readonly goneWhy: string | null;
}
