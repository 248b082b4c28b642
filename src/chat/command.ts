import type { Reply } from '#core/talk.ts';
import type { Drawing } from '#draw/drawing.ts';
import type { HelpRecord, House } from '#house/house.ts';
import type { Kind } from '#house/own-things.ts';
import type { MealShown, NotesTold } from '#house/verdicts.ts';
import type { Solver } from '#solver/solver.ts';
import type { Part } from '#words/parts.ts';

/** Long sums that run beside the chat. */
export interface Workers {
  readonly picks: Pick<Solver, 'solvePicks' | 'whyThisPouch'>;
  readonly drawing: Omit<Drawing, 'dispose'>;
}

/** A reply with the meals it names: the notes for people are made from them, in one place for all requests. */
export type Said = Reply & {
  readonly meals?: readonly MealShown[];
  /** How much the notes tell of them; what is barred where nothing is said. */
  readonly notesTell?: NotesTold;
};

/** A request in three steps: look while nothing waits, work beside the chat, keep what came of it. */
export interface Planned {
  /** Whether this asking has long work to wait for; where not, `answer` is used at once. */
  readonly waits: (asked: unknown) => boolean;
  /** Reads what the work needs. */
  readonly look: (asked: unknown, house: House) => unknown;
  readonly work: (looked: unknown, workers: Workers) => Promise<unknown>;
  /** Records and answers, after checking that what was seen still holds. */
  readonly keep: (worked: unknown, asked: unknown, house: House) => Said;
}

/**
 * A list as it stands; null for as it was sent.
 * @param of the trip or batch it is of
 * @returns undefined when there is nothing to say of it any more
 */
export type LiveList = (
  of: number,
  page: number,
  house: House,
) => { readonly said: Said | null; readonly isOver: boolean } | undefined;

export type Takes = Readonly<Record<string, Part<unknown>>>;

/** Which of the household's own things a request is about, offered where it comes without words. */
export interface Offers {
  readonly of: Kind;
  /** What stands behind the thing in the request that a tap makes. */
  readonly behind?: string;
  /** The request that it makes, where that is another one. */
  readonly request?: string;
  /** What the button says of it; the thing alone for most. */
  readonly label?: (thing: string) => string;
}

/** What `takes` yields: each part's value, undefined only where the part is optional. */
export type Asked<T extends Takes> = { readonly [K in keyof T]: T[K] extends Part<infer V> ? V : never };

export interface Command extends HelpRecord {
  /** Records something: words that no part took are then refused, not only quoted back. */
  readonly records: boolean;
  /** Sent twice within a minute by one person it would count twice, so the second time is asked about. */
  readonly doubtRepeats: boolean;
  /** Words that no part took may be left out, when somebody says so: what is recorded does not hang on them. */
  readonly mayLeaveOut: boolean;
  /** Words by which it looks and records nothing all by itself, such as '/pick why B4-2'; null for most. */
  readonly asksBy: RegExp | null;
  readonly takes: Takes;
  readonly answer: (asked: Asked<Takes>, house: House) => Said;
  /** What of the household it may be about; null where that is no question. */
  readonly offers: Offers | null;
  /** How its list stands, for a request that has one; null for most. */
  readonly live: LiveList | null;
  /** Set for a request that can have work done beside the chat. */
  readonly planned: Planned | null;
}

interface Definition<T extends Takes, Outcome> {
  name: string;
  alsoCalled?: readonly string[];
  usage: string;
  summary: string;
  examples: readonly [string, ...string[]];
  help?: readonly string[];
  records?: boolean;
  doubtRepeats?: boolean;
  mayLeaveOut?: boolean;
  asksBy?: RegExp;
  offers?: Offers;
  live?: LiveList;
  takes: T;
  /** The only step that sees the house. */
  run: (asked: Asked<T>, house: House) => Outcome;
  /** The outcome in words. */
  say: (outcome: Outcome) => Said;
}

/** Defines a request: what people see, what it takes, what it does and what it says. */
export function command<T extends Takes, Outcome>(definition: Definition<T, Outcome>): Command {
  const { run, say, ...seen } = definition;
  return {
    alsoCalled: [],
    help: [],
    records: false,
    doubtRepeats: false,
    mayLeaveOut: false,
    asksBy: null,
    offers: null,
    live: null,
    planned: null,
    ...seen,
    // The reader fills exactly the parts that `takes` declares.
    answer: (asked, house) => say(run(asked as Asked<T>, house)),
  };
}

interface PlannedDefinition<T extends Takes, Looked, Worked, Outcome> extends Omit<
  Definition<T, Outcome>,
  'run'
> {
  look: (asked: Asked<T>, house: House) => Looked;
  work: (looked: Looked, workers: Workers) => Promise<Worked>;
  keep: (worked: Worked, asked: Asked<T>, house: House) => Outcome;
  /** For a request that waits only now and then. */
  atOnce?: {
    when: (asked: Asked<T>) => boolean;
    run: (asked: Asked<T>, house: House) => Outcome;
  };
}

/** Defines a request whose sums are long: the chat goes on while they run. */
export function planned<T extends Takes, Looked, Worked, Outcome>(
  definition: PlannedDefinition<T, Looked, Worked, Outcome>,
): Command {
  const { look, work, keep, say, atOnce, ...seen } = definition;
  return {
    alsoCalled: [],
    help: [],
    records: false,
    doubtRepeats: false,
    mayLeaveOut: false,
    asksBy: null,
    offers: null,
    live: null,
    ...seen,
    answer: (asked, house) => {
      if (!atOnce) throw new Error(`/${definition.name} is planned and answers later`);
      return say(atOnce.run(asked as Asked<T>, house));
    },
    // What `look` gave comes back to `work`, and what `work` gave to `keep`.
    planned: {
      waits: (asked) => !atOnce?.when(asked as Asked<T>),
      look: (asked, house) => look(asked as Asked<T>, house),
      work: (looked, workers) => work(looked as Looked, workers),
      keep: (worked, asked, house) => say(keep(worked as Worked, asked as Asked<T>, house)),
    },
  };
}
