import { setTimeout as sleep } from 'node:timers/promises';
import { type Child, look, newFolder, startBot } from '../../test/telegram/child.ts';
import { peopleOn, until } from '../../test/telegram/group.ts';
import { type Chat, type Fault, openPlatform } from '../../test/telegram/platform.ts';
import { chance, told } from './chance.ts';

// Kills the bot again and again while people record, with a platform that repeats, reorders between chats, refuses,
// slows and cuts. At the end every record that was acknowledged must be there, none twice, and every answer delivered,
// in order for each chat.
//
// npm run bench:faults -- --kills 200 --seed 1 --seconds 900

const kills = told('kills', 200);
const seed = told('seed', 1);
const limitMs = 1000 * told('seconds', 900);
const groups = 5;
const mostOpen = 60;

const random = chance(seed);
const between = (low: number, high: number) => low + random() * (high - low);
const letters = 'abcdefghijklmnopqrstuvwxyz';
const startedMs = Date.now();

interface Asked {
  readonly name: string;
  /** Changed later by whoever wrote it; what is recorded must stay until somebody taps. */
  isEdited: boolean;
  readonly messageId: number;
  readonly chat: Chat;
  readonly body: Record<string, unknown>;
  readonly id: number;
}

const platform = await openPlatform();
const folder = newFolder();
const chats = Array.from({ length: groups }, (_, i) =>
  platform.chat({ id: -1_001_000_000_000 - i, type: 'supergroup', title: `Kitchen ${i}` }),
);
const people = peopleOn(platform);
const asked: Asked[] = [];
const counts = {
  updates: 0,
  repeated: 0,
  refused429: 0,
  refused5xx: 0,
  cutBefore: 0,
  cutAfter: 0,
  slow: 0,
  edits: 0,
  pollsBroken: 0,
};
const from = { id: 5_000_000_001, is_bot: false, first_name: 'Ana' };

let areFaultsOn = false;
platform.fault = (method) => {
  if (!areFaultsOn) return undefined;
  const fault = someFault(method);
  return fault;
};

function someFault(method: string): Fault | undefined {
  const dice = random();
  if (method === 'getUpdates') {
    if (dice > 0.04) return undefined;
    counts.pollsBroken += 1;
    return dice < 0.01
      ? { cut: 'before' }
      : dice < 0.02
        ? { cut: 'after' }
        : dice < 0.03
          ? { html: 502 }
          : { delayMs: 200 };
  }
  if (method !== 'sendMessage' && method !== 'editMessageText') return undefined;
  if (dice < 0.01) {
    counts.refused429 += 1;
    return {
      answer: {
        status: 429,
        description: 'Too Many Requests: retry after 1',
        parameters: { retry_after: 1 },
      },
    };
  }
  if (dice < 0.03) {
    counts.refused5xx += 1;
    return dice < 0.02 ? { html: 502 } : { answer: { status: 500, description: 'Internal Server Error' } };
  }
  if (dice < 0.045) {
    counts.cutBefore += 1;
    return { cut: 'before' };
  }
  if (dice < 0.06) {
    counts.cutAfter += 1;
    return { cut: 'after' };
  }
  if (dice < 0.12) {
    counts.slow += 1;
    return { delayMs: Math.round(between(20, 300)) };
  }
  return undefined;
}

/** A name of its own for each record, as people could type it. */
function newName(): string {
  let n = asked.length;
  let name = '';
  for (let i = 0; i < 5; i += 1) {
    name += letters[n % 26]!;
    n = Math.floor(n / 26);
  }
  return `Pot ${name}${letters[Math.floor(random() * 26)]!}`;
}

function ask(): void {
  const chat = chats[Math.floor(random() * groups)]!;
  const name = newName();
  const messageId = platform.nextMessageId(chat.id);
  const body = {
    message: {
      message_id: messageId,
      date: Math.floor(Date.now() / 1000),
      chat: { id: chat.id, type: chat.type, title: chat.title },
      from,
      text: `/recipe ${name}, 2 servings: 100 g sugar`,
    },
  };
  const id = platform.update(body);
  asked.push({ name, chat, body, id, messageId, isEdited: false });
  counts.updates += 1;
  edit(asked[Math.floor(random() * asked.length)]!);
  // The platform may hand an update out again behind later ones, when a confirmation was lost; never before earlier ones.
  const oldest = platform.unconfirmed()[0] ?? id;
  const old = asked[Math.floor(random() * asked.length)]!;
  if (random() < 0.15 && old.id < oldest) {
    platform.again(old.body, old.id);
    counts.repeated += 1;
  }
}

/** Somebody corrects what they wrote: a proposal takes the answer's place, and nothing is recorded by it. */
function edit(one: Asked): void {
  const oldest = platform.unconfirmed()[0] ?? 0;
  if (random() > 0.1 || one.isEdited || one.id >= oldest) return;
  one.isEdited = true;
  counts.edits += 1;
  people.edit(one.chat, one.messageId, `/recipe ${one.name}, 3 servings: 100 g sugar`, {
    date: Math.floor(Date.now() / 1000),
    edit_date: Math.floor(Date.now() / 1000),
    from,
  });
}

let isFeeding = true;
async function feed(): Promise<void> {
  while (isFeeding) {
    if (platform.unconfirmed().length < mostOpen) ask();
    await sleep(between(1, 20));
  }
}

let bot: Child = startBot(platform, folder.database);
await until(() => bot.said().includes('Privacy mode is'), 30_000);
for (const [i, chat] of chats.entries()) {
  people.say(chat, '/admit plum-42');
  await until(() => platform.sent.length === i + 1);
}
areFaultsOn = true;
const feeding = feed();
let killed = 0;
while (killed < kills && Date.now() - startedMs < limitMs) {
  const polls = platform.calls.length;
  // Most die while they work, some while they start.
  if (random() < 0.9)
    await until(() => platform.calls.slice(polls).some(({ method }) => method === 'getUpdates'), 30_000);
  await sleep(between(0, 500));
  bot.process.kill('SIGKILL');
  await bot.exited;
  killed += 1;
  platform.calls.length = 0;
  bot = startBot(platform, folder.database);
}
isFeeding = false;
await feeding;
areFaultsOn = false;
const isThrough = () =>
  platform.unconfirmed().length === 0 &&
  look(folder.database, "SELECT 1 FROM outbox WHERE state = 'waiting'").length === 0;
for (let i = 0; i < 600 && !isThrough(); i += 1) await sleep(200);
bot.process.kill('SIGTERM');
await bot.exited;

const recorded = new Map(
  look<{ name: string; count: number }>(
    folder.database,
    'SELECT name, count(*) AS count FROM recipe GROUP BY name',
  ).map(({ name, count }) => [name, count]),
);
const entries = look<{ did: string; count: number }>(
  folder.database,
  "SELECT did, count(*) AS count FROM entry WHERE did <> '' GROUP BY did HAVING count(*) > 1",
);
/** What an edited message's answer shows of the record: it must name what is there. */
const edited = asked.filter(({ isEdited }) => isEdited);
const proposed = edited.filter(({ name, chat }) =>
  platform.sent.some(
    ({ chatId, text }) => chatId === chat.id && text.startsWith(`Recorded is: recorded the recipe ${name}.`),
  ),
).length;
const dropped = look(folder.database, "SELECT 1 FROM outbox WHERE state = 'dropped'").length;
let [acknowledged, lost, doubled, silent, twice, disordered] = [0, 0, 0, 0, 0, 0];
for (const chat of chats) {
  const order = new Map(asked.filter((one) => one.chat === chat).map(({ name }, i) => [name, i]));
  const arrived = platform.sent
    .filter(({ chatId }) => chatId === chat.id)
    .flatMap(({ text }) => /^Recorded(?: is: recorded the recipe|:) (Pot [a-z]+)[.,]/.exec(text)?.[1] ?? []);
  const times = new Map<string, number>();
  let last = -1;
  for (const name of arrived) {
    const at = order.get(name) ?? -1;
    const before = times.get(name) ?? 0;
    times.set(name, before + 1);
    // One that comes twice comes right behind itself.
    if (before > 0 ? at !== last : at < last) disordered += 1;
    last = at;
  }
  for (const name of order.keys()) {
    const [answers, records] = [times.get(name) ?? 0, recorded.get(name) ?? 0];
    if (answers === 0) silent += 1;
    if (answers > 1) twice += answers - 1;
    if (answers > 0) acknowledged += 1;
    if (answers > 0 && records === 0) lost += 1;
    if (records > 1) doubled += 1;
  }
}
await platform.close();
folder.remove();

console.log(`seed ${seed}: ${killed} kills in ${Math.round((Date.now() - startedMs) / 1000)} s`);
console.log(
  `messages ${counts.updates}, handed out again ${counts.repeated}; answers refused for a while ${counts.refused429} (429) and ${counts.refused5xx} (5xx), connections cut before ${counts.cutBefore} and after ${counts.cutAfter}, slow ${counts.slow}, edits of messages ${counts.edits}, polls broken ${counts.pollsBroken}`,
);
console.log(
  `acknowledged ${acknowledged} of ${asked.length}; acknowledged and not recorded ${lost}; recorded twice ${doubled + entries.length}; never answered ${silent}; out of order ${disordered}; given up ${dropped}`,
);
console.log(
  `edited messages whose answer tells what is recorded and offers the change: ${proposed} of ${edited.length}`,
);
console.log(
  `answers that came twice ${twice} (the process or the connection died between their arrival and our knowing it)`,
);
if (
  lost + doubled + entries.length + silent + disordered + dropped > 0 ||
  killed < kills ||
  proposed < edited.length
)
  process.exitCode = 1;
