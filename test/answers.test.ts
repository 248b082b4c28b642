// Witness: what is read on a phone is common practice, no source.
import { readFileSync, readdirSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allScreens, middle } from '../src/bench/phone.ts';
import { saidLatelyMs, saidOnce, type Told } from '#chat/said-once.ts';
import type { Note, Reply } from '#core/talk.ts';
import { clearCaution } from '#house/verdicts.ts';
import { burnCaution, potCaution } from '#words/phrases.ts';
import { mostPhoneLines } from '#words/phone.ts';
import { openSeason } from './season.ts';

interface Answer {
  readonly asked: string;
  readonly read: readonly string[];
  readonly folded: readonly string[];
  /** The clock of the chat moves between blocks alone. */
  readonly block: number;
}

function answersOf(chat: string): Answer[] {
  const answers: { asked: string; read: string[]; folded: string[]; block: number }[] = [];
  let [asked, block, isAnswer] = ['', 0, false];
  for (const line of chat.split('\n')) {
    if (line.startsWith('[')) block += 1;
    if (!line.startsWith('>')) {
      if (!line.startsWith('  ') && line.trim() !== '') asked = line;
      isAnswer = false;
      continue;
    }
    if (!isAnswer) answers.push({ asked, read: [], folded: [], block });
    isAnswer = true;
    const said = line.slice(2);
    if (said.startsWith('  | ')) answers.at(-1)!.folded.push(said.slice(4));
    else answers.at(-1)!.read.push(said.trim());
  }
  return answers;
}

const chats = readdirSync('fixtures/chats').map((name) => ({
  name,
  answers: answersOf(readFileSync(`fixtures/chats/${name}`, 'utf8')),
}));

test('an answer is read without scrolling: none over twelve lines of a phone, half of them at most four', () => {
  const screens = allScreens();
  expect(screens.filter(({ lines }) => lines > mostPhoneLines)).toEqual([]);
  expect(middle(screens.map(({ lines }) => lines).toSorted((a, b) => a - b))).toBeLessThanOrEqual(4);
});

/** Figures that nobody says: one of many, parts of an hour or of a thing, the same thing told over and over. */
const oddAnywhere =
  /(?<![\d.,])1 (?:servings|portions|pouches|meals|trays|batches|people|days|pieces|lines|loads)\b|\d\.\d+ h\b|Exactly (\S+), \1\b|NaN|Infinity|undefined|\bnull\b/u;
const oddUnfolded =
  /\d\.\d+ (?:servings?|portions?|sticks?|pouches|pieces|meals|min|days|cups)\b|\d\.\d+ of \d|[Ee]xactly|\d\.\d{3,}/u;

test.each(chats)('$name has no figures that nobody says', ({ answers }) => {
  const odd = answers.flatMap(({ asked, read, folded }) => [
    ...[...read, ...folded].filter((line) => oddAnywhere.test(line)),
    ...read
      .filter((line) => !line.startsWith('[1] ') && oddUnfolded.test(line))
      .map((line) => `${asked}: ${line}`),
  ]);
  expect(odd).toEqual([]);
});

const general = [burnCaution, potCaution, clearCaution, 'No stove in a tent or vehicle.'];

test.each(chats)('$name heeds nothing twice within minutes', ({ answers }) => {
  const twice = answers.filter(({ read, block }, i) => {
    const before = answers
      .slice(0, i)
      .filter((one) => one.block === block)
      .flatMap((one) => one.read);
    return read.some(
      (line) => (general.includes(line) || /^[^:]+: clear\b/u.test(line)) && before.includes(line),
    );
  });
  expect(twice.map(({ asked }) => asked)).toEqual([]);
});

describe('what was said minutes before', () => {
  const heed = fc.subarray(['Water burns.', 'Open air.', 'Traces unknown.']);
  const notes = fc.subarray<Note>([
    { who: 'Ana', text: 'clear' },
    { who: 'Ben', text: 'clear, 30 %' },
    { who: 'Pip', text: 'not for you: milk', bars: true },
  ]);
  const replies = fc.array(fc.record({ heed, notes }), { minLength: 1, maxLength: 8 });

  test('is folded, never lost; what somebody must not have is read each time', () => {
    fc.assert(
      fc.property(replies, (all) => {
        const told: { heed: string[]; notes: Note[] } = { heed: [], notes: [] };
        for (const one of all) {
          const reply: Reply = { group: 'Done.', why: ['Because.'], ...one };
          const said = saidOnce(reply, told satisfies Told);
          const read = [
            ...said.group.split('\n').slice(1),
            ...(said.notes ?? []).map(({ who, text }) => `${who}: ${text}`),
          ];
          const given = [...one.heed, ...one.notes.map(({ who, text }) => `${who}: ${text}`)];
          expect([...read, ...(said.why ?? []).filter((line) => line !== 'Because.')].toSorted()).toEqual(
            given.toSorted(),
          );
          expect(said.why?.at(-1)).toBe('Because.');
          for (const line of said.heed ?? []) expect(told.heed).not.toContain(line);
          for (const note of said.notes ?? []) if (!note.bars) expect(told.notes).not.toContainEqual(note);
          for (const note of one.notes) if (note.bars) expect(said.notes).toContainEqual(note);
          told.heed.push(...(said.heed ?? []));
          told.notes.push(...(said.notes ?? []));
        }
      }),
    );
  });

  test('in a chat: once in ten minutes, and again where what said it is taken back', () => {
    const house = openSeason();
    const read = (text: string) => {
      house.say(text);
      return house.last[0]!.reply.group;
    };
    expect(read('/water B1-1')).toContain(burnCaution);
    expect(read('/water B1-2')).not.toContain(burnCaution);
    const { id, reply } = house.last[0]!;
    expect(reply.why).toContain(burnCaution);
    const here = house.last[0]!;
    const { messages } = house.house.stores;
    const nowMs = Date.parse(`${house.nowText()}Z`);
    const told = () => messages.toldSince(here, nowMs - saidLatelyMs, null).heed;
    expect(told()).toEqual([burnCaution]);
    expect(messages.toldSince({ ...here, chatKey: 'another' }, 0, null).heed).toEqual([]);
    // What takes the place of the answer that said it says it anew.
    expect(messages.toldSince(here, nowMs - saidLatelyMs, id - 1).heed).toEqual([]);
    messages.put(
      { ...here, person: { key: '1', name: 'Ana' } },
      here.replyToKey,
      { group: 'Gone.' },
      nowMs,
      id - 1,
    );
    expect(told()).toEqual([]);
    house.say('/water B1-1');
    house.at(0.2);
    expect(read('/water B1-2')).toContain(burnCaution);
  });
});
