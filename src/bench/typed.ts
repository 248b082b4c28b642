import type { Message } from '#core/talk.ts';

/** A message as it is typed at the terminal: told apart by its number, said by one person in one chat. */
export const typed = (
  number: number,
  text: string,
  sentAtMs: number,
  { who = 'Ana', chat = 'bench' }: { readonly who?: string; readonly chat?: string } = {},
): Message => ({
  door: 'terminal',
  chatKey: chat,
  chatTitle: 'bench',
  isPrivate: false,
  addressed: true,
  deliveryKey: String(number),
  messageKey: String(number),
  topicKey: null,
  person: { key: who.toLowerCase(), name: who },
  text,
  sentAtMs,
  isEdit: false,
  button: null,
});
