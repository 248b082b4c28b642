import { type Allergen, type Diet, type Kind, nuts } from './allergens.ts';

/** What somebody must not eat, as far as the records can tell. */
export type Avoidance =
  | { readonly is: 'allergen'; readonly tags: readonly Allergen[] }
  | { readonly is: 'kind'; readonly kinds: readonly Kind[] }
  | { readonly is: 'diet'; readonly diet: Diet }
  | AvoidedFood
  /** A diet that no table of ingredients can answer: never clear. */
  | { readonly is: 'untold'; readonly word: string };

/** A plain food, and what is known of it. */
export interface AvoidedFood {
  readonly is: 'food';
  readonly word: string;
  /** Other names of it, and of the foods it is the family name of. */
  readonly names: readonly string[];
  /** Whether a text names it, in whatever spelling. */
  readonly isNamedIn: (text: string) => boolean;
  /** Their numbers in the food table. */
  readonly ndbs: readonly string[];
  /** What every make of it carries. */
  readonly tags: readonly Allergen[];
  readonly kinds: readonly Kind[];
  /** Everything that carries the same is kept away as well: 'no anchovies' keeps all fish away. */
  readonly isWide: boolean;
}

export const gluten = ['wheat', 'rye', 'barley', 'oats'] as const;
const tagWords: Readonly<Record<string, readonly Allergen[]>> = {
  milk: ['milk'], dairy: ['milk'], lactose: ['milk'], casein: ['milk'], whey: ['milk'], 'milk product': ['milk'], 'dairy product': ['milk'], 'dairy food': ['milk'], 'cow milk': ['milk'], 'animal milk': ['milk'], 'milk solid': ['milk'], 'milk sugar': ['milk'],
  'milk protein': ['milk'], 'cow milk protein': ['milk'], egg: ['egg'], 'egg white': ['egg'], 'egg yolk': ['egg'], 'egg product': ['egg'], 'raw egg': ['egg'], fish: ['fish'], 'fish product': ['fish'], finfish: ['fish'], peanut: ['peanut'], groundnut: ['peanut'], 'ground nut': ['peanut'], 'monkey nut': ['peanut'], 'pea nut': ['peanut'], soy: ['soy'], soya: ['soy'], soja: ['soy'], soybean: ['soy'], 'soya bean': ['soy'], 'soy bean': ['soy'],
  tofu: ['soy'], sesame: ['sesame'], 'sesame seed': ['sesame'], tahini: ['sesame'], wheat: ['wheat'], rye: ['rye'], barley: ['barley'], oat: ['oats'],
  gluten: gluten, cereal: gluten, 'cereals containing gluten': gluten, 'gluten cereal': gluten, celery: ['celery'], celeriac: ['celery'], mustard: ['mustard'], 'mustard seed': ['mustard'], lupin: ['lupin'], lupine: ['lupin'], lupini: ['lupin'],
  sulphite: ['sulphites'], sulfite: ['sulphites'], 'sulphur dioxide': ['sulphites'], 'sulfur dioxide': ['sulphites'],
  nut: [...nuts, 'chestnut', 'peanut'], 'nut product': [...nuts, 'chestnut', 'peanut'], 'tree nut': [...nuts], treenut: [...nuts], 'any nut': [...nuts, 'chestnut', 'peanut'],
  shellfish: ['crustaceans', 'molluscs'], 'shell fish': ['crustaceans', 'molluscs'], crustacean: ['crustaceans'], crustacea: ['crustaceans'], 'crustacean shellfish': ['crustaceans'], shrimp: ['crustaceans'], prawn: ['crustaceans'], crab: ['crustaceans'],
  lobster: ['crustaceans'], crayfish: ['crustaceans'], krill: ['crustaceans'], langoustine: ['crustaceans'], scampi: ['crustaceans'], mollusc: ['molluscs'], mollusk: ['molluscs'], bivalve: ['molluscs'], oyster: ['molluscs'], mussel: ['molluscs'], clam: ['molluscs'], cockle: ['molluscs'], snail: ['molluscs'], scallop: ['molluscs'],
  squid: ['molluscs'], calamari: ['molluscs'], octopus: ['molluscs'], cuttlefish: ['molluscs'], seafood: ['fish', 'crustaceans', 'molluscs'], 'sea food': ['fish', 'crustaceans', 'molluscs'], almond: ['almond'], 'brazil nut': ['brazil nut'], brazil: ['brazil nut'], cashew: ['cashew'], 'cashew nut': ['cashew'],
  hazelnut: ['hazelnut'], filbert: ['hazelnut'], 'cob nut': ['hazelnut'], cobnut: ['hazelnut'], macadamia: ['macadamia'], 'macadamia nut': ['macadamia'], pecan: ['pecan'], 'pecan nut': ['pecan'], pistachio: ['pistachio'], 'pistachio nut': ['pistachio'], walnut: ['walnut'], 'pine nut': ['pine nut'], pinenut: ['pine nut'], 'pine kernel': ['pine nut'], coconut: ['coconut'], chestnut: ['chestnut'],
}; // prettier-ignore

const kindWords: Readonly<Record<string, readonly Kind[]>> = {
  pork: ['pork'], bacon: ['pork'], ham: ['pork'], pig: ['pork'], lard: ['pork'], gammon: ['pork'], beef: ['beef'], veal: ['beef'], cow: ['beef'], lamb: ['lamb'], mutton: ['lamb'], goat: ['lamb'], game: ['game'], venison: ['game'],
  poultry: ['poultry'], 'white meat': ['poultry'], bird: ['poultry'], meat: ['meat'], 'meat product': ['meat'], flesh: ['meat'], 'red meat': ['beef', 'lamb', 'pork', 'game'], honey: ['honey'], 'bee product': ['honey'], gelatine: ['gelatine'], gelatin: ['gelatine'], rennet: ['rennet'],
  insect: ['insect'], alcohol: ['alcohol'], nightshade: ['nightshade'], 'nightshade vegetable': ['nightshade'], solanaceae: ['nightshade'], allium: ['allium'], 'onion family': ['allium'], legume: ['legume'], pulse: ['legume'], mushroom: ['mushroom'], fungi: ['mushroom'], fungus: ['mushroom'], caffeine: ['caffeine'],
}; // prettier-ignore

const dietWords: Readonly<Record<string, Diet>> = {
  vegetarian: 'vegetarian', veggie: 'vegetarian', vegan: 'vegan', 'plant based': 'vegan', plantbased: 'vegan', 'plant only': 'vegan', 'animal product': 'vegan', 'animal food': 'vegan', pescatarian: 'pescatarian', pescetarian: 'pescatarian', pesco: 'pescatarian',
  'gluten free': 'gluten-free', glutenfree: 'gluten-free', coeliac: 'gluten-free', celiac: 'gluten-free', 'coeliac disease': 'gluten-free', 'celiac disease': 'gluten-free', halal: 'halal', halaal: 'halal', haram: 'halal', kosher: 'kosher', kosha: 'kosher',
}; // prettier-ignore

const untold: readonly string[] = [
  'fodmap',
  'low fodmap',
  'histamine',
  'low histamine',
  'jain',
  'satvic',
  'sattvic',
  'passover',
  'oxalate',
  'salicylate',
];

/** Every word and phrase that names an allergen, a kind or a diet by itself. */
export const avoidedWords: readonly string[] = [
  ...Object.keys(tagWords),
  ...Object.keys(kindWords),
  ...Object.keys(dietWords),
  ...untold,
];

/** One form of a typed word: small letters, hyphens as spaces, singular. */
export function plainWord(text: string): string {
  const small = text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/['’]s?(?!\p{L})/gu, ' ')
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
 * @returns undefined for a plain food ('coriander'), which the kitchen knows
 */
export function avoidanceOf(word: string): Avoidance | undefined {
  const plain = plainWord(word);
  const diet = ownOf(dietWords, plain) ?? ownOf(dietWords, plain.replace(/ (?:diet|food)$/, ''));
  if (diet) return { is: 'diet', diet };
  if (untold.includes(plain.replace(/ (?:diet|food)$/, ''))) return { is: 'untold', word: plain };
  const bare = plain
    .replace(/^(?:any|all|the) /, '')
    .replace(/ (?:free|allergy|intolerance|intolerant|allergic)$/, '');
  const tags = ownOf(tagWords, bare);
  if (tags) return { is: 'allergen', tags };
  const of = ownOf(kindWords, bare);
  return of ? { is: 'kind', kinds: of } : undefined;
}
