import { Ambiguous } from './ambiguous.ts';
import type { Larder } from './eater-things.ts';
import { roleOf } from './eater-words.ts';
import { fold, slips } from './near.ts';
import type { Names } from './part.ts';
import { takeName } from './names.ts';
import { Reading } from './reading.ts';

/** Whom a message speaks of: somebody who eats here, or a name not heard before. */
export type Who = { readonly known: string } | { readonly fresh: string };

const mine = new Set(['me', 'myself', 'i', "i'm", 'im', 'mine', "i've", 'ive']);

/** Small words inside names of people. */
const particles = new Set(
  'van von de der den del della di da dos du la le el al bin ben ibn und y e af av zu ter ten'.split(' '),
);
const withoutS = (plain: string) => plain.replace(/'s?$/u, '');
const isNamePart = (word: string) => !/^\p{Ll}/u.test(word);
/** A script without small and capital letters: which word is a name cannot be seen. */
const hasNoCase = (word: string) => !/\p{Lu}|\p{Ll}/u.test(word);

/** Takes a name that cannot be mistaken: quoted, 'me', or that of somebody who eats here. */
export function takeKnownName(reading: Reading, names: Names): Who | undefined {
  for (const i of reading.left()) {
    const token = reading.all[i]!;
    // Quoted or not, 'no nuts' is nobody's name.
    if (token.is !== 'quoted' || roleOf(token.inside.split(' ')[0]!.toLowerCase()) === 'no') continue;
    reading.take(i);
    const known = names.eaters.find((name) => fold(name) === fold(token.inside));
    return known === undefined ? { fresh: token.inside.trim() } : { known };
  }
  // 'Add Ruth', 'new guest Pia': what is to be done is no name.
  for (const i of [0, 1]) {
    const token = reading.at(i);
    const next = reading.all[i + 1];
    if (!token || !/^(?:add|new|also|eater|guest)$/.test(token.typed) || next?.is !== 'word') break;
    reading.take(i);
  }
  for (const i of reading.left())
    if (names.me && mine.has(reading.all[i]!.plain)) {
      reading.take(i);
      return names.eaters.includes(names.me) ? { known: names.me } : { fresh: names.me };
    }
  const folded = names.eaters
    .map((name) => ({ name, words: fold(name).split(' ') }))
    .toSorted((a, b) => b.words.length - a.words.length);
  for (const i of reading.left())
    for (const { name, words } of folded) {
      const indexes = words.map((_, k) => i + k);
      const isHere = indexes.every((at, k) => fold(withoutS(reading.at(at)?.plain ?? '')) === words[k]);
      // 'No olive' is said of the fruit, though an Olive eats here.
      if (!isHere || roleOf(reading.at(i - 1)?.plain ?? '') === 'no') continue;
      reading.take(...indexes);
      return { known: name };
    }
  return undefined;
}

/** The person whose name a typed one resembles. */
function nearName(name: string, known: readonly string[]): string | undefined {
  const most = name.length < 7 ? 1 : 2;
  return (
    known.find((one) => slips(fold(name), fold(one), most) <= most) ??
    takeName(new Reading(name), known, 'eater')
  );
}

/**
 * A name not heard before, from a stretch of words that no note took.
 * @throws Ambiguous where it may be somebody known, or hold a word that was meant otherwise
 */
export function freshName(reading: Reading, run: readonly number[], names: Names, larder: Larder): Who {
  const tokens = run.map((i) => reading.all[i]!);
  const [from, to] = [tokens[0]!.from, tokens.at(-1)!.to];
  const name = reading.text
    .slice(from, to)
    .replace(/['’]s$/u, '')
    .trim();
  const named = (into: string) => reading.rewritten([{ from, to, into: `"${into}"` }]);
  const words = tokens.map(({ typed }) => typed);
  const near = nearName(name, names.eaters);
  if (near !== undefined && fold(near) === fold(name)) return { known: near };
  if (near !== undefined)
    throw new Ambiguous(`Is "${name}" ${near}, or somebody new?`, [
      { label: near, request: named(near) },
      { label: `${name}, new`, request: named(name) },
    ]);
  const isFood = (word: string) => larder.knows(word) || larder.near(word.toLowerCase()).length > 0;
  const later = words.slice(1).filter((word) => !particles.has(word.toLowerCase()));
  const stray = later.find(
    (word) =>
      !isNamePart(word) || hasNoCase(word) || isFood(word) || roleOf(word.toLowerCase()) !== undefined,
  );
  const odd = stray ?? (!isNamePart(words[0]!) && larder.knows(words[0]!) ? words[0]! : later[1]);
  if (odd === undefined) return { fresh: name };
  // A word that was meant to keep something away must not end up in somebody's name.
  const at = tokens.find(({ typed }) => typed === odd)!;
  const foods = run.length > 1 ? [...(larder.knows(odd) ? [odd] : larder.near(odd.toLowerCase()))] : [];
  // Behind a name in capitals a small word is no part of it.
  const isSmall = /^\p{Ll}/u.test(odd) && /^\p{Lu}/u.test(words[0]!);
  const without = reading.rewritten([{ from: at.from, to: at.to, into: '' }]);
  throw new Ambiguous(`I could not place "${odd}". Is "${name}" the whole name of somebody new?`, [
    isSmall
      ? { label: `Leave "${odd}" out`, request: without }
      : { label: `Yes, ${name}`, request: named(name) },
    ...foods.slice(0, 2).map((food) => ({
      label: `No: never ${food}`,
      request: reading.rewritten([{ from: at.from, to: at.to, into: `never ${food}` }]),
    })),
  ]);
}
