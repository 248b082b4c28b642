import { whereItBroke } from '#core/fault.ts';
import { Doubt, Refusal } from '#core/refusal.ts';
import type { Message, Reply } from '#core/talk.ts';
import type { Author } from '#store/journal.ts';
import type { Names } from '#words/parts.ts';
import { Ambiguous, Reading, couldNotPlace } from '#words/reading.ts';
import { type Answerer, seenBy } from './answerer.ts';
import type { Command, Said } from './command.ts';
import type { House } from '#house/house.ts';
import { nameKey } from '#house/figures.ts';
import { formsOf } from './forms.ts';
import { tripsOpen } from '#house/trips.ts';
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
class Repeated extends Error {}

const repeatMs = 60_000;

/** Opens a household to one message and reads the request's parts. @throws Refusal, Ambiguous */
export function open(
  answerer: Answerer,
  message: Message,
  household: number,
  command: Command,
  words: string,
): Opened {
  const { stores } = answerer;
  const member = stores.households.member(household, message);
  const author = {
    household,
    door: message.door,
    chatKey: message.chatKey,
    member: member.id,
    atMs: message.sentAtMs,
  };
  const house = seenBy(answerer, household, {
    member,
    nowMs: message.sentAtMs,
    sure: false,
    tapped: message.button !== null,
    journal: {
      undoLast: () => stores.journal.undoLast(author),
      latest: (count) => stores.journal.latest(household, count),
    },
    status: runsIt(answerer, message) ? (answerer.status ?? null) : null,
  });
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
  const { meals = [], ...reply } = result;
  const notes = [...(reply.notes ?? []), ...(meals.length === 0 ? [] : notesOn(house.eaters.here(), meals))];
  return {
    reply: {
      ...reply,
      group: [reply.group, ...remarks].join('\n'),
      ...(notes.length === 0 ? {} : { notes }),
    },
    outcome: entry === null ? 'answered' : 'recorded',
    entry,
  };
}

/** A refusal says as well which words were not understood: they may be the reason. */
function quotingBack(opened: Opened, work: () => Said): Said {
  try {
    return work();
  } catch (error) {
    if (opened.couldNot === '' || !(error instanceof Refusal) || error instanceof Doubt) throw error;
    throw new Refusal(error.code, `${error.message} ${opened.couldNot}`);
  }
}

/**
 * Reads the parts a request takes; what is missing or left over is said with what was understood.
 * @throws Refusal, Ambiguous
 */
export function readParts(command: Command, words: string, names: Names) {
  const reading = new Reading(words);
  const sure = command.doubtRepeats && reading.keyword('sure') !== undefined;
  const asked: Record<string, unknown> = {};
  const missing: string[] = [];
  for (const [key, part] of Object.entries(command.takes)) {
    asked[key] = part.read(reading, names);
    if (asked[key] === undefined && part.needed) missing.push(part.like);
  }
  // The request's own name in a plain sentence is no word left over.
  reading.takeWords(...[command.name, ...command.alsoCalled].flatMap(formsOf));
  const left = reading.leftovers();
  const couldNot = left.length > 0 ? couldNotPlace(left, names.meals) : '';
  if (missing.length > 0) {
    const understood = reading.understood();
    const need = `${understood ? `I read ${understood}, but I` : 'I'} still need ${missing.join(' and ')}.`;
    throw new Refusal('missing', couldNot ? `${need} ${couldNot}` : need);
  }
  if (left.length > 0 && command.records) throw new Refusal('leftover', `${couldNot} Nothing was recorded.`);
  const remarks = reading.remarks.map((remark) => `(${remark})`);
  return { asked, remarks: couldNot ? [...remarks, couldNot] : remarks, couldNot, sure };
}

/** The household's own names, each list read from the records only when a part asks for it. */
function namesOf(house: House): Names {
  const lists = new Map<string, readonly string[]>();
  const once = (key: string, list: () => readonly string[]) => {
    if (!lists.has(key)) lists.set(key, list());
    return lists.get(key)!;
  };
  return {
    get meals() {
      return once('meals', () => house.recipes.names());
    },
    get otherNames() {
      const meals = new Map(this.meals.map((name) => [nameKey(name), name]));
      const known = [...house.learnt.aliases()].map(([words, key]) => [words, meals.get(key)] as const);
      return new Map(known.filter((one): one is readonly [string, string] => one[1] !== undefined));
    },
    get eaters() {
      return once('eaters', () => house.eaters.here().map((eater) => eater.name));
    },
    get trips() {
      return once('trips', () => tripsOpen(house).map((trip) => trip.place));
    },
    tripDays: (place) => tripsOpen(house).find((trip) => trip.place === place),
    get me() {
      return house.eaters.here().find((eater) => eater.member === house.member.id)?.name ?? house.member.name;
    },
    nowMs: house.nowMs,
    zone: house.settings.zone,
  };
}

/** What a person reads when a request was not carried out. A bug is logged, never shown. */
export function refused(
  answerer: Answerer,
  command: Command,
  words: string,
  message: Message,
  error: unknown,
): Carried {
  return { reply: refusal(answerer, command, words, message, error), outcome: 'refused', entry: null };
}

function refusal(
  answerer: Answerer,
  command: Command,
  words: string,
  message: Message,
  error: unknown,
): Reply {
  if (error instanceof Repeated) {
    return {
      group:
        'You sent exactly this a moment ago, and it is recorded. Nothing was recorded twice. Is this one more?',
      buttons: [{ label: 'Yes, once more', request: `/${command.name} ${words} sure` }],
    };
  }
  if (error instanceof Ambiguous) {
    return {
      group: error.question,
      buttons: error.options.map(({ label, request }) => ({ label, request: `/${command.name} ${request}` })),
    };
  }
  if (error instanceof Doubt) {
    return {
      group: `${error.message} Nothing is recorded yet; "sure" at the end records it.`,
      buttons: [{ label: 'It is right', request: `/${command.name} ${words} sure` }],
    };
  }
  if (error instanceof Refusal) return { group: `${error.message}\nFor example: ${command.examples[0]}` };
  answerer.log(
    `a request failed: /${command.name} in delivery ${message.deliveryKey}: ${whereItBroke(error)}`,
  );
  return { group: 'Something broke on my side; nothing was recorded. The fault is in the log.' };
}
