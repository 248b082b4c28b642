// Witness: what nobody may see is this project's promise, no source.
import { expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import { openSeason } from './season.ts';
import type { TestHouse } from './house.ts';

const commands = await readCommands();
const examples = commands.flatMap(({ examples: own }) => own);

/** Sends as somebody of one household; both have people and meals of the same names. */
async function ask(house: TestHouse, chatKey: string, text: string): Promise<string> {
  const { house: answerer, last } = house;
  const said = house.say(text, 'Ana', { chatKey, chatTitle: chatKey });
  // Long sums answer later.
  for (let i = 0; i < 500 && answerer.stores.messages.unfinished('terminal').length > 0; i += 1)
    await new Promise((resolve) => setTimeout(resolve, 10));
  const later = answerer.stores.messages.waiting('terminal');
  for (const { id } of later) answerer.stores.messages.sent(id);
  const files = [...last, ...later].flatMap(({ reply }) => reply.files ?? []);
  return [
    said,
    ...later.map(({ reply }) => JSON.stringify(reply)),
    ...files.map((f) => Buffer.from(f.base64, 'base64').toString('latin1')),
  ].join('\n');
}

/** The rows of one household, table by table. */
function rowsOf(house: TestHouse, household: number): string {
  return JSON.stringify(house.house.stores.of(household).exports.whole(0));
}

test('two households of the same names: no request shows or changes anything of the other', async () => {
  const house = openSeason();
  const mark = /zebra|1234 m|Quagga/i;
  const [ours, theirs] = [1, 2];
  // The other household has the same meal and people, and words of its own that must never show here.
  const other = [
    '/recipe Barley soup, 2 servings: 100 g pearl barley; 50 g butter',
    '/recipe Zebra stew, 2 servings: 100 g sugar; 900 g water',
    '/house altitude 1234 m',
    '/eater Noa child 5 no fish',
    '/eater Quagga guest',
    '/trip Zebra Lake 12-14 June dinner for all',
    '/batch zebra stew trays 500 g',
  ];
  for (const text of other) expect(await ask(house, 'other', text)).not.toContain('For example:');
  const before = rowsOf(house, theirs);
  expect(before).toMatch(/zebra/i);
  const own = [
    ...examples,
    '/stock',
    '/log 50 entries',
    '/eater',
    '/trip',
    '/want',
    '/house',
    '/export',
    '/recipe zebra stew',
    '/water zebra',
    '/pouch B1',
  ];
  for (const text of own) {
    const answer = await ask(house, 'test', text);
    // What somebody typed is quoted back to them.
    expect(answer.replaceAll(/zebra stew|"?zebra"?/g, ''), text).not.toMatch(mark);
  }
  expect(rowsOf(house, theirs)).toBe(before);
  const after = rowsOf(house, ours);
  // No example names these of ours.
  for (const { name, examples: asked } of commands)
    for (const text of name === 'chart' || name === 'label' ? [] : asked)
      expect(await ask(house, 'other', text), text).not.toMatch(/lentil pot|black beans|Rice and/i);
  expect(rowsOf(house, ours)).toBe(after);
  expect(house.faults).toEqual([]);
});
