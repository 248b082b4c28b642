import { expect, test } from 'vitest';
import { address } from '#chat/address.ts';
import { readParts } from '#chat/read-parts.ts';
import { questions } from '#questions/all.ts';
import { readCommands } from '#chat/registry.ts';
import { inSeason } from '../season.ts';
import type { RequestCase } from './case.ts';
import { seasonNames as names } from './names.ts';
import { eating } from './eating.ts';
import { kitchen } from './kitchen.ts';
import { people } from './people.ts';

const commands = await readCommands();

/** Without what is not there, and figures to nine places: factors of units are exact, sums of them nearly so. */
const plainly = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_, one: unknown) => (typeof one === 'number' ? Number(one.toPrecision(9)) : one)),
  );

const all: readonly RequestCase[] = [...eating, ...kitchen, ...people];

test('there are at least 200 requests', () => {
  expect(new Set(all.map(([typed]) => typed)).size).toBe(all.length);
  expect(all.length).toBeGreaterThanOrEqual(200);
});

const rows = all.map(([typed, name, parts, remarks]) => ({ typed, name, parts, remarks }));

test.each(rows)('reads $typed', ({ typed, name, parts, remarks }) => {
  const found = address(typed, true, { commands, questions }, () => names);
  expect(found.is === 'request' && found.main.command.name).toBe(name);
  if (found.is !== 'request') return;
  const read = readParts(found.main.command, found.main.words, names);
  expect(plainly(read.asked)).toEqual(plainly(parts));
  if (remarks) expect(read.remarks.join('\n')).toMatch(remarks);
  else expect(read.remarks).toEqual([]);
});

test('every one of them is answered, and what was assumed is in the answer', async () => {
  for (const [typed, , , remarks] of all)
    await inSeason(async (house) => {
      const answer = await house.ask(typed);
      expect(house.faults, typed).toEqual([]);
      expect(answer.length, typed).toBeGreaterThan(0);
      const isRefused = /For example: \//.test(answer);
      if (remarks && !isRefused) expect(answer, typed).toMatch(remarks);
    });
}, 60_000);
