import { randomInt } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DateTime } from 'luxon';
import { arrival } from '#chat/admission.ts';
import { answer, resume } from '#chat/answer.ts';
import type { Answerer } from '#chat/answerer.ts';
import { listsOf } from '#chat/live.ts';
import { menu } from '#chat/help.ts';
import type { Status } from '#house/status.ts';
import { type Config, readConfig } from '#config.ts';
import { openTerminal } from '#doors/terminal.ts';
import { openDaily } from './keep/daily.ts';
import { openReminding } from '#reminders/clock.ts';
import { backupsOf } from '#store/backups.ts';
import { deliveryStore } from '#store/deliveries.ts';
import { openFoods } from '#store/foods.ts';
import { inTurn, lockHousehold, lockInUse } from '#store/lock.ts';
import { openDatabase } from '#store/open.ts';
import type { Db } from '#store/db.ts';
import { assemble } from './assemble.ts';

const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {
  version: string;
};
const startedAtMs = Date.now();
let lastFault: Status['lastFault'] = null;

function log(line: string): void {
  lastFault = { atMs: Date.now(), line: line.split('\n')[0]!.slice(0, 200) };
  process.stderr.write(`${line}\n`);
}

async function start(): Promise<void> {
  // Whatever is written is for its owner alone.
  process.umask(0o077);
  const config = readConfig(process.env);
  const inMemory = config.databasePath === ':memory:';
  const folder = inMemory ? process.cwd() : dirname(config.databasePath);
  const unlocks = [lockInUse(config.databasePath)];
  if (config.telegramToken !== null) unlocks.push(lockHousehold(config.databasePath));
  const db = openDatabase(config.databasePath);
  const daily = inMemory ? undefined : openDaily(db, config.databasePath, log);
  const foodTable = inMemory ? ':memory:' : join(folder, 'foods.db');
  // The first start reads the table in; two of them must not do so at once.
  const foods = inTurn(foodTable, () => openFoods(foodTable));
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const { house, close: closeHouse } = await assemble({
    db,
    foods,
    zone,
    admitCode: config.telegramToken === null ? null : (config.admitCode ?? newCode()),
    status: () => ({
      version,
      startedAtMs,
      lastFault,
      lastBackupAtMs: inMemory ? null : (backupsOf(config.databasePath)[0]?.atMs ?? null),
      ...house.stores.health(),
    }),
    log,
  });
  const close = async () => {
    await daily?.stop();
    await closeHouse();
    for (const unlock of unlocks) unlock();
  };
  daily?.start();
  if (config.telegramToken === null) {
    let fixedMs = config.fixedNowMs;
    const now = () => fixedMs ?? Date.now();
    // The household of this terminal may have told another zone than the machine's.
    const zoneHere = () => {
      const household = house.stores.households.of('terminal', 'terminal');
      return household === undefined ? zone : house.stores.of(household).settings.all().zone;
    };
    const reminding = openReminding({ house: () => house, door: 'terminal', now, wake: () => undefined });
    await openTerminal({
      handle: (message) => answer(house, message),
      waiting: () => house.stores.messages.waiting('terminal'),
      sent: house.stores.messages.sent,
      codesIn: (picture) => house.workers.drawing.codes(picture),
      due: reminding.look,
      clock: {
        now,
        set: fixedMs === null ? null : (iso) => void (fixedMs = clockOf(iso, zoneHere())),
      },
      folder,
      input: process.stdin,
      output: process.stdout,
      echo: false,
      verbose: process.argv.includes('-v'),
      welcome: `This household's records are in ${config.databasePath}. "Name: text" speaks as that person; /help lists the requests.\nA recipe goes on over lines that start with two spaces; an empty line sends it. Ctrl+D ends. Reasons: "why?" after an answer, or start with -- -v.`,
    });
    await close();
    return;
  }
  const code = await startTelegram(house, db, config);
  await close();
  // Open connections and threads would hold the process for a while.
  process.exit(code);
}

/** A clock line such as '2027-04-02 20:00', read where the household lives. */
const clockOf = (typed: string, zone: string): number =>
  DateTime.fromISO(typed.replace(' ', 'T'), { zone }).toMillis();

async function startTelegram(house: Answerer, db: Db, config: Config): Promise<number> {
  // The terminal needs nothing of Telegram, so it is read only here.
  const { openTelegram } = await import('#doors/telegram.ts');
  const { sayError } = await import('#doors/telegram-refused.ts');
  // Node itself would print the error whole, and errors of calls hold the token.
  process.on('uncaughtException', (error) => {
    log(`The program broke: ${sayError(error)}`);
    process.exit(1);
  });
  const stopping = new AbortController();
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => stopping.abort());
  const deliveries = deliveryStore(db);
  deliveries.forget('telegram');
  let named: Answerer = house;
  const now = () => config.fixedNowMs ?? Date.now();
  return openTelegram({
    token: config.telegramToken!,
    apiRoot: config.telegramApiRoot,
    handle: (message) => answer(named, message),
    codesIn: (picture) => house.workers.drawing.codes(picture),
    takeUp: () => resume(named, 'telegram'),
    arrived: (message) => arrival(house.stores, message),
    deliveries,
    lists: listsOf(() => named, 'telegram', now),
    posting: (wake) => {
      const reminding = openReminding({ house: () => named, door: 'telegram', now, wake });
      reminding.start();
      return reminding;
    },
    named: (username) => void (named = { ...house, chatLink: `https://t.me/${username}?start=` }),
    menu: menu(house.commands),
    admitCode: house.admitCode!,
    fixedNowMs: config.fixedNowMs,
    print: (line) => void process.stdout.write(`${line}\n`),
    log,
    stop: stopping.signal,
  });
}

/** Six characters that cannot be mistaken for one another when read aloud. */
function newCode(): string {
  const letters = 'abcdefghjkmnpqrstuvwxyz23456789';
  return Array.from({ length: 6 }, () => letters[randomInt(letters.length)]).join('');
}

start().catch((error: unknown) => {
  log(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
});
