import type { Code } from '#core/records.ts';
import { Refusal } from '#core/refusal.ts';
import type { Unit } from '#core/units.ts';
import { fold } from './near.ts';
import { takeWhole } from './names.ts';
import { type Reading } from './reading.ts';
import { takeName } from './names.ts';

/** What a part may need to know to be read: names of this household, never its records. */
export interface Names {
  readonly meals: readonly string[];
  /** What the household calls its meals besides: 'curry' → 'Red lentil curry'. */
  readonly otherNames: ReadonlyMap<string, string>;
  readonly eaters: readonly string[];
  /** Batches of a meal, the latest first; those of which nothing is sealed, or all. */
  readonly batchesOf: (meal: string, drying: boolean) => readonly number[];
  /** Pouches of a meal that are free in stock, the oldest best-by first. */
  readonly pouchesOf: (meal: string) => readonly Code[];
  /** Pouches of a meal that were eaten, the last first. */
  readonly eatenOf: (meal: string) => readonly Code[];
  /** The one meal that has an ingredient called so; undefined where none or several have. */
  readonly mealWith?: (word: string) => string | undefined;
  /** On how many trays a batch lies, by its code; undefined where there is none. */
  readonly traysOf?: (code: string) => number | undefined;
  /** Batches of which nothing is sealed, the latest first. */
  readonly drying: readonly number[];
  /** What was said in this chat lately, the newest first. */
  readonly earlier: readonly string[];
  /** What whoever asks had recorded last in this chat, lately, and its entry; undefined where there is nothing. */
  readonly lastRecorded?: { readonly text: string; readonly entry: number } | undefined;
  /** The household's kinds of pouch, by name. */
  readonly pouchKinds: readonly string[];
  /** Places of the trips that are not over, the next to start first. */
  readonly trips: readonly string[];
  /** A trip's first and last day, ISO. */
  readonly tripDays: (place: string) => { readonly startsOn: string; readonly endsOn: string } | undefined;
  /** Whoever asks, as they are called; an eater of that name is "me". */
  readonly me: string;
  readonly nowMs: number;
  readonly zone: string;
}

/**
 * A piece of a request: how it looks to people and how it is taken out of a reading.
 * `read` returns undefined when the piece is not there, and refuses what is there but cannot be.
 */
export interface Part<T> {
  readonly like: string;
  readonly read: (reading: Reading, names: Names) => T | undefined;
  readonly needed: boolean;
}

/** @param like how to type it, for the sentence that asks for it: 'a pouch code such as B4-2' */
export function part<T>(like: string, read: Part<T>['read']): Part<T> {
  return { like, read, needed: true };
}

/** The same piece, but the request can do without it. */
export function optional<T>(needed: Part<T>): Part<T | undefined> {
  return { ...needed, needed: false };
}

/** A meal by its name, loosely typed. */
export const meal = part<string>('a meal by its name', (reading, names) =>
  takeMeal(reading, names.meals, names.otherNames),
);

/** A meal by its own name or by another that the household gave it, said when that was used. */
export function takeMeal(
  reading: Reading,
  meals: readonly string[],
  otherNames: ReadonlyMap<string, string>,
): string | undefined {
  const others = [...otherNames.keys()].filter((name) => !meals.some((meal) => fold(meal) === fold(name)));
  const whole = others.length === 0 ? undefined : takeWhole(reading, [...meals, ...others]);
  const taken = whole ?? takeName(reading, meals, 'meal') ?? takeName(reading, others, 'meal');
  const meant = taken === undefined ? undefined : meals.includes(taken) ? taken : otherNames.get(taken);
  if (meant !== taken) reading.remarks.push(`"${taken}" is ${meant} here`);
  return meant;
}

/** Whether one of these words was typed. */
export const flag = (...words: string[]): Part<true | undefined> =>
  optional(part(words[0]!, (reading) => (reading.keyword(...words) === undefined ? undefined : true)));

/** Everything that is left, as typed. */
export const restOfText = (like: string): Part<string> =>
  part(like, (reading) => reading.rest() || undefined);

export interface Measured {
  /** In the base unit of its kind: g, ml, m, K of a difference, s. */
  readonly value: number;
  readonly typed: string;
  readonly index: number;
}

/** The free quantities of one kind of unit, in the order typed, none of them taken yet. */
export function quantities(reading: Reading, kind: Unit['kind']): Measured[] {
  const found: Measured[] = [];
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is === 'quantity' && token.unit.kind === kind) {
      found.push({ value: token.value * token.unit.factor, typed: token.typed, index });
    }
  }
  return found;
}

/**
 * One quantity of a kind, optionally the one that stands behind certain words ('pot 3.9 kg').
 * Two of them where one is wanted are refused, not chosen from.
 */
export function measure(kind: 'mass' | 'volume' | 'length', like: string, ...behind: string[]): Part<number> {
  return part(like, (reading) => {
    const all = quantities(reading, kind);
    const found = behind.length > 0 ? all.filter((q) => reading.wordBefore(q.index, ...behind)) : all;
    const one = found[0];
    if (!one) return undefined;
    if (found.length > 1) {
      throw new Refusal(
        'two-amounts',
        `I read two amounts, ${one.typed} and ${found[1]!.typed}, where one is needed.`,
      );
    }
    reading.settleNumbers([one.index]);
    reading.take(one.index);
    if (behind.length > 0) reading.take(one.index - 1);
    if (!(one.value > 0))
      throw new Refusal('not-positive', `${one.typed} is not an amount: it must be above zero.`);
    return one.value;
  });
}

/** A weight in grams; given words, the weight that stands behind one of them. */
export const massG = (like: string, ...behind: string[]) => measure('mass', like, ...behind);
