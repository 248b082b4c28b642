import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import { openSeason } from '../season.ts';

const commands = await readCommands();
const folder = join(import.meta.dirname, '..', '..');

test('every file in commands/ is a request with a test of its own', () => {
  const files = readdirSync(join(folder, 'commands')).map((name) => name.replace(/\.ts$/, ''));
  expect(commands.map((c) => c.name).toSorted()).toEqual(files.toSorted());
  expect(files.filter((name) => !existsSync(join(import.meta.dirname, `${name}.test.ts`)))).toEqual([]);
});

/** Examples that need something to have happened first. */
const first: Record<string, string[]> = {
  '/weigh B4 humidity 24 %': ['/weigh B4 190 190 190 190'],
  '/seal 2 x 40 g B4 + 15 g milk powder': ['/weigh B4 190 g'],
  '/pick why B4-2': ['/pick'],
  '/pack': ['/pick keep'],
  '/pack B4-1 B4-2': ['/pick keep'],
  '/pack all': ['/pick keep'],
  '/pack not B4-2': ['/pick keep', '/pack all'],
  '/pack paper': ['/pick keep'],
  '/chart Heron Lake': ['/pick keep'],
  '/back B4-2 B4-3 returned, rest eaten': ['/pick keep'],
  '/back all eaten': ['/pick keep'],
  '/back B4-5 lost': ['/pick keep'],
  '/exchange saturday and sunday': ['/pick keep'],
  '/exchange saturday dinner and sunday dinner': ['/pick keep'],
  '/want not soup': ['/want soup'],
  '/shop home 200 g pearl barley': ['/shop barley soup x2'],
  '/shop got carrots': ['/shop barley soup x2'],
  '/shop done': ['/shop barley soup x2'],
  '/trip Heron Lake Rosa from saturday dinner': [],
};

test.each(commands.flatMap((c) => c.examples.map((example) => ({ command: c.name, example }))))(
  'the example $example works as it stands',
  async ({ command, example }) => {
    const house = openSeason();
    if (command === 'seal') undoUntil(house, 'pouch', 'pouch.batch');
    if (command === 'weigh') undoUntil(house, 'weighing', 'weighing.batch');
    for (const before of first[example] ?? []) await house.ask(before);
    const answer = await house.ask(example);
    expect(answer).not.toMatch(
      /For example: \/|Something broke|could not place|Which is meant|Is it right\?/,
    );
    expect(house.faults).toEqual([]);
  },
);

/** Takes back what came after B4 was loaded or dried, so that it can be weighed and sealed. */
function undoUntil(house: ReturnType<typeof openSeason>, table: string, batch: string): void {
  const rows = house.db
    .prepare(`SELECT count(*) FROM ${table} JOIN batch ON batch.id = ${batch} WHERE batch.no = 4`)
    .pluck();
  while (rows.get())
    // What must never be served to somebody is given up by a tap alone.
    if (house.say('/undo').includes('Nothing is changed yet')) house.press(1);
}
