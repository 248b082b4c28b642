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

/** Diets; 'halal' and 'kosher' only as far as ingredients can tell, or a packet says. */
export const diets = ['vegetarian', 'vegan', 'pescatarian', 'gluten-free', 'halal', 'kosher'] as const;
export type Diet = (typeof diets)[number];

/** What is known of one food. `null` in place of this record means: nothing is known. */
export interface Contents {
  /** Certainly in it. */
  readonly contains: readonly Allergen[];
  /** In many makes of it; only the package's small print can tell. */
  readonly check: readonly Allergen[];
  readonly kinds: readonly Kind[];
  /** Kinds that only the small print can tell (rennet in a cheese, gelatine in a sweet). */
  readonly checkKinds: readonly Kind[];
  /**
   * Kinds that no law makes a label declare and that this mixture may hold unsaid: mushrooms in a stock, paprika in a
   * sausage. Empty for a plain food; not there in records older than this field.
   */
  readonly hides?: readonly Kind[] | undefined;
  /** Diets that its packet says it suits, read by somebody. */
  readonly claims?: readonly Diet[] | undefined;
}

/** Kinds that no label must declare. */
export const undeclaredKinds = ['allium', 'nightshade', 'mushroom', 'legume', 'caffeine', 'insect'] as const;

/**
 * What a mixture may hold unsaid. A record without the field was made before it: there every food with small print
 * counts as a mixture.
 */
export const hiddenIn = (contents: Contents): readonly Kind[] =>
  contents.hides ?? (contents.check.length + contents.checkKinds.length > 0 ? undeclaredKinds : []);

/** Whether a word beside the food was not understood, so that it may hold anything at all. */
export const mayHoldAnything = ({ contains, check }: Contents): boolean =>
  allergens.every((tag) => contains.includes(tag) || check.includes(tag));

const isNut = (tag: Allergen) => (nuts as readonly string[]).includes(tag);
const sorted = (names: Iterable<string>) => [...new Set(names)].toSorted();

const usNames: Readonly<Partial<Record<Allergen, string>>> = {
  milk: 'milk',
  egg: 'egg',
  fish: 'fish',
  crustaceans: 'crustacean shellfish',
  peanut: 'peanut',
  soy: 'soy',
  sesame: 'sesame',
  wheat: 'wheat',
};

/**
 * The major food allergens of the U.S. law among some tags, in the law's words, sorted. Coconut and chestnut are
 * not among its tree nuts since January 2025; molluscs, barley, rye and oats never were.
 * @source fda-allergens-2025
 */
export const usNine = (tags: Iterable<Allergen>): string[] =>
  sorted([...tags].flatMap((tag) => (isNut(tag) ? ['tree nut'] : (usNames[tag] ?? []))));

const euNames: Readonly<Partial<Record<Allergen, string>>> = {
  milk: 'milk',
  egg: 'egg',
  fish: 'fish',
  crustaceans: 'crustaceans',
  molluscs: 'molluscs',
  peanut: 'peanut',
  soy: 'soy',
  sesame: 'sesame',
  celery: 'celery',
  mustard: 'mustard',
  lupin: 'lupin',
  sulphites: 'sulphites',
  wheat: 'cereals containing gluten',
  rye: 'cereals containing gluten',
  barley: 'cereals containing gluten',
  oats: 'cereals containing gluten',
};

/**
 * The fourteen of Annex II to Regulation (EU) 1169/2011 among some tags, sorted. Pine nuts are not named there.
 * @source eu-annex-ii
 */
export const euFourteen = (tags: Iterable<Allergen>): string[] =>
  sorted(
    [...tags].flatMap((tag) => (isNut(tag) ? (tag === 'pine nut' ? [] : ['nuts']) : (euNames[tag] ?? []))),
  );
