import { randomInt } from 'node:crypto';
import { dirname, join } from 'node:path';
import { answer, type Answerer } from '#chat/answer.ts';
import { readCommands } from '#chat/registry.ts';
import { readConfig } from '#config.ts';
import { defaultSettings } from '#core/settings.ts';
import { openTerminal } from '#doors/terminal.ts';
import { openSolver } from '#solver.ts';
import { openFoods } from '#store/foods.ts';
import { openStores } from '#store/house.ts';
import { openDatabase } from '#store/open.ts';

const log = (line: string) => void process.stderr.write(`${line}\n`);

async function start(): Promise<void> {
  const config = readConfig(process.env);
  const inMemory = config.databasePath === ':memory:';
  const folder = inMemory ? process.cwd() : dirname(config.databasePath);
  const db = openDatabase(config.databasePath);
  const foods = openFoods(inMemory ? ':memory:' : join(folder, 'foods.db'));
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const house: Answerer = {
    stores: openStores(db, { ...defaultSettings, zone }),
    foods,
    commands: await readCommands(),
    workers: { picks: openSolver() },
    admitCode: config.telegramToken === null ? null : (config.admitCode ?? newCode()),
    chatLink: null,
    log,
  };
  const close = () => {
    foods.close();
    db.close();
  };
  if (config.telegramToken === null) {
    let fixedMs = config.fixedNowMs;
    await openTerminal({
      handle: (message) => answer(house, message),
      waiting: () => house.stores.messages.waiting('terminal'),
      sent: house.stores.messages.sent,
      clock: {
        now: () => fixedMs ?? Date.now(),
        set: fixedMs === null ? null : (iso) => void (fixedMs = Date.parse(iso.replace(' ', 'T'))),
      },
      folder,
      input: process.stdin,
      output: process.stdout,
      echo: false,
      welcome: `This household's records are in ${config.databasePath}. "Name: text" speaks as that person; /help lists the requests.\nA recipe goes on over lines that start with two spaces; an empty line sends it. Ctrl+D ends.`,
    });
    close();
  }
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
