// Witness: common practice, no source.
import { describe, expect, test } from 'vitest';
import { readCommands } from '#chat/registry.ts';
import { openSeason } from '../season.ts';
import { openTestHouse, type TestHouse } from '../house.ts';

const commands = await readCommands();

/** A house with something of everything: eaten pouches besides, and a kept plan. Played once. */
const kept = (async () => {
  const house = openSeason();
  house.say('/use B4-1');
  await house.ask('/pick');
  await house.ask('/pick keep');
  return { now: house.nowText(), file: house.db.serialize() };
})();
const open = async (): Promise<TestHouse> => {
  const { now, file } = await kept;
  return openTestHouse(now, {}, file);
};

const labels = (house: TestHouse) => house.last.flatMap(({ buttons }) => buttons.map(({ label }) => label));

describe('a request that comes alone, as from the menu', () => {
  test.each(commands.map(({ name }) => name))(
    '/%s answers, or asks with things of the house',
    async (name) => {
      const house = await open();
      const before = house.dump();
      await house.ask(`/${name}`);
      const reply = house.last[0]!.reply;
      expect(house.faults).toEqual([]);
      const isRefused = /I still need|What happened|Which |Who\?|Nothing is kept/.test(reply.group);
      if (name !== 'undo' && name !== 'shop') expect(house.dump()).toBe(before);
      if (isRefused) expect(labels(house)).not.toEqual([]);
      // Every thing that is offered goes on: with an answer, or with a question that the next words answer.
      const count = labels(house).length;
      for (let i = 1; isRefused && i <= count; i += 1) {
        const again = await open();
        await again.ask(`/${name}`);
        const pressed = again.last.flatMap(({ buttons }) => buttons)[i - 1]!;
        await again.ask('', 'Ana', { button: pressed.id });
        const next = again.last[0]!.reply;
        expect(again.faults).toEqual([]);
        if (/I still need|For example:/.test(next.group))
          expect(next.awaits ?? next.buttons, `${pressed.label}: ${next.group}`).toBeDefined();
      }
    },
  );

  test.each([
    ['/weigh', 'B2 Rice and beans', '366 g', 'B2, Rice and beans'],
    ['/batch', 'Lentil pot', '900 880 g', 'B5: Lentil pot'],
    ['/scale', 'Lentil pot', 'to 4 servings', 'Lentil pot times 0.5'],
    ['/rate', 'B4-1 Lentil pot', '20 ml more', 'Noted for Lentil pot'],
    ['/found', 'B4-2 Lentil pot', 'tight', 'B4-2'],
  ])('%s, then %s, then %s', async (name, thing, typed, said) => {
    const house = await open();
    house.say(name);
    const at = labels(house).indexOf(thing);
    expect(labels(house)).toContain(thing);
    house.press(at + 1);
    expect(house.last[0]!.reply.awaits?.person).toBe('ana');
    expect(house.say(typed)).toContain(said);
    expect(house.faults).toEqual([]);
  });

  test('the answer may bring the thing as well', async () => {
    const house = await open();
    house.say('/water');
    expect(house.say('B4-2')).toContain('B4-2 (95 g Lentil pot)');
  });
});

describe('what was asked of somebody', () => {
  test('is answered by them alone, and only next', async () => {
    const house = await open();
    house.say('/weigh B2');
    expect(house.say('366 g', 'Ben')).not.toContain('366 g recorded');
    expect(house.say('366 g')).toContain('366 g recorded');
    house.at(1);
    house.say('/weigh B2');
    house.say('/stock');
    const before = house.dump();
    house.say('200 g');
    expect(house.dump()).toBe(before);
  });

  test.each(['ate B4-2', 'how much water for B4-2?', '366 g?', 'never mind', '/water B4-2'])(
    '"%s" is no weighing',
    async (typed) => {
      const house = await open();
      house.say('/weigh B2');
      expect(house.say(typed)).not.toContain('366 g recorded');
      expect(house.faults).toEqual([]);
    },
  );

  test.each(['we ate B4-2', 'ate B4-2', 'B4-2 was eaten'])(
    '"%s" is eaten, though any words may be a reason for throwing away',
    async (typed) => {
      const house = await open();
      house.say('/discard');
      expect(house.say(typed)).toContain('Used: B4-2');
      house.say('/discard');
      expect(house.say('B4-3 seal failed')).toMatch(/B4-3/);
      expect(house.say('/stock lentil')).not.toContain('B4-3');
    },
  );

  test('"ate B4-2" is no question for its water', async () => {
    const house = await open();
    house.say('/water');
    expect(house.say('ate B4-2')).toContain('Used: B4-2');
  });
});
