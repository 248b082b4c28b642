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

export type Diet = 'vegetarian' | 'vegan' | 'pescatarian' | 'gluten-free';

/** What somebody must not eat, as far as the records can tell. */
export type Avoidance =
  | { readonly is: 'allergen'; readonly tags: readonly Allergen[] }
  | { readonly is: 'kind'; readonly kinds: readonly Kind[] }
  | { readonly is: 'diet'; readonly diet: Diet }
  /** A plain food, looked for in the ingredients' names. */
  | { readonly is: 'food'; readonly word: string };

const gluten = ['wheat', 'rye', 'barley', 'oats'] as const;
const tagWords: Readonly<Record<string, readonly Allergen[]>> = {
  milk: ['milk'], dairy: ['milk'], lactose: ['milk'], casein: ['milk'], whey: ['milk'], 'milk product': ['milk'], 'dairy product': ['milk'], 'cow milk': ['milk'],
  'milk protein': ['milk'], egg: ['egg'], 'egg white': ['egg'], fish: ['fish'], peanut: ['peanut'], groundnut: ['peanut'], soy: ['soy'], soya: ['soy'], soybean: ['soy'],
  tofu: ['soy'], sesame: ['sesame'], 'sesame seed': ['sesame'], tahini: ['sesame'], wheat: ['wheat'], rye: ['rye'], barley: ['barley'], oat: ['oats'],
  gluten: gluten, cereal: gluten, 'cereals containing gluten': gluten, celery: ['celery'], celeriac: ['celery'], mustard: ['mustard'], lupin: ['lupin'], lupine: ['lupin'],
  sulphite: ['sulphites'], sulfite: ['sulphites'], 'sulphur dioxide': ['sulphites'], 'sulfur dioxide': ['sulphites'],
  nut: [...nuts, 'chestnut', 'peanut'], 'tree nut': [...nuts], treenut: [...nuts], 'any nut': [...nuts, 'chestnut', 'peanut'],
  shellfish: ['crustaceans', 'molluscs'], crustacean: ['crustaceans'], 'crustacean shellfish': ['crustaceans'], shrimp: ['crustaceans'], prawn: ['crustaceans'], crab: ['crustaceans'],
  lobster: ['crustaceans'], crayfish: ['crustaceans'], mollusc: ['molluscs'], mollusk: ['molluscs'], oyster: ['molluscs'], mussel: ['molluscs'], clam: ['molluscs'], scallop: ['molluscs'],
  squid: ['molluscs'], octopus: ['molluscs'], seafood: ['fish', 'crustaceans', 'molluscs'], almond: ['almond'], 'brazil nut': ['brazil nut'], cashew: ['cashew'], 'cashew nut': ['cashew'],
  hazelnut: ['hazelnut'], macadamia: ['macadamia'], 'macadamia nut': ['macadamia'], pecan: ['pecan'], pistachio: ['pistachio'], walnut: ['walnut'], 'pine nut': ['pine nut'], coconut: ['coconut'], chestnut: ['chestnut'],
}; // prettier-ignore

const kindWords: Readonly<Record<string, readonly Kind[]>> = {
  pork: ['pork'], bacon: ['pork'], ham: ['pork'], pig: ['pork'], beef: ['beef'], veal: ['beef'], lamb: ['lamb'], mutton: ['lamb'], game: ['game'], venison: ['game'],
  poultry: ['poultry'], meat: ['meat'], 'red meat': ['beef', 'lamb', 'pork', 'game'], honey: ['honey'], gelatine: ['gelatine'], gelatin: ['gelatine'], rennet: ['rennet'],
  insect: ['insect'], alcohol: ['alcohol'], nightshade: ['nightshade'], allium: ['allium'], legume: ['legume'], pulse: ['legume'], mushroom: ['mushroom'], fungi: ['mushroom'], caffeine: ['caffeine'],
}; // prettier-ignore

const dietWords: Readonly<Record<string, Diet>> = {
  vegetarian: 'vegetarian', veggie: 'vegetarian', vegan: 'vegan', 'plant based': 'vegan', pescatarian: 'pescatarian', pescetarian: 'pescatarian',
  'gluten free': 'gluten-free', glutenfree: 'gluten-free', coeliac: 'gluten-free', celiac: 'gluten-free', 'coeliac disease': 'gluten-free', 'celiac disease': 'gluten-free',
}; // prettier-ignore

/** Words no table of ingredients can answer: they are never called clear. */
const untold = new Set([
  'halal',
  'kosher',
  'fodmap',
  'low fodmap',
  'histamine',
  'jain',
  'satvic',
  'sattvic',
  'passover',
  'oxalate',
  'salicylate',
]);

/** One form of a typed word: small letters, hyphens as spaces, singular. */
function plainWord(text: string): string {
  const small = text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .slice(0, 80);
  return small.split(' ').map(singular).join(' ');
}
function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is)$/.test(word) || !word.endsWith('s')) return word;
  if (word === 'molluscs' || word === 'oats') return word.slice(0, -1);
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  return /(?:ch|sh|ss|x|o)es$/.test(word) ? word.slice(0, -2) : word.slice(0, -1);
}

const ownOf = <T>(table: Readonly<Record<string, T>>, key: string) =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/**
 * What a typed word asks to be kept away: an allergen, a kind of food, a diet.
 * @param word such as 'nuts', 'red meat', 'coeliac', 'dairy-free'
 * @returns undefined for a plain food ('coriander') and for what no table can tell ('halal'): give such a word to
 *   verdictFor as `{ is: 'food', word }`
 */
export function avoidanceOf(word: string): Avoidance | undefined {
  const plain = plainWord(word);
  const diet = ownOf(dietWords, plain);
  if (diet) return { is: 'diet', diet };
  const bare = plain
    .replace(/^(?:any|all|the) /, '')
    .replace(/ (?:free|allergy|intolerance|intolerant|allergic)$/, '');
  const tags = ownOf(tagWords, bare);
  if (tags) return { is: 'allergen', tags };
  const of = ownOf(kindWords, bare);
  return of ? { is: 'kind', kinds: of } : undefined;
}

export interface Because {
  /** What is avoided and found, or feared: 'milk', 'pork', 'coriander'. */
  readonly what: string;
  readonly ingredient: string;
}
/** Unknown is never clear; what is certainly in it wins over what is unknown. */
export type Verdict =
  | { readonly is: 'clear' }
  | { readonly is: 'blocked'; readonly by: readonly Because[] }
  | { readonly is: 'unknown'; readonly because: readonly Because[] };

export interface Ingredient {
  readonly ingredient: string;
  readonly contents: Contents | null;
}

const flesh = ['meat', 'pork', 'beef', 'lamb', 'game', 'poultry', 'gelatine', 'rennet', 'insect'] as const;
const dietKinds: Readonly<Record<Diet, readonly Kind[]>> = {
  pescatarian: flesh,
  vegetarian: [...flesh, 'fish', 'shellfish'],
  vegan: [...flesh, 'fish', 'shellfish', 'dairy', 'egg', 'honey'],
  'gluten-free': [],
};
/** Kinds that no label must declare: a food with small print may always hold them. */
const undeclared: ReadonlySet<Kind> = new Set([
  'allium',
  'nightshade',
  'mushroom',
  'caffeine',
  'insect',
  'legume',
]);

/** Words for one food on two sides of an ocean, and families a plain word stands for. */
const alike: readonly (readonly string[])[] = [
  ['coriander', 'cilantro'], ['aubergine', 'eggplant', 'brinjal'], ['courgette', 'zucchini'], ['beetroot', 'beet'], ['rocket', 'arugula'], ['swede', 'rutabaga'],
  ['spring onion', 'springonion', 'scallion', 'green onion'], ['sweetcorn', 'corn', 'maize', 'polenta', 'cornmeal', 'hominy', 'grit'], ['chickpea', 'garbanzo', 'hummus', 'falafel'], ['capsicum', 'bell pepper', 'sweet pepper'],
  ['chilli', 'chili', 'chile', 'jalapeno', 'cayenne', 'sriracha', 'harissa', 'gochujang', 'hot sauce'], ['raisin', 'sultana', 'currant'], ['onion', 'shallot', 'scallion', 'springonion', 'leek', 'chive'],
  ['cheese', 'cheddar', 'parmesan', 'mozzarella', 'feta', 'gouda', 'brie', 'camembert', 'ricotta', 'mascarpone', 'gruyere', 'pecorino', 'edam', 'provolone', 'paneer', 'halloumi', 'cotija', 'queso', 'roquefort', 'pesto'],
  ['tomato', 'ketchup', 'marinara', 'passata', 'salsa'], ['coconut', 'coconut milk'], ['bean', 'hummus', 'edamame'], ['yogurt', 'yoghurt'],
]; // prettier-ignore

const knowsNothing = (contents: Contents) => contents.check.length + contents.checkKinds.length > 0;

function looked(
  avoid: Avoidance,
  { ingredient, contents }: Ingredient,
): { found: string[]; feared: string[] } {
  const asked =
    avoid.is === 'food'
      ? avoid.word
      : avoid.is === 'diet'
        ? `not ${avoid.diet}`
        : avoid.is === 'kind'
          ? avoid.kinds.join(' or ')
          : avoid.tags.join(' or ');
  if (avoid.is === 'food') {
    const plain = plainWord(avoid.word);
    if (untold.has(plain.replace(/ (?:food|diet|meat|only)$/, ''))) return { found: [], feared: [asked] };
    const words = new Set([plain, ...alike.filter((same) => same.includes(plain)).flat()]);
    const name = ` ${plainWord(ingredient)} `;
    if ([...words].some((word) => name.includes(` ${word} `))) return { found: [asked], feared: [] };
    return { found: [], feared: contents === null || knowsNothing(contents) ? [asked] : [] };
  }
  if (contents === null) return { found: [], feared: [asked] };
  const tags: readonly Allergen[] =
    avoid.is === 'allergen' ? avoid.tags : avoid.is === 'diet' && avoid.diet === 'gluten-free' ? gluten : [];
  const wanted: readonly Kind[] =
    avoid.is === 'kind' ? avoid.kinds : avoid.is === 'diet' ? dietKinds[avoid.diet] : [];
  const found: string[] = [
    ...contents.contains.filter((tag) => tags.includes(tag)),
    ...contents.kinds.filter((kind) => wanted.includes(kind)),
  ];
  const feared: string[] = [
    ...contents.check.filter((tag) => tags.includes(tag)),
    ...contents.checkKinds.filter((kind) => wanted.includes(kind)),
  ];
  // Gelatine comes from pigs or cattle; which, only the label tells.
  if (
    avoid.is === 'kind' &&
    wanted.some((kind) => kind === 'pork' || kind === 'beef' || kind === 'meat') &&
    [...contents.kinds, ...contents.checkKinds].includes('gelatine')
  )
    feared.push('gelatine');
  for (const kind of wanted)
    if (avoid.is === 'kind' && undeclared.has(kind) && knowsNothing(contents)) feared.push(kind);
  return { found, feared };
}

/**
 * Whether somebody may eat a meal, from its ingredients.
 * @param ingredients each with what is known of it; null contents means nothing is known
 * @param avoidances what this eater must not have; none is clear
 */
export function verdictFor(ingredients: readonly Ingredient[], avoidances: readonly Avoidance[]): Verdict {
  const by: Because[] = [];
  const because: Because[] = [];
  const add = (list: Because[], what: string, ingredient: string) => {
    if (!list.some((one) => one.what === what && one.ingredient === ingredient))
      list.push({ what, ingredient });
  };
  for (const avoid of avoidances)
    for (const item of ingredients) {
      const { found, feared } = looked(avoid, item);
      for (const what of found) add(by, what, item.ingredient);
      for (const what of feared) add(because, what, item.ingredient);
    }
  // A meal of which no ingredient is recorded is unknown to everybody who avoids anything.
  if (avoidances.length > 0 && ingredients.length === 0)
    return { is: 'unknown', because: [{ what: 'everything', ingredient: 'no ingredient is recorded' }] };
  if (by.length > 0) return { is: 'blocked', by };
  return because.length > 0 ? { is: 'unknown', because } : { is: 'clear' };
}
