import { whereItBroke } from '#core/fault.ts';
import { Doubt, Refusal } from '#core/refusal.ts';
import type { Choice, Message, Reply } from '#core/talk.ts';
import type { Author } from '#store/journal.ts';
import { Ambiguous } from '#words/reading.ts';
import { type Answerer, seenBy } from './answerer.ts';
import { ownExample } from './own-example.ts';
import { namesOf, readParts } from './read-parts.ts';
import { answersFollow } from './taken-back.ts';
import type { Command, Said } from './command.ts';
import type { House } from '#house/house.ts';
import { notesOn } from '#house/verdicts.ts';

export interface Carried {
  readonly reply: Reply;
  readonly outcome: 'answered' | 'recorded' | 'refused';
  /** The journal's entry, when something was recorded. */
  readonly entry: number | null;
}

/** A request that was read and is ready to run. */
export interface Opened {
  readonly author: Author;
  readonly house: House;
  readonly asked: Record<string, unknown>;
  readonly remarks: readonly string[];
  /** What no part took, said; empty when nothing was left. */
  readonly couldNot: string;
}

/** Thrown to take a repeated change back and ask about it instead. */
export class Repeated extends Error {}

const repeatMs = 60_000;

/** A household as the person who writes sees it, and who that is for the journal. */
export function lookIn(
  answerer: Answerer,
  message: Message,
  household: number,
): Pick<Opened, 'author' | 'house'> {
  const { stores } = answerer;
  const member = stores.households.member(household, message);
  const author = {
    household,
    door: message.door,
    chatKey: message.chatKey,
    member: member.id,
    atMs: message.sentAtMs,
  };
  const answers = answersFollow(stores, message.sentAtMs);
  const house = seenBy(answerer, household, {
    member,
    nowMs: message.sentAtMs,
    sure: false,
    tapped: message.button !== null,
    journal: {
      lastHere: (count) => stores.journal.lastOf(author, count),
      standingOn: (entry) => stores.journal.standingOn(household, entry),
      undo: (entry) => {
        const did = stores.journal.undo(author, entry);
        answers.takenBack(entry, did);
        return did;
      },
      redo: () => {
        const entry = stores.journal.lastUndone(author);
        const did = stores.journal.redo(author);
        answers.putBack(entry);
        return did;
      },
      latest: (count) => stores.journal.latest(household, count),
    },
    status: runsIt(answerer, message) ? (answerer.status ?? null) : null,
  });
  return { author, house };
}

/** Opens a household to one message and reads the request's parts. @throws Refusal, Ambiguous */
export function open(
  answerer: Answerer,
  message: Message,
  household: number,
  command: Command,
  words: string,
): Opened {
  const { author, house } = lookIn(answerer, message, household);
  const { asked, remarks, couldNot, sure } = readParts(command, words, namesOf(house));
  return { author, house: { ...house, sure }, asked, remarks, couldNot };
}

/** The terminal is the owner's own; elsewhere it is whoever admitted the first household. */
function runsIt({ stores }: Answerer, { door, person }: Message): boolean {
  return door === 'terminal' || stores.households.owner(door) === person.key;
}

/** Runs work as one journal entry and makes its reply whole: remarks behind the text, notes for people at the end. */
export function record(
  answerer: Answerer,
  message: Message,
  command: Command,
  opened: Opened,
  work: () => Said,
): Carried {
  const { stores } = answerer;
  const { house, remarks } = opened;
  const { result, entry } = stores.journal.record(opened.author, () => quotingBack(opened, work));
  const isRepeat =
    entry !== null &&
    command.doubtRepeats &&
    !house.sure &&
    stores.messages.recordedSince(message, message.sentAtMs - repeatMs);
  if (isRepeat) throw new Repeated();
  // What was taken back or put back makes no entry, and is a change all the same.
  if (entry !== null || command.name === 'undo') stores.live.touch(house.household);
  const { meals = [], notesTell, ...reply } = result;
  const notes = [
    ...(reply.notes ?? []),
    ...(meals.length === 0 ? [] : notesOn(house.eaters.here(), meals, notesTell)),
  ];
  return {
    reply: {
      ...reply,
      group: [reply.group, ...remarks].join('\n'),
      ...(notes.length === 0 ? {} : { notes }),
      ...(entry === null ? {} : { buttons: [...(reply.buttons ?? []), takingBack(entry)] }),
    },
    outcome: entry === null ? 'answered' : 'recorded',
    entry,
  };
}

/** The way back from what was just recorded, and from nothing else. */
export const takingBack = (entry: number): Choice => ({ label: 'Undo', request: `/undo entry ${entry}` });

/** A refusal says as well which words were not understood: they may be the reason. */
function quotingBack(opened: Opened, work: () => Said): Said {
  try {
    return work();
  } catch (error) {
    if (opened.couldNot === '' || !(error instanceof Refusal) || error instanceof Doubt) throw error;
    throw new Refusal(error.code, `${error.message} ${opened.couldNot}`);
  }
}

/** What a person reads when a request was not carried out. A bug is logged, never shown. */
export function refused(
  answerer: Answerer,
  household: number,
  command: Command,
  words: string,
  message: Message,
  error: unknown,
): Carried {
  return {
    reply: refusal(answerer, household, command, words, message, error),
    outcome: 'refused',
    entry: null,
  };
}

/** The same request with what makes it one that can be carried out. */
export const waysOf = ({ ways }: Refusal, { name }: Pick<Command, 'name'>, words: string): Choice[] =>
  ways.map(({ label, add }) => ({ label, request: `/${name} ${words} ${add}`.trim() }));

/** The request's first example, with what this household has. */
export const exampleFor = (
  answerer: Answerer,
  message: Message,
  household: number,
  { examples }: Command,
): string => ownExample(examples[0], namesOf(lookIn(answerer, message, household).house));

function refusal(
  answerer: Answerer,
  household: number,
  command: Command,
  words: string,
  message: Message,
  error: unknown,
): Reply {
  if (error instanceof Repeated) {
    return {
      asks: true,
      group:
        'You sent exactly this a moment ago, and it is recorded. Nothing was recorded twice. Is this one more?',
      buttons: [{ label: 'Yes, once more', request: `/${command.name} ${words} sure` }],
    };
  }
  if (error instanceof Ambiguous) {
    return {
      asks: true,
      group: error.question,
      buttons: error.options.map(({ label, request }) => ({ label, request: `/${command.name} ${request}` })),
    };
  }
  if (error instanceof Doubt) {
    return {
      asks: true,
      group: `${error.message} Nothing is recorded yet; "sure" at the end records it.`,
      buttons: [{ label: 'It is right', request: `/${command.name} ${words} sure` }],
    };
  }
  if (error instanceof Refusal && error.ways.length > 0)
    return { asks: true, group: error.message, buttons: waysOf(error, command, words) };
  if (error instanceof Refusal) {
    // Where no recipe is, one comes first.
    const recipe =
      error.code === 'no-such-meal' ? answerer.commands.find(({ name }) => name === 'recipe') : undefined;
    const isEmpty = namesOf(lookIn(answerer, message, household).house).meals.length === 0;
    // Nothing of this household could stand in a question's example yet.
    if (isEmpty && !command.examples[0].startsWith('/')) return { group: error.message };
    const hasNone = recipe && namesOf(lookIn(answerer, message, household).house).meals.length === 0;
    return {
      group: `${error.message}\nFor example: ${exampleFor(answerer, message, household, hasNone ? recipe : command)}`,
    };
  }
  answerer.log(
    `a request failed: /${command.name} in delivery ${message.deliveryKey}: ${whereItBroke(error)}`,
  );
  return { group: 'Something broke on my side; nothing was recorded. The fault is in the log.' };
}
