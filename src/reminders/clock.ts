import { setTimeout as rest } from 'node:timers/promises';
import type { Answerer } from '#chat/answerer.ts';
import { remind } from './remind.ts';
import { whereItBroke } from '#core/fault.ts';
import type { Message } from '#core/talk.ts';

export interface Reminding {
  /** Looks at every household whose time has come. Safe to call at any time; one look at a time. */
  readonly look: () => Promise<void>;
  /** Goes on looking by itself until stopped. */
  readonly start: () => void;
  /** Ends the look at hand and starts no other. */
  readonly stop: () => Promise<void>;
}

interface RemindingNeeds {
  readonly house: () => Answerer;
  readonly door: Message['door'];
  readonly now: () => number;
  /** Something waits to be sent. */
  readonly wake: () => void;
}

/** The longest rest: the machine's clock may be set, and it may sleep. */
const longestRestMs = 60_000;
const shortestRestMs = 1000;
const hourMs = 3_600_000;

/** Posts reminders by the clock alone, whichever door is open. What is due is in the database, not here. */
export function openReminding({ house, door, now, wake }: RemindingNeeds): Reminding {
  let alarm: NodeJS.Timeout | undefined;
  let isStopped = false;
  let running: Promise<void> | undefined;

  async function lookAtAll(): Promise<void> {
    const { stores, log } = house();
    for (let nowMs = now(); !isStopped; nowMs = now()) {
      const household = stores.reminders.due(door, nowMs);
      if (household === undefined) return;
      const fromMs = performance.now();
      try {
        if (await remind(house(), household, door, nowMs)) wake();
      } catch (error) {
        // A fault in one household's records must neither stop the others nor be tried again and again.
        log(`reminders of household ${household} failed: ${whereItBroke(error)}`);
        stores.reminders.of(household).lookAgainAt(nowMs + hourMs);
      }
      // Messages come first: a fifth of the time at most goes to looking.
      await rest(4 * (performance.now() - fromMs));
    }
  }

  const look = (): Promise<void> =>
    (running ??= lookAtAll().finally(() => {
      running = undefined;
    }));

  async function round(): Promise<void> {
    let restMs = longestRestMs;
    try {
      await look();
      const next = house().stores.reminders.next(door);
      if (next !== undefined) restMs = Math.min(Math.max(next - now(), shortestRestMs), longestRestMs);
    } catch (error) {
      house().log(`reminders failed: ${whereItBroke(error)}`);
    }
    if (!isStopped) alarm = setTimeout(() => void round(), restMs);
  }

  return {
    look,
    start: () => void round(),
    async stop() {
      isStopped = true;
      clearTimeout(alarm);
      await running?.catch(() => undefined);
    },
  };
}
