import { readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { DateTime } from 'luxon';
import { assemble } from '#assemble.ts';
import { answer } from '#chat/answer.ts';
import type { Answerer } from '#chat/answerer.ts';
import { defaultSettings } from '#core/settings.ts';
import type { Outgoing } from '#core/talk.ts';
import { openFoods } from '#store/foods.ts';
import { openStores } from '#store/house.ts';
import { recordTables } from '#store/journal.ts';
import { makeReady, openDatabase } from '#store/open.ts';
import { typed } from './typed.ts';

// Answers typed messages, each on a fresh copy of the household it is said in, and prints for each a line of JSON:
// the answer as people read it, its buttons, and what changed in the records.
//
// npm run bench:talk -- FILE --setup FILE
//
// FILE: a JSON object a line with id, setup ('empty', 'season', 'picked', 'home'), who, typed and perhaps before
// ("Ines: /use B1-2", said first). --setup: the messages that make the season, "Name: text" with lines that start
// with two spaces going on and lines such as [2027-04-02 20:00] moving the clock.

interface Row {
  readonly id: string;
  readonly setup?: string;
  readonly who: string;
  readonly typed: string;
  readonly before?: readonly string[];
}

const zone = 'Europe/Berlin';
const at = (text: string) => DateTime.fromISO(text.replace(' ', 'T'), { zone }).toMillis();

const { house: shared, close } = await assemble({
  db: openDatabase(':memory:'),
  foods: openFoods(':memory:'),
  zone,
  log: (line) => console.error(line),
});

/** Messages of one household's copies need keys of their own. */
let count = 0;

/** A household in memory with a clock of its own. */
function kitchen(from: Buffer | undefined, startMs: number) {
  const db = from ? makeReady(new Database(from)) : openDatabase(':memory:');
  const house: Answerer = { ...shared, stores: openStores(db, { ...defaultSettings, zone }) };
  let nowMs = startMs;
  const say = async (who: string, text: string): Promise<Outgoing[]> => {
    count += 1;
    const { pending } = answer(house, typed(count, text, nowMs, { who, chat: 'terminal' }));
    await pending;
    const out = house.stores.messages.waiting('terminal');
    for (const { id } of out) house.stores.messages.sent(id);
    return out;
  };
  return {
    db,
    say,
    /** "Name: text", or "[2027-04-02 20:00]". */
    async play(line: string): Promise<void> {
      const clock = /^\[(.+)\]$/.exec(line);
      if (clock) nowMs = at(clock[1]!);
      const [, who, text] = /^([^:]+): ([\s\S]+)$/.exec(line) ?? [];
      if (who && text) await say(who, text);
    },
  };
}

/** What differs in the records between two moments, a line for each row. */
function differences(before: Map<string, string>, after: Map<string, string>): string[] {
  const out: string[] = [];
  for (const [key, row] of after) {
    const was = before.get(key);
    if (was === row) continue;
    const now = JSON.parse(row) as Record<string, unknown>;
    const old = was === undefined ? {} : (JSON.parse(was) as Record<string, unknown>);
    const fields = Object.entries(now)
      .filter(([name, value]) => old[name] !== value && (was !== undefined || value !== null))
      .map(([name, value]) =>
        was === undefined ? `${name} ${String(value)}` : `${name} ${String(old[name])} → ${String(value)}`,
      );
    out.push(`${was === undefined ? 'new ' : ''}${key}: ${fields.join(', ')}`);
  }
  for (const key of before.keys()) if (!after.has(key)) out.push(`gone ${key}: ${before.get(key)!}`);
  return out;
}

function rowsOf(db: Database.Database): Map<string, string> {
  return new Map(
    recordTables.flatMap((table) =>
      (db.prepare(`SELECT * FROM ${table}`).all() as { id: number }[]).map(
        (row) => [`${table} ${row.id}`, JSON.stringify(row)] as const,
      ),
    ),
  );
}

const args = process.argv.slice(2);
const setupAt = args.indexOf('--setup');
const setupFile = setupAt < 0 ? undefined : args[setupAt + 1];
const file = args.find((arg, i) => !arg.startsWith('--') && i !== setupAt + 1);
if (!file || !setupFile) {
  console.error('npm run bench:talk -- FILE --setup FILE');
  process.exit(2);
}

const lines = readFileSync(setupFile, 'utf8')
  .split('\n')
  .filter((line) => !line.startsWith('#'))
  .reduce<string[]>((all, line) => {
    if (line.startsWith('  ') && all.length > 0) all[all.length - 1] += `\n${line.slice(2)}`;
    else if (line.trim() !== '') all.push(line);
    return all;
  }, []);
const season = kitchen(undefined, at('2027-04-02 09:00'));
for (const line of lines) await season.play(line);
const whole = season.db.serialize();
const picked = kitchen(whole, at('2027-05-03 09:00'));
await picked.say('Ines', '/pick');
// On a busy machine the search may come to another choice, which is shown before it is kept.
const isKept = () => picked.db.prepare('SELECT count(*) FROM promise').pluck().get() !== 0;
for (let tries = 0; tries < 6 && !isKept(); tries++) await picked.say('Ines', '/pick keep');
if (!isKept())
  console.error('The trip has no pouches kept: the states picked and home are not as they should be.');
const kept = picked.db.serialize();
const home = kitchen(kept, at('2027-05-03 09:00'));
await home.say('Ines', '/pack B1-2 B1-3 B2-1 B3-1 B4-1 B4-2');
const states: Record<string, { from: Buffer | undefined; nowMs: number }> = {
  empty: { from: undefined, nowMs: at('2027-05-03 09:00') },
  season: { from: whole, nowMs: at('2027-05-03 09:00') },
  picked: { from: kept, nowMs: at('2027-05-03 09:00') },
  home: { from: home.db.serialize(), nowMs: at('2027-06-15 18:00') },
};

const fromMs = performance.now();
let answered = 0;
for (const line of readFileSync(file, 'utf8').split('\n')) {
  if (line.trim() === '') continue;
  const row = JSON.parse(line) as Row;
  const { from, nowMs } = states[row.setup ?? 'season']!;
  const here = kitchen(from, nowMs);
  for (const earlier of row.before ?? []) await here.play(earlier);
  const before = rowsOf(here.db);
  const out = await here.say(row.who, row.typed);
  const changed = differences(before, rowsOf(here.db));
  const text = out.flatMap(({ reply }) => [
    reply.group,
    ...(reply.notes ?? []).map((note) => `${note.who}: ${note.text}`),
    ...(reply.files ?? []).map((one) => `[${one.name}]`),
  ]);
  const buttons = out.flatMap(({ reply }) => (reply.buttons ?? []).map(({ label }) => `[${label}]`));
  const why = out.flatMap(({ reply }) => reply.why ?? []).join('\n');
  console.log(JSON.stringify({ id: row.id, answer: [...text, ...buttons].join('\n'), why, changed }));
  here.db.close();
  answered += 1;
}
console.error(`${answered} messages in ${((performance.now() - fromMs) / 1000).toFixed(1)} s`);
await close();
