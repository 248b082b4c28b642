// Witness: the codes 401 and 409 and the confirmation by offset as in the Bot API reference (getUpdates); what a
// killed process may lose (nothing) and repeat (an answer, never a change) is this project's promise, no source.
import { afterAll, describe, expect, test } from 'vitest';
import { type Child, greeted, look, newFolder, startBot } from './child.ts';
import { peopleOn, until } from './group.ts';
import { type Fault, type Platform, openPlatform } from './platform.ts';

const ends: (() => unknown)[] = [];
afterAll(async () => {
  for (const end of ends.toReversed()) await end();
});

async function open() {
  const platform = await openPlatform();
  const folder = newFolder();
  ends.push(folder.remove, () => platform.close());
  const group = platform.chat({ id: -1001234567890, type: 'supergroup', title: 'Kitchen' });
  return { platform, group, ...folder, ...peopleOn(platform) };
}

function start(platform: Pick<Platform, 'root' | 'token'>, database: string): Child {
  const child = startBot(platform, database);
  ends.push(async () => {
    child.process.kill('SIGKILL');
    await child.exited;
  });
  return child;
}

// Far above what it takes: the machine may be busy with much else.
const limitMs = 120_000;
/** An answer that the platform holds back for longer than a test may take. */
const neverMs = 2 * limitMs;

describe.concurrent('the bot as a process', () => {
  test(
    'greets its owner, lets no second one in, and ends on SIGTERM with all said and confirmed',
    async () => {
      const { platform, group, database, say } = await open();
      const bot = start(platform, database);
      await greeted(bot);
      expect(bot.said()).toContain('@TrailTestBot');
      expect(bot.said()).toContain('/admit plum-42');
      expect(bot.said()).toContain('Privacy mode is on');
      say(group, '/admit plum-42');
      await until(() => platform.sent.length === 1);

      const second = start(platform, database);
      expect(await second.exited).toBe(1);
      expect(second.said()).toContain('Another bot is running');

      const { updateId } = say(group, '/house altitude 340 m');
      await until(() => platform.sent.length === 2);
      bot.process.kill('SIGTERM');
      expect(await bot.exited).toBe(0);
      expect(platform.sent[1]!.text).toContain('340 m');
      expect(platform.unconfirmed()).toEqual([]);
      const last = platform.calls.filter(({ method }) => method === 'getUpdates').at(-1)!;
      // The last call asks for nothing new; it only tells what was handled.
      expect(last.payload.fields).toEqual({ offset: updateId + 1, limit: 1 });
      expect(look(database, "SELECT 1 FROM outbox WHERE state <> 'sent'")).toEqual([]);
    },
    limitMs,
  );

  test(
    'killed at any step: every change takes effect once and is answered',
    async () => {
      const { platform, group, database, say } = await open();
      let bot = start(platform, database);
      await greeted(bot);
      say(group, '/admit plum-42');
      await until(() => platform.sent.length === 1);
      const texts = () => platform.sent.map(({ text }) => text);
      const times = (part: string) => texts().filter((text) => text.includes(part)).length;
      const metres = [101, 202, 303, 404];
      let killed = false;
      /** Kills the bot at the first call that fits, and says what becomes of that call. */
      const killAt = (fits: (method: string, offset: number) => boolean, then: Fault | undefined) => {
        killed = false;
        platform.fault = (method, { fields }) => {
          if (killed || !fits(method, Number(fields['offset']))) return undefined;
          killed = true;
          bot.process.kill('SIGKILL');
          return then;
        };
      };
      const next = async (n: number) => {
        await until(() => killed, limitMs);
        expect(await bot.exited).toBe('SIGKILL');
        platform.fault = () => undefined;
        bot = start(platform, database);
        // All that was left is said and confirmed before the next step.
        await until(() => times(`${metres[n]} m`) > 0, limitMs);
        await until(
          () => bot.said().includes('Privacy mode is') && platform.unconfirmed().length === 0,
          limitMs,
        );
        await until(() => look(database, "SELECT 1 FROM outbox WHERE state <> 'sent'").length === 0, limitMs);
      };

      // The message was handed out; whether it was handled is open.
      const first = say(group, `/house altitude ${metres[0]} m`);
      await until(() => platform.calls.some(({ method }) => method === 'getUpdates'));
      killed = true;
      bot.process.kill('SIGKILL');
      await next(0);
      expect(first.updateId).toBeGreaterThan(0);

      // Recorded, and the answer is on its way but was not taken.
      killAt((method) => method === 'sendMessage', { cut: 'before' });
      say(group, `/house altitude ${metres[1]} m`);
      await next(1);

      // The answer was taken, and the bot does not know.
      killAt((method) => method === 'sendMessage', { cut: 'after' });
      say(group, `/house altitude ${metres[2]} m`);
      await until(() => killed);
      expect(await bot.exited).toBe('SIGKILL');
      expect(times(`${metres[2]} m`)).toBe(1);
      await next(2);

      // Answered, but not confirmed: the message comes again.
      const { updateId } = say(group, `/house altitude ${metres[3]} m`);
      killAt((method, offset) => method === 'getUpdates' && offset > updateId, { cut: 'before' });
      await until(() => killed, limitMs);
      expect(platform.unconfirmed()).toEqual([updateId]);
      await next(3);

      // Where the bot died between the platform's taking an answer and hearing of it, the answer comes twice.
      const [handedOut, untaken, unheard, unconfirmed] = metres.map((m) => times(`${m} m`));
      expect([untaken, unheard]).toEqual([1, 2]);
      for (const count of [handedOut, unconfirmed]) expect([1, 2]).toContain(count);
      const did = look<{ did: string }>(database, 'SELECT did FROM entry ORDER BY id').map(
        (entry) => entry.did,
      );
      expect(did).toHaveLength(metres.length);
      metres.forEach((m, i) => expect(did[i]).toContain(`${m} m`));
      expect(look(database, "SELECT 1 FROM outbox WHERE state <> 'sent'")).toEqual([]);
    },
    limitMs,
  );

  test(
    'fails in every way without a word of the token or of a message, and ends where another one polls',
    async () => {
      const { platform, group, database, say, press } = await open();
      const bot = start(platform, database);
      await greeted(bot);
      say(group, '/admit plum-42');
      await until(() => platform.sent.length === 1);
      const faults: Fault[] = [
        { cut: 'before' },
        { html: 502 },
        { answer: { status: 500, description: `Internal: POST /bot${platform.token}/sendMessage` } },
        { answer: { status: 429, description: 'Too Many Requests', parameters: { retry_after: 0 } } },
        { answer: { status: 400, description: 'Bad Request: odd' } },
        { answer: { status: 403, description: 'Forbidden: bot was kicked' } },
      ];
      const all = faults.length;
      platform.fault = (method) => {
        if (method === 'sendMessage') return faults.shift();
        return method === 'answerCallbackQuery' || method === 'editMessageReplyMarkup'
          ? { cut: 'before' }
          : undefined;
      };
      say(group, '/house altitude 77 secretword');
      press(group, 12, '1');
      await until(() => faults.length === 0, limitMs);
      await until(() => bot.said().includes('cannot be reached'));
      expect(all).toBeGreaterThan(faults.length);

      const poll = await fetch(`${platform.root}/bot${platform.token}/getUpdates`);
      expect(poll.status).toBe(200);
      expect(await bot.exited).toBe(1);
      expect(bot.said()).toContain('Another program is using this bot');
      expect(bot.said()).toContain('answerCallbackQuery');
      const [, secret] = platform.token.split(':');
      expect(bot.said()).not.toContain(secret);
      expect(bot.said()).not.toContain('secretword');
    },
    limitMs,
  );

  test(
    'starts before the platform is there, and ends by itself when it is gone',
    async () => {
      const { platform, group, database, say } = await open();
      platform.fault = (method) => (method === 'getMe' ? { cut: 'before' } : undefined);
      const bot = start(platform, database);
      await until(() => bot.said().includes('cannot be reached yet'), limitMs);
      platform.fault = () => undefined;
      await greeted(bot);
      say(group, '/admit plum-42');
      await until(() => platform.sent.length === 1);
      // From the next message on nothing is answered any more.
      const isAsked = () => platform.calls.filter(({ method }) => method === 'sendMessage').length === 2;
      platform.fault = (method) => (method === 'getUpdates' && !isAsked() ? undefined : { delayMs: neverMs });
      say(group, '/house altitude 340 m');
      await until(isAsked);
      bot.process.kill('SIGTERM');
      expect(await bot.exited).toBe(0);
      expect(bot.said()).not.toContain(platform.token);
    },
    limitMs,
  );
});
