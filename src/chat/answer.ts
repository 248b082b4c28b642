import { Refusal } from '#core/refusal.ts';
import { defaultSettings } from '#core/settings.ts';
import type { Message, Reply } from '#core/talk.ts';
import type { FoodTable } from '#foods/food.ts';
import type { Stores } from '#store/house.ts';
import { Ambiguous, Reading, couldNotPlace } from '#words/reading.ts';
import type { Names } from '#words/parts.ts';
import { address } from './address.ts';
import { admission } from './admission.ts';
import type { Command, House } from './command.ts';

export interface Answerer {
  readonly stores: Stores;
  readonly foods: FoodTable;
  readonly commands: readonly Command[];
  readonly admitCode: string | null;
  readonly chatLink: string | null;
  /** Where a bug is reported; it never sees the message's text. */
  readonly log: (line: string) => void;
}

/** What the door does at once, beside sending what waits in the outbox. */
export interface Handled {
  /** A word for the presser of a button alone. */
  readonly toast?: string;
  readonly outbox?: number;
}

const repeatMs = 60_000;

/**
 * One message in, its change and its answer in one transaction. A refusal takes its change back and leaves
 * its answer. A delivery that was seen before changes nothing and is answered by what already waits.
 */
export function answer(house: Answerer, message: Message): Handled {
  return house.stores.together(() => {
    if (!house.stores.messages.firstSight(message.door, message.deliveryKey, message.sentAtMs)) return {};
    const pressed = message.button === null ? undefined : press(house, message);
    if (pressed && 'toast' in pressed) return pressed;
    return handle(house, pressed ? { ...message, ...pressed } : message);
  });
}

function press({ stores }: Answerer, message: Message): Handled | Pick<Message, 'text' | 'topicKey' | 'messageKey'> {
  const button = stores.messages.button(message.button!, message.door);
  if (!button || button.chatKey !== message.chatKey) return { toast: 'This button is too old. Please type the request.' };
  if (button.forPerson !== null && button.forPerson !== message.person.key) {
    return { toast: 'This button is for the person who asked.' };
  }
  if (button.usedAtMs !== null) return { toast: 'Already done.' };
  stores.messages.retireButtons(message.button!, message.sentAtMs);
  return { text: button.request, topicKey: button.topicKey, messageKey: button.replyToKey ?? message.messageKey };
}

function handle(house: Answerer, message: Message): Handled {
  const { stores } = house;
  const found = address(message.text, message.addressed || message.button !== null, house.commands);
  // Without a code every chat is the owner's own: the terminal.
  const household =
    stores.households.of(message.door, message.chatKey) ??
    (house.admitCode === null ? stores.households.admit(message) : undefined);
  const respond = (reply: Reply) => ({
    outbox: stores.messages.put(message, message.messageKey, reply, message.sentAtMs),
  });
  if (household === undefined) {
    const reply = house.admitCode === null ? undefined : admission(stores, message, house.admitCode);
    return reply ? respond(reply) : {};
  }
  if (message.isEdit) {
    const before = stores.messages.heard(message);
    if (before?.text === message.text) return {};
    if (before?.outcome === 'recorded' && found.is !== 'talk') {
      stores.messages.remember(message, 'recorded');
      return respond({
        group:
          'What this message said before is recorded and stays as it was.\nTo change it: /undo takes the last change back; then send the request anew.',
      });
    }
  }
  if (found.is === 'talk') return {};
  if (found.is === 'unknown') {
    stores.messages.remember(message, 'refused');
    const near = found.near ? ` Did you mean /${found.near.name}?` : '';
    const example = (found.near ?? house.commands[0])!.examples[0];
    return respond({
      group: `I know no request "${found.typed}".${near}\nFor example: ${example}\n/help lists them all.`,
    });
  }
  const { reply, outcome } = carryOut(house, message, household, found.command, found.words);
  stores.messages.remember(message, outcome);
  return respond(reply);
}

interface Carried {
  readonly reply: Reply;
  readonly outcome: 'answered' | 'recorded' | 'refused';
}

/** Thrown to take a repeated change back and ask about it instead. */
class Repeated extends Error {}

function carryOut(house: Answerer, message: Message, household: number, command: Command, words: string): Carried {
  const { stores } = house;
  try {
    return stores.together(() => {
      const member = stores.households.member(household, message);
      const author = { household, door: message.door, chatKey: message.chatKey, member: member.id, atMs: message.sentAtMs };
      const records = stores.of(household);
      const opened: Omit<House, 'sure'> = {
        ...records,
        household,
        member,
        settings: records.settings.all(),
        told: records.settings,
        foods: house.foods,
        nowMs: message.sentAtMs,
        journal: {
          undoLast: () => stores.journal.undoLast(author),
          latest: (count) => stores.journal.latest(household, count),
        },
        commands: house.commands,
        chatLink: house.chatLink,
      };
      const { asked, remarks, confirmed } = read(command, words, opened);
      const { result, recorded } = stores.journal.record(author, () => command.answer(asked, { ...opened, sure: confirmed }));
      if (
        recorded &&
        command.doubtRepeats &&
        !confirmed &&
        stores.messages.recordedSince(message, message.sentAtMs - repeatMs)
      ) {
        throw new Repeated();
      }
      const reply = remarks.length === 0 ? result : { ...result, group: `${result.group}\n${remarks.join('\n')}` };
      return { reply, outcome: recorded ? 'recorded' : 'answered' };
    });
  } catch (error) {
    return { reply: refused(house, command, words, message, error), outcome: 'refused' };
  }
}

/** Reads the parts a request takes; what is missing or left over is said with what was understood. */
function read(command: Command, words: string, house: Omit<House, 'sure'>) {
  const reading = new Reading(words);
  let meals: string[] | undefined;
  const names: Names = {
    get meals() {
      return (meals ??= house.recipes.names());
    },
    nowMs: house.nowMs,
    zone: house.settings.zone ?? defaultSettings.zone,
  };
  const confirmed = command.doubtRepeats && reading.keyword('sure') !== undefined;
  const asked: Record<string, unknown> = {};
  const missing: string[] = [];
  for (const [key, part] of Object.entries(command.takes)) {
    asked[key] = part.read(reading, names);
    if (asked[key] === undefined && part.needed) missing.push(part.like);
  }
  const left = reading.leftovers();
  if (missing.length > 0) {
    const understood = reading.understood();
    const because = left.length > 0 ? ` ${couldNotPlace(left, names.meals)}` : '';
    throw new Refusal(
      'missing',
      `${understood ? `I read ${understood}, but I` : 'I'} still need ${missing.join(' and ')}.${because}`,
    );
  }
  if (left.length > 0 && command.records) {
    throw new Refusal('leftover', `${couldNotPlace(left, names.meals)} Nothing was recorded.`);
  }
  const remarks = reading.remarks.map((r) => `(${r})`);
  if (left.length > 0) remarks.push(couldNotPlace(left, names.meals));
  return { asked, remarks, confirmed };
}

function refused(house: Answerer, command: Command, words: string, message: Message, error: unknown): Reply {
  if (error instanceof Repeated) {
    return {
      group: 'You sent exactly this a moment ago, and it is recorded. Nothing was recorded twice. Is this one more?',
      buttons: [{ label: 'Yes, once more', request: `/${command.name} ${words} sure` }],
    };
  }
  if (error instanceof Ambiguous) {
    return {
      group: error.question,
      buttons: error.options.map(({ label, request }) => ({ label, request: `/${command.name} ${request}` })),
    };
  }
  if (error instanceof Refusal) {
    return { group: `${error.message}\nFor example: ${command.examples[0]}` };
  }
  const what = error instanceof Error ? (error.stack ?? error.name) : 'unknown';
  house.log(`a request failed: /${command.name} in delivery ${message.deliveryKey}: ${what}`);
  return { group: 'Something broke on my side; nothing was recorded. The fault is in the log.' };
}
