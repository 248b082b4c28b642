import type { Settings } from '#core/settings.ts';
import type { FoodTable } from '#foods/food.ts';
import type { Records } from '#store/house.ts';
import type { Member } from '#store/households.ts';
import type { Entry } from '#store/journal.ts';
import type { Status } from './status.ts';

/** A request as people are told of it. */
export interface HelpRecord {
  readonly name: string;
  /** Other first words people use for it. */
  readonly alsoCalled: readonly string[];
  readonly usage: string;
  readonly summary: string;
  /** Requests that work as they stand, the first shown after a refusal. */
  readonly examples: readonly [string, ...string[]];
  /** Longer help, for /help NAME. */
  readonly help: readonly string[];
}

/** What was recorded, and the taking back of it. */
export interface HouseJournal {
  /** The last standing entries of this chat, the newest first. */
  lastHere(count: number): number[];
  /** Later entries that stand on one. */
  standingOn(entry: number): number[];
  /** Takes one entry back and says what it was. */
  undo(entry: number): string;
  /** Puts back what was taken back last. */
  redo(): string;
  latest(count: number): Entry[];
}

/** All that a request may touch: the records of one household, never another's. */
export interface House extends Omit<Records, 'settings'> {
  readonly household: number;
  readonly member: Member;
  readonly members: () => Member[];
  readonly settings: Settings;
  readonly told: Records['settings'];
  readonly foods: FoodTable;
  /** When the message was sent. */
  readonly nowMs: number;
  /** The person said "sure": a questioned weight or a repeat is meant as it stands. */
  readonly sure: boolean;
  /** A button was pressed, nothing was typed. */
  readonly tapped: boolean;
  readonly journal: HouseJournal;
  /** Every request there is, as /help tells of it. */
  readonly requests: readonly HelpRecord[];
  /** Where pouches' cards open, such as a bot's link; null in the terminal. */
  readonly chatLink: string | null;
  /** How the program does; null for whoever does not run it. */
  readonly status: (() => Status) | null;
}
