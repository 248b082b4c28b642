// Witness: the plain meaning of each sentence, by hand. That a question, a negation, a doubt or what is still to come
// records nothing is this project's promise, no source.
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { address } from '#chat/address.ts';
import { readCommands } from '#chat/registry.ts';
import { questions } from '#questions/all.ts';
import { seasonNames } from '../requests/names.ts';
import { openTestHouse } from '../house.ts';
import { inSeason, openSeason } from '../season.ts';
import { talk } from './messages.ts';
import { tries } from '../ring.ts';

const commands = await readCommands();
const read = (typed: string) => address(typed, true, { commands, questions }, () => seasonNames);

/** Whether an outcome is one of those that would be right. */
const isOneOf = (found: string, right: string) => right.split('|').includes(found);

test.each(talk.map(([typed, means, does, says]) => ({ typed, means, does, says })))(
  '$typed: $means, $does',
  ({ typed, means, does, says }) =>
    inSeason(async (house) => {
      const found = read(typed);
      const meant = found.is === 'request' ? found.main.command.name : found.is;
      expect({ meant, isRight: isOneOf(meant, means) }).toEqual({ meant, isRight: true });
      const before = house.dump();
      const answer = await house.ask(typed);
      expect(house.faults).toEqual([]);
      const isChanged = house.dump() !== before;
      const deed = house.last
        .flatMap(({ reply }) => reply.buttons ?? [])
        .some(({ label }) => label.startsWith('Record'));
      const became = isChanged ? 'does' : deed ? 'offers' : 'neither';
      // Whether an answer without a deed is the right one is told by its request and its words.
      const isRight =
        became === 'neither'
          ? /answers|nothing/.test(does)
          : isOneOf(became, does) || (became === 'offers' && isOneOf('answers', does));
      expect({ became, answer, isRight }).toMatchObject({ isRight: true });
      if (says !== undefined) expect(answer).toContain(says);
    }),
);

const deeds = talk.filter(([, means, does]) => does === 'does' && means !== 'undo').map(([typed]) => typed);
const stays = (typed: string) =>
  inSeason(async (house) => {
    const before = house.dump();
    const answer = await house.ask(typed);
    expect(house.faults, typed).toEqual([]);
    expect({ typed, answer, changed: house.dump() !== before }).toMatchObject({ changed: false });
  });

test('law: what records as a statement records nothing as a question', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...deeds),
      fc.constantFrom(
        (t: string) => `${t}?`,
        (t: string) => `${t} ?`,
        (t: string) => `should ${t}?`,
        (t: string) => `is it true that ${t}`,
        (t: string) => `did ${t}?`,
        (t: string) => `I wonder if ${t}`,
      ),
      async (typed, asked) => stays(asked(typed)),
    ),
    { numRuns: tries(60), seed: 12 },
  );
}, 120_000);

test('law: a slash changes nothing about that', async () => {
  for (const typed of [
    '/use B4-2?',
    '/discard B4-2?',
    '/use did we eat B4-2',
    '/house altitude 400 m?',
    '/rate B4-2 too salty?',
    '/want soup saturday dinner?',
    '/pack all?',
    '/undo?',
    '/weigh B2 400 g?',
    '/eater Noa may eat peanuts?',
    '/use B4-1 or B4-2',
    '/discard B4-1 or B4-2',
    '/discard B4-2 maybe',
    '/weigh B2 perhaps 400 g',
    '/want soup or lentil pot saturday dinner',
  ])
    await stays(typed);
});

test('law: a doubt, or what leaves it open, records nothing', async () => {
  const things = deeds.filter((typed) => /B4-\d/.test(typed) && !/needed|salty|delicious/.test(typed));
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...things),
      fc.constantFrom(
        (t: string) => `maybe ${t}`,
        (t: string) => `perhaps ${t}`,
        (t: string) => `I think ${t}`,
        (t: string) => `${t}, not sure`,
        (t: string) => `we never ${t}`,
        (t: string) => `it is not so that ${t}`,
      ),
      async (typed, open) => stays(open(typed)),
    ),
    { numRuns: tries(40), seed: 13 },
  );
}, 120_000);

test('law: polite words change nothing, in front of any row or behind it', () => {
  const name = (found: ReturnType<typeof read>) =>
    found.is === 'request' ? found.main.command.name : found.is;
  const rows = talk.map(([typed]) => typed).filter((typed) => typed.includes(' '));
  const around = [
    ['please ', ''],
    ['hey, ', ' please'],
    ['ok so ', ' thanks'],
    ['hi ', ' 😀'],
    ['sorry, ', '!!'],
  ] as const;
  // A part of the rows where the answer is waited for, every one of them else.
  const some = rows.filter((_, i) => i % Math.ceil(rows.length / tries(rows.length)) === 0);
  const missed = some.flatMap((typed) => {
    const plain = name(read(typed));
    return around.flatMap(([before, after]) => {
      const polite = `${before}${typed}${typed.endsWith('?') ? '' : after}`;
      return name(read(polite)) === plain ? [] : [`${polite}: ${name(read(polite))}, not ${plain}`];
    });
  });
  expect(missed).toEqual([]);
});

test('every question has its own examples answered', async () => {
  for (const question of questions)
    for (const example of question.examples)
      await inSeason(async (house) => {
        const before = house.dump();
        expect((await house.ask(example)).length, example).toBeGreaterThan(0);
        expect(house.faults, example).toEqual([]);
        expect(house.dump(), example).toBe(before);
      });
});

test('two sayings in one message are both heard', () => {
  const house = openSeason();
  expect(house.say('ate B4-1, threw away B4-2')).toContain('Used: B4-1');
  expect(house.last.at(-1)!.reply.buttons!.map(({ label }) => label)).toEqual([
    'Undo: used B4-1 (Lentil pot)',
    'Undo: discarded B4-2 (Lentil pot)',
  ]);
  expect(house.say('/pouch B4-2')).toContain('Discarded');
  expect(house.say('we ate B4-3, needed 40 ml more water and a bit salty')).toContain('Used: B4-3');
  expect(house.last.at(-1)!.reply.buttons![0]!.label).toMatch(/^Record: rated B4-3/);
});

test('three sayings are all recorded, and none takes the things of another', () => {
  const house = openSeason();
  expect(house.say('ate B4-1. threw out B4-2 (mouldy). B4-3 is loose')).toContain('Used: B4-1 (Lentil pot)');
  expect(house.say('/pouch B4-2')).toContain('Discarded');
  expect(house.say('/pouch B4-3')).toContain('LOOSE');
  const before = house.dump();
  house.say('ate B4-4, threw out B4-5 and did something odd with B4-6 and the zorblax');
  expect(house.dump()).toBe(before);
});

test('law: a word that nobody knows is named in the answer, and nothing is recorded', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(
        ...talk.filter(([, means, does]) => does === 'answers' && means !== 'scale').map(([typed]) => typed),
      ),
      async (typed) => {
        const house = openSeason();
        const before = house.dump();
        const answer = await house.ask(`${typed.replace(/[?!.]+$/u, '')} zorblax`);
        expect(house.dump(), typed).toBe(before);
        // Or nothing is answered at all, but what may be meant is asked.
        const isSaid = /zorblax|understand|Is one of these meant|I found no request/.test(answer);
        expect({ typed, answer, isSaid }).toMatchObject({ isSaid: true });
      },
    ),
    { numRuns: tries(40), seed: 15 },
  );
}, 60_000);

test('it, that one and the same question for somebody else', () => {
  const house = openSeason();
  house.say('/pouch B4-2');
  expect(house.say('how heavy is it?')).toContain('B4-2: 95 g dry Lentil pot');
  expect(house.say('ate it')).toContain('Used: B4-2');
  expect(house.say('may Noa eat the lentil pot?')).toContain('Noa:');
  expect(house.say('and for Rosa?')).toContain('Rosa:');
  expect(house.say('how many lentil pots are left')).toContain('Lentil pot');
  expect(house.say('what about the soup?')).toContain('Barley soup');
});

test('what was said long ago is not what it points to', () => {
  const house = openSeason();
  house.say('/pouch B4-2');
  house.at(2);
  const before = house.dump();
  house.say('ate it');
  expect(house.dump()).toBe(before);
});

test('bare weights are those of the one load that dries', () => {
  const house = openTestHouse('2027-03-01 10:00');
  house.say('/recipe Lentil pot, 6 servings: 500 g red lentils; 500 g carrots; 1 l water');
  house.say('/batch lentil pot trays 500 510 490 g');
  house.at('2027-03-02 10:00');
  expect(house.say('180 183 178')).toContain('B1, Lentil pot: 541 g recorded.');
  const before = house.dump();
  house.say('room 312 at 3');
  expect(house.dump()).toBe(before);
});

test('settings told together are all offered by one tap, where a word of one is not understood', () => {
  const house = openSeason();
  const before = house.dump();
  const answer = house.say('we live at 410 m by zorblax, dryer 5 trays 25 x 50 cm max 6 kg, absorbers 200');
  expect(answer).toContain('I did not understand "zorblax"');
  for (const said of ['altitude 410 m', 'dryer 5 trays of 25 x 50 cm, at most 6000 g', 'absorbers 200 ml'])
    expect(answer).toContain(said);
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toMatch(/altitude 410 m[^]*dryer 5 trays[^]*absorbers 200 ml/);
});

test('of several settings none is recorded while a word among them is not understood', () => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say('we live at 410 m, the dryer holds 5 trays 25 x 50, zorblax, absorbers 200')).toContain(
    'I did not understand "zorblax"',
  );
  expect(house.dump()).toBe(before);
});
