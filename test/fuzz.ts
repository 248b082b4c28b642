import { address } from '#chat/address.ts';
import type { Command } from '#chat/command.ts';
import { openSeason } from './season.ts';
import { questions } from '#questions/all.ts';
import { seasonNames } from './requests/names.ts';

/** A seeded source of numbers from 0 up to 1: the same seed gives the same messages. */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Chance = () => number;
const below = (next: Chance, count: number) => Math.floor(next() * count);
const pick = <T>(next: Chance, list: readonly T[]): T => list[below(next, list.length)]!;

/** First and last code point of what people and machines send: letters, marks, digits, pictures, controls, halves. */
const ranges = [
  [0x20, 0x7e], [0xa0, 0x24f], [0x300, 0x36f], [0x370, 0x52f], [0x590, 0x6ff], [0x900, 0x97f], [0xe00, 0xe7f], [0x1100, 0x11ff],
  [0x2000, 0x206f], [0x2150, 0x218f], [0x2200, 0x22ff], [0x3040, 0x30ff], [0x4e00, 0x4eff], [0xd800, 0xdfff], [0xfe00, 0xfe0f],
  [0xff00, 0xffef], [0x1d7ce, 0x1d7ff], [0x1f300, 0x1faff], [0xe0000, 0xe007f], [0, 0x1f],
] as const; // prettier-ignore

function unicode(next: Chance, most: number): string {
  let out = '';
  for (let length = 1 + below(next, most); length > 0; length--) {
    const [first, last] = pick(next, ranges);
    out += String.fromCodePoint(first + below(next, last - first + 1));
  }
  return out;
}

const oddities = [
  '-5 g', '1e999 kg', '0', '½', '⅓ cup', '9'.repeat(60), '1,500', '1.500,5', '1/0', '0/0', '1/2/3', '12/6', '31/2', 'B0-0', 'B999999-99999', 'x0', 'x x x',
  '٩٥', '９５ｇ', '\u202eevil', '\u0000', "'; DROP TABLE pouch; --", '%s%n', '${1}', '../../etc', '<b>', '[[', '((', '"', '“', '”', '\n', '\r\n', '\t', ' '.repeat(40),
  'sure', 'constructor', '__proto__', 'toString', 'hasOwnProperty', 'null', '25:00', '2027-99-99', '0000-00-00', 'line 2:', 'delete', 'add', 'move line 2 to 1', 'is called', 'rename', 'pot', 'forget', 'we mean', 'is', 'of',
] as const; // prettier-ignore
const repeated = ['(', ')', '[', '"', '“', '-', '--', '½', '1/2 ', '1 ', '6 x ', 'x', ',', ';', ':', '/', '.', 'no ', 'no milk, ', 'of ', 'for ', 'B4-2 ', 'B4-', 'a', 'lentil ', 'a a ', '1,', '1.', "'", 'to ', 'or ', 'and ', '🍲', '\u0301', '\n', '1 cup ', '2 x ', 'plus ', '(14 oz) ', 'hundred ', '12 june ', 'next ', 'saturday ', '\u202e', 'æ'] as const; // prettier-ignore

function mutated(next: Chance, text: string): string {
  let out = text;
  for (let edits = 1 + below(next, 6); edits > 0; edits--) {
    const at = below(next, out.length + 1);
    const kind = below(next, 6);
    const glyph = kind === 5 ? pick(next, oddities) : unicode(next, 2);
    if (kind === 0) out = out.slice(0, at) + out.slice(at + 1);
    else if (kind === 1) out = out.slice(0, at) + (out[at] ?? '') + out.slice(at);
    else if (kind === 2) out = out.slice(0, at) + (out[at + 1] ?? '') + (out[at] ?? '') + out.slice(at + 2);
    else out = out.slice(0, at) + glyph + out.slice(kind === 3 ? at + 1 : at);
  }
  return out;
}

function spliced(next: Chance, real: readonly string[]): string {
  const pieces: string[] = [];
  for (let count = 2 + below(next, 4); count > 0; count--) {
    const words = pick(next, real).split(' ');
    const from = pieces.length === 0 ? 0 : below(next, words.length);
    pieces.push(words.slice(from, from + 1 + below(next, words.length)).join(' '));
    if (next() < 0.4) pieces.push(pick(next, oddities));
  }
  return pieces.join(next() < 0.9 ? ' ' : '\n');
}

/** The longest message that the platform lets people send. */
const longestSent = 4096;

/** One message of the seed's row. */
export function message(next: Chance, real: readonly string[]): string {
  const kind = next();
  if (kind < 0.2) return (next() < 0.5 ? `${pick(next, real).split(' ')[0]!} ` : '') + unicode(next, 120);
  if (kind < 0.55) return spliced(next, real);
  if (kind < 0.9) return mutated(next, pick(next, real));
  const length = below(next, next() < 0.03 ? longestSent * 10 : longestSent);
  const start = next() < 0.8 ? `${pick(next, real).split(' ')[0]!} ` : '';
  if (kind < 0.95) {
    const piece = pick(next, repeated);
    return start + piece.repeat(Math.ceil(length / piece.length));
  }
  let out = start;
  while (out.length < length) out += `${pick(next, real)}${pick(next, [' ', '\n', ', ', '; '])}`;
  return out;
}

export interface Fuzzed {
  readonly counts: Record<'answered' | 'recorded' | 'refused' | 'unanswered' | 'planned', number>;
  /** How long each message took, ms, with its length. */
  readonly times: readonly { readonly ms: number; readonly length: number; readonly typed: string }[];
  /** What must not be: the message and why. */
  readonly faults: readonly string[];
}

/** How many messages one household hears before it is opened anew: recipes pile up meanwhile. */
const eachHouse = 250;

/**
 * Sends so many messages to the season's house.
 * @param all how many
 */
export function fuzz(
  all: number,
  seed: number,
  real: readonly string[],
  commands: readonly Command[],
): Fuzzed {
  const next = chance(seed);
  const counts = { answered: 0, recorded: 0, refused: 0, unanswered: 0, planned: 0 };
  const times: { ms: number; length: number; typed: string }[] = [];
  const faults: string[] = [];
  let house = openSeason();
  let before = house.dump();
  for (let i = 0; i < all; i++) {
    if (i % eachHouse === 0) {
      house.db.close();
      house = openSeason();
      before = house.dump();
    }
    const typed = message(next, real);
    const found = address(typed, true, { commands, questions }, () => seasonNames);
    // Long sums run beside the chat and would answer a later message here.
    if (found.is === 'request' && found.main.command.planned !== null) {
      counts.planned++;
      continue;
    }
    const fault = (why: string) => faults.push(`${why}: ${JSON.stringify(typed.slice(0, 300))}`);
    const start = performance.now();
    let said = '';
    try {
      said = house.say(typed);
    } catch (error) {
      fault(`thrown ${String(error)}`);
    }
    times.push({ ms: performance.now() - start, length: typed.length, typed: typed.slice(0, 120) });
    const key = house.db
      .prepare('SELECT outcome FROM heard ORDER BY at_ms DESC, rowid DESC LIMIT 1')
      .pluck()
      .get();
    const outcome = said === '' ? 'unanswered' : (key as 'answered' | 'recorded' | 'refused' | undefined);
    counts[outcome ?? 'unanswered']++;
    for (const line of house.faults.splice(0)) fault(line.split('\n').slice(0, 3).join(' '));
    if (said.includes('Something broke')) fault('broke');
    if (/\bNaN\b|\bInfinity\b|\bundefined\b|\[object /.test(said)) fault(`says ${said.slice(0, 200)}`);
    // What is taken back is no new entry of the journal.
    const isUndo = outcome === 'answered' && found.is === 'request' && found.main.command.name === 'undo';
    const after = house.dump();
    if (outcome !== 'recorded' && after !== before && !isUndo) fault('changed a record');
    before = after;
  }
  return { counts, times, faults };
}

/** The value below which a share of the list lies. */
export function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}

export { repeated };
