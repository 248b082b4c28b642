import { setTimeout as sleep } from 'node:timers/promises';
import { Bot, GrammyError, type Transformer } from 'grammy';
import { failureOf, sayError } from './telegram-refused.ts';

export interface MenuEntry {
  readonly command: string;
  readonly description: string;
}

type Signal = Parameters<Parameters<Transformer>[0]>[2];

const longestMs = 120_000;
const pollMs = 45_000;
const callMs = 30_000;

/** No call hangs for ever: a poll is held for 30 s by the platform, a file may take its time. */
const limited: Transformer = async (previous, method, payload, signal) => {
  const limitMs =
    method === 'getUpdates' ? pollMs : /^send(Photo|Document)$/.test(method) ? longestMs : callMs;
  // By hand: signals made of other signals are collected too early by the runtime.
  const ending = new AbortController();
  const end = () => ending.abort();
  const timer = setTimeout(end, limitMs);
  if (signal?.aborted) end();
  signal?.addEventListener('abort', end);
  try {
    return await previous(method, payload, ending.signal as unknown as Signal);
  } finally {
    clearTimeout(timer);
    signal?.removeEventListener('abort', end);
  }
};

const againAfterMs = 1000;

/**
 * Asks for messages until there is an answer, so that the platform's return is noticed within a second; says once
 * when that begins to fail, and once when it works again.
 */
function watched(log: (line: string) => void): Transformer {
  let isAway = false;
  return async (previous, method, payload, signal) => {
    if (method !== 'getUpdates') return previous(method, payload, signal);
    for (;;) {
      let why: string;
      try {
        const response = await previous(method, payload, signal);
        if (response.ok && isAway) log('The platform is reached again.');
        if (response.ok) isAway = false;
        if (response.ok || response.error_code < 500) return response;
        why = `${method}: ${response.error_code}`;
      } catch (error) {
        // A poll that we broke off ourselves says nothing of the platform.
        if (signal?.aborted) throw error;
        why = sayError(error);
      }
      if (!isAway) log(`The platform cannot be reached (${why}); trying on.`);
      isAway = true;
      await sleep(againAfterMs, undefined, { signal: signal as unknown as AbortSignal });
    }
  };
}

/** @param apiRoot another address than the platform's own; null for that */
export function connect(token: string, apiRoot: string | null, log: (line: string) => void): Bot {
  const bot = new Bot(token, {
    client: {
      ...(apiRoot === null ? {} : { apiRoot: apiRoot.replace(/\/+$/, '') }),
      timeoutSeconds: longestMs / 1000,
      sensitiveLogs: false,
    },
  });
  bot.api.config.use(limited, watched(log));
  return bot;
}

/**
 * Asks the platform who this bot is, for as long as it takes to get an answer.
 * @throws GrammyError when the platform refuses the token
 */
export async function askName(bot: Bot, stop: AbortSignal, log: (line: string) => void): Promise<void> {
  for (let pauseMs = 500; !stop.aborted; pauseMs = Math.min(2 * pauseMs, 30_000)) {
    try {
      bot.botInfo = await bot.api.getMe(stop as unknown as NonNullable<Signal>);
      return;
    } catch (error) {
      const failure = failureOf(error);
      if (isFinal(error) || failure.is !== 'wait') throw error;
      if (stop.aborted) return;
      const waitMs = failure.afterMs ?? pauseMs;
      log(`The platform cannot be reached yet (${failure.why}); trying again in ${waitMs / 1000} s.`);
      await sleep(waitMs, undefined, { signal: stop }).catch(() => undefined);
    }
  }
}

const isFinal = (error: unknown) =>
  error instanceof GrammyError && [401, 404, 409].includes(error.error_code);

/** What the platform shows when somebody types a slash, for every kind of chat. */
export async function setMenu({ api }: Bot, menu: readonly MenuEntry[]): Promise<void> {
  const taken = menu.filter(
    ({ command, description }) => /^[a-z0-9_]{1,32}$/.test(command) && /^.{1,256}$/su.test(description),
  );
  for (const type of ['default', 'all_group_chats', 'all_private_chats'] as const) {
    await api.setMyCommands(taken.slice(0, 100), { scope: { type } });
  }
}

/** What whoever started the bot should do now. */
export function whyEnded(error: unknown): string {
  const code = error instanceof GrammyError ? error.error_code : 0;
  if (code === 401 || code === 404) {
    return 'The platform does not know this token. Get the right one from @BotFather and set TELEGRAM_BOT_TOKEN to it.';
  }
  if (code === 409) {
    return 'Another program is using this bot. Stop it, or get a new token from @BotFather for this one, and start again.';
  }
  return `The bot had to stop: ${sayError(error)}`;
}
