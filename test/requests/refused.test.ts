import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';
import { refused } from './refused.ts';

const house = openSeason();

test('there are at least 60 of them', () => expect(refused.length).toBeGreaterThanOrEqual(60));

test.each(refused)('asks about or refuses %j', (typed, says) => {
  const before = house.dump();
  const answer = house.say(typed);
  expect(answer).toMatch(says);
  const { buttons = [] } = house.last.at(-1)!.reply;
  // Either a choice to press, or an example that works.
  if (buttons.length === 0) expect(answer).toMatch(/\nFor example: \//);
  expect(house.dump()).toBe(before);
  expect(house.faults).toEqual([]);
});

test('each button of a question makes a request that is not asked about again', () => {
  for (const [typed, says] of refused) {
    if (!/can be read two ways/.test(String(says))) continue;
    for (const button of [1, 2]) {
      const own = openSeason();
      own.say(typed);
      expect(own.press(button), typed).not.toContain('can be read two ways');
    }
  }
});

/** Names that fit equally well. Witness: both hold the word that was typed, and no other word was. */
test.each([
  ['/want lentil pot for Tom', ['Tom Ash', 'Tom Birch']],
  ['/stock for Tom', ['Tom Ash', 'Tom Birch']],
  ['/trip Heron Lake without Tom', ['Tom Ash', 'Tom Birch']],
  ['/pick heron', ['Heron Lake', 'Heron Hill']],
  ['/cook heron', ['Heron Lake', 'Heron Hill']],
  ['/recipe soup', ['Barley soup', 'Pea soup']],
  ['/water soup for 2', ['Barley soup', 'Pea soup']],
])('%j becomes a button for each', async (typed, labels) => {
  const own = openSeason();
  own.say('/eater Tom Ash no eggs');
  own.say('/eater "Tom Birch" no eggs');
  own.say('/trip "Heron Hill" 1-2 July');
  own.say('/recipe Pea soup, 4 servings: 300 g split peas; 1 l water');
  const before = own.dump();
  const answer = await own.ask(typed);
  expect(answer).toContain('Which is meant?');
  expect(
    own.last
      .at(-1)!
      .reply.buttons!.map(({ label }) => label)
      .toSorted(),
  ).toEqual([...labels].toSorted());
  expect(own.dump()).toBe(before);
  expect(own.press(1)).not.toContain('Which is meant?');
});
