import type { Live, Message, Reply } from '#core/talk.ts';
import type { PressedButton } from '#store/messages.ts';
import type { Answerer } from './answerer.ts';
import type { Handled } from './handled.ts';
import { saidLatelyMs, saidOnce } from './said-once.ts';

/**
 * Puts an answer where it belongs: into the list that is at hand, in the place of the answer that it replaces, or
 * in a message of its own.
 * @param pressed the button that asked for it, if one did
 */
export function respond(
  { stores }: Answerer,
  message: Message,
  household: number | undefined,
  reply: Reply,
  pressed?: PressedButton,
): Handled {
  const { live } = reply;
  // What was put back stands in its own message again.
  if (reply.inPlace && !reply.buttons && pressed && stores.messages.isReplaced(pressed.outbox))
    return toastOf(reply.group);
  const onList = pressed?.live == null ? undefined : stores.live.byId(pressed.live);
  if (onList?.messageKey != null && onList.isOver === 0) {
    const isIts = live?.kind === onList.kind && live.of === onList.of;
    if (isIts) stores.live.turn(onList.id, live.page);
    // The list shows what changed; who pressed hears what came of it.
    if (isIts || !reply.buttons) return toastOf(live ? live.receipt : reply.group);
  }
  const atHand = live && household !== undefined ? stores.live.find(message, live) : undefined;
  // Nothing to take down where nothing is up.
  if (live?.pin === false && !atHand) return put({ ...reply, live: undefined });
  if (atHand && live?.pin !== undefined && live.pin !== (atHand.pin === 'wanted' || atHand.pin === 'done'))
    stores.live.wantPin(atHand.id, live.pin);
  const isReceipt = atHand?.messageKey != null && live !== undefined && live.receipt !== '';
  const said: Reply = isReceipt ? withoutList(reply, live.receipt) : reply;
  return put(said);

  function put({ live: list, ...rest }: Omit<Reply, 'live'> & { live?: Live | undefined }): Handled {
    const follows = list !== undefined && household !== undefined && message.door !== 'terminal';
    const whole: Reply = {
      ...rest,
      ...(list ? { live: list } : {}),
      ...(message.isLate ? { late: true } : {}),
    };
    const insteadOf = rest.files ? null : replaced();
    const hasToTell = (whole.heed ?? whole.notes) !== undefined;
    const said = hasToTell
      ? saidOnce(whole, stores.messages.toldSince(message, message.sentAtMs - saidLatelyMs, insteadOf))
      : whole;
    const outbox = stores.messages.put(message, message.messageKey, said, message.sentAtMs, insteadOf);
    // A terminal changes nothing that it printed.
    if (follows) stores.live.begin(message, household, outbox, list);
    return { outbox };
  }

  function replaced(): number | null {
    // Where several answers share a message, none takes its place.
    if (pressed?.isLate === 1) return null;
    // To be answered it has to be a message of its own.
    if (reply.awaits && !reply.buttons) return null;
    if (pressed) return pressed.asks === 1 || reply.inPlace ? pressed.outbox : null;
    return message.isEdit ? (stores.messages.answerTo(message) ?? null) : null;
  }
}

const toastOf = (said: string): Handled => (said === '' ? {} : { toast: said });

/** What is said of a change where the list shows it: no list, and only the way back. */
function withoutList({ did, buttons = [] }: Reply, said: string): Reply {
  const back = buttons.filter(({ request }) => request.startsWith('/undo '));
  return { group: said, buttons: back, ...(did === undefined ? {} : { did }), isReceipt: true };
}
