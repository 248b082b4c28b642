import { Refusal } from '#core/refusal.ts';
import { Ambiguous } from './ambiguous.ts';
import { isFiller } from './fillers.ts';
import { fold, slips } from './near.ts';
import { type Token, tokens } from './tokens.ts';

export { Ambiguous } from './ambiguous.ts';
export { isFiller } from './fillers.ts';

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
  /** Indexes of the tokens that are words. */
  private readonly words: readonly number[];
  /** Numbers that have two readings, looked for once. */
  private doubtful: readonly Token[] | undefined;

  /**
   * @param text the request's words, its own name left off
   * @param all its pieces, where they were cut before
   */
  constructor(text: string, all: readonly Token[] = tokens(text)) {
    this.text = text;
    this.all = all;
    this.free = all.map(() => true);
    this.words = all.flatMap((token, i) => (token.is === 'word' ? [i] : []));
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
    const view = new Reading(this.text, this.all);
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
    const typed = this.words.filter((index) => this.free[index]);
    const exact = typed.find((index) => words.includes(this.all[index]!.plain));
    if (exact !== undefined) {
      this.take(exact);
      return exact;
    }
    const long = words.filter((w) => w.length >= 5);
    if (long.length === 0) return undefined;
    for (const index of typed) {
      const token = this.all[index]!;
      const near = token.plain.length < 5 ? undefined : long.find((w) => slips(token.plain, w, 1) === 1);
      if (near === undefined) continue;
      this.take(index);
      this.remarks.push(`read "${token.typed}" as ${near}`);
      return index;
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
    this.doubtful ??= this.all.filter(
      (t) => (t.is === 'number' || t.is === 'quantity') && t.otherwise !== undefined,
    );
    const { doubtful } = this;
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
    this.all.forEach((_, i) => {
      // Pictures are no tokens, but they belong to the words beside them.
      if (this.free[i]) from ??= this.all[i - 1]?.to ?? 0;
      const ends = this.free[i] && !this.free[i + 1];
      if (!ends || from === undefined) return;
      pieces.push(this.text.slice(from, this.all[i + 1]?.from ?? this.text.length));
      from = undefined;
    });
    this.take(...this.left());
    return pieces
      .join(' ')
      .replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]+/gu, ' ')
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

  /** The text without what `leftovers` gives back. */
  withoutLeftovers(): string {
    const left = [...this.left()].map((i) => this.all[i]!);
    return this.rewritten(left.map(({ from, to }) => ({ from, to, into: '' })))
      .replace(/\s+/g, ' ')
      .trim();
  }

  /** What no part took, as typed, neighbours together; fillers and marks alone do not count. */
  leftovers(): string[] {
    const groups: Token[][] = [];
    let lastIndex = -2;
    for (const index of this.left()) {
      const token = this.all[index]!;
      if (token.is === 'mark' || (token.is === 'word' && isFiller(token.plain))) continue;
      if (index === lastIndex + 1) groups.at(-1)!.push(token);
      else groups.push([token]);
      lastIndex = index;
    }
    return groups.map((group) => this.text.slice(group[0]!.from, group.at(-1)!.to));
  }
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
    .filter((name, i) => name !== undefined && fold(name) !== fold(left[i]!));
  return `I could not place ${quoted}${meant.length > 0 ? `; perhaps ${meant.join(', ')}?` : '.'}`;
}
