import type { Contents } from '#core/allergens.ts';
import { oneOf } from '#core/contents.ts';
import { later } from '#words/later.ts';
import { byName, contentsOf, kitchen, type KitchenFood } from './kitchen.ts';
import { dishes, usually } from './pantry/dishes.ts';
import { keyOf, tokensOf } from './tokens.ts';
import { foldName, wordsJoined } from './words.ts';

/** A food that a line may name without counting it. */
export interface Naming {
  readonly called: string;
  readonly contents: Contents;
  /** The kitchen's rows of that name; none for a dish, which is known by what it holds and never counted. */
  readonly entries: readonly KitchenFood[];
  /** A sort of dish that may be made of anything: a sauce, a filling, a salad. */
  readonly isKind: boolean;
}

const expanded = (contents: string) =>
  contents.replace(/@(\w+)/g, (whole, name: string) => {
    const words = usually[name];
    if (words === undefined) throw new Error(`unknown dish base ${whole}`);
    return words;
  });

/** 'macaroni & cheese' and 'macaroni cheese': a name as its tokens, and as its words alone. */
const keysOf = (name: string) => [...new Set([keyOf(tokensOf(name)), foldName(name)])];

/** What a heading or a purpose names: 'for the stew', 'Salad:'. What is in it stands in other lines. */
export const partsOfMeals: ReadonlySet<string> = new Set(
  'stew,soup,salad,casserole,curry,stir fry,sandwich,crumb,crust,mash,gravy,batter,pie,pastry,dumpling,meatball,broth,dough,custard,icing,frosting,cake,burger,kebab,taco,pizza,pasta,noodle,rice bowl,meat,vegetable,veg,mince'.split(
    ',',
  ),
);

/** Every food that words can name, by the key of its tokens: the kitchen's own names, then dishes and kinds of food. */
export const namings = later((): ReadonlyMap<string, Naming> => {
  const map = new Map<string, Naming>();
  // 'bourbon or dark rum' in the kitchen's list is two foods all the same.
  const isChoice = (key: string) => / or /.test(key);
  for (const [key, entries] of byName())
    if (!isChoice(key))
      map.set(key, {
        called: key,
        contents: oneOf(entries.map(({ contents }) => contents)),
        entries,
        isKind: false,
      });
  for (const { names } of kitchen())
    for (const name of names) {
      const key = keyOf(tokensOf(name));
      if (!isChoice(key) && !map.has(key)) map.set(key, map.get(foldName(name))!);
    }
  // Of two rows of dishes the later one is the closer look; the kitchen's own rows are closer still.
  for (const row of dishes.split('\n').filter((line) => line.trim() !== '')) {
    const [names = '', contents = ''] = row.split('|').map((cell) => cell.trim());
    const known = contentsOf(expanded(contents), row);
    for (const name of names.split(';').map((one) => one.trim()))
      for (const key of keysOf(name)) {
        const before = map.get(key);
        if (!before || before.entries.length === 0)
          map.set(key, {
            called: name,
            contents: known,
            entries: [],
            isKind: contents === '@any' || partsOfMeals.has(name),
          });
      }
  }
  return map;
});

/** The longest name, in words; words that occur in some name, as a mistyped word may; and 'peanutbutter', 'oatmilk': names without their spaces. */
export const wordsOfNamings = later(
  (): {
    readonly longest: number;
    readonly words: ReadonlySet<string>;
    readonly glued: ReadonlyMap<string, string>;
  } => {
    const keys = [...namings().keys()];
    const words = keys.map((key) => key.split(' '));
    return {
      longest: Math.max(...words.map((name) => name.length)),
      words: new Set([...words.flat(), ...wordsJoined].filter((word) => /^\p{L}{3,}$/u.test(word))),
      glued: new Map(
        keys
          .filter((key) => /^[\p{L}]{3,} [\p{L} ]{3,}$/u.test(key))
          .map((key) => [key.replaceAll(' ', ''), key]),
      ),
    };
  },
);
