// Witness: 95 g of the lentil pot gave up 280 ml (2240 g for 760 g); shares by portions, worked by hand.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openSeason } from '../season.ts';
import { tries } from '../ring.ts';

describe('until it is rated one starts with less', () => {
  test('at the seal, on the card, for the water and on the label', async () => {
    const house = openSeason();
    expect(house.say('/water B4-2')).toContain('start with 240 ml of boiling water, up to 280 ml (1⅛ cups).');
    expect(house.say('/pouch B4-2')).toContain('Water: start with 240 ml, up to 280 ml (1⅛ cups).');
    house.say('/weigh B4 190 g');
    expect(house.say('/seal 1 x 95 g B4')).toContain('Water: start with 240 ml, up to 280 ml (1⅛ cups).');
  });
  test('rated, it is one figure', () => {
    const house = openSeason();
    house.say('/rate B4-1 28 ml more');
    expect(house.say('/water B4-2')).toContain('pour 310 ml (1¼ cups) of boiling water.');
  });
});

describe('ratings count from what was poured, and an evening once', () => {
  test('two at one table say it twice, and it counts once', () => {
    const house = openSeason();
    house.say('/rate B4-1 28 ml more');
    house.at(0.5);
    expect(house.say('/rate B4-1 28 ml more', 'Ben')).toContain(
      'Learnt from 1 rated meal: 10 % more than by weight.',
    );
    expect(house.say('/water B4-3')).toContain('Exactly 308.0 ml.');
  });
  test('they disagree: the middle of the evening', () => {
    const house = openSeason();
    house.say('/rate B4-1 28 ml more');
    house.say('/rate B4-1 28 ml less', 'Ben');
    expect(house.say('/water B4-3')).toContain('Exactly 280.0 ml.');
  });
  test('said how much was poured, it counts from there', () => {
    const house = openSeason();
    // 240 + 40 ml are what it should have had.
    house.say('/rate B4-1 poured 240 ml, 40 ml more');
    expect(house.say('/water B4-3')).toContain('Exactly 280.0 ml.');
  });
  test('not said, it is said from what it was counted', () => {
    expect(openSeason().say('/rate B4-1 28 ml more')).toContain(
      'Counted from 280 ml poured. Was it another amount?',
    );
  });
  test('in a sentence', () => {
    const house = openSeason();
    expect(house.say('I poured 240 ml on B4-1, it needed 40 ml more')).toContain('Noted for Lentil pot.');
    expect(house.say('/water B4-3')).toContain('Exactly 280.0 ml.');
  });
});

describe('how long it stands', () => {
  test.each([
    ['/rate B4-1 still crunchy', 20],
    ['/rate B4-1 mushy', 10],
    ['/rate B4-1 10 min longer', 25],
    ['/rate B4-1 not soft enough', 20],
    ['B4-1 was still crunchy', 20],
  ])('%s: %d min', (typed, minutes) => {
    const house = openSeason();
    expect(house.say(typed)).toContain(`Next time it stands ${minutes} min at home.`);
    expect(house.say('/water B4-2')).toContain(`let stand ${minutes} min (as you rated it)`);
  });
  test('pieces stand longer until it is rated', () => {
    const house = openSeason();
    house.say('/recipe Stew, 4 servings: 500 g carrots, in chunks; 200 g red lentils; 600 ml water');
    expect(house.say('/water stew for 2')).toContain('let stand 20 min (longer for pieces, common practice)');
  });
  test('on the days of a trip at its altitude', () => {
    const house = openSeason();
    house.say('/trip Pine Hut 4-5 April for all 2400 m');
    expect(house.say('/water B4-2')).toContain('at 0 m.');
    house.at('2027-04-04 12:00');
    expect(house.say('/water B4-2')).toContain('boils at 92.0 °C at 2400 m (Pine Hut).');
    expect(house.say('/water B4-2 at 300 m')).toContain('at 300 m.');
    house.at('2027-04-06 12:00');
    expect(house.say('/water B4-2')).toContain('at 0 m.');
  });
});

describe('cold', () => {
  test.each([
    ['/water B4-2 cold', 'Cold, at 10 °C: about 1 h 50 min'],
    ['/water B4-2 cold soak 20 C', 'Cold, at 20 °C: about 1 h 25 min'],
    ['/water lentil pot for 1 in cold water', 'of cold water, up to'],
    ['how much cold water for B4-2?', 'Cold, at 10 °C'],
    ['can I soak B4-2 in cold water?', 'Cold, at 10 °C: about 1 h 50 min'],
    ['water for B4-2 in cold water', 'Cold, at 10 °C'],
  ])('%s', (typed, says) => {
    const answer = openSeason().say(typed);
    expect(answer).toContain(says);
    expect(answer).toContain('Only water that is fit to drink');
    expect(answer).not.toMatch(/boils at|Boiling water burns/);
  });
  test('what was dried raw is cooked, cold or not', () => {
    const house = openSeason();
    house.say('/recipe Mince, 4 servings: 500 g ground beef, raw; 300 g onions');
    house.say('/batch mince raw trays 400 g');
    house.at(20);
    house.say('/weigh B5 120 g sure');
    house.at(3);
    house.say('/weigh B5 120 g sure');
    house.say('/seal 1 x 60 g B5 unchecked');
    const answer = house.say('/water B5-1 cold');
    expect(answer.startsWith('RAW: soak, then cook in a pot')).toBe(true);
    expect(answer).not.toContain('Cold, at');
  });
});

describe("several eaters' mugs", () => {
  test('shared by portions', () => {
    // Noa 0.6 of Ana's 1: 95 g and 280 ml by 1.6.
    expect(openSeason().say('/water B4-2 for Ana and Noa')).toContain(
      'Into mugs, by portions: Ana 59 g dry and 175 ml; Noa 36 g dry and 105 ml.',
    );
  });
  test.each(['/water B4-2 mugs', '/water B4-2 for everybody', 'how much water for B4-2 in mugs?'])(
    '%s',
    (typed) => {
      expect(openSeason().say(typed)).toMatch(/Into mugs, by portions: Ana .*; Ben .*; Noa .*; Rosa /);
    },
  );
  test('split between two is shared, and no seal came open', () => {
    const house = openSeason();
    const before = house.dump();
    expect(house.say('split B4-2 between Ana and Noa')).toContain('Into mugs, by portions: Ana 59 g dry');
    expect(house.dump()).toBe(before);
  });
  test('law: the shares are the pouch', () => {
    const portions = fc.array(fc.integer({ min: 2, max: 40 }), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(portions, (twentieths) => {
        const house = openSeason();
        const names = ['Ana', 'Ben', 'Noa', 'Rosa'].slice(0, twentieths.length);
        names.forEach((name, i) => house.say(`/eater ${name} portion ${twentieths[i]! / 20}`));
        const line = /Into mugs, by portions: (.*)\./.exec(
          house.say(`/water B4-2 for ${names.join(' and ')}`),
        )![1]!;
        const sum = (unit: RegExp) => [...line.matchAll(unit)].reduce((all, m) => all + Number(m[1]), 0);
        // Each is rounded: grams to 1 g, water to 5 ml and never to none.
        expect(Math.abs(sum(/([\d.]+) g dry/g) - 95)).toBeLessThanOrEqual(names.length);
        expect(Math.abs(sum(/(\d+) ml/g) - 280)).toBeLessThanOrEqual(5 * names.length);
      }),
      { numRuns: tries(25) },
    );
  });
});
