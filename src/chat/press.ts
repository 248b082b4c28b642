import { laterHours, putOffBy } from '#core/reminders.ts';
import type { Message, Reply } from '#core/talk.ts';
import type { PressedButton } from '#store/messages.ts';
import type { Answerer } from './answerer.ts';

/** What a press of a button comes to. */
export type Press =
  /** A word for the presser alone. */
  | { readonly is: 'told'; readonly toast: string }
  /** The answer turns to another page. */
  | { readonly is: 'page'; readonly reply: Reply; readonly of: PressedButton }
  /** A request, as if typed. */
  | { readonly is: 'request'; readonly message: Message; readonly button: PressedButton };

const pageRequest = /^page (\d+)$/;

/** Looks a pressed button up; it does its work once, save where it stays. */
export function press({ stores }: Answerer, message: Message): Press {
  const button = stores.messages.button(message.button!, message.door);
  if (!button || button.chatKey !== message.chatKey)
    return { is: 'told', toast: 'This button is too old. Please type the request.' };
  // Whatever the database missed: this is the message that shows the answer.
  if (message.carrierKey && button.isLate === 0) stores.messages.arrivedAs(button.outbox, message.carrierKey);
  if (button.forPerson !== null && button.forPerson !== message.person.key)
    return { is: 'told', toast: 'This button is for the person who asked.' };
  const page = pageRequest.exec(button.request)?.[1];
  if (page !== undefined)
    return { is: 'page', reply: turned(stores.messages.answered(button.outbox), Number(page)), of: button };
  const off = putOffBy(button.request);
  if (off !== undefined) return putOff(stores, message, off);
  if (button.stays === 0) {
    if (button.usedAtMs !== null) return { is: 'told', toast: 'Already done.' };
    stores.messages.retireButtons(message.button!, message.sentAtMs, button.isChoice === 1);
  }
  return {
    is: 'request',
    message: {
      ...message,
      text: button.request,
      topicKey: button.topicKey,
      messageKey: button.replyToKey ?? message.messageKey,
    },
    button,
  };
}

/** A reminder is to come later. */
function putOff(stores: Answerer['stores'], { door, chatKey, sentAtMs }: Message, about: string): Press {
  const household = stores.households.of(door, chatKey);
  if (household !== undefined) {
    const own = stores.reminders.of(household);
    own.putOff(about, sentAtMs + laterHours * 3_600_000);
    own.lookAgainAt(sentAtMs + 1);
  }
  return { is: 'told', toast: `I say it again in ${laterHours} h, if it is still to be done.` };
}

/** An answer turned to one of its pages: the first is what was answered at first. */
function turned(reply: Reply, to: number): Reply {
  const page = reply.pages?.[to];
  if (!page) return reply;
  const { why: _, ...rest } = reply;
  return { ...rest, page: to, group: page.group, ...(page.why ? { why: page.why } : {}) };
}
