import { setTimeout as sleep } from 'node:timers/promises';
import type { Bot } from 'grammy';
import type { Message, Outgoing } from '#core/talk.ts';
import type { Handled } from '#chat/handled.ts';
import { keyboard } from './telegram-draw.ts';
import type { Heard } from './telegram-hear.ts';
import { failureOf } from './telegram-refused.ts';

const mostToastUnits = 200;
/** A press can be answered for some 15 s (reports; not published). */
const pausesMs = [300, 700, 1500, 3000, 6000] as const;

interface PressNeeds {
  readonly bot: Bot;
  readonly deliveries: {
    /** The buttons left beside one that has done its work; undefined where nothing is to be changed. */
    readonly leftBeside: (
      door: 'telegram',
      button: number,
      chatKey: string,
    ) => Outgoing['buttons'] | undefined;
  };
  readonly handle: (message: Message) => Handled;
  /** Makes a call that nothing waits for. */
  readonly later: (call: Promise<unknown>, isFine?: (error: unknown) => boolean) => void;
  readonly stop: AbortSignal;
  readonly log: (line: string) => void;
}

const isRefused = (error: unknown) => failureOf(error).is === 'refused';

/** Pressed buttons: what they ask for is done, whoever pressed hears of it, and what has done its work goes. */
export function openPresses({ bot, deliveries, handle, later, stop, log }: PressNeeds) {
  function press({ message, pressKey, carrier }: Extract<Heard, { is: 'press' }>): void {
    let handled: Handled = {};
    try {
      handled = handle(message);
    } finally {
      const text = handled.toast === undefined ? {} : { text: handled.toast.slice(0, mostToastUnits) };
      // A press from while the bot was away can no longer be answered; what it asked for is done all the same.
      later(
        again(() => bot.api.raw.answerCallbackQuery({ callback_query_id: pressKey, ...text })),
        isRefused,
      );
    }
    if (carrier === null) return;
    const left = deliveries.leftBeside('telegram', message.button!, carrier.chatKey);
    if (left === undefined) return;
    const where = { chat_id: Number(carrier.chatKey), message_id: carrier.messageId };
    const keys = left.length === 0 ? {} : { reply_markup: { inline_keyboard: keyboard(left) } };
    // Without those buttons already, or gone: just as well.
    later(bot.api.raw.editMessageReplyMarkup({ ...where, ...keys }), isRefused);
  }

  /** A press that is not answered leaves its button waiting: a call that the network lost is made again. */
  async function again<T>(call: () => Promise<T>): Promise<T> {
    for (const pauseMs of pausesMs) {
      try {
        return await call();
      } catch (error) {
        const failure = failureOf(error);
        if (failure.is !== 'wait' || stop.aborted) throw error;
        if (pauseMs === pausesMs[0]) log(`a press is answered again: ${failure.why}`);
        await sleep(failure.afterMs ?? pauseMs, undefined, { signal: stop }).catch(() => undefined);
      }
    }
    return call();
  }

  return { press };
}
