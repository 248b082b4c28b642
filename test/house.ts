import { createHash } from 'node:crypto';
import Database, { type Statement } from 'better-sqlite3';
import { DateTime } from 'luxon';
import { answer } from '#chat/answer.ts';
import type { Answerer } from '#chat/answerer.ts';
import { readCommands } from '#chat/registry.ts';
import { defaultSettings } from '#core/settings.ts';
import type { Message, Outgoing } from '#core/talk.ts';
import { openDrawing } from '#draw/drawing.ts';
import { questions } from '#questions/all.ts';
import { openSolver } from '#solver/solver.ts';
import { openFoods } from '#store/foods.ts';
import { foodTablePath } from './food-table.ts';
import { recordTables } from '#store/journal.ts';
import { openStores } from '#store/house.ts';
import { makeReady, openDatabase } from '#store/open.ts';
import type { Db } from '#store/db.ts';

/** The benches open houses, too, and run in no test. */
const { onTestFinished } =
  process.env['VITEST'] === undefined ? { onTestFinished: undefined } : await import('vitest');

const foods = openFoods(foodTablePath);
const commands = await readCommands();
const solver = openSolver();
const drawing = openDrawing();

export interface TestHouse {
  readonly db: Db;
  readonly house: Answerer;
  readonly faults: string[];
  /** Sends a message as somebody and returns the answer's text; notes behind it, a line each. */
  say(text: string, from?: string, more?: Partial<Message>): string;
  /** The same for a request whose sums run beside the chat. */
  ask(text: string, from?: string, more?: Partial<Message>): Promise<string>;
  /** The last answers, whole. */
  readonly last: Outgoing[];
  /** Presses a button of the last answer, counted from 1. */
  press(button: number, from?: string): string;
  /** Moves the clock: '2026-05-03 18:00' or hours forward. */
  at(when: string | number): void;
  /** Until nothing goes on beside the chat. */
  atRest(): Promise<unknown>;
  nowText(): string;
  /** A print of every record: two are equal when nothing was recorded between them. */
  dump(): string;
}

interface Records {
  readonly db: Db;
  readonly stores: ReturnType<typeof openStores>;
  /** Work beside the chat that goes on: nothing may be written after the test's end. */
  readonly beside: Set<Promise<unknown>>;
}

let made: Buffer | undefined;
/** Records without anything in them, brought up to date once and copied from then on. */
const empty = (): Buffer => (made ??= openDatabase(':memory:').serialize());

/** Records that a test is done with, back where they began, by what they began from. */
const rested = new Map<Buffer, Records[]>();

function openRecords(from = empty()): Records {
  const db = makeReady(new Database(from));
  return { db, stores: openStores(db, { ...defaultSettings, zone: 'UTC' }), beside: new Set() };
}

/**
 * Records for one test. Opening them costs more than most tests do, so all that a test writes is taken back
 * at its end and the next one goes on with them. What is opened outside of a test is kept by its owner.
 */
function recordsFor(from: Buffer): Records {
  const resting = rested.get(from) ?? [];
  rested.set(from, resting);
  const records = resting.pop() ?? openRecords(from);
  try {
    if (!onTestFinished) return records;
    onTestFinished(async () => {
      await Promise.allSettled(records.beside);
      if (!records.db.open) return;
      records.db.exec('ROLLBACK');
      if (resting.length < 2) resting.push(records);
      else records.db.close();
    });
    records.db.exec('BEGIN');
  } catch {
    // Outside of a test.
  }
  return records;
}

/** A household whose records no test takes back: for what goes on beside a test, or writes on its own account. */
export const openOwnHouse = (start?: string, options?: Partial<Answerer>, from?: Buffer): TestHouse =>
  openTestHouse(start, options, from, openRecords(from));

/** A household in memory with a clock of its own, driven through the same handler as every door. */
export function openTestHouse(
  start = '2026-05-03 18:00',
  options: Partial<Answerer> = {},
  from?: Buffer,
  { db, stores, beside } = recordsFor(from ?? empty()),
): TestHouse {
  const faults: string[] = [];
  const house: Answerer = {
    stores,
    foods,
    commands,
    questions,
    workers: { picks: solver, drawing },
    admitCode: null,
    chatLink: null,
    log: (line) => faults.push(line),
    status: () => ({
      version: '1.2.3',
      startedAtMs: nowMs - 26 * 3_600_000,
      lastFault: null,
      lastBackupAtMs: nowMs - 2 * 3_600_000,
      ...house.stores.health(),
    }),
    ...options,
  };
  let nowMs = DateTime.fromSQL(start, { zone: 'UTC' }).toMillis();
  let everything: Statement[] | undefined;
  // A house that goes on from another has seen that one's messages.
  let count = from ? 1_000_000 + (db.prepare('SELECT count(*) FROM seen').pluck().get() as number) : 0;
  const send = (text: string, from: string, more: Partial<Message>) => {
    count += 1;
    const answered = answer(house, {
      door: 'terminal',
      chatKey: 'test',
      chatTitle: 'test',
      isPrivate: false,
      addressed: true,
      deliveryKey: String(count),
      messageKey: String(count),
      topicKey: null,
      person: { key: from.toLowerCase(), name: from },
      text,
      sentAtMs: nowMs,
      isEdit: false,
      button: null,
      ...more,
    });
    const { pending } = answered;
    if (pending) {
      beside.add(pending);
      void pending.finally(() => beside.delete(pending));
    }
    return answered;
  };
  const collect = (door: Message['door'], toast: string | undefined): string => {
    const out = house.stores.messages.waiting(door);
    for (const { id } of out) house.stores.messages.sent(id);
    opened.last.splice(0, opened.last.length, ...out);
    const lines = out.flatMap(({ reply }) => [
      reply.group,
      ...(reply.why ?? []),
      // Pages that a press would turn to.
      ...(reply.pages ?? []).slice(1).flatMap(({ group, why = [] }) => [group, ...why]),
      ...(reply.notes ?? []).map((n) => `${n.who}: ${n.text}`),
    ]);
    return [...(toast ? [toast] : []), ...lines].join('\n');
  };
  const opened: TestHouse = {
    db,
    house,
    faults,
    last: [],
    say(text, from = 'Ana', more = {}) {
      return collect(more.door ?? 'terminal', send(text, from, more).toast);
    },
    async ask(text, from = 'Ana', more = {}) {
      const { toast, pending } = send(text, from, more);
      await pending;
      return collect('terminal', toast);
    },
    press(button, from = 'Ana') {
      const pressed = opened.last.flatMap((out) => out.buttons)[button - 1];
      if (!pressed) throw new Error(`the last answer has no button ${button}`);
      return opened.say('', from, { button: pressed.id });
    },
    at(when) {
      nowMs =
        typeof when === 'number'
          ? nowMs + when * 3_600_000
          : DateTime.fromSQL(when, { zone: 'UTC' }).toMillis();
    },
    atRest: () => Promise.allSettled(beside),
    nowText: () => DateTime.fromMillis(nowMs, { zone: 'UTC' }).toFormat('yyyy-MM-dd HH:mm'),
    dump() {
      everything ??= ['household', ...recordTables, 'entry', 'row_change'].map((table) =>
        db.prepare(`SELECT * FROM ${table} ORDER BY rowid`),
      );
      const rows = everything.map((table) => table.all());
      return createHash('sha256').update(JSON.stringify(rows)).digest('hex');
    },
  };
  return opened;
}
