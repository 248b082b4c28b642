import { afterEach, describe, expect, test } from 'vitest';
import { type Child, greeted, look, newFolder, startBot } from './child.ts';
import { peopleOn, until } from './group.ts';
import { type Platform, openPlatform } from './platform.ts';

const ends: (() => unknown)[] = [];
afterEach(async () => {
  for (const end of ends.splice(0).reverse()) await end();
});

async function open() {
  const platform = await openPlatform();
  const folder = newFolder();
  ends.push(() => platform.close(), folder.remove);
  const group = platform.chat({ id: -1001234567890, type: 'supergroup', title: 'Kitchen' });
  return { platform, group, ...folder, ...peopleOn(platform) };
}

function start(platform: Pick<Platform, 'root' | 'token'>, database: string, more = {}): Child {
  const child = startBot(platform, database, more);
  ends.push(async () => {
    child.process.kill('SIGKILL');
    await child.exited;
  });
  return child;
}

describe.concurrent('the bot as a process', () => {
  test('it greets its owner, is admitted, and ends on SIGTERM with everything said and confirmed', async () => {
    const { platform, group, database, say } = await open();
    const t0 = Date.now();
    const bot = start(platform, database);
    await greeted(bot);
    console.log('greeted', Date.now() - t0);
    expect(bot.said()).toContain('@TrailTestBot');
    expect(bot.said()).toContain('/admit plum-42');
    expect(bot.said()).toContain('Privacy mode is on');
    say(group, '/admit plum-42');
    await until(() => platform.sent.length === 1);
    const { updateId } = say(group, '/house altitude 340 m');
    await until(() => platform.sent.length === 2);
    bot.process.kill('SIGTERM');
    expect(await bot.exited).toBe(0);
    expect(platform.sent[1]!.text).toContain('340 m');
    expect(platform.unconfirmed()).toEqual([]);
    const last = platform.calls.filter(({ method }) => method === 'getUpdates').at(-1)!;
    expect(last.payload.fields['offset']).toBe(updateId + 1);
    expect(look(database, "SELECT state FROM outbox WHERE state <> 'sent'")).toEqual([]);
    console.log('end', Date.now() - t0, bot.said());
  }, 20_000);
});
