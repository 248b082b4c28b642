// Witness: the limits are those of the Bot API reference as the platform of these tests holds them. That no message
// gets an answer the platform refuses, stops the bot or makes it grow is this project's promise, no source.
// npm run bench:hostile sends 50,000; an ordinary test run sends some hundreds.
import { readFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import { chatOf, fillHouseholds } from '../../src/bench/full-house.ts';
import { chance, message } from '../fuzz.ts';
import { greeted, newFolder, startBot } from './child.ts';
import { until } from './group.ts';
import { openPlatform } from './platform.ts';

const all = Number(process.env['HOSTILE_MESSAGES'] ?? 400);
/** Recipes pile up where people record them, so that each household hears some hundreds only. */
const eachHouse = 250;
const mostOpen = 60;
const longest = 4096;

const names = [
  'Ana',
  '<b>Ana</b>',
  '*_`[x](tg://user?id=1)',
  '\u202Eevil\u2066',
  '👩‍🍳🥕'.repeat(60),
  '\u3164',
  "'; DROP TABLE pouch; --",
  '%s%n',
  '../../x',
  '\uD83D',
  'ش'.repeat(255),
];

function residentMiB(pid: number | undefined): number | undefined {
  try {
    const found = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
    return found ? Number(found[1]) / 1024 : undefined;
  } catch {
    return undefined;
  }
}

test(`${all} hostile messages: no answer refused, no crash, no growth`, async () => {
  const real = (await readCommands())
    // Papers and long sums have tests of their own; here it is the door.
    .filter(({ planned }) => planned === null)
    .flatMap(({ examples }) => examples);
  const next = chance(20270403);
  const below = (count: number) => Math.floor(next() * count);
  const houses = Math.ceil(all / eachHouse);
  const [platform, folder] = [await openPlatform(), newFolder()];
  fillHouseholds(folder.database, houses, houses * 40);
  const bot = startBot(platform, folder.database);
  try {
    await greeted(bot);
    const early: number[] = [];
    let late = 0;
    for (let i = 0; i < all; i += 1) {
      const n = Math.floor(i / eachHouse);
      const chat = { id: chatOf(n), type: 'supergroup' as const, title: names[n % names.length]! };
      if (i % eachHouse === 0) platform.chat(chat);
      const message_id = platform.nextMessageId(chat.id);
      const from = { id: 5_000_000_000 + below(4), is_bot: false, first_name: names[below(names.length)]! };
      const date = Math.floor(Date.now() / 1000) + below(3) - 1;
      const text = message(next, real).slice(0, longest);
      const body = { message_id, date, chat, from, text };
      const pressed = platform.sent.findLast(({ chatId, keys }) => chatId === chat.id && keys.length > 0);
      const dice = next();
      if (dice < 0.08 && pressed) {
        const { callback_data: data } = pressed.keys[0]![0]!;
        platform.update({
          callback_query: {
            id: `p${i}`,
            from,
            chat_instance: '1',
            data,
            message: { ...body, message_id: pressed.messageId },
          },
        });
      } else if (dice < 0.14)
        platform.update({ edited_message: { ...body, message_id: message_id - 1, edit_date: date } });
      else platform.update({ message: body });
      if (platform.unconfirmed().length >= mostOpen)
        await until(() => platform.unconfirmed().length < mostOpen / 2, 60_000);
      platform.calls.length = 0;
      if (platform.sent.length > 2000) platform.sent.splice(0, 1000);
      if (i % 500 !== 499) continue;
      const mib = residentMiB(bot.process.pid);
      if (mib === undefined) continue;
      // The first fifth fills the caches.
      if (i > all * 0.2 && i < all * 0.4) early.push(mib);
      late = mib;
      if (i % 5000 === 4999) console.log(`${i + 1} messages, ${mib.toFixed(0)} MiB`);
    }
    await until(() => platform.unconfirmed().length === 0, 60_000);
    await sleep(500);
    const answered = platform.sent.length;
    platform.chat({ id: chatOf(0), type: 'supergroup', title: 'Kitchen' });
    platform.update({
      message: {
        message_id: platform.nextMessageId(chatOf(0)),
        date: Math.floor(Date.now() / 1000),
        chat: { id: chatOf(0), type: 'supergroup', title: 'Kitchen' },
        from: { id: 5_000_000_000, is_bot: false, first_name: 'Ana' },
        text: '/help',
      },
    });
    await until(() => platform.sent.some(({ text }) => text.includes('Requests:')), 60_000);
    expect(answered).toBeGreaterThan(0);
    expect(platform.refusals.filter(({ method }) => method.startsWith('send'))).toEqual([]);
    expect(bot.said()).not.toMatch(
      /(a request|update \d+|delivery \S+ in chat \S+|to chat \S+) failed|broke|was not taken|given up/,
    );
    if (early.length > 0) expect(late).toBeLessThan(1.3 * Math.max(...early));
    bot.process.kill('SIGTERM');
    expect(await bot.exited).toBe(0);
  } finally {
    bot.process.kill('SIGKILL');
    await platform.close();
    folder.remove();
  }
}, 3_600_000);
