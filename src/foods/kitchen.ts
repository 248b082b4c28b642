import { later } from '#words/later.ts';
import { allergens, kinds as allKinds, type Allergen, type Contents, type Kind } from '#core/allergens.ts';
import { dairy } from './pantry/dairy.ts';
import { drinks } from './pantry/drinks.ts';
import { fish } from './pantry/fish.ts';
import { fruit } from './pantry/fruit.ts';
import { grains } from './pantry/grains.ts';
import { meat } from './pantry/meat.ts';
import { nuts } from './pantry/nuts.ts';
import { pulses } from './pantry/pulses.ts';
import { sauces } from './pantry/sauces.ts';
import { seasonings } from './pantry/seasonings.ts';
import { sweets } from './pantry/sweets.ts';
import { vegetables } from './pantry/vegetables.ts';
import { hiddenKinds } from './hidden.ts';
import { unitNamed } from './units.ts';
import { foldedWords } from './words.ts';

/** States a row may stand for; no state is the plain one, as bought. */
export const states = [
  'dry',
  'cooked',
  'canned',
  'drained',
  'frozen',
  'dried',
  'fresh',
  'fried',
  'smoked',
  'roasted',
] as const;
export type State = (typeof states)[number];

export interface Weight {
  /** A unit ('cup', 'clove', 'tin'), a size ('large') or 'each'. */
  readonly unit: string;
  /** Folded words the line must say for this weight to be the right one: 'sliced', 'packed'. */
  readonly how: readonly string[];
  readonly grams: number;
  /** 'common practice, no source' or the row of the food table it equals. */
  readonly source: string;
}

/** One kitchen name's entry: which row of the food table, in which state, what it contains, what it weighs. */
export interface KitchenFood {
  readonly ndb: string;
  readonly state: State | null;
  /** The short name people see, without the state. */
  readonly called: string;
  readonly names: readonly string[];
  readonly contents: Contents;
  readonly weights: readonly Weight[];
  /** What is left of a tin's weight once drained; null where tins are not drained. */
  readonly drainedFraction: number | null;
  /** The table has no such food: the row named is the nearest one. */
  readonly standsIn: boolean;
}

const nutLike: Readonly<Record<string, Allergen>> = { 'brazil-nut': 'brazil nut', 'pine-nut': 'pine nut' };
const brings: Readonly<Record<string, readonly Kind[]>> = {
  milk: ['dairy'], egg: ['egg'], fish: ['fish'], crustaceans: ['shellfish'], molluscs: ['shellfish'], peanut: ['legume'], soy: ['legume'], lupin: ['legume'],
  pork: ['pork', 'meat'], beef: ['beef', 'meat'], lamb: ['lamb', 'meat'], game: ['game', 'meat'], poultry: ['poultry', 'meat'],
}; // prettier-ignore

const isAllergen = (word: string): word is Allergen => (allergens as readonly string[]).includes(word);
const isKind = (word: string): word is Kind => (allKinds as readonly string[]).includes(word);

/**
 * 'soy wheat ?milk pork' → what is certainly in it, what the small print may add, and the kinds of both.
 * @throws Error for a word that is no content; `row` is quoted
 */
export function contentsOf(text: string, row: string): Contents {
  const found = {
    contains: new Set<Allergen>(),
    check: new Set<Allergen>(),
    kinds: new Set<Kind>(),
    checkKinds: new Set<Kind>(),
  };
  for (const raw of text.split(' ').filter((word) => word !== '' && word !== '-')) {
    const isCheck = raw.startsWith('?');
    const bare = isCheck ? raw.slice(1) : raw;
    const word = nutLike[bare] ?? bare;
    const toKinds = isCheck ? found.checkKinds : found.kinds;
    if (isAllergen(word)) (isCheck ? found.check : found.contains).add(word);
    for (const kind of brings[word] ?? (isKind(word) ? [word] : [])) toKinds.add(kind);
    if (!isAllergen(word) && !isKind(word)) throw new Error(`unknown content '${raw}' in: ${row}`);
  }
  for (const word of found.contains) found.check.delete(word);
  for (const kind of found.kinds) found.checkKinds.delete(kind);
  return {
    contains: [...found.contains],
    check: [...found.check],
    kinds: [...found.kinds],
    checkKinds: [...found.checkKinds],
  };
}

const practice = 'common practice, no source';

function weightsOf(text: string, row: string): { weights: Weight[]; drainedFraction: number | null } {
  const weights: Weight[] = [];
  let drainedFraction: number | null = null;
  for (const part of text
    .split(',')
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')) {
    const m = /^(?:(extra large|[a-z]+))((?: [a-z]+)*) ([\d.]+)$/.exec(part);
    if (!m) throw new Error(`unreadable weight '${part}' in: ${row}`);
    const grams = Number(m[3]);
    if (m[1] === 'drained') drainedFraction = grams;
    else if (m[1] !== 'ml')
      weights.push({
        unit: m[1] === 'each' ? 'each' : (unitNamed(m[1]!)?.name ?? m[1]!),
        how: foldedWords(m[2]!),
        grams,
        source: practice,
      });
  }
  return { weights, drainedFraction };
}

function readRows(text: string): KitchenFood[] {
  const out: KitchenFood[] = [];
  for (const row of text.split('\n').filter((line) => line.trim() !== '')) {
    const [head = '', names = '', contents = '', weights = ''] = row.split('|').map((cell) => cell.trim());
    const m = /^(\d{5})(~?)(?: ([a-z]+))?$/.exec(head);
    const state = states.find((one) => one === m?.[3]) ?? null;
    if (!m || (m[3] !== undefined && state === null)) throw new Error(`unreadable pantry row: ${row}`);
    const above = out.at(-1);
    const own = names
      .split(';')
      .map((name) => name.trim())
      .filter((name) => name !== '');
    const all = own[0] === '=' ? [...(above?.names ?? []), ...own.slice(1)] : own;
    const known = contents === '=' ? above!.contents : contentsOf(contents, row);
    const ndb = m[1]!;
    out.push({
      ndb,
      state,
      called: all[0]!,
      names: all,
      contents: { ...known, hides: hiddenKinds({ ndb, names: all, kinds: known.kinds, check: known.check }) },
      ...weightsOf(weights, row),
      standsIn: m[2] === '~',
    });
  }
  return out;
}

/** Every curated food, in the order of the tables: of two rows that share a name and a state the first one wins. */
export const kitchen = later((): readonly KitchenFood[] =>
  [vegetables, fruit, seasonings, pulses, grains, dairy, fish, meat, nuts, sauces, sweets, drinks].flatMap(
    readRows,
  ),
);

/** Entries by folded name. */
export const byName = later((): ReadonlyMap<string, readonly KitchenFood[]> => {
  const map = new Map<string, KitchenFood[]>();
  for (const food of kitchen())
    for (const name of food.names) {
      const key = foldedWords(name).join(' ');
      const same = map.get(key);
      if (!same) map.set(key, [food]);
      else if (!same.includes(food)) same.push(food);
    }
  return map;
});
