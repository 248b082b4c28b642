import type { Context } from 'grammy';
import type { Message } from '#core/talk.ts';
import { withoutJoiners } from './telegram-text.ts';
import { aliasOf, type Me, nameOf, namesMeant, repliedTo, speaker, titleOf } from './telegram-who.ts';

export type Update = Context['update'];
type Incoming = NonNullable<Update['message']>;
type Press = NonNullable<Update['callback_query']>;
type Membership = NonNullable<Update['my_chat_member']>;

/** What an update means to the house. */
export type Heard =
  | { readonly is: 'message'; readonly message: Message; readonly picture?: string }
  | {
      readonly is: 'press';
      readonly message: Message;
      readonly pressKey: string;
      /** The message that carries the button; null when it can no longer be reached. */
      readonly carrier: { readonly chatKey: string; readonly messageId: number } | null;
    }
  | { readonly is: 'moved'; readonly from: string; readonly to: string }
  /** The bot came into a group, or a person unblocked it. */
  | { readonly is: 'joined'; readonly message: Message }
  | { readonly is: 'left'; readonly chatKey: string }
  | { readonly is: 'nothing' };

/** The kinds of update the door asks the platform for. */
export const wanted = ['message', 'edited_message', 'callback_query', 'my_chat_member'] as const;

const nothing: Heard = { is: 'nothing' };

/**
 * Reads one update. Channels, other bots and automatic forwards are nothing; a command that names another bot
 * is nothing either.
 * @param nowMs the time of a button's press, which the platform does not tell
 */
export function hear(update: Update, me: Me, nowMs: number): Heard {
  // With the bot's id: another bot on the same database counts its updates on its own.
  const deliveryKey = `${me.id}:${update.update_id}`;
  if (update.callback_query) return hearPress(update.callback_query, deliveryKey, nowMs);
  if (update.my_chat_member) return hearMembership(update.my_chat_member, deliveryKey);
  const incoming = update.message ?? update.edited_message;
  return incoming ? hearMessage(incoming, update.edited_message !== undefined, deliveryKey, me) : nothing;
}

function hearMessage(incoming: Incoming, isEdit: boolean, deliveryKey: string, me: Me): Heard {
  const { chat } = incoming;
  if (!isOurKind(chat) || incoming.is_automatic_forward) return nothing;
  if (incoming.migrate_to_chat_id !== undefined) {
    return { is: 'moved', from: String(chat.id), to: String(incoming.migrate_to_chat_id) };
  }
  if (incoming.migrate_from_chat_id !== undefined) {
    return { is: 'moved', from: String(incoming.migrate_from_chat_id), to: String(chat.id) };
  }
  const person = speaker(incoming);
  if (person === null || isService(incoming)) return nothing;
  const isPrivate = chat.type === 'private';
  const typed = withoutJoiners(namesMeant(incoming));
  const spoken = spokenTo(typed, me.username);
  if (spoken === 'another bot') return nothing;
  const wasForwarded = incoming.forward_origin !== undefined;
  return {
    is: 'message',
    ...pictureOf(incoming),
    message: {
      door: 'telegram',
      chatKey: String(chat.id),
      chatTitle: titleOf(chat),
      isPrivate,
      addressed: isPrivate || spoken.addressed || answersUs(incoming, me),
      deliveryKey,
      // A message that only one member sees has no number of its own and cannot be replied to.
      messageKey: incoming.message_id > 0 ? String(incoming.message_id) : `delivery ${deliveryKey}`,
      topicKey: topicOf(incoming),
      person,
      ...aliasOf(incoming),
      ...repliedTo(incoming, me),
      // What somebody else wrote elsewhere is not this person's request.
      text: wasForwarded ? '' : startLink(spoken.text),
      sentAtMs: ((isEdit ? incoming.edit_date : undefined) ?? incoming.date) * 1000,
      isEdit,
      button: null,
    },
  };
}

function hearPress(press: Press, deliveryKey: string, nowMs: number): Heard {
  const carrier = press.message;
  const reachable = carrier !== undefined && isOurKind(carrier.chat);
  return {
    is: 'press',
    pressKey: press.id,
    carrier: reachable ? { chatKey: String(carrier.chat.id), messageId: carrier.message_id } : null,
    message: {
      door: 'telegram',
      chatKey: reachable ? String(carrier.chat.id) : '',
      chatTitle: reachable ? titleOf(carrier.chat) : '',
      isPrivate: reachable && carrier.chat.type === 'private',
      addressed: true,
      deliveryKey,
      messageKey: reachable ? String(carrier.message_id) : '',
      topicKey: null,
      person: { key: String(press.from.id), name: nameOf(press.from) },
      text: '',
      sentAtMs: nowMs,
      isEdit: false,
      // Not ours, forged or from long ago: a number that no button has.
      carrierKey: reachable ? String(carrier.message_id) : null,
      button: /^[1-9]\d{0,14}$/.test(press.data ?? '') ? Number(press.data) : -1,
    },
  };
}

function hearMembership(change: Membership, deliveryKey: string): Heard {
  const { chat, from, date } = change;
  if (!isOurKind(chat)) return nothing;
  const [was, is] = [change.old_chat_member, change.new_chat_member].map(isIn);
  if (was === is) return nothing;
  if (!is) return { is: 'left', chatKey: String(chat.id) };
  return {
    is: 'joined',
    message: {
      door: 'telegram',
      chatKey: String(chat.id),
      chatTitle: titleOf(chat),
      isPrivate: chat.type === 'private',
      addressed: true,
      deliveryKey,
      messageKey: `delivery ${deliveryKey}`,
      topicKey: null,
      person: { key: String(from.id), name: nameOf(from) },
      text: '',
      sentAtMs: date * 1000,
      isEdit: false,
      button: null,
    },
  };
}

function isIn(member: Membership['new_chat_member'] | undefined): boolean {
  if (!member) return false;
  if (member.status === 'restricted') return member.is_member;
  return member.status !== 'left' && member.status !== 'kicked';
}

const isOurKind = (chat: { type: string }) => ['private', 'group', 'supergroup'].includes(chat.type);

/** A picture sent along, by the platform's name for the file: the largest of its sizes. */
function pictureOf({ photo, document, forward_origin: from }: Incoming): { picture: string } | undefined {
  if (from !== undefined) return undefined;
  const largest = (photo ?? []).toSorted((a, b) => b.width - a.width)[0];
  if (largest) return { picture: largest.file_id };
  const isPicture = /^image\/(?:png|jpeg)$/.test(document?.mime_type ?? '');
  return document && isPicture ? { picture: document.file_id } : undefined;
}

/** Only real topics: elsewhere the number is the root of a chain of replies. */
function topicOf({ is_topic_message: inTopic, message_thread_id: topic }: Incoming): string | null {
  return inTopic && topic !== undefined ? String(topic) : null;
}

/** Whether it replies to the bot. In a topic everything "replies" to the topic's creation, which does not count. */
function answersUs({ reply_to_message: target }: Incoming, me: Me): boolean {
  return target?.from?.id === me.id && target.forum_topic_created === undefined;
}

/** Takes the bot's own name out of a text, in any letter case: '/water@ourbot B4-2', '@ourbot water B4-2'. */
function spokenTo(text: string, username: string): { text: string; addressed: boolean } | 'another bot' {
  const slash = /^\s*(\/[\p{L}\p{N}_]+)@(\w+)/u.exec(text);
  if (slash) {
    if (slash[2]!.toLowerCase() !== username.toLowerCase()) return 'another bot';
    return { text: `${slash[1]!}${text.slice(slash[0].length)}`, addressed: true };
  }
  const mention = new RegExp(`(?<![\\w@/.])@${username}(?!\\w)[ ,:;]*`, 'giu');
  const without = text.replace(mention, ' ');
  return without === text ? { text, addressed: false } : { text: without.trim(), addressed: true };
}

/** What a link may carry after /start; anything else was not made by the platform and is left out. */
function startLink(text: string): string {
  const start = /^\/start(?:\s+([\s\S]*))?$/i.exec(text.trim());
  if (!start) return text;
  return /^[\w-]{1,64}$/.test(start[1] ?? '') ? `/start ${start[1]!}` : '/start';
}

const service = [
  'new_chat_members',
  'left_chat_member',
  'new_chat_title',
  'new_chat_photo',
  'delete_chat_photo',
  'group_chat_created',
  'supergroup_chat_created',
  'message_auto_delete_timer_changed',
  'pinned_message',
  'forum_topic_created',
  'forum_topic_edited',
  'forum_topic_closed',
  'forum_topic_reopened',
  'general_forum_topic_hidden',
  'general_forum_topic_unhidden',
  'video_chat_scheduled',
  'video_chat_started',
  'video_chat_ended',
  'video_chat_participants_invited',
  'write_access_allowed',
  'boost_added',
  'chat_background_set',
  'proximity_alert_triggered',
  'users_shared',
  'chat_shared',
] as const satisfies readonly (keyof Incoming)[];

/** What the platform says in a chat by itself: joins, titles, pins. Nobody asked anything. */
const isService = (incoming: Incoming) => service.some((key) => incoming[key] !== undefined);
