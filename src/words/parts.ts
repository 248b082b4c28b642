import { Refusal } from '#core/refusal.ts';
import type { Unit } from '#core/units.ts';
import { type Reading, takeName } from './reading.ts';
import type { Token } from './tokens.ts';

/** What a part may need to know to be read: names of this household, never its records. */
export interface Names {
  readonly meals: readonly string[];
  readonly eaters: readonly string[];
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

export interface PouchCode {
  readonly batch: number;
  readonly no: number;
}

const joins = new Set([',', '&', '+', 'and']);
const spans = new Set(['to', '-', '..', 'until', 'through']);

/** The first free token after an index and its index, marks in `skip` passed over and collected. */
function next(reading: Reading, index: number, skip: ReadonlySet<string>) {
  const passed: number[] = [];
  for (let i = index + 1; i < reading.all.length; i++) {
    const token = reading.at(i);
    if (!token) return undefined;
    if ((token.is === 'mark' || token.is === 'word') && skip.has(token.plain)) passed.push(i);
    else return passed.length > 0 || i === index + 1 ? { token, index: i, passed } : undefined;
  }
  return undefined;
}

/** Pouch codes: 'B4-2', 'B4-2 B4-3', 'B4-1 to B4-6', 'B4-1 to 6', 'B4-2, 3 and 5'. */
export const pouchCodes = part<PouchCode[]>('a pouch code such as B4-2', (reading) => {
  const codes: PouchCode[] = [];
  for (let i = 0; i < reading.all.length; i++) {
    const token = reading.at(i);
    if (token?.is !== 'pouch') continue;
    reading.take(i);
    codes.push({ batch: token.batch, no: token.no });
    for (let from = i; ;) {
      const following = continuation(reading, from, codes.at(-1)!);
      if (!following) break;
      reading.take(...following.passed, following.index);
      codes.push(...following.codes);
      from = following.index;
    }
  }
  const once = codes.filter((c, i) => codes.findIndex((d) => d.batch === c.batch && d.no === c.no) === i);
  return once.length > 0 ? once : undefined;
});

function continuation(reading: Reading, from: number, last: PouchCode) {
  const dots = next(reading, from, new Set(['.', ...spans]));
  const spanned = dots && dots.passed.length > 0 ? dots : undefined;
  if (spanned) {
    const end = lastOf(spanned.token, last);
    if (end !== undefined) {
      if (end <= last.no || end - last.no > 500) {
        throw new Refusal(
          'bad-range',
          `B${last.batch}-${last.no} to ${end} is no row of codes I can follow.`,
        );
      }
      const codes = Array.from({ length: end - last.no }, (_, k) => ({
        batch: last.batch,
        no: last.no + k + 1,
      }));
      return { ...spanned, codes };
    }
  }
  const listed = next(reading, from, joins);
  if (!listed || listed.passed.length === 0 || listed.token.is !== 'number') return undefined;
  const no = listed.token.value;
  if (!Number.isInteger(no) || no < 1 || listed.token.spelled) return undefined;
  return { ...listed, codes: [{ batch: last.batch, no }] };
}

function lastOf(token: Token, first: PouchCode): number | undefined {
  if (token.is === 'pouch' && token.batch === first.batch) return token.no;
  if (token.is === 'number' && Number.isInteger(token.value) && !token.spelled) return Math.abs(token.value);
  return undefined;
}

/** A batch code: 'B4'. */
export const batchCode = part<number>('a batch code such as B4', (reading) => {
  for (const i of reading.left()) {
    const token = reading.all[i]!;
    if (token.is === 'batch') {
      reading.take(i);
      return token.batch;
    }
  }
  return undefined;
});

/** A meal by its name, loosely typed. */
export const meal = part<string>('a meal by its name', (reading, names) =>
  takeName(reading, names.meals, 'meal'),
);

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

/**
 * A list of weights, one a tray: '812 798 805 790 g', '812 g, 798 g', '1.2 kg 1.1 kg'. A unit at the end
 * holds for the bare numbers before it; without any unit grams are meant.
 */
export const trayWeights = part<number[]>('the weights, such as 812 798 805 g', (reading) => {
  const run: { index: number; token: Token }[] = [];
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    const isWeight =
      (token.is === 'number' && !token.spelled) || (token.is === 'quantity' && token.unit.kind === 'mass');
    if (isWeight) run.push({ index, token });
  }
  if (run.length === 0) return undefined;
  reading.settleNumbers(run.map((r) => r.index));
  const grams: number[] = [];
  let factor = 1;
  for (const { index, token } of run.toReversed()) {
    if (token.is === 'quantity') factor = token.unit.factor;
    if (token.is !== 'quantity' && token.is !== 'number') continue;
    if (!(token.value > 0))
      throw new Refusal('not-positive', `${token.typed} is not a weight: it must be above zero.`);
    grams.unshift(token.value * factor);
    reading.take(index);
  }
  return joinPoundsAndOunces(
    run.map((r) => r.token),
    grams,
  );
});

/** '1 lb 12 oz' is one weight, not two. */
function joinPoundsAndOunces(typed: readonly Token[], grams: readonly number[]): number[] {
  const joined: number[] = [];
  typed.forEach((token, i) => {
    const before = typed[i - 1];
    const isOunces = token.is === 'quantity' && token.unit.symbol === 'oz';
    if (isOunces && before?.is === 'quantity' && before.unit.symbol === 'lb')
      joined.push(joined.pop()! + grams[i]!);
    else joined.push(grams[i]!);
  });
  return joined;
}

/** 'x1.5', '1.5 x', 'double', 'half'. */
export const factor = part<number>('a factor such as x1.5', (reading) => {
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'mark' || token.mark !== 'x') continue;
    for (const beside of [index + 1, index - 1]) {
      const number = reading.at(beside);
      if (number?.is !== 'number') continue;
      reading.settleNumbers([beside]);
      reading.take(index, beside);
      if (!(number.value > 0 && number.value <= 100)) {
        throw new Refusal('bad-factor', `x${number.value} is no factor I can cook by; from 0.01 to 100 is.`);
      }
      return number.value;
    }
  }
  if (reading.keyword('double', 'doubled') !== undefined) return 2;
  if (reading.keyword('triple', 'tripled') !== undefined) return 3;
  return undefined;
});

export interface PouchGroup {
  readonly count: number;
  readonly eachDryG: number;
}

/** '6 x 95 g', '4 x 95 g 2 x 140 g', '6 pouches of 95 g', '95 g' alone for one pouch. */
export const pouchGroups = part<PouchGroup[]>(
  'how many pouches and how heavy, such as 6 x 95 g',
  (reading) => {
    const groups: PouchGroup[] = [];
    for (const each of quantities(reading, 'mass')) {
      let at = each.index - 1;
      const used: number[] = [];
      while (isBetween(reading.at(at))) used.push(at--);
      const token = reading.at(at);
      if (token?.is === 'number') {
        reading.settleNumbers([at]);
        used.push(at);
      }
      const count = token?.is === 'number' ? token.value : 1;
      reading.settleNumbers([each.index]);
      reading.take(
        each.index,
        ...used.filter((i) => token?.is === 'number' || reading.at(i)?.plain === 'of'),
      );
      if (!(each.value > 0))
        throw new Refusal('not-positive', `${each.typed} is not a weight: it must be above zero.`);
      if (!(Number.isInteger(count) && count >= 1 && count <= 500)) {
        throw new Refusal('bad-count', `${count} is no number of pouches; a whole number from 1 to 500 is.`);
      }
      groups.push({ count, eachDryG: each.value });
    }
    return groups.length > 0 ? groups : undefined;
  },
);

function isBetween(token: Token | undefined): boolean {
  if (token === undefined) return false;
  return (
    (token.is === 'mark' && token.mark === 'x') ||
    (token.is === 'word' &&
      ['of', 'pouches', 'pouch', 'at', 'times', 'by', 'bags', 'bag'].includes(token.plain))
  );
}

/** How many people or servings: 'for 3', 'for two', '8 servings', 'serves 8'. */
export const servings = part<number>('how many servings, such as 8 servings', (reading) => {
  const names = [
    'servings',
    'serving',
    'portions',
    'portion',
    'people',
    'persons',
    'person',
    'eaters',
    'heads',
  ];
  const before = ['for', 'serves', 'serve', 'serving', 'servings', 'portions', 'feeds', 'makes'];
  for (const wantsName of [true, false]) {
    for (const index of reading.left()) {
      const token = reading.all[index]!;
      if (token.is !== 'number') continue;
      const named = reading.at(index + 1);
      const isNamed = named?.is === 'word' && names.includes(named.plain);
      const colon = reading.at(index - 1)?.plain === ':' ? index - 2 : index - 1;
      const led = reading.at(colon)?.is === 'word' && before.includes(reading.at(colon)!.plain);
      if (wantsName ? !isNamed : !led) continue;
      reading.settleNumbers([index]);
      reading.take(index);
      if (isNamed) reading.take(index + 1);
      if (led) reading.take(colon);
      if (!(token.value > 0 && token.value <= 1000)) {
        throw new Refusal('bad-servings', `${token.typed} servings cannot be; from 1 to 1000 can.`);
      }
      return token.value;
    }
  }
  return undefined;
});

/** A count in front of a word: '14 pouches', '4 trays'. */
export const countOf = (...words: string[]): Part<number> =>
  part(`how many ${words[0]}`, (reading) => {
    for (const index of reading.left()) {
      const token = reading.all[index]!;
      const named = reading.at(index + 1);
      if (token.is !== 'number' || named?.is !== 'word' || !words.includes(named.plain)) continue;
      reading.settleNumbers([index]);
      reading.take(index, index + 1);
      if (!(Number.isInteger(token.value) && token.value >= 1 && token.value <= 1000)) {
        throw new Refusal(
          'bad-count',
          `${token.typed} ${named.typed} cannot be; a whole number from 1 to 1000 can.`,
        );
      }
      return token.value;
    }
    return undefined;
  });

/** How many pouches, with the meal's name between or not: 'two curry pouches', '3 pouches'. */
export const pouchCount = part<number>('how many pouches', (reading) => {
  for (const index of reading.left()) {
    if (!/^(?:pouch|pouches|bag|bags)$/.test(reading.all[index]!.plain)) continue;
    reading.take(index);
    for (let at = index - 1; at >= Math.max(0, index - 5); at--) {
      const token = reading.at(at);
      if (token?.is !== 'number' || !Number.isInteger(token.value) || token.value < 1) continue;
      reading.take(at);
      return token.value;
    }
    return undefined;
  }
  return undefined;
});

/** An altitude in metres: 'at 2400 m', '7900 ft'. */
export const altitudeM = part<number>('an altitude such as 2400 m', (reading) => {
  const found = quantities(reading, 'length').find((q) => {
    const token = reading.all[q.index]!;
    return token.is === 'quantity' && ['m', 'ft', 'km'].includes(token.unit.symbol);
  });
  if (!found) return undefined;
  // Digits grouped by a comma are the common way to write thousands of metres or feet; 1,500 m of altitude has one sense.
  const token = reading.all[found.index]!;
  const metres =
    token.is === 'quantity' ? Math.max(token.value, token.otherwise ?? token.value) * token.unit.factor : 0;
  reading.take(found.index);
  if (metres < -430 || metres > 5500) {
    throw new Refusal('bad-altitude', `${found.typed} is outside what I can reckon with: −430 to 5500 m.`);
  }
  return metres;
});

/** Two lengths with an x between: '20 x 30 cm'. In millimetres. */
export const flatSizeMm = part<{ a: number; b: number }>('a size such as 20 x 30 cm', (reading) => {
  for (const { value, index, typed } of quantities(reading, 'length')) {
    const mark = reading.at(index - 1);
    const first = reading.at(index - 2);
    const token = reading.all[index]!;
    if (token.is !== 'quantity' || !mark || !['x', 'by'].includes(mark.plain.replace('×', 'x'))) continue;
    let a: number;
    if (first?.is === 'number') a = first.value * token.unit.factor * 1000;
    else if (first?.is === 'quantity' && first.unit.kind === 'length')
      a = first.value * first.unit.factor * 1000;
    else continue;
    reading.take(index, index - 1, index - 2);
    if (!(a > 0 && value > 0))
      throw new Refusal('not-positive', `${typed} is no size: both sides must be above zero.`);
    return { a, b: value * 1000 };
  }
  return undefined;
});
