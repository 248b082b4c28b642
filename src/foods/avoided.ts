import { table } from '#words/table.ts';
import { later } from '#words/later.ts';
import type { Allergen, Kind } from '#core/allergens.ts';
import { type Avoidance, type AvoidedFood, avoidanceOf, avoidedWords, plainWord } from '#core/avoidance.ts';
import type { Larder } from '#words/eater-things.ts';
import { forgiven, slips } from '#words/near.ts';
import { byName, kitchen, type KitchenFood } from './kitchen.ts';
import { neutral } from './vocabulary.ts';
import { foldedWords, foldName } from './words.ts';

/** Words for one food on two sides of an ocean. */
const synonyms: readonly (readonly string[])[] = [
  ['coriander', 'cilantro'], ['aubergine', 'eggplant', 'brinjal'], ['courgette', 'zucchini'], ['beetroot', 'beet'], ['rocket', 'arugula'], ['swede', 'rutabaga'], ['capsicum', 'bell pepper', 'sweet pepper'],
  ['sweetcorn', 'corn', 'maize'], ['chickpea', 'garbanzo', 'gram flour'], ['chili', 'hot pepper', 'spicy', 'spicy food', 'hot food', 'hot spice', 'spicy thing', 'chili pepper'], ['spring onion', 'scallion', 'green onion'], ['kiwi', 'kiwifruit'],
].map((same) => same.map(foldName)); // prettier-ignore

/** Foods that belong to what a plain word names, though they do not bear its name. */
const families: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    corn: 'cornstarch; polenta; cornmeal; hominy; grit; popcorn; masa harina; tortilla chip', chickpea: 'hummus; falafel', 'bell pepper': 'pimento; paprika', pepper: 'pimento; paprika; chili; capsicum', raisin: 'sultana; currant',
    chili: 'jalapeno; serrano; cayenne; ancho; pasilla; chipotle; sriracha; harissa; gochujang; hot sauce; sambal; curry paste; taco seasoning; adobo; kimchi; curry powder; curry sauce', onion: 'shallot; scallion; leek; chive; onion soup mix', grape: 'raisin; sultana; currant; wine',
    potato: 'french fry; hashbrown; potato crisps; gnocchi', pasta: 'spaghetti; macaroni; noodle; lasagna; gnocchi', bread: 'breadcrumb; toast; bagel; pita; naan; tortilla; crouton; bun; baguette; focaccia', tomato: 'ketchup; marinara; passata; salsa; curry sauce',
    bean: 'hummus; edamame', citrus: 'lemon; lime; orange; grapefruit; mandarin; tangerine; clementine; pomelo; kumquat', berry: 'strawberry; currant', seed: 'tahini; chia; flaxseed; sesame oil; zaatar', rice: 'risotto; poha', cabbage: 'sauerkraut; kimchi; coleslaw', squash: 'pumpkin', offal: 'liver; kidney; tongue; tripe; giblet; heart; haggis', 'root vegetable': 'carrot; beet; parsnip; turnip; rutabaga; radish; celeriac; potato; sweet potato; kohlrabi; daikon; cassava; yam; taro',
  }).map(([head, members]) => [foldName(head), members.split(';').map(foldName)]),
); // prettier-ignore

/** Words for a whole group of the table, by the first two figures of its numbers. */
const tableGroups = table<string>({
  fruit: '09',
  vegetable: '11',
  veg: '11',
  veggie: '11',
  grain: '20',
  spice: '02',
});

/** Kinds that name an animal or what is made of one: who avoids a part of it is kept from all of it. */
const ofAnimals: readonly Kind[] = ['pork', 'beef', 'lamb', 'game', 'poultry', 'honey', 'gelatine'];

const common = <T>(lists: readonly (readonly T[])[]): T[] =>
  (lists[0] ?? []).filter((one) => lists.every((list) => list.includes(one)));

/** What is in every one of some foods for certain. Sulphites keep a food, they are not what it is. */
function carriedBy(foods: readonly KitchenFood[]): { tags: Allergen[]; kinds: Kind[] } {
  const tags = common(foods.map(({ contents }) => contents.contains)).filter((tag) => tag !== 'sulphites');
  const kinds = common(foods.map(({ contents }) => contents.kinds)).filter((kind) => kind !== 'rennet');
  return { tags: kinds.includes('alcohol') ? [] : tags, kinds };
}

const holds = (name: readonly string[], words: readonly string[]) =>
  name.some((_, i) => words.every((word, k) => name[i + k] === word));

/** Every name in words, with the foods that bear it. */
const named = later(() => [...byName()].map(([name, foods]) => ({ name: name.split(' '), foods })));

/** What is known of a plain food by the kitchen's list; the same words are asked for over and over. */
const remembered = new Map<string, AvoidedFood | null>();

/**
 * A plain food as something to keep away. A food that is an allergen itself, or a part of an animal, stands for all
 * that carries it, because it goes by many names and into many things: 'no butter' keeps milk away, 'no anchovies'
 * fish, 'no steak' beef. A mixture ('no pesto') and a plant ('no potatoes') are found by their names and feared in
 * mixtures that may hold them.
 * @param words as typed
 * @param isExact the food alone, although it stands for more
 * @returns undefined where the kitchen knows no such food
 */
export function avoidedFood(words: string, isExact = false): AvoidedFood | undefined {
  const key = foldName(words);
  const known = remembered.get(key);
  const food = known === undefined ? lookedUp(words, key) : known;
  if (remembered.size > 2000) remembered.clear();
  remembered.set(key, food);
  return food === null ? undefined : { ...food, word: words, isWide: food.isWide && !isExact };
}

function lookedUp(words: string, key: string): AvoidedFood | null {
  if (key === '') return null;
  const own = [key, ...synonyms.filter((same) => same.includes(key)).flat()];
  const family = [...new Set([...own, ...own.flatMap((one) => families.get(one) ?? [])])].map(split);
  const heads = new Set(family.map((one) => one[0]!));
  const kin = new Set<KitchenFood>();
  for (const { name, foods } of named())
    if (name.some((word) => heads.has(word)))
      for (const food of foods) if (family.some((one) => isOf(one, name, food))) kin.add(food);
  const group = tableGroups[key];
  for (const food of kitchen()) if (group !== undefined && food.ndb.startsWith(group)) kin.add(food);
  if (kin.size === 0) return null;
  // 'steak' is no food's whole name: what all steaks carry is what is meant.
  const exact = own.flatMap((one) => byName().get(one) ?? []);
  const meant = exact.length > 0 ? exact : [...kin];
  const { tags, kinds } = carriedBy(meant);
  const isMixture = exact.some(({ contents }) => (contents.hides ?? []).length > 0);
  // Peanut butter carries nothing of what butter carries: it only shares the name.
  const real = [...kin].filter(({ contents: { contains, check, kinds: sure, checkKinds } }) => {
    const carried: readonly string[] = [...contains, ...check, ...sure, ...checkKinds];
    return tags.length + kinds.length === 0 || [...tags, ...kinds].some((one) => carried.includes(one));
  });
  const animal = kinds.filter((kind) => ofAnimals.includes(kind) || kind === 'alcohol');
  const isWide = !isMixture && (tags.length === 1 || (tags.length === 0 && animal.length > 0));
  const isCalled = (food: KitchenFood) =>
    family.some((one) => holds(foldedWords(food.called), one)) || exact.includes(food);
  return {
    is: 'food',
    word: words,
    names: [
      ...new Set(
        [
          ...real.flatMap(({ names, called }) => [
            called,
            ...(group === undefined ? names.filter(isNamed) : names),
          ]),
          ...family.map(join),
        ].map(plainWord),
      ),
    ],
    isNamedIn: (text) => {
      const said = foldedWords(text);
      return family.some((one) => holds(said, one));
    },
    ndbs: [
      ...new Set(
        real
          .filter((food) => !food.standsIn && (group !== undefined || isCalled(food)))
          .map(({ ndb }) => ndb),
      ),
    ],
    tags,
    kinds: tags.length > 0 ? [] : isWide ? [...animal, ...kinds.filter((kind) => kind === 'meat')] : kinds,
    isWide,
  };

  function isNamed(name: string): boolean {
    return (
      family.some((one) => holds(foldedWords(name), one)) || exact.some(({ names }) => names.includes(name))
    );
  }
}

const split = (name: string): string[] => name.split(' ');
const join = (name: readonly string[]): string => name.join(' ');

/**
 * Whether a food is one of a family by one of its names: an orange carrot is no orange and sweetcorn relish is of
 * corn. The last word says what a plain food is; a mixture may hold whatever its name says.
 */
function isOf(family: readonly string[], name: readonly string[], food: KitchenFood): boolean {
  if (!holds(name, family)) return false;
  const isLast = join(name.slice(-family.length)) === join(family);
  return isLast || (food.contents.hides ?? []).length > 0 || holds(foldedWords(food.called), family);
}

/** What some typed words keep away; undefined where they name no allergen, kind, diet or food known here. */
export const avoidanceNamed = (words: string, isExact = false): Avoidance | undefined =>
  avoidanceOf(words) ?? avoidedFood(words, isExact);

/** Whether a plain food keeps more away than itself: 'no butter' keeps all milk away. */
export const standsForMore = (words: string): boolean => {
  const found = avoidanceNamed(words);
  return found?.is === 'food' && found.isWide;
};

/** Whether two words name allergens that have nothing in common: fish and prawns; not nuts and almonds. */
export function areApart(one: string, other: string): boolean {
  const tagsOf = (words: string) => {
    const meant = avoidanceNamed(words);
    return meant?.is === 'allergen' || meant?.is === 'food' ? meant.tags : [];
  };
  const [mine, others] = [tagsOf(one), tagsOf(other)];
  return mine.length > 0 && others.length > 0 && !mine.some((tag) => others.includes(tag));
}

/** A food of which only the name is known: found by it, feared in every mixture. */
export const foodByName = (word: string): AvoidedFood => ({
  is: 'food',
  word,
  names: [],
  isNamedIn: (text) => holds(foldedWords(text), split(foldName(word))),
  ndbs: [],
  tags: [],
  kinds: [],
  isWide: false,
});

/** The last words of every name, which are the food itself. */
const foodWords = later(
  (): ReadonlySet<string> => new Set(named().flatMap(({ name }) => name.map((_, k) => join(name.slice(k))))),
);
const familyNames: ReadonlySet<string> = new Set([
  ...synonyms.flat(),
  ...families.keys(),
  ...Object.keys(tableGroups),
]);

const knows = (words: string): boolean => {
  const key = foldName(words);
  if (avoidanceOf(words) !== undefined || byName().has(key) || familyNames.has(key)) return true;
  return foodWords().has(key) && !split(key).every((word) => neutral.has(word));
};

/** Names by their length, for finding those a slip away. */
const byLength = later((): ReadonlyMap<number, readonly string[]> => {
  const map = new Map<number, string[]>();
  for (const name of new Set([...avoidedWords, ...byName().keys()]))
    map.set(name.length, [...(map.get(name.length) ?? []), name]);
  return map;
});

/**
 * What mistyped words may mean: of allergens, kinds and diets those within the usual slips, of all other foods those
 * one slip away; the nearest alone, and of several that mean the same one.
 */
function nearest(words: string): string[] {
  let best = Number.POSITIVE_INFINITY;
  let found: string[] = [];
  // The last letter of a mistyped word may be no plural.
  for (const plain of new Set([plainWord(words), words])) {
    const most = forgiven(plain);
    for (let length = plain.length - most; length <= plain.length + most; length++)
      for (const name of byLength().get(length) ?? []) {
        // A short word is a slip away from too many foods.
        const allowed = Math.min(best, isAvoidedWord.has(name) ? most : plain.length < 5 ? 0 : 1);
        const far = slips(plain, name, allowed);
        if (far > allowed) continue;
        if (far < best) found = [];
        best = far;
        found.push(name);
      }
  }
  const meant = new Map(found.map((name) => [JSON.stringify(sense(name)), name]));
  return [...meant.values()];
}
const isAvoidedWord = new Set(avoidedWords);
const sense = (name: string) => avoidanceOf(name) ?? avoidedFood(name)?.ndbs ?? name;

/** Foods and diets as the reader of notes on people knows them. */
export const larder: Larder = {
  knows,
  isDiet: (words) => {
    const found = avoidanceOf(words);
    // 'No animal products' keeps something away; 'no vegan' does not.
    return (
      (found?.is === 'diet' || found?.is === 'untold') &&
      !/^(?:animal|haram|histamine|oxalate|salicylate|fodmap)/.test(words)
    );
  },
  near: nearest,
};
