/**
 * What a food can contain that somebody must not eat. The tags are finer than either law, because the
 * nine of the U.S. law and the fourteen of the EU list do not nest.
 */
export const nuts = [
  'almond',
  'brazil nut',
  'cashew',
  'hazelnut',
  'macadamia',
  'pecan',
  'pistachio',
  'walnut',
  'pine nut',
] as const;

export const allergens = [
  'milk',
  'egg',
  'fish',
  'crustaceans',
  'molluscs',
  'peanut',
  'soy',
  'sesame',
  'wheat',
  'rye',
  'barley',
  'oats',
  'celery',
  'mustard',
  'lupin',
  'sulphites',
  ...nuts,
  'coconut',
  'chestnut',
] as const;

export type Allergen = (typeof allergens)[number];

/** Kinds a diet or a plain "no pork" asks about; a food may carry several. */
export const kinds = [
  'pork',
  'beef',
  'lamb',
  'game',
  'poultry',
  'meat', // any flesh of a land animal; carried beside the finer kind
  'fish',
  'shellfish',
  'dairy',
  'egg',
  'honey',
  'gelatine',
  'rennet', // cheeses made with animal rennet by rule (parmesan) or perhaps
  'insect',
  'alcohol',
  'nightshade',
  'allium',
  'legume',
  'mushroom',
  'caffeine',
] as const;

export type Kind = (typeof kinds)[number];

/** What is known of one food. `null` in place of this record means: nothing is known. */
export interface Contents {
  /** Certainly in it. */
  readonly contains: readonly Allergen[];
  /** In many makes of it; only the package's small print can tell. */
  readonly check: readonly Allergen[];
  readonly kinds: readonly Kind[];
  /** Kinds that only the small print can tell (rennet in a cheese, gelatine in a sweet). */
  readonly checkKinds: readonly Kind[];
}
