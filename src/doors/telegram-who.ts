import type { Context } from 'grammy';
import type { Message } from '#core/talk.ts';

// Who a message is from, and whom it means: people by number, as they are called.

type Incoming = NonNullable<Context['update']['message']>;

/** What the bot is called; the platform tells it. */
export interface Me {
  readonly id: number;
  readonly username: string;
}

/** What tells who a message is from. */
interface Speaking {
  readonly chat: { readonly id: number };
  readonly from?: Incoming['from'] | undefined;
  readonly sender_chat?: Incoming['sender_chat'] | undefined;
}

/** Who speaks; null for other bots and channels. An administrator who stays unnamed is the group, and no person. */
export function speaker({ chat, from, sender_chat: standsFor }: Speaking): Message['person'] | null {
  if (standsFor)
    return standsFor.id === chat.id
      ? { key: `chat:${standsFor.id}`, name: `${titleOf(standsFor)} (admin)` }
      : null;
  if (!from || from.is_bot) return null;
  return { key: String(from.id), name: nameOf(from) };
}

/** The first name as it is; names of nothing but blanks and fillers fall back. */
export function nameOf(user: {
  id: number;
  first_name: string;
  last_name?: string;
  username?: string;
}): string {
  const readable = [user.first_name, user.last_name, user.username]
    .map((name) => name?.replace(/\s+/gu, ' ').trim())
    .find((name) => name && /[^\p{C}\p{Z}\u115F\u1160\u3164\uFFA0\u2800]/u.test(name));
  return readable ?? `member ${user.id}`;
}

/** The public name by which others may mean the speaker. */
export const aliasOf = ({ from, sender_chat: standsFor }: Incoming) =>
  from?.username && !standsFor ? { alias: from.username } : {};

/** The person whose message this one answers. */
export function repliedTo({ reply_to_message: target }: Incoming, me: Me) {
  const person = target && target.from && target.from.id !== me.id ? speaker(target) : null;
  return person && !person.key.startsWith('chat:') ? { answersTo: person } : {};
}

export function titleOf(chat: {
  title?: string | undefined;
  first_name?: string | undefined;
  id: number;
}): string {
  return chat.title ?? chat.first_name ?? `chat ${chat.id}`;
}

/** A person who is mentioned without a name of their own in the address book is meant by their first name. */
export function namesMeant({ text, caption, entities, caption_entities }: Incoming): string {
  const typed = text ?? caption ?? '';
  const mentions = (entities ?? caption_entities ?? []).filter((one) => one.type === 'text_mention');
  return mentions.reduceRight((said, { offset, length, user }) => {
    return `${said.slice(0, offset)}"${nameOf(user).replaceAll('"', '')}"${said.slice(offset + length)}`;
  }, typed);
}
