import type { Occasion } from '#core/occasions.ts';
import type { Camp } from '#core/records.ts';
import { occasionsNamed } from './occasion-words.ts';
import { type LineDoubt, lineDoubt } from './line-doubts.ts';
import { campChange, placeChanges, type SectionChange, sectionChanges } from './section-changes.ts';

/** A change of a recorded recipe as it was typed; `name` is not looked up yet. */
export type RecipeChange = { readonly name: string } & (
  | { readonly is: 'line'; readonly position: number; readonly typed: string }
  | { readonly is: 'without'; readonly position: number }
  /** Told by a food, not by its line; null: taken out. */
  | { readonly is: 'food'; readonly food: string; readonly typed: string | null }
  | { readonly is: 'more'; readonly typed: string }
  | { readonly is: 'move'; readonly position: number; readonly to: number }
  | { readonly is: 'name'; readonly newName: string }
  | { readonly is: 'gone'; readonly sure: boolean }
  | { readonly is: 'eaten'; readonly how: 'dry' | 'soaked' }
  | SectionChange
  | LineDoubt
  | { readonly is: 'camp'; readonly camp: Camp }
  /** Told by a food: added at camp, or in the pot after all. */
  | { readonly is: 'goes'; readonly food: string; readonly where: 'camp' | 'pot' }
  | { readonly is: 'use'; readonly how: 'is' | 'also' | 'not'; readonly uses: readonly Occasion[] }
);

const away = '(?:delete|remove|drop|strike|take\\s+out|leave\\s+out)';
const line = '(?:the\\s+)?line\\s+(\\d{1,2})';
const ofName = '(?:\\s+(?:of|from|in)\\s+(.+?))?';
const pattern = (text: string) => new RegExp(`^${text}$`, 'isu');

const without = pattern(`(.*?)\\b${away}\\s+${line}${ofName}`);
const takeOut = pattern(`(.*?)\\btake\\s+${line}\\s+out${ofName.replace('?:of', '?:of|out of')}`);
const withoutBehind = pattern(`(.*?)\\b${line}\\s+(?:delete|remove|away|out)`);
const move = pattern(`(.*?)\\bmove\\s+${line}\\s+to\\s+(?:(?:line|place|position)\\s+)?(\\d{1,2})${ofName}`);
const moveOf = pattern(
  `move\\s+${line}\\s+(?:of|in)\\s+(.+?)\\s+to\\s+(?:(?:line|place|position)\\s+)?(\\d{1,2})`,
);
const called = pattern('(.+?)[\\s,]+(?:is|are)\\s+(?:now\\s+)?called\\s+(.+)');
const renameBehind = pattern('(.+?)[\\s,]+rename(?:\\s+(?:it\\s+)?to)?\\s+(.+)');
/** 'Porridge is for breakfast', 'the crisps are a snack', 'soup is no breakfast', 'goulash is for breakfast too'. */
const used = pattern(
  "(.+?)[\\s,]+(?:is|are|isn['’]?t|aren['’]?t)\\s+(?:only\\s+|just\\s+)?((?:not|no|never|also)\\s+)?(?:(?:good|meant|eaten|ok|okay|fine)\\s+)?((?:for|as|an?)\\s+)?(.+)",
);
const rename = pattern('rename\\s+(.+)');
const beEaten = '(?:(?:is|are|be|to\\s+be|gets?)\\s+)?(?:(?:always|usually)\\s+)?';
const eatenDry = pattern(`(.+?)[\\s,]+${beEaten}eaten\\s+(?:as\\s+(?:it\\s+is|they\\s+are)|dry)`);
const eatDry = pattern('(?:we\\s+)?eat\\s+(.+?)\\s+dry');
// 'The soup is not dry' speaks of its batch, and 'needs water' of the pot.
const soaked = pattern(
  `(.+?)[\\s,]+${beEaten}(?:(?:eaten\\s+)?(?:soaked|with\\s+water)|not\\s+eaten\\s+dry)`,
);
const changes = '(?:replace|swap|exchange|substitute)';
const instead = '\\s+(?:with|for|by|against)\\s+';
const foodOut = pattern(`(?:take|leave)\\s+(?:all\\s+)?(?:the\\s+)?(.+?)\\s+out\\s+of\\s+(.+)`);
const foodGone = pattern(`${away}\\s+(?:all\\s+)?(?:the\\s+)?(.+)`);
const foodIn = pattern(`${changes}\\s+(?:the\\s+)?(.+?)\\s+(?:in|of)\\s+(.+?)${instead}(.+)`);
const foodFor = pattern(`${changes}\\s+(?:the\\s+)?(.+?)${instead}(.+)\\s+in\\s+(.+)`);
const foodBehind = pattern(`(.+?)[\\s,:]+${changes}\\s+(?:the\\s+)?(.+?)${instead}(.+)`);
const goneFromBehind = pattern(`(.+?)[\\s,:]+${away}\\s+(?:the\\s+)?(?!lines?\\b)(.+)`);
const call = pattern('call\\s+(.+?)(?:\\s+from\\s+now\\s+on)?');
const gone = pattern(`${away}\\s+(.+?)(\\s+sure)?`);
const goneBehind = pattern(`(.+?)\\s+${away}(\\s+sure)?`);
const more = pattern('(.+?)[\\s,:]+add(?:\\s+(?:a\\s+|the\\s+)?line)?\\s*:?\\s+(.+)');
const moreTo = pattern('(?:add|put)(?:\\s+(?:a\\s+|the\\s+)?line)?\\s*:?\\s+(.+)');
const changeOf = pattern(`(?:(?:change|put|make|set|correct|replace)\\s+)?${line}\\s+(?:of|in)\\s+(.+)`);
const changeLine = pattern(
  `(.*?)(?:\\b(?:change|make|set|correct)\\s+)?\\b${line}\\s*(?::|=|\\bis(?:\\s+now)?\\b|\\bto\\b|\\s)\\s*(.+)`,
);

/** Every place where a text may be cut at a word, the words on either side. */
function cuts(text: string, at: RegExp): [string, string][] {
  return [...text.matchAll(at)].map(({ index, 0: word }) => [
    text.slice(0, index),
    text.slice(index + word.length),
  ]);
}

const closing = /[\s,.!]*\b(?:please|pls|thanks|thank you)[\s.!]*$/iu;

const nameAlone = (typed: string): string =>
  typed
    .replaceAll('"', '')
    .replace(/^(?:the\s+)?recipe\s+(?:of\s+|for\s+)?(?=\S)/iu, '')
    .replace(/\s+recipe$/iu, '')
    .replace(/[\s,:]+$/u, '')
    .trim();

const unquoted = (typed: string): string =>
  typed
    .trim()
    .replace(/[\s,.?!]+$/u, '')
    .replace(/^["“”„«](.*)["“”»]$/su, '$1')
    .trim();

/** 'Remove the carrots from the soup', 'swap the cream in the stew for oat milk', 'soup remove carrots'. */
function byFood(text: string): RecipeChange[] {
  const out = foodOut.exec(text);
  if (out) return [{ is: 'food', food: out[1]!, name: out[2]!, typed: null }];
  const inIt = foodIn.exec(text);
  if (inIt) return [{ is: 'food', food: inIt[1]!, name: inIt[2]!, typed: inIt[3]! }];
  const forIt = foodFor.exec(text);
  if (forIt) return [{ is: 'food', food: forIt[1]!, name: forIt[3]!, typed: forIt[2]! }];
  const behind = foodBehind.exec(text);
  if (behind) return [{ is: 'food', name: behind[1]!, food: behind[2]!, typed: behind[3]! }];
  const goes = foodGone.exec(text);
  if (goes)
    return cuts(goes[1]!, /\s+(?:from|of|in|out\s+of)\s+(?:the\s+)?/giu).map(([food, name]) => ({
      is: 'food',
      food,
      name,
      typed: null,
    }));
  const last = goneFromBehind.exec(text);
  return last ? [{ is: 'food', name: last[1]!, food: last[2]!, typed: null }] : [];
}

/** 'Add 20 g cheese to the soup at camp': where it is added belongs to the line. */
function atCampBehind(name: string, typed: string): { name: string; typed: string } {
  const behind = /[\s,]+(?:at|in)\s+camp$/iu.exec(name)?.[0];
  return behind === undefined
    ? { name, typed }
    : { name: name.slice(0, -behind.length), typed: `${typed}, at camp` };
}

function read(text: string): RecipeChange[] {
  const dry = eatenDry.exec(text) ?? eatDry.exec(text);
  if (dry) return [{ is: 'eaten', name: dry[1]!, how: 'dry' }];
  const wet = soaked.exec(text);
  if (wet) return [{ is: 'eaten', name: wet[1]!, how: 'soaked' }];
  let found = without.exec(text) ?? takeOut.exec(text) ?? withoutBehind.exec(text);
  if (found)
    return [{ is: 'without', name: `${found[1]!} ${found[3] ?? ''}`.trim(), position: Number(found[2]) }];
  found = moveOf.exec(text);
  if (found) return [{ is: 'move', position: Number(found[1]), name: found[2]!, to: Number(found[3]) }];
  found = move.exec(text);
  if (found) {
    const name = `${found[1]!} ${found[4] ?? ''}`.trim();
    return [{ is: 'move', name, position: Number(found[2]), to: Number(found[3]) }];
  }
  found = changeOf.exec(text);
  if (found) {
    const position = Number(found[1]);
    return cuts(found[2]!, /\s+(?:to|into|is|with|by)\s+|\s*[:=]\s*/giu).map(([name, typed]) => ({
      is: 'line',
      name,
      position,
      typed,
    }));
  }
  found = moreTo.exec(text);
  if (found)
    return cuts(found[1]!, /^put\b/iu.test(text) ? /\s+(?:into|in|to)\s+/giu : /\s+(?:in)?to\s+/giu)
      .reverse()
      .map(([typed, name]) => ({ is: 'more', ...atCampBehind(name, typed) }));
  found = rename.exec(text);
  if (found)
    return cuts(found[1]!, /\s+(?:to|as|into)\s+/giu).map(([name, newName]) => ({
      is: 'name',
      name,
      newName: unquoted(newName),
    }));
  const foods = byFood(text);
  found = gone.exec(text) ?? goneBehind.exec(text);
  if (found) return [{ is: 'gone', name: found[1]!, sure: found[2] !== undefined }, ...foods];
  if (foods.length > 0) return foods;
  found = call.exec(text);
  if (found)
    // The longest name that is one: 'the barley soup', not 'the barley'.
    return cuts(found[1]!, /\s+/gu)
      .toReversed()
      .map(([name, newName]) => ({ is: 'name', name, newName: unquoted(newName) }));
  found = more.exec(text);
  if (found) return [{ is: 'more', name: found[1]!, typed: found[2]! }];
  found = changeLine.exec(text);
  if (found) return [{ is: 'line', name: found[1]!, position: Number(found[2]), typed: found[3]! }];
  found = used.exec(text);
  const uses = found ? occasionsNamed(found[4]!) : undefined;
  if (found && uses) {
    const isNot = /^(?:not|no|never)/iu.test(found[2] ?? '') || /\b(?:is|are)n['’]?t\b/iu.test(text);
    const also = /^also/iu.test(found[2] ?? '') || /\b(?:too|also|as well)$/iu.test(text);
    return [{ is: 'use', name: found[1]!, how: isNot ? 'not' : also ? 'also' : 'is', uses }];
  }
  const both = renameBehind.exec(text);
  // '/recipe chili rename beef chili to ranch chili': the recipe is named twice.
  const again = both ? cuts(both[2]!, /\s+(?:to|as|into)\s+/giu) : [];
  if (both && again.length > 0)
    return [
      ...again.map(([name, newName]) => ({ is: 'name' as const, name, newName: unquoted(newName) })),
      { is: 'name', name: both[1]!, newName: unquoted(both[2]!) },
    ];
  found = called.exec(text) ?? both;
  return found ? [{ is: 'name', name: found[1]!, newName: unquoted(found[2]!) }] : [];
}

/**
 * Reads a change of a recipe, as typed behind its request.
 * @returns every reading, the likeliest first: which one holds hangs on which recipes there are
 */
export function changesTyped(text: string): RecipeChange[] {
  const one = text.trim().replace(closing, '');
  if (one.includes('\n')) return [];
  // A colon inside the name begins the ingredients of a new recipe.
  const sections = sectionChanges(one);
  const alone = campChange(one) ?? lineDoubt(one);
  const places = placeChanges(one);
  return (alone ? [alone] : sections.length + places.length > 0 ? [...sections, ...places] : read(one))
    .map((change) => ({ ...change, name: nameAlone(change.name) }))
    .filter((change) => !`${change.name}${change.is === 'name' ? change.newName : ''}`.includes(':'));
}
