import type { KitchenFood } from './kitchen.ts';
import { neutral } from './vocabulary.ts';
import { foldedWords, foldName } from './words.ts';

/**
 * 'red lentils, dry': the short name with the state it is in. A name of quite other words ('scallion', 'penne',
 * 'farro') stays as it was typed.
 */
export function calledAs(entry: KitchenFood, name = ''): string {
  const own = new Set(foldedWords(entry.called));
  const isOther = name !== '' && !name.split(' ').some((word) => own.has(word) && !neutral.has(word));
  const alike = isOther ? entry.names.filter((one) => foldName(one) === name) : [];
  // Of two spellings of one name the one with its spaces reads better.
  const called = alike.toSorted((a, b) => b.length - a.length)[0] ?? entry.called;
  const apart = called.replace(/\bsundried\b/, 'sun-dried');
  return entry.state === null || apart.includes(entry.state) ? apart : `${apart}, ${entry.state}`;
}

/** The name in the number that was typed: '4 carrots' are carrots, though the kitchen lists the carrot. */
export function inNumber(called: string, typed: string): string {
  const [, name = '', last = '', state = ''] = /^(.*?)(\p{L}+)((?:, .*)?)$/u.exec(called) ?? [];
  const said = new Set(
    typed
      .slice(0, 200)
      .toLowerCase()
      .match(/\p{L}+/gu),
  );
  const many = [`${last}s`, `${last}es`, last.replace(/y$/, 'ies'), last.replace(/f$/, 'ves')].find(
    (word) => word !== last && said.has(word),
  );
  return many === undefined ? called : `${name}${many}${state}`;
}
