import { whereItBroke } from '#core/fault.ts';
import type { Message, Reply } from '#core/talk.ts';
import { address } from './address.ts';
import { admission, admittedAlready, choosesAgain, scanned } from './admission.ts';
import { withOffers, withRemarks } from './beside.ts';
import { type Carried, lookIn, open, record, refused } from './carry-out.ts';
import { editedInto, offer, proposal, replacement } from './propose.ts';
import { asButton, notUnderstood } from './not-understood.ts';
import { peopleMeant } from './people-meant.ts';
import { pictured } from './pictured.ts';
import { press } from './press.ts';
import { LeftOver, namesOf } from './read-parts.ts';
import { respond as put } from './respond.ts';
import { Refusal } from '#core/refusal.ts';
import { deedsNear } from '#talk/deeds-near.ts';
import { isNegative } from '#talk/mood.ts';
import type { Answerer } from './answerer.ts';
import type { Handled } from './handled.ts';
import type { Command, Planned } from './command.ts';
import { carryTogether } from './together.ts';
import { storeTrouble } from './trouble.ts';
import type { PressedButton } from '#store/messages.ts';
import { workersFor } from './taking-turns.ts';

/**
 * One message in, its change and its answer in one transaction. A refusal takes its change back and leaves
 * its answer. A delivery that was seen before changes nothing and is answered by what already waits.
 */
export function answer(house: Answerer, message: Message): Handled {
  const { handled, later } = house.stores.together(() => {
    if (!house.stores.messages.firstSight(message.door, message.deliveryKey, message.sentAtMs))
      return { handled: {} };
    if (message.button === null) return handle(house, message);
    const pressed = press(house, message);
    if (pressed.is === 'told') return { handled: { toast: pressed.toast } };
    if (pressed.is === 'request') return handle(house, pressed.message, pressed.button);
    const { outbox, topicKey, replyToKey } = pressed.of;
    const to = { ...message, topicKey };
    return {
      handled: { outbox: house.stores.messages.put(to, replyToKey, pressed.reply, message.sentAtMs, outbox) },
    };
  });
  return later ? { ...handled, pending: later() } : handled;
}

/** Takes up what was begun before a restart. */
export function resume(house: Answerer, door: Message['door']): Promise<unknown>[] {
  return house.stores.messages.unfinished(door).flatMap(({ id, message }) => {
    const { later } = house.stores.together(() => {
      house.stores.messages.finish(id);
      return handle(house, message);
    });
    return later ? [later()] : [];
  });
}

/** What a refused one of these says may be another's. */
const mayBeOther = new Set(['weigh', 'seal', 'batch', 'use', 'scale']);

/** A chat is told once in so long that what is not typed changes nothing. Chosen. */
const hintMs = 7 * 24 * 3_600_000;
/** What was said longer ago is no longer what 'it' points to. Chosen. */
const sameTalkMs = 15 * 60_000;

interface Reacted {
  readonly handled: Handled;
  /** Started once the transaction is through. */
  readonly later?: () => Promise<string | undefined>;
}

function handle(house: Answerer, message: Message, pressed?: PressedButton): Reacted {
  const { stores } = house;
  // Without a code every chat is the owner's own: the terminal.
  const scan = scanned(stores, message);
  const household =
    (typeof scan === 'number' ? scan : stores.households.of(message.door, message.chatKey)) ??
    (house.admitCode === null ? stores.households.admit(message) : undefined);
  const respond = (reply: Reply): Reacted => ({
    handled: put(house, message, household, reply, pressed),
  });
  const chooses = choosesAgain(stores, message);
  if (chooses) return respond(chooses);
  if (typeof scan === 'object') return respond(scan);
  if (household === undefined) {
    const reply = house.admitCode === null ? undefined : admission(stores, message, house.admitCode);
    return reply ? respond(reply) : { handled: {} };
  }
  const seen = message.scanned ? pictured(message, household) : undefined;
  if (seen) return 'group' in seen ? respond(seen) : handle(house, { ...seen, scanned: [] }, pressed);
  const already = house.admitCode === null ? undefined : admittedAlready(message);
  if (already) return respond(already);
  const meant = peopleMeant(stores.households, household, message);
  const found = address(meant, message.addressed || message.button !== null, house, () =>
    namesOf(
      lookIn(house, message, household).house,
      stores.messages.lately(message, message.sentAtMs - sameTalkMs),
      stores.messages.lastRecorded(message, message.sentAtMs - sameTalkMs),
    ),
  );
  if (message.isEdit) {
    const before = stores.messages.heard(message);
    if (before?.text === message.text) return { handled: {} };
    if (before?.outcome === 'recorded' && found.is !== 'talk') {
      stores.messages.remember(message, 'recorded', before.entry);
      return respond(editedInto(house, message, household, found, before.entry));
    }
  }
  // Nothing typed, yet meant for the bot: a picture, a forwarded message, its bare name.
  if (found.is === 'courtesy') return { handled: {} };
  if (found.is === 'talk' && message.addressed && !message.isEdit) {
    // Once in a while a hint; a picture or a sticker in answer wants none.
    if (!stores.households.hint(message, message.sentAtMs - hintMs)) return { handled: {} };
    return respond({
      group: `I carry out what is typed here; forwarded messages and attachments change nothing.\nFor example: ${house.commands[0]!.examples[0]}\n/help lists every request.`,
    });
  }
  if (found.is === 'talk') return { handled: {} };
  if (found.is === 'unknown') {
    stores.messages.remember(message, 'refused');
    return respond(notUnderstood(house, message, household, found));
  }
  if (found.is === 'several') {
    stores.messages.remember(message, 'refused');
    return respond({
      asks: true,
      group: 'I can read that two ways. Which is meant?',
      buttons: found.of.map(asButton),
    });
  }
  if (found.is === 'together') {
    const { reply, outcome, entry } = carryTogether(house, message, household, found.of);
    if (message.button === null) stores.messages.remember(message, outcome, entry);
    else stores.messages.settle(message, outcome, entry);
    return respond(reply);
  }
  if (found.is === 'instead') {
    stores.messages.remember(message, 'refused');
    return respond(replacement(house, message, household, found.entry, found.main));
  }
  const { main, also, offer: deed } = found;
  const { command, words } = main;
  const isPressed = message.button !== null;
  const finish = ({ reply, outcome, entry }: Carried): Reacted => {
    const more =
      outcome === 'refused'
        ? []
        : [
            ...also.map((one) => offer(house, message, household, one) ?? asButton(one)),
            ...(deed ? [offer(house, message, household, deed) ?? []].flat() : []),
          ];
    if (isPressed) stores.messages.settle(message, outcome, entry);
    else stores.messages.remember(message, outcome, entry);
    const remarked = withRemarks(reply, main);
    return respond(withOffers(remarked, more, also.length > 0));
  };
  if (!isPressed && command.records && (main.holds !== null || main.left.length > 0)) {
    stores.messages.remember(message, 'refused');
    return respond(proposal(house, message, household, main));
  }
  try {
    if (command.planned) return begin(house, message, household, command, command.planned, words, finish);
    return finish(
      stores.together(() => {
        const opened = open(house, message, household, command, words);
        return record(house, message, command, opened, () => command.answer(opened.asked, opened.house));
      }),
    );
  } catch (error) {
    if (storeTrouble(error) !== undefined) throw error;
    return finish(
      withNearDeeds(withoutTheRest(refused(house, household, command, words, message, error), error), error),
    );
  }

  /** What cannot be carried out may have been meant otherwise: the deeds that its things allow. */
  function withNearDeeds(carried: Carried, error: unknown): Carried {
    const isTyped = !isPressed && !message.text.trimStart().startsWith('/');
    const isOpen = mayBeOther.has(command.name) || (command.name === 'back' && words.endsWith(' lost'));
    const isUnwanted = command.name === 'want' && words.startsWith('not ');
    if (
      !isTyped ||
      !(isUnwanted || (isOpen && !isNegative(message.text))) ||
      !(error instanceof Refusal) ||
      (carried.reply.buttons?.length ?? 0) > 0
    )
      return carried;
    const names = namesOf(lookIn(house, message, household!).house);
    const near = deedsNear(message.text, names).flatMap(({ means, words: its }) => {
      const one = house.commands.find(({ name }) => name === means);
      const isSame = one === command && its === words;
      return one && !isSame ? (offer(house, message, household!, { command: one, words: its }) ?? []) : [];
    });
    return near.length === 0
      ? carried
      : { ...carried, reply: { ...carried.reply, asks: true, buttons: near.slice(0, 2) } };
  }

  /** Offers the request without the words that nothing took, where these change nothing. */
  function withoutTheRest(carried: Carried, error: unknown): Carried {
    if (!(error instanceof LeftOver) || !command.mayLeaveOut || isNegative(words)) return carried;
    const button = offer(house, message, household!, { command, words: error.without });
    return button ? { ...carried, reply: { ...carried.reply, buttons: [button] } } : carried;
  }
}

/** The first step of a planned request: what it needs is read now; the rest is done when its sums are. */
function begin(
  house: Answerer,
  message: Message,
  household: number,
  command: Command,
  planned: Planned,
  words: string,
  finish: (carried: Carried) => Reacted,
): Reacted {
  const { stores } = house;
  const first = stores.together(() => {
    const opened = open(house, message, household, command, words);
    if (planned.waits(opened.asked)) return { looked: planned.look(opened.asked, opened.house) };
    const atOnce = () => command.answer(opened.asked, opened.house);
    return { carried: record(house, message, command, opened, atOnce) };
  });
  if ('carried' in first) return finish(first.carried);
  const unfinished = stores.messages.begin(message);
  const later = async (): Promise<string | undefined> => {
    let worked: unknown;
    let failed: { error: unknown } | undefined;
    try {
      worked = await planned.work(first.looked, workersFor(house.workers, household));
    } catch (error) {
      failed = { error };
    }
    try {
      stores.together(keep);
    } catch (error) {
      house.log(`an answer could not be stored: ${whereItBroke(error)}`);
      return storeTrouble(error) ?? 'Something broke on my side; nothing was recorded.';
    }
    return undefined;

    function keep(): void {
      stores.messages.finish(unfinished);
      try {
        if (failed) throw failed.error;
        finish(
          stores.together(() => {
            const opened = open(house, message, household, command, words);
            return record(house, message, command, opened, () =>
              planned.keep(worked, opened.asked, opened.house),
            );
          }),
        );
      } catch (error) {
        if (storeTrouble(error) !== undefined) throw error;
        finish(refused(house, household, command, words, message, error));
      }
    }
  };
  return { handled: {}, later };
}
