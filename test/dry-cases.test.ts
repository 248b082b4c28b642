// Witness: the rules of the design ("a pouch without oxygen that is not dry can grow botulism"; steady lasts an hour,
// common practice). Weights are chosen so that the balance can be worked by hand.
import { describe, expect, test } from 'vitest';
import { type TestHouse, openTestHouse } from './house.ts';
import { openSeason } from './season.ts';
import { pagesOf } from './draw/page.ts';

const pdfOf = (house: TestHouse) => Buffer.from(house.last[0]!.reply.files![0]!.base64, 'base64');

/** Grits and water: 555 g of solids in 2800 g on four trays; 2245 g of water. */
function loadedStew(raw = '', first = '600 g red lentils'): TestHouse {
  const house = openTestHouse('2027-04-01 08:00');
  house.say('/house pouch 20 x 30 cm foil');
  house.say('/house absorbers 100 300 500 ml');
  house.say(`/recipe Stew, 8 servings: ${first}; 2.4 l water`);
  house.say(`/batch stew ${raw} trays 700 700 700 700 g`);
  house.at(20);
  return house;
}

function weighedTwice(house: TestHouse, eachG: number): string {
  house.say(`/weigh B1 ${eachG} ${eachG} ${eachG} ${eachG}`);
  house.at(2);
  return house.say(`/weigh B1 ${eachG} ${eachG} ${eachG} ${eachG}`);
}

const wetSigns = /Absorber: \d|Best by|best by/;

describe('a stopped pump', () => {
  // Twice 690 g: 98 % of the water that was loaded is still there.
  const stopped = (first?: string) => {
    const house = loadedStew('', first);
    return { house, answer: weighedTwice(house, 690) };
  };

  test('is no dryness at weighing', () => {
    const { answer } = stopped();
    expect(answer).toContain(
      'NOT DRY, though the weight is steady: by the recipe at least 79 % of it, fat left out, is still water (10 % is the most without oxygen), 98 % of all that was loaded.',
    );
    expect(answer).not.toMatch(/^Steady|Then, within the hour|hygrometer/m);
  });
  test('is not sealed, and nothing is recorded', () => {
    const { house } = stopped();
    const before = house.dump();
    for (const more of ['', ' sure', ' no absorber', ' pouch 20 x 30 cm']) {
      const answer = house.say(`/seal 4 x 600 g B1${more}`);
      expect(answer).toContain('B1 is not shown to be dry. NOT DRY');
      expect(answer).not.toMatch(wetSigns);
    }
    expect(house.dump()).toBe(before);
  });
  test('is UNCHECKED wherever it is seen once it is sealed so', async () => {
    const { house } = stopped();
    const sealed = house.say('/seal 4 x 600 g B1 unchecked');
    expect(sealed).toContain('Write on each: code, Stew, 2027-04-02, UNCHECKED.');
    expect(sealed).not.toMatch(wetSigns);
    expect(house.say('/stock')).toContain('keep frozen (UNCHECKED): B1-1 to B1-4');
    const card = house.say('/pouch B1-1');
    expect(card).toContain('UNCHECKED: not shown to be dry.');
    expect(card).not.toMatch(wetSigns);
    expect(house.say('/pouch B1')).toContain('NOT DRY, though the weight is steady');
    await house.ask('/label B1-1');
    const [page] = await pagesOf(pdfOf(house));
    expect(page!.text).toContain('UNCHECKED: not shown to be dry, keep frozen');
    expect(page!.text).not.toMatch(/[Bb]est by/);
    house.say('/eater me');
    house.say('/trip Heron Lake 12-13 June dinner for all');
    expect(house.say('/trip Heron Lake')).toContain('nothing free in stock is for it');
    expect(await house.ask('/pick')).toContain('nothing is in stock');
  });
  test('lines that could not be read do not switch it off, and are asked for', () => {
    const { house } = stopped('600 g flurbsauce');
    expect(house.say('/seal 4 x 600 g B1')).toContain(
      '"600 g flurbsauce" could not be read and counts as water. Put it right: /recipe Stew line 1:',
    );
    house.say('/recipe Stew line 2: 2400 g wombat');
    expect(house.say('/seal 4 x 600 g B1')).toContain('B1 is not shown to be dry');
  });
});

test('a quarter wet, and steady: 28 % of it is water', () => {
  const house = loadedStew();
  const answer = weighedTwice(house, 200);
  expect(answer).toContain('at least 28 % of it, fat left out, is still water');
  expect(answer).toContain('/weigh B1 humidity 24 %');
  expect(house.say('/seal 6 x 95 g B1')).toContain('B1 is not shown to be dry');
});

describe('what may stand against the balance', () => {
  const wet = () => {
    const house = loadedStew();
    weighedTwice(house, 166);
    house.say('/eater me');
    return house;
  };
  const jar = '/weigh B1 humidity 24 %';
  const word = '/weigh B1 vouch six pieces opened, crisp inside';

  test('a line put right: 700 g of lentils, not 600 g', () => {
    const house = wet();
    expect(house.say('/seal 6 x 95 g B1')).toContain('is not shown to be dry');
    house.say('/recipe stew line 1: 680 g red lentils');
    expect(house.say('/seal 6 x 95 g B1')).toContain('Best by Mar 2029');
  });
  test('a jar at 24 % and then a word in words, and it is shown for ever after', async () => {
    const house = wet();
    expect(house.say(word)).toContain('A word alone does not do');
    expect(house.say(jar)).toContain('B1, Stew: the jar shows 24 %: dry');
    expect(house.say('/seal 6 x 95 g B1')).toContain('is not shown to be dry');
    expect(house.say('/weigh B1 vouch yes')).toContain('Say what was seen');
    const shown = `DRY AGAINST ITS RECIPE: jar at 24 %, Ana's word on Fri 2 Apr 06:00: "six pieces opened, crisp inside".`;
    expect(house.say(word)).toContain(shown);
    const sealed = house.say('/seal 6 x 95 g B1');
    expect(sealed).toContain("Write on each: code, Stew, 2027-04-02, jar at 24 %, Ana's word.");
    expect(sealed).toContain(shown);
    expect(house.say('/pouch B1-1')).toContain(shown);
    expect(house.say('/pouch B1')).toContain(shown);
    expect(house.say('/stock')).toContain("(dry by jar at 24 %, Ana's word): B1-1 to B1-6");
    await house.ask('/label B1-1');
    const [page] = await pagesOf(pdfOf(house));
    expect(page!.text).toContain("Dry against its recipe: jar at 24 %, Ana's word");
  });
  test('taken back, it no longer stands', () => {
    const house = wet();
    house.say(jar);
    house.say(word);
    house.say('/undo');
    expect(house.say('/seal 6 x 95 g B1')).toContain('is not shown to be dry');
  });
  test('weighed again, all is open again', () => {
    const house = wet();
    house.say(jar);
    house.say(word);
    house.at(1);
    house.say('/weigh B1 166 166 166 166');
    expect(house.say('/seal 6 x 95 g B1')).toContain('is not shown to be dry');
  });
  test('a child does not vouch, nor somebody unknown', () => {
    const house = wet();
    house.say(jar);
    house.say('/eater me child 9', 'Pip');
    expect(house.say(word, 'Pip')).toContain('Vouching is for grown-ups; Pip is recorded as a child.');
    expect(house.say(word, 'Zoe')).toContain('/eater me');
    expect(house.say('/seal 6 x 95 g B1')).toContain('is not shown to be dry');
  });
  test('a damp jar refuses what scale and recipe call dry', () => {
    const house = loadedStew();
    expect(weighedTwice(house, 143)).toContain('Steady: nothing changed');
    expect(house.say('/weigh B1 hygrometer 64 %')).toContain(
      'NOT DRY: the hygrometer in the jar showed 64 %',
    );
    expect(house.say('/seal 6 x 90 g B1')).toContain('is not shown to be dry');
  });
  test.each([
    ['/weigh B1 humidity', /not what it shows/],
    ['/weigh B1 humidity 140 %', /140/],
    ['/weigh B1 humidity 24 % 166 166 166 166', /one at a time/],
    ['/weigh B1 pouch', /could not place "pouch"/],
  ])('%s is refused', (typed, says) => {
    const house = wet();
    const before = house.dump();
    expect(house.say(typed)).toMatch(says);
    expect(house.dump()).toBe(before);
  });
});

describe('a line put right after sealing', () => {
  const sealed = () => {
    const house = loadedStew();
    weighedTwice(house, 143);
    expect(house.say('/seal 6 x 90 g B1')).toContain('Best by Mar 2029');
    house.say('/eater me');
    house.say('/trip Heron Lake 12-13 June dinner for all');
    return house;
  };
  test('takes date, absorber and place from what it shows to be wet; taken back, they are there again', async () => {
    const house = sealed();
    await house.ask('/pick keep');
    house.say('/recipe stew line 1: 400 g red lentils');
    expect(house.say('/stock')).toMatch(/UNCHECKED/);
    expect(house.say('/stock')).not.toMatch(wetSigns);
    const card = house.say('/pouch B1-1');
    expect(card).toContain('UNCHECKED: sealed as dry, but by what is on record now it was not.');
    expect(card).not.toMatch(wetSigns);
    expect(card).not.toContain('absorber 2 x');
    expect(await house.ask('/pack')).toMatch(/B1-\d.*: UNCHECKED; not for a trip/);
    expect(await house.ask('/pick')).toContain('nothing is in stock');
    house.say('/undo');
    expect(house.say('/pouch B1-1')).toContain('Best by Mar 2029');
  });
});

test('a check weight put right after sealing takes date and absorber too, and a gram does not', () => {
  const house = loadedStew();
  weighedTwice(house, 143);
  house.say('/seal 6 x 90 g B1');
  house.say('/fix B1 tray 2 144 g');
  expect(house.say('/pouch B1-1')).toContain('Best by Mar 2029');
  house.say('/fix B1 tray 2 150 g');
  const card = house.say('/pouch B1-1');
  expect(card).toContain('UNCHECKED: sealed as dry');
  expect(card).not.toMatch(wetSigns);
  house.say('/undo');
  expect(house.say('/pouch B1-1')).toContain('Best by Mar 2029');
});

describe('steady does not last', () => {
  const dry = () => {
    const house = loadedStew();
    weighedTwice(house, 143);
    return house;
  };
  test('within the hour it is sealed, later it is weighed again', () => {
    const house = dry();
    house.at(1);
    expect(house.say('/seal 1 x 90 g B1')).toContain('Sealed B1-1');
    const later = dry();
    later.at(1.1);
    const before = later.dump();
    expect(later.say('/seal 1 x 90 g B1')).toContain(
      'B1 was weighed last at Fri 2 Apr 06:00, and steady lasts an hour',
    );
    expect(later.dump()).toBe(before);
    expect(later.say('/weigh B1 143 143 143 143')).toContain('Steady');
    expect(later.say('/seal 1 x 90 g B1')).toContain('Sealed B1-1');
  });
  test('one tray weighed again is not all of them', () => {
    const house = dry();
    house.at(6);
    house.say('/weigh B1 tray 2 143 g');
    expect(house.say('/seal 1 x 90 g B1')).toContain('weighed last at Fri 2 Apr 06:00');
  });
  test('what was sealed in time and typed later says when', () => {
    const house = dry();
    house.at(5);
    expect(house.say('/seal 1 x 90 g B1 at 06:30')).toContain('Sealed B1-1');
    expect(house.say('/seal 1 x 90 g B1 at 05:30')).toContain('weighed after that');
    expect(house.say('/seal 1 x 90 g B1 at 07:30')).toContain('steady lasts an hour');
  });
  test('moisture taken up is seen', () => {
    const house = dry();
    house.at(6);
    house.say('/weigh B1 146 146 146 146 sure');
    expect(house.say('/seal 1 x 90 g B1')).toContain('tray 1 gained 3 g in 6 h; dry food takes up moisture');
  });
  test('the rest is weighed by itself', () => {
    const house = dry();
    house.say('/seal 2 x 90 g B1');
    house.at(6);
    expect(house.say('/seal 1 x 90 g B1')).toContain('steady lasts an hour');
    expect(house.say('/weigh B1 396 g')).toContain(
      'The rest of B1 gained 4 g (the limit is 2 g): it took up moisture.',
    );
    expect(house.say('/seal 1 x 90 g B1')).toContain('gained 4 g');
    house.at(2);
    expect(house.say('/weigh B1 393 g')).toContain('the rest weighs 393 g, 392 g were left.');
    expect(house.say('/seal 1 x 90 g B1')).toContain('Sealed B1-3');
    expect(house.say('/weigh B1 280 g')).toContain('302 g of B1 should be left');
  });
  test('sealed unchecked it may be at any time', () => {
    const house = dry();
    house.at(30);
    const answer = house.say('/seal 1 x 90 g B1 unchecked');
    expect(answer).toContain('UNCHECKED');
    expect(answer).not.toMatch(wetSigns);
  });
});

describe('what is heard after the sealing', () => {
  const sealed = () => {
    const house = openSeason();
    expect(house.say('/pouch B4-2')).toContain('Best by');
    return house;
  };
  test.each(['/weigh B4 humidity 70 %', '/weigh B4 pieces cold'])(
    '%s: its pouches are UNCHECKED from then on',
    (said) => {
      const house = sealed();
      expect(house.say(said)).toContain('B4-1 to B4-6 count as UNCHECKED now');
      expect(house.say('/pouch B4-2')).toContain('UNCHECKED');
      expect(house.say('/pouch B4-2')).not.toContain('Best by');
      house.say('/undo');
      expect(house.say('/pouch B4-2')).toContain('Best by');
    },
  );
  test('a dry jar changes nothing, and makes no damp one good', () => {
    const house = sealed();
    expect(house.say('/weigh B4 humidity 24 %')).toContain('B4-1 to B4-6: nothing changes.');
    house.say('/weigh B4 humidity 70 %');
    expect(house.say('/weigh B4 humidity 24 %')).toContain('A jar of B4 showed 70 % before.');
    expect(house.say('/pouch B4-2')).toContain('UNCHECKED');
  });
  test('a word speaks for nothing any more', () => {
    expect(sealed().say('/weigh B4 vouch all crisp inside')).toContain(
      'a word now no longer speaks for them',
    );
  });
});
