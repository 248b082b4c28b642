import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { chance, told } from './chance.ts';
import { chatOf, fillHouseholds, pouchesPerBatch } from './full-house.ts';
import { openLoopback } from './loopback.ts';

// Many households on one bot, through the Telegram door on loopback: how many messages it answers a second when they
// pile up, and how long one waits at a steady rate well above the platform's cap. Ratios to a bare bot of the same
// library that writes one row for each update and answers it, in the same run.
//
// npm run bench:load -- --households 10000 --pouches 2000000 --messages 5000 --rate 60 --seconds 20 --settle 0

const households = told('households', 10_000);
const pouches = told('pouches', 2_000_000);
const messages = told('messages', 5000);
const perSecond = told('rate', 60);
const steadySeconds = told('seconds', 20);
/** Behind a start the bot makes the copy of the day and looks once at every household for reminders. */
const settleSeconds = told('settle', 0);
const platformCap = 30;

const folder = mkdtempSync(join(tmpdir(), 'bench-'));

interface Figures {
  readonly perSecond: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
  readonly residentMiB: number;
  /** Processor time for one answer while they pile up: holds on a machine that others use, too. */
  readonly cpuMs: number;
}

/** What people ask, as a household in season might: most look something up, some record. */
function asker(count: number, batches: number, seed: number) {
  const random = chance(seed);
  const whole = (below: number) => Math.floor(random() * below);
  const used = new Map<number, number>();
  const code = () => `B${1 + whole(batches)}-${1 + whole(pouchesPerBatch)}`;
  return () => {
    const n = whole(count);
    const kind = random();
    // Each pouch is eaten once: the pouches of a household in turn.
    const next = (used.get(n) ?? 0) + 1;
    const eat = `/use B${1 + (Math.floor((next - 1) / pouchesPerBatch) % batches)}-${1 + ((next - 1) % pouchesPerBatch)}`;
    if (kind >= 0.7 && kind < 0.85) used.set(n, next);
    const text =
      kind < 0.3
        ? `/water ${code()}`
        : kind < 0.5
          ? '/stock'
          : kind < 0.7
            ? `/pouch ${code()}`
            : kind < 0.85
              ? eat
              : kind < 0.95
                ? `/house altitude ${whole(3000)} m`
                : '/log';
    return { chat: chatOf(n), person: 5_000_000_000 + n, text };
  };
}

function residentMiB({ pid }: ChildProcess): number {
  try {
    const found = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'));
    return Number(found?.[1] ?? Number.NaN) / 1024;
  } catch {
    return Number.NaN;
  }
}

/** Processor time of a process so far, ms; in the system's hundredths of a second. */
function cpuMsOf({ pid }: ChildProcess): number {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8')
      .replace(/^.*\) /, '')
      .split(' ');
    return 10 * (Number(fields[11]) + Number(fields[12]));
  } catch {
    return Number.NaN;
  }
}

async function measure(script: string, database: string, ask: ReturnType<typeof asker>): Promise<Figures> {
  const platform = await openLoopback();
  const bot = spawn(process.execPath, ['--import', 'tsx', join(import.meta.dirname, script)], {
    env: {
      PATH: process.env['PATH'] ?? '',
      HOUSEHOLD_DB: database,
      TELEGRAM_BOT_TOKEN: '4711:bench',
      TELEGRAM_API_ROOT: platform.root,
      TZ: 'UTC',
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  let faults = '';
  bot.stderr.on('data', (chunk: Buffer) => (faults += chunk.toString()));
  bot.stdout.on('data', (chunk: Buffer) => (said += chunk.toString()));
  while (!/ready|Privacy mode/.test(said)) await sleep(20);
  const answered = async (count: number) => {
    while (platform.answered() < count) await sleep(5);
  };
  // Warmed up: both run compiled code and have their pages at hand.
  platform.say(Array.from({ length: 500 }, ask));
  await answered(500);
  await sleep(1000 * settleSeconds);
  platform.times();

  const fromMs = performance.now();
  const cpuFromMs = cpuMsOf(bot);
  platform.say(Array.from({ length: messages }, ask));
  await answered(500 + messages);
  const throughput = (1000 * messages) / (performance.now() - fromMs);
  const cpuMs = (cpuMsOf(bot) - cpuFromMs) / messages;
  platform.times();
  const resident = residentMiB(bot);

  const steady = perSecond * steadySeconds;
  const startMs = performance.now();
  for (let i = 0; i < steady; i += 1) {
    const dueMs = startMs + (1000 * i) / perSecond;
    if (dueMs > performance.now()) await sleep(dueMs - performance.now());
    platform.say([ask()]);
  }
  await answered(500 + messages + steady);
  const times = platform.times().sort((a, b) => a - b);
  const exited = new Promise((resolve) => bot.once('close', resolve));
  bot.kill('SIGTERM');
  await exited;
  await platform.close();
  // A bench of answers that are faults would tell nothing.
  if (faults !== '') throw new Error(faults.slice(0, 2000));
  return {
    perSecond: throughput,
    p50Ms: times[Math.floor(times.length / 2)]!,
    p99Ms: times[Math.floor(times.length * 0.99)]!,
    residentMiB: resident,
    cpuMs,
  };
}

const inMiB = (path: string) => (statSync(path).size / 1_048_576).toFixed(0);

try {
  const [bare, small, full] = ['bare.db', 'small.db', 'full.db'].map((name) => join(folder, name));
  const perHousehold = Math.round(pouches / households);
  fillHouseholds(small!, 1, perHousehold);
  const fillFrom = performance.now();
  const batches = fillHouseholds(full!, households, pouches);
  console.log(
    `${households} households, ${households * batches * pouchesPerBatch} pouches, ${inMiB(full!)} MiB, filled in ${((performance.now() - fillFrom) / 1000).toFixed(0)} s`,
  );
  console.log(`${messages} messages at once, then ${perSecond} a second for ${steadySeconds} s`);
  console.log('                      answers/s    p50 ms    p99 ms   resident MiB   cpu ms/answer');
  const row = async (name: string, script: string, database: string, ask: ReturnType<typeof asker>) => {
    const figures = await measure(script, database, ask);
    const { perSecond: rate, p50Ms, p99Ms, residentMiB: resident, cpuMs } = figures;
    console.log(
      `${name.padEnd(20)} ${rate.toFixed(0).padStart(10)} ${p50Ms.toFixed(1).padStart(9)} ${p99Ms.toFixed(1).padStart(9)} ${resident.toFixed(0).padStart(14)} ${cpuMs.toFixed(2).padStart(15)}`,
    );
    return figures;
  };
  const b = await row('bare bot', 'bare-bot.ts', bare!, asker(households, batches, 1));
  const s = await row('one small household', '../main.ts', small!, asker(1, batches, 2));
  const f = await row('every household', '../main.ts', full!, asker(households, batches, 3));
  const ratio = (a: number, to: number) => (a / to).toFixed(2);
  console.log(
    `every household to the bare bot: throughput ${ratio(f.perSecond, b.perSecond)}, p50 ${ratio(f.p50Ms, b.p50Ms)}, p99 ${ratio(f.p99Ms, b.p99Ms)}, memory ${ratio(f.residentMiB, b.residentMiB)}; by processor time throughput ${ratio(b.cpuMs, f.cpuMs)}`,
  );
  console.log(
    `every household to one small one: throughput ${ratio(f.perSecond, s.perSecond)}, p50 ${ratio(f.p50Ms, s.p50Ms)}, p99 ${ratio(f.p99Ms, s.p99Ms)}`,
  );
  console.log(
    `throughput to the platform's cap of about ${platformCap} messages a second: ${ratio(f.perSecond, platformCap)}`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
