import { table } from '#words/table.ts';
import { type Names, pouchCodes } from '#words/parts.ts';
import { Reading } from '#words/reading.ts';
import { slotMealNamed } from '#words/trip-parts.ts';
import { harmless, isAdverb, openers } from './grammar.ts';
import { type Said, takeApart } from './pieces.ts';
import { sayCode } from '#words/say.ts';

/** A reading of a message: the request or question it may be, and that one's words. */
export interface Meaning {
  readonly means: string;
  /** What the request takes, written as it is typed behind its slash. */
  readonly words: string;
  /** How much speaks for it; the highest wins. */
  readonly score: number;
  /** Words that nothing accounts for, as typed. */
  readonly left: readonly string[];
  /** Why it must not be carried out as it stands; null where nothing stands against it. */
  readonly holds: string | null;
  /** What is said beside and recorded by nobody, as typed. */
  readonly beside?: readonly string[];
  /** It only looks: what it leaves aside is no loss to the records, and is said. */
  readonly looks?: true;
  /** What was forgiven, to be shown: 'read "wegh" as weigh'. */
  readonly remark?: string;
  /** Something else that the same message says. */
  readonly also?: Meaning;
}

/** Looks at a message for those who read it: which ideas, figures and names it holds, and what would be left. */
export class Look {
  readonly said: Said;
  readonly names: Names;
  /** The message in small letters, folded, without the greeting or polite words it opens with. */
  readonly folded: string;

  /** The message as typed, without the polite words and pictures it opens and closes with. */
  readonly bare: string;

  constructor(typed: string, names: Names, said: Said = takeApart(typed, names)) {
    this.said = said;
    this.names = names;
    const { all, mood, text, forms } = this.said;
    this.bare = text
      .slice(all[mood.start]?.from ?? 0)
      .replace(closing, '')
      .trim();
    this.folded = ` ${forms
      .slice(mood.start)
      .filter((form) => form !== '')
      .join(' ')} `;
  }

  /** The same message where what may be a meal's name is meant as a food. */
  withoutMeals(): Look {
    return new Look(this.said.text, this.names, { ...this.said, meals: [] });
  }

  /** Whether one of these words was said, in any form; each that is there counts as accounted for by `mark`. */
  has(...lemmas: readonly string[]): boolean {
    return this.at(...lemmas).length > 0;
  }

  /** Whether this was said, as a pattern over the folded message. */
  says(pattern: RegExp): boolean {
    return pattern.test(this.folded);
  }

  /** The tokens whose words are one of these, in any form. */
  at(...lemmas: readonly string[]): number[] {
    return this.said.lemmas.flatMap((lemma, i) =>
      lemmas.includes(lemma) || (lemma.length > 3 && lemmas.includes(`${lemma}e`)) ? [i] : [],
    );
  }

  /** The pouches named, ranges written out; as they are typed behind a request. */
  codes(): string {
    const reading = new Reading(this.said.text, this.said.all);
    try {
      const codes = pouchCodes.read(reading, this.names) ?? [];
      return codes.map(sayCode).join(' ');
    } catch {
      // A range that cannot be is refused by the request itself.
      return this.said.codes.map(({ code }) => sayCode(code)).join(' to ');
    }
  }

  /** Which tokens a row of codes spans: the codes and the words that join them. */
  codeTokens(): number[] {
    const reading = new Reading(this.said.text, this.said.all);
    try {
      pouchCodes.read(reading, this.names);
    } catch {
      return this.said.codes.map(({ at }) => at);
    }
    const left = new Set(reading.left());
    return this.said.all.flatMap((_, i) => (left.has(i) ? [] : [i]));
  }

  /** A meal, quoted, where just one is meant. */
  meal(): string | undefined {
    const [first] = this.said.meals;
    return first && first.names.length === 1 ? quoted(first.names[0]) : undefined;
  }

  /** The words that name a meal as typed, for the request to ask which is meant. */
  mealTyped(): string | undefined {
    const [first] = this.said.meals;
    if (!first) return undefined;
    return first.names.length === 1 ? quoted(first.names[0]) : this.textOf(first.at);
  }

  trip(): string | undefined {
    const [first] = this.said.trips;
    return first ? quoted(first.names[0]) : undefined;
  }

  person(): string | undefined {
    const other = this.said.people.find(({ names: [name] }) => name !== this.names.me) ?? this.said.people[0];
    return other?.names[0];
  }

  /** Breakfast, lunch, dinner, snack, where one is said. */
  slotMeal(): { readonly meal: string; readonly at: number } | undefined {
    for (const [i, token] of this.said.all.entries()) {
      if (token.is !== 'word') continue;
      const meal = slotMealNamed(token.plain) ?? timesOfDay[token.plain];
      if (meal !== undefined) return { meal, at: i };
    }
    return undefined;
  }

  textOf(at: readonly number[]): string {
    return at.map((i) => this.said.all[i]!.typed).join(' ');
  }

  /** The message without these tokens, as typed otherwise. */
  without(drop: ReadonlySet<number>): string {
    const { all, text } = this.said;
    let out = '';
    let last = -1;
    all.forEach((token, i) => {
      if (drop.has(i)) return;
      const glued = last >= 0 && all[last]!.to === token.from;
      out += `${out === '' || glued ? '' : ' '}${text.slice(token.from, token.to)}`;
      last = i;
    });
    return out.trim();
  }

  private adverbs(): number[] {
    return this.said.all.flatMap((token, i) => (token.is === 'word' && isAdverb(token.plain) ? [i] : []));
  }

  /**
   * Where, when, with whom and why a thing was done: 'on the balcony', 'with my sister', 'before the storm'. Each ends
   * where a figure, a code, a meal or another saying begins.
   */
  circumstances(): number[] {
    const { all, meals, mood, lemmas } = this.said;
    const taken = new Set(meals.flatMap(({ at }) => at));
    const found: number[] = [];
    for (let i = 0; i < all.length; i++) {
      const opens =
        circumstanceOpeners.has(all[i]!.plain) || (all[i]!.plain === 'with' && this.isCompany(i + 1));
      if (!opens) continue;
      const inside: number[] = [];
      for (let k = i + 1; k < all.length && inside.length < longestCircumstance; k++) {
        const token = all[k]!;
        const ends =
          token.is !== 'word' || taken.has(k) || token.plain === mood.negated || deedWords.has(lemmas[k]!);
        if (ends) break;
        inside.push(k);
      }
      found.push(i, ...inside);
      i += inside.length;
    }
    return found;
  }

  /**
   * What stands behind the deed and its things, and what may be said of it there without touching what is recorded: no
   * figure, code, meal or name, no other deed. It is told beside, and holds nothing back.
   */
  asideBehind(done: Iterable<number>): number[] {
    const { all, meals, people, lemmas, mood } = this.said;
    const last = Math.max(-1, ...done);
    const named = new Set([...meals, ...people].flatMap(({ at }) => at));
    const told = new Set(this.circumstances());
    const behind = all.flatMap((_, i) => (i > last && !told.has(i) ? [i] : []));
    const isPlain = behind.every((i) => {
      const token = all[i]!;
      const isWord =
        // 'Tray 4 is bent' tells no weight.
        (token.is === 'number' && all[i - 1]?.plain === 'tray') ||
        (token.is === 'word' && !named.has(i) && !deedWords.has(lemmas[i]!)) ||
        token.is === 'mark';
      return (
        isWord && token.plain !== mood.negated && token.plain !== 'but' && !weightyBehind.has(token.plain)
      );
    });
    return isPlain && behind.length <= longestAside ? behind : [];
  }

  /** 'With my sister', 'with Lena', 'with the neighbours': company, no food beside. */
  private isCompany(at: number): boolean {
    const token = this.said.all[at];
    return (
      token?.is === 'word' &&
      (companyOpeners.has(token.plain) || /^\p{Lu}/u.test(token.typed) || harmless.has(token.plain))
    );
  }

  /** What is left of the message when these tokens, all that binds a sentence, and harmless words are taken off. */
  leftBy(explained: Iterable<number>): string[] {
    const gone = new Set([...explained, ...this.adverbs()]);
    const groups: number[][] = [];
    this.said.all.forEach((token, i) => {
      const isBound =
        gone.has(i) ||
        token.is === 'mark' ||
        token.is === 'clock' ||
        token.is === 'date' ||
        // 'Forgot to say' tells nothing else.
        (/^(?:forgot|forgotten)$/.test(token.plain) &&
          /^(?:say|tell|mention|write|note|log|enter|record)$/.test(this.said.all[i + 2]?.plain ?? '')) ||
        (/^(?:mention|enter)$/.test(token.plain) &&
          (this.said.all[i - 2]?.plain.startsWith('forgot') ?? false)) ||
        // 'Can you log that …' asks for it to be written down.
        (/^(?:can|could|would|will)$/.test(token.plain) &&
          /^(?:you|u)$/.test(this.said.all[i + 1]?.plain ?? '')) ||
        (token.is === 'word' && (harmless.has(token.plain) || openers.has(token.plain)));
      if (isBound) return;
      if (groups.at(-1)?.at(-1) === i - 1) groups.at(-1)!.push(i);
      else groups.push([i]);
    });
    return groups.map((group) =>
      this.said.text.slice(this.said.all[group[0]!]!.from, this.said.all[group.at(-1)!]!.to),
    );
  }
}

const circumstanceOpeners = new Set(
  'on at in by near under over beside behind around during before after because while since inside outside along across through despite between among when until till as'.split(
    ' ',
  ),
);
const companyOpeners = new Set('my our the his her their a an some everyone everybody all'.split(' '));
/** Verbs of another saying: a circumstance ends before them. */
const deedWords = new Set(
  'eat use throw discard bin toss chuck seal weigh load open leak smell puff swell spill lose find tear mould mold'.split(
    ' ',
  ),
);
/** Words behind a deed that may change what it was. */
const weightyBehind = new Set(
  'with not instead rather almost nearly half except without or if wrong mistake joke kidding lie actually correction'.split(
    ' ',
  ),
);
/** More words than these say something of their own. Chosen. */
const longestAside = 10;
/** Words of one circumstance. Chosen. */
const longestCircumstance = 6;

const closing =
  /(?:[\s,.!]|\p{Extended_Pictographic}|\u{fe0f}|\b(?:please|pls|thanks|thank you|thx|cheers)\b)+$/iu;

const timesOfDay = table<string>({
  eve: 'dinner',
  evening: 'dinner',
  tonight: 'dinner',
  night: 'dinner',
  morning: 'breakfast',
  noon: 'lunch',
  midday: 'lunch',
});

export const quoted = (name: string): string => `"${name.replaceAll('"', "'")}"`;
