import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { answer } from '#chat/answer.ts';
import { openFoods } from '#store/foods.ts';
import { openDatabase } from '#store/open.ts';
import { assemble } from '#assemble.ts';
import { typed } from './typed.ts';

// Times every request on a household of 50 recipes, 200 batches and 2,000 pouches, in the process, on a real file with
// full synchronous writes. Prints milliseconds and ratios to a bare one-row transaction on the same file.

const folder = mkdtempSync(join(tmpdir(), 'bench-'));
const path = join(folder, 'household.db');
const db = openDatabase(path);
const foods = openFoods(join(folder, 'foods.db'));
const { house, close } = await assemble({ db, foods, zone: 'UTC', log: (line) => console.error(line) });

let nowMs = Date.UTC(2027, 0, 1, 8);
let count = 0;

async function say(text: string): Promise<string> {
  count += 1;
  nowMs += 61_000;
  const { pending } = answer(house, typed(count, text, nowMs, { chat: 'terminal' }));
  await pending;
  const out = house.stores.messages.waiting('terminal');
  for (const { id } of out) house.stores.messages.sent(id);
  return out.flatMap(({ reply }) => [reply.group, ...(reply.why ?? [])]).join('\n');
}

const foodsOf = [
  'red lentils',
  'long grain rice',
  'pearl barley',
  'black beans',
  'pasta',
  'potatoes',
  'carrots',
];

/** Says it and stops the bench where it was not recorded: a house of refusals would be timed otherwise. */
async function recorded(text: string): Promise<string> {
  const answer = await say(text);
  if (isRefusal(answer)) throw new Error(`${text} was refused: ${answer}`);
  return answer;
}

const isRefusal = (answer: string): boolean => /For example: |Nothing (is|was) recorded/.test(answer);

async function fill(): Promise<void> {
  db.pragma('synchronous = OFF');
  await say('/house dryer 4 trays 20 x 45 cm 4 kg');
  await say('/house pouch 20 x 30 cm');
  await say('/house absorbers 100 300 500 ml');
  for (let i = 0; i < 50; i++) {
    const food = foodsOf[i % foodsOf.length]!;
    await say(
      `/recipe Meal ${String.fromCharCode(97 + (i % 26))}${i} ${food}, 6 servings: ${300 + i} g ${food}; 2 onions; 1 tsp salt; 200 ml milk; 1 l water`,
    );
  }
  const names = house.stores.of(1).recipes.names();
  for (let i = 0; i < 200; i++) {
    const loaded = await recorded(`/batch "${names[i % names.length]}" trays 450 450 450 450 g`);
    const dryG = Number(/Expected dry: about (\d+) g/.exec(loaded)![1]);
    const trays = Array<number>(4)
      .fill(Math.ceil(dryG / 4))
      .join(' ');
    nowMs += 20 * 3_600_000;
    await recorded(`/weigh B${i + 1} ${trays} sure`);
    nowMs += 3 * 3_600_000;
    await recorded(`/weigh B${i + 1} ${trays} sure`);
    await recorded(`/seal 10 x ${Math.floor((dryG - 2) / 10)} g B${i + 1}`);
  }
  for (const eater of [
    'me',
    'Noa child 7 no peanuts portion 0.6',
    'Ben no shellfish',
    'Rosa guest vegetarian',
  ])
    await say(`/eater ${eater}`);
  await say('/trip Heron Lake 12-14 December dinner breakfast for all 1900 m');
  await say(`/batch "${names[0]}" trays 450 450 g`);
  db.pragma('synchronous = FULL');
}

interface Timed {
  readonly name: string;
  readonly medianMs: number;
  readonly p99Ms: number;
}

async function time(
  name: string,
  runs: number,
  work: (i: number) => unknown,
  between?: () => unknown,
): Promise<Timed> {
  const all: number[] = [];
  for (let i = 0; i < runs; i++) {
    const from = performance.now();
    const answer = await work(i);
    all.push(performance.now() - from);
    if (typeof answer === 'string' && name !== 'a refusal' && isRefusal(answer))
      throw new Error(`${name} was refused: ${answer}`);
    await between?.();
  }
  all.sort((a, b) => a - b);
  return {
    name,
    medianMs: all[Math.floor(runs / 2)]!,
    p99Ms: all[Math.min(runs - 1, Math.floor(runs * 0.99))]!,
  };
}

await fill();
const meal = house.stores.of(1).recipes.names()[3]!;
const runs = 200;
db.exec('CREATE TABLE bare (at INTEGER)');
const insert = db.prepare('INSERT INTO bare VALUES (?)');
const bare = await time('bare one-row transaction', runs, (i) =>
  db.transaction(() => insert.run(i)).immediate(),
);

/** Takes a timed recording back; a bench that times refusals instead would tell nothing. */
const undo = async () => {
  const answer = await say('/undo');
  if (!answer.startsWith('Taken back')) throw new Error(answer);
};
const rows = [
  await time('/help', runs, () => say('/help')),
  await time(
    '/recipe (record)',
    runs,
    (i) =>
      say(
        `/recipe Fresh pot ${i}, 4 servings: 300 g red lentils; 2 large onions, chopped; 1 (400 g) tin tomatoes; salt to taste`,
      ),
    undo,
  ),
  await time('/recipe (show)', runs, () => say(`/recipe "${meal}"`)),
  await time('/scale', runs, () => say(`/scale "${meal}" to 10 servings`)),
  await time('/batch', runs, () => say(`/batch "${meal}" trays 400 410 420 g`), undo),
  await time('/weigh', runs, () => say('/weigh B201 300 310 g sure'), undo),
  await time('/seal', runs, () => say('/seal 1 x 2 g B7 on 8 January at 02:30'), undo),
  await time('/water (pouch)', runs, (i) => say(`/water B${(i % 200) + 1}-3`)),
  await time('/water (meal)', runs, () => say(`/water "${meal}" for 3`)),
  await time('/stock (all)', runs, () => say('/stock')),
  await time('/stock no milk', runs, () => say('/stock no milk')),
  await time('/pouch', runs, (i) => say(`/pouch B${(i % 200) + 1}-3`)),
  await time('/use', runs, (i) => say(`/use B${(i % 200) + 1}-4`), undo),
  await time('/discard', runs, (i) => say(`/discard B${(i % 200) + 1}-4 torn`), undo),
  await time('/house', runs, (i) => say(`/house altitude ${i} m`), undo),
  await time('/log', runs, () => say('/log')),
  await time('/eater', runs, () => say('/eater Noa')),
  await time('/trip', runs, () => say('/trip Heron Lake')),
  await time('/want', runs, () => say(`/want "${meal}"`), undo),
  await time('/pick', 5, () => say('/pick')),
  await time('a refusal', runs, () => say('/seal 6 x 95 g B999')),
];

/** How a short request is answered while a large pick runs in its thread, against the same with nothing running. */
async function whilePicking(): Promise<string> {
  let isPicking = true;
  const idle = await time('idle', 200, () => say('/water B9-3'));
  const picking = say('/pick').then(() => (isPicking = false));
  const waits: number[] = [];
  while (isPicking) {
    const from = performance.now();
    await say('/water B9-3');
    waits.push(performance.now() - from);
    await new Promise((resolve) => setTimeout(resolve, 1));
  }
  await picking;
  waits.sort((a, b) => a - b);
  const p99 = waits[Math.min(waits.length - 1, Math.floor(waits.length * 0.99))]!;
  return `while a pick runs, ${waits.length} /water answers: median ${waits[Math.floor(waits.length / 2)]!.toFixed(2)} ms, p99 ${p99.toFixed(2)} ms (${(p99 / idle.p99Ms).toFixed(1)} times the idle p99 of ${idle.p99Ms.toFixed(2)} ms), longest ${waits.at(-1)!.toFixed(1)} ms`;
}

const ms = (value: number) => value.toFixed(2).padStart(9);
console.log('request                     median ms    p99 ms   median / bare');
for (const { name, medianMs, p99Ms } of [bare, ...rows]) {
  console.log(
    `${name.padEnd(26)} ${ms(medianMs)} ${ms(p99Ms)} ${(medianMs / bare.medianMs).toFixed(2).padStart(14)}`,
  );
}

/** Whole process, from its start to the end of one /help, less what an empty Node process takes. */
function startUp(): { firstMs: number; laterMs: number; emptyMs: number } {
  const once = (args: string[], input: string, env: Record<string, string>) => {
    const from = performance.now();
    execFileSync(process.execPath, args, {
      input,
      env: { ...process.env, ...env },
      stdio: ['pipe', 'ignore', 'inherit'],
    });
    return performance.now() - from;
  };
  const env = { HOUSEHOLD_DB: join(folder, 'start', 'household.db') };
  const main = [join(import.meta.dirname, '..', 'start.js')];
  const firstMs = once(main, '/help\n', env);
  const later = Array.from({ length: 7 }, () => once(main, '/help\n', env)).sort((a, b) => a - b);
  const empty = Array.from({ length: 7 }, () => once(['-e', '0'], '', {})).sort((a, b) => a - b);
  return { firstMs, laterMs: later[3]!, emptyMs: empty[3]! };
}

/** What the program holds in memory on this house, MiB: after a few requests, and once nobody has asked for a while. */
async function idleMiB(): Promise<{ startedMiB: number; idleMiB: number }> {
  const copy = join(folder, 'idle.db');
  db.prepare('VACUUM INTO ?').run(copy);
  const program = spawn(process.execPath, [join(import.meta.dirname, '..', 'start.js')], {
    env: { ...process.env, HOUSEHOLD_DB: copy },
    stdio: ['pipe', 'ignore', 'inherit'],
  });
  const residentMiB = () =>
    Number(execFileSync('ps', ['-o', 'rss=', '-p', String(program.pid)], { encoding: 'utf8' })) / 1024;
  await wait(3000);
  const startedMiB = residentMiB();
  for (const text of ['/stock', '/water B3-1', '/recipe', 'what can Noa eat?', '/pick']) {
    program.stdin.write(`${text}\n`);
    await wait(2000);
  }
  await wait(10_000);
  const idle = residentMiB();
  program.stdin.end();
  await new Promise((ended) => program.once('exit', ended));
  return { startedMiB, idleMiB: idle };
}

console.log(await whilePicking());
const { firstMs, laterMs, emptyMs } = startUp();
console.log(
  `start with the food table read in: ${firstMs.toFixed(0)} ms; later starts: ${laterMs.toFixed(0)} ms (${(laterMs / emptyMs).toFixed(1)} times an empty Node process, ${emptyMs.toFixed(0)} ms)`,
);
const { startedMiB, idleMiB: idle } = await idleMiB();
console.log(
  `memory of the program on this house: ${startedMiB.toFixed(0)} MiB started, ${idle.toFixed(0)} MiB idle after requests and a pick`,
);

await close();
rmSync(folder, { recursive: true, force: true });
