// Witness: what a loose, swollen or smelling pouch asks for is common practice, no source; weights by hand.
import { describe, expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason, refuses } from '../season.ts';

describe('the seal check', () => {
  test('tight is noted, and the seals are asked about no more', () => {
    const house = openSeason();
    expect(house.say('/found B4-1 to B4-6 tight')).toBe('B4-1 to B4-6, Lentil pot: tight, noted.');
    expect(house.say('/pouch B4-2')).toContain('Seal found tight Sat 3 Apr 2027.');
    expect(house.say('/stock')).toMatch(/Lentil pot: 6 pouches of 95 g, .* best by \w+ \d+: B4-1 to B4-6\./);
  });
  test.each(['B4-2 loose', 'B4-2 leaks', '/found B4-2 loose', 'the seal of B4-2 is loose'])('%s', (typed) => {
    const house = openSeason();
    expect(house.say(typed, 'Ana', { addressed: true })).toContain(
      'B4-2, Lentil pot: LOOSE. It let air and moisture in: no best-by and no trip until it is put right.',
    );
    expect(house.say('/pouch B4-2')).not.toContain('Best by');
  });
  test('"some are loose" asks which', () => {
    const house = openSeason();
    expect(house.say('/found B4-1 to B4-3 some loose')).toContain('Which of B4-1 to B4-3?');
    expect(house.press(2)).toContain('B4-2, Lentil pot: LOOSE');
  });
  test('a question records nothing', () => {
    const house = openSeason();
    const before = house.dump();
    house.say('/pouch B4-2');
    house.say('/found B4-1 to B4-3 some loose');
    expect(house.dump()).toBe(before);
  });
});

describe('a loose pouch', () => {
  const loose = () => {
    const house = openSeason();
    house.say('/found B4-2 loose');
    return house;
  };
  test('is in stock, named so, and on no trip', async () => {
    const house = loose();
    expect(house.say('/stock')).toContain('not for the shelf (LOOSE): B4-2.');
    for (const pick of [await house.ask('/pick'), await house.ask('/pick keep')])
      expect(pick).not.toMatch(/B4-2|B4-1 to/);
    expect(house.say('/water B4-2')).toContain('B4-2, LOOSE (Sat 3 Apr 2027): it let air in.');
  });
  test('that is kept for a trip is said to be unfit for it', async () => {
    const house = openSeason();
    await house.ask('/pick keep');
    const kept = /(B4-\d)[^;]* ☐/.exec(house.say('/pack'))![1]!;
    house.say(`/found ${kept} loose`);
    expect(house.say('/pack')).toContain(`${kept}: LOOSE; not for a trip.`);
  });
  test('dried on, weighed and sealed anew counts again, with its old date', () => {
    const house = loose();
    const date = /Best by [^(]+/.exec(openSeason().say('/pouch B4-2'))![0];
    expect(house.press(1)).toContain('B4-2: drying on.');
    expect(house.say('/found B4-2 resealed')).toContain('still need what it weighs now');
    expect(house.say('/found B4-2 resealed 99 g')).toContain(
      'B4-2 weighs 4 g more than the 95 g that went in (the limit is 1 g): water.',
    );
    expect(house.say('/found B4-2 resealed 80 g')).toContain('15 g are missing. Was some eaten?');
    const anew = house.say('/found B4-2 resealed 96 g');
    expect(anew).toContain('B4-2, Lentil pot: sealed anew at 96 g, as dry as it was. A fresh absorber:');
    expect(house.say('/pouch B4-2')).toContain(date);
    expect(house.say('/stock')).toContain('B4-1 to B4-6');
  });
  test('eaten or thrown away it is gone', () => {
    const house = loose();
    expect(house.press(2)).toContain('Used: B4-2 (Lentil pot).');
    house.say('/undo');
    expect(house.say('/discard B4-2 seal failed')).toContain(
      'Discarded: B4-2 (Lentil pot), because: seal failed',
    );
  });
  test('does not become tight by being called so', () => {
    const house = loose();
    const before = house.dump();
    expect(house.say('/found B4-2 tight')).toContain('B4-2 was found LOOSE; it is not "tight" now.');
    expect(house.say('/found B4-2 swollen at 2400 m')).toContain('B4-2 was found LOOSE');
    expect(house.dump()).toBe(before);
  });
  test('/undo takes a mistake back', () => {
    const house = loose();
    house.say('/undo');
    expect(house.say('/pouch B4-2')).toContain('Best by');
  });
  test('that was UNCHECKED stays so', () => {
    const house = openSeason();
    house.say('/found B3-1 loose');
    expect(house.say('/stock')).toContain('(UNCHECKED; LOOSE): B3-1');
    expect(house.say('/found B3-1 resealed 100 g')).toContain('It stays UNCHECKED: keep it frozen.');
    expect(house.say('/pouch B3-1')).toContain('UNCHECKED: not shown to be dry.');
  });
});

describe('swollen', () => {
  test('at home it is thrown away, and nothing makes it good', () => {
    const house = openSeason();
    expect(house.say('B4-3 is swollen', 'Ana', { addressed: true })).toContain(
      'SWOLLEN, do not eat. Gas that was not there when it was sealed is made by germs: throw it away unopened, no tasting.',
    );
    for (const typed of ['tight', 'loose', 'drying', 'opened', 'resealed 95 g'])
      expect(house.say(`/found B4-3 ${typed}`)).toContain('SWOLLEN, do not eat');
    expect(house.say('/use B4-3 half')).toContain('SWOLLEN, do not eat');
    expect(house.say('/pouch B4-3')).toContain('throw it away unopened; no tasting');
    expect(house.say('/discard B4-3 swollen')).toContain('Discarded: B4-3');
  });
  test('on the mountain it is thin air: the height is asked for, and said', () => {
    const house = openSeason();
    house.say('/found B4-3 swollen');
    expect(house.press(2)).toContain('How high are you? Such as: /found B4-3 swollen at 1900 m');
    expect(house.say('/found B4-3 swollen at 1900 m')).toContain(
      'B4-3: at 1900 m air takes 1.26 times the room it had at 0 m, where it was sealed.',
    );
    expect(house.say('/pouch B4-3')).toContain('Best by');
  });
  test('a hill is no mountain', () => {
    expect(openSeason().say('/found B4-3 swollen at 300 m')).toContain('SWOLLEN, do not eat');
  });
  test('during a trip its height is known', async () => {
    const house = openSeason();
    await house.ask('/pick keep');
    const kept = /(B\d-\d)[^;]* ☐/.exec(house.say('/pack'))![1]!;
    house.at('2027-06-13 12:00');
    expect(house.say(`/found ${kept} swollen on the mountain`)).toContain('at 1900 m air takes 1.26 times');
  });
});

test('what smells goes', () => {
  const house = openSeason();
  expect(house.say('B4-4 smells rancid', 'Ana', { addressed: true })).toContain(
    'Out with it, and no tasting',
  );
  expect(house.press(1)).toContain('Discarded: B4-4');
});

describe('half of one', () => {
  test('is eaten: the rest stays, opened', async () => {
    const house = openSeason();
    expect(house.say('we ate half of B4-2', 'Ana', { addressed: true })).toContain(
      'B4-2, Lentil pot: 48 g eaten, 48 g left in it, OPENED.',
    );
    expect(house.say('/stock')).toContain('1 pouch of 48 g, ½ serving, not for the shelf (OPENED): B4-2.');
    expect(house.say('/water B4-2')).toContain('B4-2 (48 g Lentil pot)');
    expect(await house.ask('/pick')).not.toMatch(/B4-2/);
    expect(house.say('/use B4-2 20 g')).toContain('20 g eaten, 28 g left in it');
    expect(house.say('/use B4-2 40 g')).toContain('What was eaten');
    expect(house.say('/found B4-2 resealed 28 g')).toContain('sealed anew at 28 g');
    // 190 g of the batch were never sealed, and that is what stays.
    expect(house.say('/pouch B4')).toContain('Sealed: B4-1 to B4-6, 570 g.\nUnsealed: 190 g.');
  });
  test('the whole of it by weight is the pouch', () => {
    expect(openSeason().say('/use B4-2 95 g')).toContain('Used: B4-2 (Lentil pot).');
  });
  test('of two at once cannot be', () => {
    expect(openSeason().say('/use B4-2 B4-3 half')).toContain('A part is eaten of one pouch at a time');
  });
});

describe('the unsealed rest', () => {
  test('is eaten in part and whole, and the balance holds', () => {
    const house = openSeason();
    expect(house.say('/use B4 30 g')).toContain('30 g of the unsealed rest eaten; 160 g of it is left.');
    expect(house.say('/use B4 200 g')).toContain('What was eaten');
    house.say('/weigh B4 160 g');
    expect(house.say('/seal 1 x 170 g B4')).toContain('this would be 170 g');
    expect(house.say('/seal 1 x 95 g B4')).toContain('65 g of B4 are left unsealed.');
    expect(house.say('we ate the rest of B4', 'Ana', { addressed: true })).toContain(
      '65 g of the unsealed rest eaten; nothing of it is left.',
    );
    expect(house.say('/use B4 rest')).toContain('Nothing of B4 is left unsealed.');
    house.say('/undo');
    expect(house.say('/discard B4 rest smelled off')).toContain(
      '65 g of the unsealed rest thrown away, because: smelled off; nothing of it is left.',
    );
  });
});

test('a household of another chat finds nothing here', () => {
  const house = openTestHouse();
  expect(house.say('/found B4-2 loose')).toContain('There is no batch B4');
});

refuses([
  ['/found', /Which pouch/],
  ['/found B4-2', /not how: tight, loose/],
  ['/found B4-9 loose', /no pouch B4-9/],
  ['/found B4-2 resealed 95 g', /is sealed and sound/],
  ['/found B4-2 loose 95 g', /A weight belongs to "resealed"/],
  ['/found B4-2 wombat', /could not place "wombat"/],
  ['/found B4-2 swollen on the mountain', /How high are you/],
]);
