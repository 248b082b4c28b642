import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { freshName, takeKnownName, type Who } from './eater-name.ts';
import { type Note, type Notes, takeNotes } from './eater-notes.ts';
import { fold, stem } from './near.ts';
import type { Larder, Thing } from './eater-things.ts';
import { roleOf, type Rule } from './eater-words.ts';
import { type Names, optional, type Part, part } from './part.ts';
import type { Reading } from './reading.ts';
import { sayList } from './say.ts';

/** Foods and diets to keep out, within a request about something else: 'no milk', 'vegan', 'nut free'. */
export const avoidedIn = (larder: Larder): Part<string[]> =>
  part('what to keep out, such as no milk', (reading) => {
    const { notes } = takeNotes(reading, larder, false);
    return notes.length > 0 ? [...new Set(notes.map(({ words }) => words))] : undefined;
  });

interface Said extends Notes {
  readonly who: Who | undefined;
}

/**
 * A message about one person, read once for all its parts: every word of it is a name, a note, a small word of one,
 * or refused.
 */
function personParts(larder: Larder): (reading: Reading, names: Names) => Said {
  const read = new WeakMap<Reading, Said>();
  return (reading, names) => {
    const before = read.get(reading);
    if (before) return before;
    const said = readPerson(reading, names, larder);
    read.set(reading, said);
    return said;
  };
}

/** Foods and diets, and the household's own meals: a meal can be disliked as a whole. */
const withMeals = (larder: Larder, { meals }: Names): Larder => {
  const own = meals.map(fold).flatMap((name) => [name, ...name.split(' ').map(stem)]);
  return {
    ...larder,
    knows: (words) => larder.knows(words) || own.includes(stem(words)) || own.includes(fold(words)),
  };
};

/** A meal as a whole is no food that can be kept away: what is in it is. @throws Refusal 'meal-no-food' */
function onlyDisliked(notes: readonly Note[], larder: Larder): void {
  const meal = notes.find(({ rule, words }) => rule !== 'dislike' && rule !== 'lift' && !larder.knows(words));
  if (meal)
    throw new Refusal(
      'meal-no-food',
      `"${meal.words}" is a meal here, and what must never be served is told by its foods: no peanuts. A meal can be disliked: dislikes ${meal.words}. Nothing was recorded.`,
    );
}

function readPerson(reading: Reading, names: Names, foods: Larder): Said {
  const larder = withMeals(foods, names);
  const known = takeKnownName(reading, names);
  const first = known ? undefined : capitalFirst(reading);
  const notes = takeNotes(reading, larder, true, first === undefined ? 0 : first + 1);
  const runs = first === undefined ? [...notes.others] : joined(first, notes.others);
  const loose = [...notes.loose];
  const run = known ? undefined : (runs.shift() ?? loose.shift()?.indexes);
  if (run) reading.take(...run);
  const who = known ?? (run && freshName(reading, run, names, larder));
  const wrong = runs[0];
  if (wrong) throw unplaced(reading, wrong, known, { ...notes, who });
  if (loose[0]) throw asked(reading, loose[0], run);
  onlyDisliked(notes.notes, foods);
  return { ...notes, who };
}

/** A first word with a capital letter is a name, whatever else it may mean: 'May no milk', 'Olive vegan'. */
function capitalFirst(reading: Reading): number | undefined {
  const index = [...reading.left()].find((i) => reading.all[i]!.is === 'word');
  const token = index === undefined ? undefined : reading.all[index]!;
  if (!token || !/^\p{Lu}/u.test(token.typed)) return undefined;
  const role = roleOf(token.plain);
  const next = reading.at(index! + 1);
  const isFollowed = next === undefined || next.is !== 'word' || roleOf(next.plain) !== undefined;
  if (role !== undefined && ['will', 'may'].includes(token.plain) && /^\p{Lu}/u.test(next?.typed ?? ''))
    return index;
  // 'No milk Pip' begins with no name.
  return role === undefined || (isFollowed && role !== 'no' && role !== 'ill' && role !== 'hate')
    ? index
    : undefined;
}

function joined(first: number, others: Notes['others']): (readonly number[])[] {
  const [run, ...rest] = others;
  return run?.[0] === first + 1 ? [[first, ...run], ...rest] : [[first], ...others];
}

const verbs: Readonly<Record<Rule, string>> = {
  never: 'never',
  apart: 'not near',
  dislike: 'dislikes',
  exact: 'only',
  lift: 'may have',
};

/** Says what was understood of a message and which words were not. */
function unplaced(reading: Reading, run: readonly number[], known: Who | undefined, said: Said): Error {
  const tokens = run.map((i) => reading.all[i]!);
  const typed = reading.text.slice(tokens[0]!.from, tokens.at(-1)!.to);
  const name = said.who && ('known' in said.who ? said.who.known : said.who.fresh);
  const isBeside =
    known &&
    /^\p{Lu}/u.test(typed) &&
    reading.text
      .slice(0, tokens[0]!.from)
      .trimEnd()
      .endsWith(name ?? '');
  if (isBeside) {
    const from = reading.text.lastIndexOf(name!, tokens[0]!.from);
    const whole = reading.text.slice(from, tokens.at(-1)!.to);
    const put = (into: string) => reading.rewritten([{ from, to: tokens.at(-1)!.to, into: `"${into}"` }]);
    return new Ambiguous(`Is "${whole}" ${name}, or somebody new?`, [
      { label: name!, request: put(name!) },
      { label: `${whole}, new`, request: put(whole) },
    ]);
  }
  const understood = sayList([
    ...(name === undefined ? [] : [name]),
    ...said.notes.map(({ rule, words }) => `${verbs[rule]} ${words}`),
  ]);
  const keepsAway =
    said.notes.length > 0 && said.notes.every(({ rule }) => rule !== 'lift' && rule !== 'exact');
  // A word with a capital may be another's name, of whom it is said.
  if (name !== undefined && keepsAway && !/\p{Lu}/u.test(typed) && !isQuestion(reading, undefined))
    return new Ambiguous(`I read ${understood}, and could not place "${typed}". Keep what I read?`, [
      {
        label: `Keep: ${said.notes.map(({ rule, words }) => `${verbs[rule]} ${words}`).join(', ')}`,
        request: reading.rewritten([{ from: tokens[0]!.from, to: tokens.at(-1)!.to, into: '' }]),
      },
    ]);
  return new Refusal(
    'leftover',
    `I could not place "${typed}".${understood === '' ? '' : ` I read ${understood}.`} Nothing was recorded.`,
  );
}

/** A food without a word that says what of it. */
function asked(reading: Reading, { words, indexes }: Thing, name: readonly number[] = []): Ambiguous {
  const tokens = indexes.map((i) => reading.all[i]!);
  // 'Anna Rice' may be her name.
  const isName = name.at(-1) === indexes[0]! - 1 && tokens.every(({ typed }) => /^\p{Lu}/u.test(typed));
  const from = reading.all[name[0] ?? 0]!.from;
  const whole = reading.text.slice(from, tokens.at(-1)!.to);
  const put = (into: string) => reading.rewritten([{ from: tokens[0]!.from, to: tokens.at(-1)!.to, into }]);
  return new Ambiguous(`I read "${words}", but not what of it. Which is meant?`, [
    { label: `never ${words}`, request: put(`, never ${words}`) },
    { label: `dislikes ${words}`, request: put(`, dislikes ${words}`) },
    ...(isName
      ? [
          {
            label: `${whole} is the name`,
            request: reading.rewritten([{ from, to: tokens.at(-1)!.to, into: `"${whole}"` }]),
          },
        ]
      : []),
  ]);
}

const questions = new Set('who what which whom whose'.split(' '));
const askedOf = new Set('can may could should is are does do must'.split(' '));

/** Whether a message asks rather than tells: a question never records. */
const isQuestion = (reading: Reading, names: Names | undefined): boolean => {
  if (/[?？؟]\s*$/u.test(reading.text)) return true;
  const [first, second] = reading.all;
  if (first?.is !== 'word') return false;
  if (questions.has(first.plain)) return true;
  const isPerson = (word: string) =>
    word === 'i' || (names?.eaters ?? []).some((name) => name.toLowerCase() === word);
  return askedOf.has(first.plain) && second !== undefined && isPerson(second.plain);
};

/** Everything a message says of one person and food. */
/** Nobody says more of one person in a message. Chosen. */
const longestNote = 800;

/** What a message tells of one person. */
export function aboutPerson(larder: Larder) {
  const read = personParts(larder);
  const of = (rule: Rule, like: string) =>
    optional(
      part<string[]>(like, (reading, names) => {
        const found = read(reading, names).notes.filter((note) => note.rule === rule);
        return found.length > 0 ? [...new Set(found.map(({ words }) => words))] : undefined;
      }),
    );
  return {
    asks: optional(
      part<true>('a question', (reading, names) => {
        if (reading.text.length > longestNote)
          throw new Refusal(
            'too-long',
            `That is too long for a note about one person: at most ${longestNote} letters, one person at a time.`,
          );
        if (!isQuestion(reading, names)) return undefined;
        reading.takeWords('what');
        return true;
      }),
    ),
    /** The whole message, where it lifts what is kept away: the button that confirms it repeats it. */
    lifting: optional(
      part<string>('what may be eaten again', (reading, names) =>
        read(reading, names).notes.some(({ rule }) => rule === 'lift' || rule === 'exact')
          ? reading.text
          : undefined,
      ),
    ),
    never: of('never', 'what to keep out, such as no milk'),
    apart: of('apart', 'what must not be near, such as no peanuts near'),
    exact: of('exact', 'the food alone, such as only butter'),
    dislikes: of('dislike', 'what is not liked, such as dislikes olives'),
    again: of('lift', 'what may be eaten again, such as may eat milk'),
    who: optional(part<Who>('a name', (reading, names) => read(reading, names).who)),
  };
}
