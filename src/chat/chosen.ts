import type { Choice } from '#core/talk.ts';
import type { Command } from './command.ts';

/** A request with its words, and what stands against carrying it out as it stands. */
export interface Chosen {
  readonly command: Command;
  readonly words: string;
  /** Why it must not be recorded without asking; null where nothing stands against it. */
  readonly holds: string | null;
  /** Words that nothing accounts for, as typed. */
  readonly left: readonly string[];
  /** What was forgiven in the request's own name, to be shown. */
  readonly remark?: string;
  /** What the answer leaves aside, as typed; said unless the answer names it after all. */
  readonly aside?: readonly string[];
}

/** Which request a text makes. */
export type Addressed =
  | {
      readonly is: 'request';
      readonly main: Chosen;
      /** What the same message tells besides. */
      readonly also: readonly Chosen[];
      /** The deed that a question may mean: offered, never done. */
      readonly offer: Chosen | null;
    }
  /** Several requests in one message, to be carried out all or none. */
  | { readonly is: 'together'; readonly of: readonly Chosen[] }
  /** What was recorded is to be something else: an entry, and what takes its place. */
  | { readonly is: 'instead'; readonly entry: number; readonly main: Chosen }
  /** Several requests account for it about as well. */
  | { readonly is: 'several'; readonly of: readonly Chosen[] }
  | {
      readonly is: 'unknown';
      readonly typed: string;
      readonly near: Command | undefined;
      /** What comes nearest, none of it near enough. */
      readonly of: readonly Chosen[];
      /** What may be told of the things it names. */
      readonly deeds: readonly Pick<Chosen, 'command' | 'words'>[];
      /** Looks at what the household has and the message names. */
      readonly things: readonly Choice[];
    }
  | { readonly is: 'talk' }
  | { readonly is: 'courtesy' };

/** All that a text may turn out to ask for. */
export interface Requests {
  readonly commands: readonly Command[];
  readonly questions: readonly Command[];
}
