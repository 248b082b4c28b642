import {
  type Allergen,
  type Contents,
  type Diet,
  hiddenIn,
  type Kind,
  mayHoldAnything,
  undeclaredKinds,
} from './allergens.ts';
import { type Avoidance, type AvoidedFood, gluten, plainWord } from './avoidance.ts';

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
  /** Its number in the food table. */
  readonly ndb?: string | null;
}

const flesh = ['meat', 'pork', 'beef', 'lamb', 'game', 'poultry', 'gelatine', 'rennet', 'insect'] as const;
const dietKinds: Readonly<Record<Diet, readonly Kind[]>> = {
  pescatarian: flesh,
  vegetarian: [...flesh, 'fish', 'shellfish'],
  vegan: [...flesh, 'fish', 'shellfish', 'dairy', 'egg', 'honey'],
  'gluten-free': [],
  halal: ['pork', 'alcohol'],
  kosher: ['pork', 'shellfish'],
};
/** What may be right or wrong by how it was made, slaughtered or combined, which no ingredient line tells. */
const dietFears: Readonly<Partial<Record<Diet, readonly Kind[]>>> = {
  halal: [...flesh],
  kosher: [...flesh, 'fish', 'alcohol'],
};

const stricter: Readonly<Partial<Record<Diet, readonly Diet[]>>> = {
  pescatarian: ['vegetarian', 'vegan'],
  vegetarian: ['vegan'],
};

interface Looked {
  readonly found: readonly string[];
  readonly feared: readonly string[];
}
const nothing: Looked = { found: [], feared: [] };
const feared = (what: string): Looked => ({ found: [], feared: [what] });

const isUndeclared = (kind: Kind) => (undeclaredKinds as readonly Kind[]).includes(kind);
const shares = <T>(some: readonly T[], others: readonly T[]) => some.some((one) => others.includes(one));

/** 'red lentils, dry' → 'red lentil'. */
const bareName = (ingredient: string) => plainWord(ingredient.split(',')[0]!);

/** A plain food: by its names and numbers, by what it carries, and in what mixtures may hold it unsaid. */
function lookedForFood(avoid: AvoidedFood, { ingredient, contents, ndb }: Ingredient): Looked {
  const { word, tags, kinds } = avoid;
  const carried = contents && {
    tags: [...contents.contains, ...contents.check],
    kinds: [...contents.kinds, ...contents.checkKinds],
  };
  // Peanut butter is no butter: what carries nothing of what butter carries only shares its name.
  const isNamesake =
    carried !== null &&
    tags.length + kinds.length > 0 &&
    !shares(tags, carried.tags) &&
    !shares(kinds, carried.kinds) &&
    hiddenIn(contents!).length === 0;
  const name = ` ${plainWord(ingredient)} `;
  const isNamed =
    name.includes(` ${plainWord(word)} `) ||
    avoid.isNamedIn(ingredient) ||
    avoid.names.includes(bareName(ingredient)) ||
    (typeof ndb === 'string' && avoid.ndbs.includes(ndb));
  if (isNamed && !isNamesake) return { found: [word], feared: [] };
  if (contents === null || mayHoldAnything(contents)) return feared(word);
  // 'No liver' keeps beef away, not every meat.
  const own: readonly Kind[] = kinds.length > 1 ? kinds.filter((kind) => kind !== 'meat') : kinds;
  if (avoid.isWide)
    return {
      found: [
        ...contents.contains.filter((tag) => tags.includes(tag)),
        ...contents.kinds.filter((kind) => own.includes(kind)),
      ],
      feared: [
        ...contents.check.filter((tag) => tags.includes(tag)),
        ...contents.checkKinds.filter((kind) => own.includes(kind)),
      ],
    };
  const hidden = hiddenIn(contents);
  if (hidden.length === 0) return nothing;
  // What carries an allergen is declared with it; the rest may be in any mixture.
  if (tags.length > 0) return shares(tags, carried!.tags) ? feared(word) : nothing;
  if (own.length > 0) return shares(own, [...hidden, ...carried!.kinds]) ? feared(word) : nothing;
  return feared(word);
}

function lookedForDiet(diet: Diet, contents: Contents): Looked {
  const wanted = dietKinds[diet];
  const fears = (dietFears[diet] ?? []).filter((kind) => !wanted.includes(kind));
  const tags: readonly Allergen[] = diet === 'gluten-free' ? gluten : [];
  const isMade = dietFears[diet] !== undefined && hiddenIn(contents).length > 0;
  const found = [
    ...contents.contains.filter((tag) => tags.includes(tag)),
    ...contents.kinds.filter((kind) => wanted.includes(kind)),
  ];
  // What a packet says it suits settles the small print, and nothing that is certain. A vegan food is vegetarian.
  if ([diet, ...(stricter[diet] ?? [])].some((one) => contents.claims?.includes(one)))
    return { found, feared: [] };
  return {
    found,
    feared: [
      ...contents.check.filter((tag) => tags.includes(tag)),
      ...contents.checkKinds.filter((kind) => wanted.includes(kind)),
      ...[...contents.kinds, ...contents.checkKinds].filter((kind) => fears.includes(kind)),
      ...(isMade ? [`whether it is ${diet}`] : []),
    ],
  };
}

function lookedForKinds(wanted: readonly Kind[], contents: Contents): Looked {
  const isFeared = (kind: Kind) =>
    contents.checkKinds.includes(kind) || (isUndeclared(kind) && hiddenIn(contents).includes(kind));
  // Gelatine comes from pigs or cattle; which, only the label tells.
  const asks = wanted.some((kind) => kind === 'pork' || kind === 'beef' || kind === 'meat');
  const hasGelatine = [...contents.kinds, ...contents.checkKinds].includes('gelatine');
  const found = contents.kinds.filter((kind) => wanted.includes(kind));
  return {
    found,
    feared: [
      ...wanted.filter((kind) => !found.includes(kind) && isFeared(kind)),
      ...(asks && hasGelatine ? ['gelatine'] : []),
    ],
  };
}

function looked(avoid: Avoidance, item: Ingredient): Looked {
  const { contents } = item;
  switch (avoid.is) {
    case 'untold':
      return feared(avoid.word);
    case 'food':
      return lookedForFood(avoid, item);
    case 'diet':
      return contents === null ? feared(`not ${avoid.diet}`) : lookedForDiet(avoid.diet, contents);
    case 'kind':
      return contents === null ? feared(avoid.kinds.join(' or ')) : lookedForKinds(avoid.kinds, contents);
    case 'allergen':
      if (contents === null) return feared(avoid.tags.join(' or '));
      return {
        found: contents.contains.filter((tag) => avoid.tags.includes(tag)),
        feared: contents.check.filter((tag) => avoid.tags.includes(tag)),
      };
  }
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
      const { found, feared: fear } = looked(avoid, item);
      for (const what of found) add(by, what, item.ingredient);
      for (const what of fear) add(because, what, item.ingredient);
    }
  // A meal of which no ingredient is recorded is unknown to everybody who avoids anything.
  if (avoidances.length > 0 && ingredients.length === 0)
    return { is: 'unknown', because: [{ what: 'everything', ingredient: 'no ingredient is recorded' }] };
  if (by.length > 0) return { is: 'blocked', by };
  return because.length > 0 ? { is: 'unknown', because } : { is: 'clear' };
}
