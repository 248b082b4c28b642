import type { Answerer } from '#chat/answerer.ts';
import { answer, resume } from '#chat/answer.ts';
import { arrival } from '#chat/admission.ts';
import { menu } from '#chat/help.ts';
import { listsOf } from '#chat/live.ts';
import { openTelegram, type TelegramDoor } from '#doors/telegram.ts';
import { deliveryStore } from '#store/deliveries.ts';
import { type TestHouse, openOwnHouse } from '../house.ts';
import { type Chat, type Platform, botUser, openPlatform } from './platform.ts';
import type { Sent } from './rules.ts';

export const ana = { id: 5_000_000_001, is_bot: false, first_name: 'Ana' };
export const ben = { id: 5_000_000_002, is_bot: false, first_name: 'Ben' };

type More = Record<string, unknown>;

/** When messages are sent: seconds since 1970, as the platform counts. What was sent long ago would be answered late. */
export const dateS = Math.floor(Date.now() / 1000);

/** People who write in chats of a platform. */
export function peopleOn(platform: Platform) {
  return {
    /** @returns the message's number and the update's */
    say: (chat: Chat, text: string, more: More = {}): { messageId: number; updateId: number } => {
      const messageId = (more['message_id'] as number | undefined) ?? platform.nextMessageId(chat.id);
      const updateId = platform.update({
        message: { message_id: messageId, date: dateS, chat: shown(chat), from: ana, text, ...more },
      });
      return { messageId, updateId };
    },
    edit: (chat: Chat, messageId: number, text: string, more: More = {}): number =>
      platform.update({
        edited_message: {
          message_id: messageId,
          date: dateS,
          edit_date: dateS + 30,
          chat: shown(chat),
          from: ana,
          text,
          ...more,
        },
      }),
    press: (
      chat: Chat,
      messageId: number,
      data: string,
      from: object = ana,
      message: object = {},
    ): string => {
      const id = `press-${platform.nextMessageId(chat.id)}-${chat.id}`;
      platform.update({
        callback_query: {
          id,
          from,
          chat_instance: '1',
          data,
          message: {
            message_id: messageId,
            date: dateS,
            chat: shown(chat),
            from: botUser,
            text: '…',
            ...message,
          },
        },
      });
      return id;
    },
    member: (chat: Chat, was: string, is: string): number =>
      platform.update({
        my_chat_member: {
          chat: shown(chat),
          from: ana,
          date: dateS,
          old_chat_member: { status: was, user: botUser },
          new_chat_member: { status: is, user: botUser },
        },
      }),
  };
}

const shown = ({ id, type, title, first_name, is_forum }: Chat) => ({
  id,
  type,
  title,
  first_name,
  is_forum,
});

/** Waits until something holds. @throws Error when it does not in time */
export async function until<T>(what: () => T | undefined | false, limitMs = 60_000): Promise<T> {
  const endMs = Date.now() + limitMs;
  for (;;) {
    const found = what();
    if (found !== undefined && found !== false) return found;
    if (Date.now() > endMs) throw new Error(`waited ${limitMs} ms in vain for ${what.toString()}`);
    await new Promise((resolve) => setTimeout(resolve, 4));
  }
}

export interface OpenDoor extends ReturnType<typeof peopleOn> {
  readonly platform: Platform;
  readonly house: TestHouse;
  readonly group: Chat;
  readonly logged: string[];
  readonly printed: string[];
  /** What arrived in a chat after the given number of messages. */
  readonly answers: (chat: Chat, from?: number) => Sent[];
  /** Waits for the n-th message that arrives in a chat, counted from 1. */
  readonly answer: (chat: Chat, n: number, limitMs?: number) => Promise<Sent>;
  /** Waits until the bot asked for updates behind everything that was sent to it. */
  readonly quiet: () => Promise<void>;
  /** Ends the bot and the platform. @returns the exit code */
  readonly end: () => Promise<number>;
  readonly ended: Promise<number>;
}

/** The door in this process, on an admitted household in memory, with a platform of its own. */
export async function openDoor(
  options: Partial<Answerer> = {},
  door: Partial<TelegramDoor> = {},
  kept?: TestHouse,
  made?: TestHouse,
): Promise<OpenDoor> {
  const platform = await openPlatform();
  const group = platform.chat({ id: -1001234567890, type: 'supergroup', title: 'Kitchen' });
  const house = kept ?? made ?? openOwnHouse(undefined, { admitCode: 'plum-42', ...options });
  const inGroup = {
    door: 'telegram',
    chatKey: String(group.id),
    chatTitle: 'Kitchen',
    isPrivate: false,
    person: { key: String(ana.id), name: 'Ana' },
    sentAtMs: 0,
  } as never;
  // What was played at the terminal goes on in the group.
  if (kept) kept.house.stores.households.join(inGroup, 1);
  else house.house.stores.households.admit(inGroup);
  const stopping = new AbortController();
  const [logged, printed]: [string[], string[]] = [[], []];
  const ended = openTelegram({
    token: platform.token,
    apiRoot: platform.root,
    handle: (message) => answer(house.house, message),
    codesIn: (picture) => house.house.workers.drawing.codes(picture),
    takeUp: () => resume(house.house, 'telegram'),
    arrived: (message) => arrival(house.house.stores, message),
    deliveries: deliveryStore(house.db),
    lists: listsOf(
      () => house.house,
      'telegram',
      () => Date.now(),
    ),
    posting: () => ({ stop: () => Promise.resolve() }),
    named: () => undefined,
    menu: menu(house.house.commands),
    admitCode: 'plum-42',
    fixedNowMs: null,
    print: (line) => void printed.push(line),
    log: (line) => void logged.push(line),
    stop: stopping.signal,
    ...door,
  });
  const answers = (chat: Chat, from = 0) => platform.sent.filter((m) => m.chatId === chat.id).slice(from);
  return {
    ...peopleOn(platform),
    platform,
    house,
    group,
    logged,
    printed,
    ended,
    answers,
    answer: (chat, n, limitMs) => until(() => answers(chat)[n - 1], limitMs),
    quiet: async () => void (await until(() => platform.unconfirmed().length === 0)),
    async end() {
      stopping.abort();
      const code = await ended;
      await platform.close();
      return code;
    },
  };
}
