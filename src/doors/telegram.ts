import type { Bot } from 'grammy';
import type { Message, Outgoing } from '#core/talk.ts';
import type { Handled } from '#chat/handled.ts';
import { storeTrouble } from '#chat/trouble.ts';
import { type MenuEntry, askName, connect, setMenu, whyEnded } from './telegram-connection.ts';
import { type Heard, hear, wanted } from './telegram-hear.ts';
import { fetchPicture } from './telegram-picture.ts';
import { openPresses } from './telegram-press.ts';
import { sayError, withoutToken } from './telegram-refused.ts';
import type { Lists } from './telegram-lists.ts';
import { type Outbox, openSender } from './telegram-sender.ts';

/** What the door keeps in the database. */
export interface Deliveries extends Outbox {
  /** Nothing is sent to this chat until it is resumed. */
  readonly pause: (door: 'telegram', chatKey: string) => void;
  readonly resume: (door: 'telegram', chatKey: string) => void;
  /** @returns false when the new chat is a household of its own by now */
  readonly moveChat: (door: 'telegram', from: string, to: string) => boolean;
  /** The buttons left beside one that has done its work; undefined where nothing is to be changed. */
  readonly leftBeside: (door: 'telegram', button: number, chatKey: string) => Outgoing['buttons'] | undefined;
}

export interface TelegramDoor {
  readonly token: string;
  /** Another address than the platform's own; null for that. */
  readonly apiRoot: string | null;
  /** Handles one message; the answer waits in the outbox afterwards. */
  readonly handle: (message: Message) => Handled;
  /** The texts of the codes in a picture; worked out beside the chat. */
  readonly codesIn: (picture: Uint8Array) => Promise<readonly string[]>;
  /** Takes up the long sums that an earlier process did not end. */
  readonly takeUp: () => readonly Promise<unknown>[];
  /** The bot came into a group: puts a line for it in the outbox. */
  readonly arrived: (message: Message) => void;
  readonly deliveries: Deliveries;
  /** Messages that follow the records. */
  readonly lists: Lists;
  /** Starts what posts by the clock alone. @param wake tells that something waits to be sent */
  readonly posting: (wake: () => void) => { readonly stop: () => Promise<void> };
  /** The bot's public name, once the platform has told it. */
  readonly named: (username: string) => void;
  readonly menu: readonly MenuEntry[];
  readonly admitCode: string;
  /** A clock fixed from outside, ms; null for the real one. */
  readonly fixedNowMs: number | null;
  readonly print: (line: string) => void;
  readonly log: (line: string) => void;
  /** Asks the door to stop. */
  readonly stop: AbortSignal;
}

const stopLimitMs = 5000;
/** A message that waited longer is answered late. Chosen. */
const lateAfterMs = 10 * 60_000;
const gatherMs = 800;
const isOld = ({ sentAtMs }: Message): boolean => Date.now() - sentAtMs > lateAfterMs;
const firstSignAfterMs = 700;
/** The platform shows a sign of work for 5 s. */
const signEveryMs = 4500;

/**
 * The chat on the platform, by long polling. Ends when asked to stop, or when the platform refuses this bot.
 * Handlers never wait for the network: what is to be said goes through the outbox.
 * @returns the process's exit code
 */
export async function openTelegram(door: TelegramDoor): Promise<number> {
  const { deliveries, stop } = door;
  const log = withoutToken(door.token, door.log);
  const bot = connect(door.token, door.apiRoot, log);
  const sender = openSender({ api: bot.api, outbox: deliveries, lists: door.lists, moved, log });
  /** Calls that nothing waits for: signs of work, answers to presses. */
  const loose = new Set<Promise<unknown>>();
  const later = (call: Promise<unknown>, isFine: (error: unknown) => boolean = () => false) => {
    const ended: Promise<unknown> = call
      .catch((error: unknown) => (isFine(error) ? undefined : log(sayError(error))))
      .finally(() => loose.delete(ended));
    loose.add(ended);
  };

  const presses = openPresses({ bot, deliveries, handle, later, stop, log });

  function handle(message: Message): Handled {
    const isLate = door.fixedNowMs === null && message.button === null && !message.isEdit && isOld(message);
    const handled = door.handle(
      door.fixedNowMs === null ? { ...message, isLate } : { ...message, sentAtMs: door.fixedNowMs },
    );
    // What waited through an outage comes all at once, and is answered together.
    if (isLate) setTimeout(() => sender.wake(message.chatKey), gatherMs);
    else sender.wake(message.chatKey);
    if (handled.pending) later(working(message, handled.pending));
    return handled;
  }

  /** Long sums run beside the chat, which hears that they do; nobody waits behind them. */
  async function working(message: Message, pending: Promise<string | undefined>): Promise<void> {
    let sign = setTimeout(function show() {
      later(bot.api.raw.sendChatAction({ ...place(message), action: 'typing' }));
      sign = setTimeout(show, signEveryMs);
    }, firstSignAfterMs);
    const trouble = await pending.finally(() => clearTimeout(sign));
    if (trouble !== undefined) sayDirectly(message, trouble);
    sender.wake(message.chatKey);
  }

  /** Our own fault, and not one of a request: nothing could be stored, so this goes out directly. */
  function apologise(message: Message, error: unknown): void {
    log(`delivery ${message.deliveryKey} in chat ${message.chatKey} failed: ${sayError(error)}`);
    if (message.chatKey === '' || (!message.addressed && !message.text.startsWith('/'))) return;
    sayDirectly(
      message,
      storeTrouble(error) ??
        'Something broke on my side; nothing was recorded. Please send it again in a while.',
    );
  }

  function sayDirectly(message: Message, text: string): void {
    const isReply = message.button === null && /^[1-9]\d*$/.test(message.messageKey);
    const reply = { message_id: Number(message.messageKey), allow_sending_without_reply: true };
    later(
      bot.api.raw.sendMessage({
        ...place(message),
        text,
        ...(isReply ? { reply_parameters: reply } : {}),
        link_preview_options: { is_disabled: true },
      }),
    );
  }

  function moved(from: string, to: string): void {
    if (!deliveries.moveChat('telegram', from, to)) {
      log(`chat ${from} became ${to}, which has records of its own already: both stay as they are`);
    }
  }

  function take(heard: Heard): void {
    switch (heard.is) {
      case 'nothing':
        return;
      case 'message':
        deliveries.resume('telegram', heard.message.chatKey);
        if (heard.picture !== undefined && isForUs(heard.message)) later(look(heard.message, heard.picture));
        else handle(heard.message);
        return;
      case 'press':
        return presses.press(heard);
      case 'moved':
        moved(heard.from, heard.to);
        return sender.wake();
      case 'left':
        return deliveries.pause('telegram', heard.chatKey);
      case 'joined':
        deliveries.resume('telegram', heard.message.chatKey);
        if (!heard.message.isPrivate) door.arrived(heard.message);
        return sender.wake();
    }
  }

  /** Labels in a picture are read beside the chat; a picture that cannot be had is as if it were not there. */
  async function look(message: Message, fileKey: string): Promise<void> {
    let scanned: readonly string[] = [];
    try {
      const picture = await fetchPicture(bot, door, fileKey);
      if (picture) scanned = await door.codesIn(picture);
    } catch (error) {
      log(`a picture of delivery ${message.deliveryKey} could not be read: ${sayError(error)}`);
    }
    attempt({ is: 'message', message: { ...message, scanned } });
  }

  function attempt(heard: Heard): void {
    try {
      take(heard);
    } catch (error) {
      if (!('message' in heard)) throw error;
      apologise(heard.message, error);
    }
  }

  // Any word from the platform says that it is back.
  bot.api.config.use(async (previous, method, payload, signal) => {
    const response = await previous(method, payload, signal);
    if (response.ok) sender.reached();
    return response;
  });
  bot.use(({ update, me }) => attempt(hear(update, me, door.fixedNowMs ?? Date.now())));
  bot.catch(({ error, ctx }) => log(`update ${ctx.update.update_id} failed: ${sayError(error)}`));

  sender.wake();
  // The clock does not wait for the platform.
  const posting = door.posting(() => sender.wake());
  let polling: Promise<void> = Promise.resolve();
  const run = async () => {
    await askName(bot, stop, log);
    if (stop.aborted) return;
    greet(door, bot);
    for (const begun of door.takeUp()) later(begun.then(() => sender.wake()));
    later(setMenu(bot, door.menu));
    polling = bot.start({ allowed_updates: wanted });
    await polling;
  };
  let exitCode = 0;
  const ended = run().catch((error: unknown) => {
    if (stop.aborted) return;
    exitCode = 1;
    log(whyEnded(error));
  });
  const stopped = new Promise<void>((resolve) => {
    if (stop.aborted) resolve();
    stop.addEventListener('abort', () => resolve(), { once: true });
  });
  await Promise.race([stopped, ended]);

  // Stops asking, ends what is at hand, confirms it to the platform and sends what waits; 5 s in all.
  const endsAtMs = Date.now() + stopLimitMs;
  const asked = bot.isRunning() ? bot.stop() : undefined;
  const quiet = Promise.allSettled([asked, polling, posting.stop(), ...loose]);
  await Promise.race([quiet, new Promise((resolve) => setTimeout(resolve, stopLimitMs).unref())]);
  await sender.flush(Math.max(0, endsAtMs - Date.now()));
  return exitCode;
}

const place = ({ chatKey, topicKey }: Message) => ({
  chat_id: Number(chatKey),
  ...(topicKey === null ? {} : { message_thread_id: Number(topicKey) }),
});

/** A picture is looked at where it was sent to the bot, or with a request. */
const isForUs = ({ addressed, text }: Message): boolean => addressed || text.startsWith('/');

function greet({ print, named, admitCode }: TelegramDoor, { botInfo }: Bot): void {
  named(botInfo.username);
  print(
    `This is @${botInfo.username}. To admit a group, add the bot to it and write there: /admit ${admitCode}`,
  );
  print(
    botInfo.can_read_all_group_messages
      ? 'Privacy mode is off: the bot hears everything in its groups, and answers only what is meant for it.'
      : 'Privacy mode is on: in groups the bot hears requests with a slash, mentions and replies to it. That is enough.',
  );
}
