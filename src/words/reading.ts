import { Refusal } from '#core/refusal.ts';
import { fold, forgiven, slips, stem } from './near.ts';
import { type Token, tokens } from './tokens.ts';

/** A request that can be read in several ways: each option is a whole request that can be read in one. */
export class Ambiguous extends Error {
  readonly question: string;
  readonly options: readonly { readonly label: string; readonly request: string }[];

  constructor(question: string, options: readonly { label: string; request: string }[]) {
    super(question);
    this.question = question;
    this.options = options;
  }
}

/** Words that carry no figure and no name: polite words, articles, question words and contractions. */
const fillers = new Set(
  `a an the this that these those of for to in on at by from and or with do does did is are was be been i im i'm ive
  i've id i'd we we're we've we'd you your our my me us it it's its they how how's much many what what's whats which who
  please pls plz thanks thank thx hi hello hey ok okay just now need needs needed want wants like would could can shall
  should will i'll we'll let lets let's get give tell show make put have has had got there there's here some any so then
  each all per about around roughly into go going must add pour hot boiling bot dear kindly right`
    .split(/\s+/)
    .map((w) => w),
);

/**
 * One message being read. Parts take the pieces they understand; what is left over is quoted back.
 * Nothing is taken twice.
 */
export class Reading {
  readonly text: string;
  readonly all: readonly Token[];
  /** What was forgiven or assumed, to be shown back: 'read "lentl cury" as Red lentil curry'. */
  readonly remarks: string[] = [];
  private readonly free: boolean[];

  /** @param text the request's words, its own name left off */
  constructor(text: string) {
    this.text = text;
    this.all = tokens(text);
    this.free = this.all.map(() => true);
  }

  /** The token at an index if nobody took it yet. */
  at(index: number): Token | undefined {
    return this.free[index] ? this.all[index] : undefined;
  }

  take(...indexes: number[]): void {
    for (const index of indexes) this.free[index] = false;
  }

  /** The same message with these tokens hidden, for reading a stretch of it alone. */
  without(hidden: readonly number[]): Reading {
    const view = new Reading(this.text);
    this.free.forEach((free, i) => {
      if (!free) view.take(i);
    });
    view.take(...hidden);
    return view;
  }

  /** Indexes of the tokens still free. */
  *left(): Generator<number> {
    for (let i = 0; i < this.all.length; i++) if (this.free[i]) yield i;
  }

  /** Whether the token before is one of these plain words; taken by the caller if it wants. */
  wordBefore(index: number, ...words: string[]): boolean {
    const token = this.at(index - 1);
    return token !== undefined && words.includes(token.plain);
  }

  /**
   * Takes a keyword wherever it stands; one typing slip is forgiven in words of five letters and more.
   * @returns the index of the word, or undefined
   */
  keyword(...words: string[]): number | undefined {
    for (const index of this.left()) {
      const token = this.all[index]!;
      if (token.is === 'word' && words.includes(token.plain)) {
        this.take(index);
        return index;
      }
    }
    for (const index of this.left()) {
      const token = this.all[index]!;
      if (token.is !== 'word' || token.plain.length < 5) continue;
      const near = words.find((w) => w.length >= 5 && slips(token.plain, w, 1) === 1);
      if (near) {
        this.take(index);
        this.remarks.push(`read "${token.typed}" as ${near}`);
        return index;
      }
    }
    return undefined;
  }

  /** Takes every free word that is one of these. */
  takeWords(...words: string[]): void {
    for (const index of this.left()) if (words.includes(this.all[index]!.plain)) this.take(index);
  }

  /** The same request with some pieces put differently. */
  rewritten(changes: readonly { from: number; to: number; into: string }[]): string {
    let out = '';
    let at = 0;
    for (const { from, to, into } of [...changes].sort((a, b) => a.from - b.from)) {
      out += this.text.slice(at, from) + into;
      at = to;
    }
    return out + this.text.slice(at);
  }

  /**
   * Asks which of its two readings a number such as 1,500 has; all doubtful numbers of the message are
   * settled by one answer.
   * @throws Ambiguous when one of the given tokens can be read two ways
   */
  settleNumbers(indexes: readonly number[]): void {
    const doubtful = this.all.filter(
      (t) => (t.is === 'number' || t.is === 'quantity') && t.otherwise !== undefined,
    );
    const asked = indexes
      .map((i) => this.all[i]!)
      .find((t) => (t.is === 'number' || t.is === 'quantity') && t.otherwise !== undefined);
    if (!asked) return;
    const option = (pick: (a: number, b: number) => number) => {
      const into = (t: Token) =>
        'otherwise' in t && t.otherwise !== undefined ? String(pick(t.value, t.otherwise)) : '';
      return {
        label: `${into(asked)}${asked.is === 'quantity' ? ` ${asked.unitTyped}` : ''}`,
        request: this.rewritten(
          doubtful.map((t) => ({ from: t.from, to: t.is === 'quantity' ? t.numberTo : t.to, into: into(t) })),
        ),
      };
    };
    throw new Ambiguous(`"${asked.typed}" can be read two ways. Which is meant?`, [
      option(Math.max),
      option(Math.min),
    ]);
  }

  /**
   * Takes everything still free as one piece of text (a reason, a new name): as typed, with what others took cut
   * out and marks at its ends dropped.
   */
  rest(): string {
    const pieces: string[] = [];
    let from: number | undefined;
    this.all.forEach((token, i) => {
      if (this.free[i]) from ??= token.from;
      const ends = this.free[i] && !this.free[i + 1];
      if (!ends || from === undefined) return;
      pieces.push(this.text.slice(from, token.to));
      from = undefined;
    });
    this.take(...this.left());
    return pieces
      .join(' ')
      .replace(/\s+/g, ' ')
      .replace(/\s+([,;:.!?)])/g, '$1')
      .replace(/\(\s*\)/g, '')
      .replace(/^[\s,;:.–-]+|[\s,;:–-]+$/gu, '')
      .trim();
  }

  /** What parts took, as typed, for saying what was understood; empty when nothing was. */
  understood(): string {
    const taken = this.all
      .filter((token, i) => !this.free[i] && token.is !== 'mark')
      .map((t) => `"${t.typed}"`);
    return taken.slice(0, 8).join(' ');
  }

  /** What no part took, as typed, neighbours together; fillers and marks alone do not count. */
  leftovers(): string[] {
    const groups: Token[][] = [];
    let lastIndex = -2;
    for (const index of this.left()) {
      const token = this.all[index]!;
      if (token.is === 'mark' || (token.is === 'word' && fillers.has(token.plain))) continue;
      if (index === lastIndex + 1) groups.at(-1)!.push(token);
      else groups.push([token]);
      lastIndex = index;
    }
    return groups.map((group) => this.text.slice(group[0]!.from, group.at(-1)!.to));
  }
}

export const isFiller = (word: string): boolean => fillers.has(word);

interface Candidate {
  readonly name: string;
  readonly indexes: number[];
  readonly slips: number;
  readonly whole: boolean;
  readonly cover: number;
}

/**
 * Finds the one name meant by the words still free, whatever their order; typing slips are forgiven and shown.
 * A name typed in full wins; otherwise the name that accounts for most of the words, then with the fewest slips.
 * @param names the household's own names
 * @param what how the thing is called in a question: 'meal', 'eater'
 * @param wholeOnly every word of the name has to be there, slips forgiven
 * @returns the name, or undefined when no word resembles any
 * @throws Ambiguous when two names fit equally well
 */
export function takeName(
  reading: Reading,
  names: readonly string[],
  what: string,
  wholeOnly = false,
): string | undefined {
  const whole = wholeName(reading, names);
  if (whole !== undefined) return whole;
  const free = [...reading.left()].filter((i) => ['word', 'quoted', 'number'].includes(reading.all[i]!.is));
  const scored = names
    .map((name) => candidate(reading, free, name))
    .filter((c): c is Candidate => c !== undefined && (c.whole || !wholeOnly))
    .sort(
      (a, b) =>
        b.indexes.length - a.indexes.length ||
        Number(b.whole) - Number(a.whole) ||
        a.slips - b.slips ||
        b.cover - a.cover,
    );
  const best = scored[0];
  if (!best) return undefined;
  // A name whose every word was typed beats a longer one; cover alone never decides between two.
  const rivals = scored.filter(
    (c) => c.indexes.length === best.indexes.length && c.whole === best.whole && c.slips === best.slips,
  );
  const typed = best.indexes.map((i) => reading.all[i]!.typed).join(' ');
  if (rivals.length > 1) {
    const [first, ...others] = best.indexes.map((i) => reading.all[i]!);
    throw new Ambiguous(
      `"${typed}" could be ${rivals.length === 2 ? 'either of two' : `any of ${rivals.length}`} ${what}s. Which is meant?`,
      rivals.slice(0, 8).map(({ name }) => ({
        label: name,
        request: reading.rewritten([
          { from: first!.from, to: first!.to, into: `"${name.replaceAll('"', "'")}"` },
          ...others.map(({ from, to }) => ({ from, to, into: '' })),
        ]),
      })),
    );
  }
  reading.take(...best.indexes);
  if (best.slips > 0) reading.remarks.push(`read "${typed}" as ${best.name}`);
  return best.name;
}

/** A name typed in full and in order, the longest first; also inside quotes. */
function wholeName(reading: Reading, names: readonly string[]): string | undefined {
  const folded = names
    .map((name) => ({ name, words: fold(name).split(' ').filter(Boolean) }))
    .filter((n) => n.words.length > 0)
    .sort((a, b) => b.words.length - a.words.length);
  for (const index of reading.left()) {
    const token = reading.all[index]!;
    if (token.is !== 'quoted') continue;
    const found = folded.find((n) => n.words.join(' ') === fold(token.inside));
    if (found) {
      reading.take(index);
      return found.name;
    }
  }
  const free = [...reading.left()].filter((i) => reading.all[i]!.is !== 'mark');
  const said = free.map((i) => fold(reading.all[i]!.plain));
  for (const { name, words } of folded) {
    for (let start = 0; start < free.length; start++) {
      const indexes: number[] = [];
      let k = 0;
      for (let j = start; j < free.length && k < words.length; j++) {
        const pieces = said[j]!.split(' ').filter(Boolean);
        if (pieces.length === 0 || !pieces.every((piece, n) => words[k + n] === piece)) break;
        k += pieces.length;
        indexes.push(free[j]!);
      }
      if (k === words.length) {
        reading.take(...indexes);
        return name;
      }
    }
  }
  return undefined;
}

function candidate(reading: Reading, free: readonly number[], name: string): Candidate | undefined {
  const words = fold(name).split(' ').filter(Boolean).map(stem);
  const usedWords = new Set<number>();
  const indexes: number[] = [];
  let slipsMade = 0;
  for (const index of free) {
    const token = reading.all[index]!;
    if (token.is === 'word' && fillers.has(token.plain)) continue;
    for (const piece of fold(token.is === 'quoted' ? token.inside : token.plain)
      .split(' ')
      .filter(Boolean)) {
      const typed = stem(piece);
      let best: { word: number; slips: number } | undefined;
      words.forEach((word, w) => {
        if (usedWords.has(w)) return;
        const most = Math.min(forgiven(typed), forgiven(word));
        const starts = typed.length >= 3 && word.startsWith(typed) && token.is === 'word';
        const distance = starts ? 0 : slips(typed, word, most);
        if (distance <= most && (!best || distance < best.slips)) best = { word: w, slips: distance };
      });
      if (!best) continue;
      usedWords.add(best.word);
      slipsMade += best.slips;
      if (!indexes.includes(index)) indexes.push(index);
    }
  }
  if (indexes.length === 0) return undefined;
  const onlyNumbers = indexes.every((i) => reading.all[i]!.is === 'number');
  if (onlyNumbers) return undefined;
  return {
    name,
    indexes,
    slips: slipsMade,
    whole: usedWords.size === words.length,
    cover: usedWords.size / words.length,
  };
}

/**
 * Refuses what no part of a request took, with what could have been meant.
 * @throws Refusal 'leftover'
 */
export function refuseLeftovers(reading: Reading, known: readonly string[]): void {
  const left = reading.leftovers();
  if (left.length > 0) throw new Refusal('leftover', couldNotPlace(left, known));
}

/** The sentence that quotes back what was not understood. */
export function couldNotPlace(left: readonly string[], known: readonly string[]): string {
  const quoted = left.map((words) => `"${words}"`).join(' and ');
  const meant = left
    .map((words) => known.find((name) => name.length > 3 && slips(fold(words), fold(name), 2) <= 2))
    .filter((name) => name !== undefined);
  return `I could not place ${quoted}${meant.length > 0 ? `; perhaps ${meant.join(', ')}?` : '.'}`;
}
