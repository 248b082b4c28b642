import { expect, test } from 'vitest';
import { openOwnHouse, openTestHouse, type TestHouse } from './house.ts';

/**
 * A small invented household in the middle of a season. B1 barley soup and B4 lentil pot are dried and sealed in part,
 * B2 is being dried, B3 was sealed unchecked. Weights are chosen so that the sums can be done by hand.
 */
export function openSeason(): TestHouse {
  kept ??= playSeason();
  return openTestHouse(kept.now, {}, kept.file);
}

/** The same for a door or a clock, which write on their own account. */
export function openOwnSeason(): TestHouse {
  kept ??= playSeason();
  return openOwnHouse(kept.now, {}, kept.file);
}

let shared: TestHouse | undefined;

/**
 * The same household for one row of a table: a house that goes back to where the season ended when the row is done.
 * Several times quicker than a house of its own; not for rows that keep the house, or need a second one.
 */
export async function inSeason(work: (house: TestHouse) => unknown): Promise<void> {
  const house = (shared ??= openOwnSeason());
  house.db.exec('BEGIN');
  try {
    await work(house);
  } finally {
    await house.atRest();
    house.db.exec('ROLLBACK');
    house.at(kept!.now);
    house.faults.length = 0;
    house.last.length = 0;
  }
}

let kept: { now: string; file: Buffer } | undefined;

/** Played once for each test file; every test goes on from a copy. */
function playSeason(): { now: string; file: Buffer } {
  const house = openOwnHouse('2027-04-01 08:00');
  const told = (text: string, from = 'Ana') => {
    const answer = house.say(text, from);
    if (/For example:|Something broke|can be read|could be|Nothing is recorded/.test(answer))
      throw new Error(`${text}\n${answer}`);
  };
  told('/house dryer 4 trays 20 x 45 cm 4 kg');
  told('/house tray weight 512 g');
  told('/house pouch 20 x 30 cm foil');
  told('/house absorbers 100 300 500 ml');
  told('/recipe Barley soup, 6 servings: 300 g pearl barley; 4 carrots; 1 l vegetable stock; 1 tsp salt');
  told(
    '/recipe Lentil pot, 8 servings: 600 g red lentils; 400 g carrots; 200 ml double cream; 9 g salt; 1.8 l water',
  );
  told(
    '/recipe Rice and beans, 5 servings: 400 g long grain rice; 2 x 400 g tins black beans, drained; 1 onion',
  );
  told('/batch barley soup trays 500 500 g pot 1.15 kg');
  house.at(20);
  told('/weigh B1 150 150');
  house.at(3);
  told('/weigh B1 150 150');
  told('/seal 2 x 100 g B1');
  told('/batch rice and beans trays 600 g pot 900 g');
  told('/batch barley soup trays 700 g pot 1.15 kg');
  house.at(5);
  told('/weigh B3 300 g');
  told('/seal 1 x 100 g B3 unchecked');
  told('/batch lentil pot trays 750 750 750 750 g');
  house.at(22);
  told('/weigh B4 190 190 190 190');
  house.at(3);
  told('/weigh B4 190 190 190 190');
  told('/seal 6 x 95 g B4');
  told('/eater me', 'Ana');
  told('/eater me', 'Ben');
  told('/eater Noa child 7 no peanuts, no milk portion 0.6 sodium 1500');
  told('/eater Rosa guest');
  told('/trip Heron Lake 12-14 June dinner breakfast for all 1900 m');
  house.at(1);
  return { now: house.nowText(), file: house.db.serialize() };
}

/** Requests that must be refused: each gets a sentence that helps and an example, and no record changes. */
export function refuses(cases: readonly (readonly [typed: string, says: RegExp | string])[]): void {
  const house = openSeason();
  test.each(cases)('refuses %j', (typed, says) => {
    const before = house.dump();
    const answer = house.say(typed);
    expect(answer).toMatch(says);
    // Either a choice to press, or an example that works.
    const { buttons = [] } = house.last.at(-1)!.reply;
    if (buttons.length === 0)
      expect(answer).toMatch(
        /For example: \/|\/help|Which is meant|at the end records it|Nothing was recorded twice/,
      );
    expect(house.dump()).toBe(before);
    expect(house.faults).toEqual([]);
  });
}
