import {
  type Larder,
  listFrom,
  mended,
  notUnderstood,
  stops,
  type Thing,
  thingAt,
  withWord,
} from './eater-things.ts';
import { behind, type Role, roleOf, type Rule, ruleOf, telling, verdictOf } from './eater-words.ts';
import type { Reading } from './reading.ts';

/** One thing said of one food. */
export interface Note {
  readonly rule: Rule;
  readonly words: string;
}

/** A message about people and food, taken apart. */
export interface Notes {
  readonly notes: readonly Note[];
  /** Stretches of words that are no part of a note: a name, or what was not understood. */
  readonly others: readonly (readonly number[])[];
  /** Foods without a word that says what of them. */
  readonly loose: readonly Thing[];
}

/** The small words in front of a food, as far as they were read. */
interface Lead {
  readonly said: Set<Role>;
  readonly indexes: number[];
}

/**
 * Takes every note of a message.
 * @param isWhole the whole message is about people: each of its small words belongs to a note, and a food without one
 *   is loose. Otherwise only what stands at a food is taken, and only what keeps it away.
 * @param from the first word that may belong to a note
 * @throws Ambiguous where a mistyped food may be two, Refusal where what a note speaks of is not understood
 */
export function takeNotes(reading: Reading, larder: Larder, isWhole: boolean, from = 0): Notes {
  const notes: Note[] = [];
  const others: number[][] = [];
  const loose: Thing[] = [];
  let lead: Lead = { said: new Set(), indexes: [] };
  const tells = () =>
    [...lead.said].some((role) => (isWhole ? telling.has(role) : role === 'no' || role === 'ill'));
  const end = () => {
    if (isWhole && tells()) throw notUnderstood(reading, lead.indexes, undefined);
    if (isWhole) reading.take(...lead.indexes);
    lead = { said: new Set(), indexes: [] };
  };
  for (let i = from; i < reading.all.length; i++) {
    const token = reading.at(i);
    if (token?.is !== 'word' || stops.has(token.plain)) {
      // A comma or a name may stand inside a note; a figure, a full stop or another part ends it.
      const isInside =
        token === undefined
          ? /word|quoted/.test(reading.all[i]!.is)
          : token.is === 'mark' && !/[.;!?]/.test(token.mark);
      if (!isInside) end();
      continue;
    }
    const role = roleOf(token.plain);
    if (role !== undefined) {
      lead.said.add(role);
      lead.indexes.push(i);
      continue;
    }
    const isMeant = tells() || tailFrom(reading, i + 1, larder).said.has('ill');
    // 'Pip vegen': a way of eating needs no small word in front.
    const isLater = i > reading.all.findIndex(({ is }) => is === 'word' || is === 'quoted');
    const isDiet = isLater && /^\p{Ll}/u.test(token.typed) && larder.near(token.plain).every(larder.isDiet);
    // 'Nothing that swims': behind such a word stands a verb, which is no slip of a food's name.
    const isVerb = ['that', 'which', 'who'].includes(reading.at(i - 1)?.plain ?? '');
    const first =
      thingAt(reading, i, larder) ??
      ((isMeant || isDiet) && !isVerb ? mended(reading, i, larder) : undefined);
    if (first === undefined) {
      const isAsked = isWhole || ['no', 'without'].includes(reading.at(i - 1)?.plain ?? '');
      if (tells() && isAsked) throw notUnderstood(reading, lead.indexes, i);
      const run = others.at(-1);
      if (run?.at(-1) === i - 1) run.push(i);
      else others.push([i]);
      end();
      continue;
    }
    const things = listFrom(reading, first, larder, tells());
    const last = things.at(-1)!.indexes.at(-1)!;
    const tail = tailFrom(reading, last + 1, larder, tells());
    let isTaken = false;
    for (const thing of things) {
      // 'No gluten, oats are fine': behind a comma the last of them is a clause of its own.
      const isOwn = thing === things.at(-1) && things.length > 1 && isMark(reading, thing.indexes[0]! - 1);
      const rule =
        isOwn && tail.said.has('may') && !tail.said.has('no')
          ? 'lift'
          : ruleFor(thing, lead, tail, things.length, larder);
      if (rule === undefined || (!isWhole && rule !== 'never')) loose.push(thing);
      else notes.push({ rule, words: wordsOf(thing, tail.isFree, larder) });
      if (rule !== undefined && (isWhole || rule === 'never')) isTaken = true;
    }
    if (isTaken) {
      const to = tail.indexes.at(-1) ?? last;
      for (let k = first.indexes[0]!; k <= to; k++) reading.take(k);
      reading.take(...lead.indexes);
      i = to;
    } else i = last;
    if (isWhole) reading.take(...lead.indexes);
    lead = { said: new Set(), indexes: [] };
  }
  end();
  return { notes, others, loose };
}

interface Tail {
  readonly said: ReadonlySet<Role>;
  readonly indexes: readonly number[];
  /** 'gluten free' rather than 'gluten allergy'. */
  readonly isFree: boolean;
}

/**
 * The small words behind a food that speak of it: 'allergy', 'free', ', not even near', 'away'.
 * @param isTold whether words before the food say what of it: a comma behind it then brings the reason, as in 'no eggs, she gets hives'
 */
function tailFrom(reading: Reading, start: number, larder: Larder, isTold = false): Tail {
  const said = new Set<Role>();
  const indexes: number[] = [];
  let waiting: number[] = [];
  let waitingRoles: Role[] = [];
  let isReason = false;
  for (let i = start; i < reading.all.length; i++) {
    const token = reading.at(i);
    const isComma = token?.is === 'mark' && /[,()–-]/.test(token.mark);
    const role = token?.is === 'word' && !stops.has(token.plain) ? roleOf(token.plain) : undefined;
    if (!isComma && role === undefined) break;
    isReason ||= isComma && (isTold || said.size > 0);
    waiting.push(i);
    if (role !== undefined) waitingRoles.push(role);
    const isAway = token?.plain === 'away' || token?.plain === 'off' || token?.plain === 'anymore';
    const verdict = endsClause(reading, i) ? verdictOf(token?.plain ?? '') : undefined;
    if (verdict !== undefined) waitingRoles.push(verdict);
    if (role === undefined || !(behind.has(role) || isAway || verdict !== undefined)) continue;
    // 'Milk, allergic to eggs': what goes on belongs to the next food.
    const goesOn = ['to', 'from', 'of'].includes(reading.at(i + 1)?.plain ?? '');
    if (goesOn && (!isAway || thingAt(reading, i + 2, larder) !== undefined)) break;
    indexes.push(...waiting);
    for (const one of waitingRoles) if (!isReason || one === 'near') said.add(one);
    waiting = [];
    waitingRoles = [];
  }
  return { said, indexes, isFree: indexes.some((i) => reading.all[i]!.plain === 'free') };
}

const isMark = (reading: Reading, i: number) => reading.all[i]?.is === 'mark';

/** Whether what is said of a food ends with this word. */
function endsClause(reading: Reading, i: number): boolean {
  const next = reading.all[i + 1];
  return next?.is !== 'word' || /^(?:and|but|so|because|since|for|as|please|though|thanks)$/.test(next.plain);
}

function ruleFor(thing: Thing, lead: Lead, tail: Tail, many: number, larder: Larder): Rule | undefined {
  const said = new Set([...lead.said, ...tail.said]);
  if (withWord.test(thing.words)) said.add('ill');
  // 'No milk and nut allergy' is said of two, 'no nut allergy' says that there is none.
  if (many > 1 && lead.said.has('no') && tail.said.has('ill') && !lead.said.has('ill')) return 'never';
  return ruleOf(said, larder.isDiet(thing.words) && !withWord.test(thing.words));
}

/** 'gluten free' is a diet with a name of its own; 'nut free' is no nuts. */
function wordsOf({ words }: Thing, isFree: boolean, larder: Larder): string {
  const [, bare = words, word] = withWord.exec(words) ?? [];
  if (bare.endsWith(' diet')) return bare.slice(0, -' diet'.length);
  const free = `${bare}-free`;
  return (isFree || word === 'free') && larder.isDiet(free) ? free : bare;
}
