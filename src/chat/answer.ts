import type { Message, Reply } from '#core/talk.ts';
import type { PressedButton } from '#store/messages.ts';
import { address } from './address.ts';
import { admission, admittedAlready, choosesAgain, scanned } from './admission.ts';
import { askingFor, completed } from './alone.ts';
import type { Answerer } from './answerer.ts';
import { withOffers, withRemarks } from './beside.ts';
import { type Carried, lookIn, open, record, refused } from './carry-out.ts';
import type { Addressed } from './chosen.ts';
import type { Handled, Reacted } from './handled.ts';
import { withNearDeeds, withoutTheRest } from './may-be-other.ts';
import { asButton, notUnderstood } from './not-understood.ts';
import { peopleMeant } from './people-meant.ts';
import { pictured } from './pictured.ts';
import { begin } from './planned-work.ts';
import { press } from './press.ts';
import { offer, proposal } from './propose.ts';
import { editedInto, replacement } from './replace.ts';
import { namesOf } from './read-parts.ts';
import { respond as put } from './respond.ts';
import { carryTogether } from './together.ts';
import { storeTrouble } from './trouble.ts';

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

/** A chat is told once in so long that what is not typed changes nothing. Chosen. */
const hintMs = 7 * 24 * 3_600_000;
/** What was said longer ago is no longer what 'it' points to. Chosen. */
const sameTalkMs = 15 * 60_000;

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
  const found = understood(house, message, household);
  if (message.isEdit) {
    const before = stores.messages.heard(message);
    if (before?.text === message.text) return { handled: {} };
    if (before?.outcome === 'recorded' && found.is !== 'talk') {
      stores.messages.remember(message, 'recorded', before.entry);
      return respond(editedInto(house, message, household, found, before.entry));
    }
  }
  return react(house, message, household, found, respond);
}

/** What a message asks for: by itself, or with what was asked of whoever wrote it. */
function understood(house: Answerer, message: Message, household: number): Addressed {
  const { messages, households } = house.stores;
  const sinceMs = message.sentAtMs - sameTalkMs;
  const meant = peopleMeant(households, household, message);
  const isPressed = message.button !== null;
  const names = () =>
    namesOf(
      lookIn(house, message, household).house,
      messages.lately(message, sinceMs),
      messages.lastRecorded(message, sinceMs),
    );
  const mayComplete = !isPressed && message.addressed && !meant.trimStart().startsWith('/');
  const awaited = mayComplete ? messages.awaited(message, sinceMs) : undefined;
  const means = (text: string) => address(text, message.addressed || isPressed, house, names);
  return means(completed(awaited, meant, house.commands, names, () => means(meant)) ?? meant);
}

/** Whatever was not typed to be carried out, and what has to be asked about first. */
function react(
  house: Answerer,
  message: Message,
  household: number,
  found: Addressed,
  respond: (reply: Reply) => Reacted,
): Reacted {
  const { messages, households } = house.stores;
  switch (found.is) {
    case 'courtesy':
      return { handled: {} };
    case 'talk':
      // Nothing typed, yet meant for the bot: a picture, a forwarded message, its bare name. Once in a while a hint.
      if (!message.addressed || message.isEdit || !households.hint(message, message.sentAtMs - hintMs))
        return { handled: {} };
      return respond({
        group: `I carry out what is typed here; forwarded messages and attachments change nothing.\nFor example: ${house.commands[0]!.examples[0]}\n/help lists every request.`,
      });
    case 'unknown':
      messages.remember(message, 'refused');
      return respond(notUnderstood(house, message, household, found));
    case 'several':
      messages.remember(message, 'refused');
      return respond({
        asks: true,
        group: 'I can read that two ways. Which is meant?',
        buttons: found.of.map(asButton),
      });
    case 'together': {
      const { reply, outcome, entry } = carryTogether(house, message, household, found.of);
      if (message.button === null) messages.remember(message, outcome, entry);
      else messages.settle(message, outcome, entry);
      return respond(reply);
    }
    case 'instead':
      messages.remember(message, 'refused');
      return respond(replacement(house, message, household, found.entry, found.main));
    case 'request':
      return carryOne(house, message, household, found, respond);
  }
}

/** Carries one request out, with what the message says besides. */
function carryOne(
  house: Answerer,
  message: Message,
  household: number,
  { main, also, offer: deed }: Extract<Addressed, { is: 'request' }>,
  respond: (reply: Reply) => Reacted,
): Reacted {
  const { stores } = house;
  const { command, words } = main;
  const isPressed = message.button !== null;
  const finish = (carried: Carried, error?: unknown): Reacted => {
    const { reply, outcome, entry } = askingFor(
      carried,
      { command, words, message, error },
      () => lookIn(house, message, household).house,
    );
    const more =
      outcome === 'refused'
        ? []
        : [
            ...also.map((one) => offer(house, message, household, one, true) ?? asButton(one)),
            ...(deed ? [offer(house, message, household, deed, true) ?? []].flat() : []),
          ];
    if (isPressed) stores.messages.settle(message, outcome, entry);
    else stores.messages.remember(message, outcome, entry);
    const remarked = withRemarks(reply, main);
    return respond(withOffers(remarked, more, also.length > 0));
  };
  const isLeft = [main, ...also].some(({ left }) => left.length > 0);
  if (!isPressed && command.records && (main.holds !== null || isLeft)) {
    stores.messages.remember(message, 'refused');
    return respond(proposal(house, message, household, main, also));
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
    const no = refused(house, household, command, words, message, error);
    const without = withoutTheRest(house, message, household, main, no, error);
    return finish(withNearDeeds(house, message, household, main, without, error), error);
  }
}
