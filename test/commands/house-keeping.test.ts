// Witness: the policy of core/bestby.ts, worked by hand; time and temperature add up (from memory).
import { describe, expect, test } from 'vitest';
import { openSeason } from '../season.ts';

/** The rest of B1, 100 g, may be sealed within the hour. */
function withFreshRest() {
  const house = openSeason();
  house.say('/weigh B1 100 g');
  return house;
}

describe('material and barrier decide first', () => {
  test.each([
    // 24 months from 3 April 2027.
    ['/seal 1 x 90 g B1', 'Best by Mar 2029: foil, dry by weight'],
    ['/seal 1 x 90 g B1 mylar', 'Best by Mar 2029'],
    ['/seal 1 x 90 g B1 jar 1 l', 'Best by Mar 2029: glass jar'],
    // 300 ml less 88.7 ml of oxygen; 1200 cm² let 0.584 ml in a day: 362 days, 11.9 months.
    ['/seal 1 x 90 g B1 clear bag', 'Best by Feb 2028: clear plastic'],
    ['/seal 1 x 90 g B1 vacuum bag', ': clear plastic'],
    ['/seal 1 x 90 g B1 foil no absorber', 'Best by Sept 2027'],
  ])('%s', (typed, says) => {
    expect(withFreshRest().say(typed)).toContain(says);
  });
  test('a hygrometer before sealing lengthens it', () => {
    const house = openSeason();
    house.say('/batch lentil pot trays 750 750 750 750 g');
    house.at(22);
    house.say('/weigh B5 190 190 190 190');
    house.at(3);
    house.say('/weigh B5 190 190 190 190');
    expect(house.say('/seal 1 x 95 g B5')).toContain("Longer with a hygrometer's word before sealing");
    house.say('/undo');
    house.say('/weigh B5 humidity 24 %');
    expect(house.say('/seal 1 x 95 g B5')).toContain('foil, measured dry, 13 % fat');
  });
  test('a pouch that nobody described counts as a clear bag, and is asked about', () => {
    const house = withFreshRest();
    house.say('/house pouch 20 x 30 cm');
    house.db.prepare("DELETE FROM setting WHERE name = 'pouch'").run();
    const answer = house.say('/seal 1 x 90 g B1');
    expect(answer).toContain('a pouch nobody described, counted as clear plastic');
    expect(answer).toContain('Longer with foil, if it is (/house pouch 20 x 30 cm foil)');
  });
});

describe('kinds of pouch', () => {
  test.each([
    ['/house pouch 18 x 26 cm clear', 'pouch 18 x 26 cm flat, clear plastic'],
    ['/house pouches are mylar', 'pouch 20 x 30 cm flat, foil'],
    ['/house pouch small 15 x 20 cm foil', 'small: 15 x 20 cm flat, foil'],
    ['/house pouch family 25 x 35 cm gusset 8 cm foil', 'family: 25 x 35 cm, gusset 8 cm, foil'],
    ['/house pouch family 25 x 35 cm, 8 cm gusset', 'family: 25 x 35 cm, gusset 8 cm'],
    ['/house jar 1 l', 'jar: 1000 ml, glass jar'],
    ['/house tin 2 l', 'tin: 2000 ml, tin'],
    ['/house pouch 1.5 l', 'pouch 1500 ml'],
    ['our small bags are 15 x 20 cm mylar', 'small: 15 x 20 cm flat, foil'],
    ['our bags are 15 x 20 cm clear', 'pouch 15 x 20 cm flat, clear plastic'],
    ['the bags are 20 x 30 cm with a 8 cm gusset', 'pouch 20 x 30 cm, gusset 8 cm'],
  ])('%s', (typed, says) => {
    expect(openSeason().say(typed)).toContain(says);
  });
  test('by its name at the seal', () => {
    const house = withFreshRest();
    house.say('/house pouch small 12 x 18 cm clear');
    house.say('/house jar 1 l');
    expect(house.say('/seal 1 x 30 g B1 small')).toContain('clear plastic');
    expect(house.say('/seal 1 x 30 g B1 in a jar')).toContain('about 1000 ml of jar');
    expect(house.say('/seal 1 x 30 g B1')).toContain(': foil');
  });
  test('a gusset makes it larger: 8 cm add 4 cm to the height', () => {
    const size = (typed: string) => Number(/at most (\d+) ml/.exec(openSeason().say(typed))![1]);
    expect(size('/house pouch 20 x 30 cm gusset 8 cm')).toBe(size('/house pouch 20 x 34 cm'));
  });
  test.each([
    ['/house pouch big blue shiny 20 x 30 cm', 'could not place'],
    ['/house pouch huge clear', 'not its size'],
  ])('%s is refused', (typed, says) => {
    const house = openSeason();
    const before = house.dump();
    expect(house.say(typed)).toContain(says);
    expect(house.dump()).toBe(before);
  });
});

describe('what is in stock follows', () => {
  test('another storage temperature moves its dates, by where it was kept before; taken back, too', () => {
    const house = openSeason();
    // 24 months at 20 °C are 12 at 30 °C.
    expect(house.say('/house storage 30 C')).toContain('B1-1 and B1-2 Mar 2029 → Mar 2028');
    const before = house.say('/stock');
    // Six months at 30 °C use half of twelve; half of 24 at 20 °C is left: 18 months in all.
    house.at(24 * 183);
    expect(house.say('/house storage 20 C')).toContain('B1-1 and B1-2 Mar 2028 → Sept 2028');
    house.say('/undo');
    expect(house.say('/stock')).toBe(before);
    house.say('/undo');
    expect(house.say('/stock')).toContain('best by Mar 2029: B1-1 and B1-2');
  });
  test.each(['we keep the pouches in the freezer at -18', 'we store them at -18 degrees'])('%s', (typed) => {
    const house = openSeason();
    expect(house.say(typed)).toContain('Noted: storage -18 °C.');
    expect(house.db.prepare('SELECT count(*) FROM promise').pluck().get()).toBe(0);
  });
  test('the same temperature again moves nothing', () => {
    expect(openSeason().say('/house storage 20 C')).toBe('Noted: storage 20 °C.');
  });
  test('what the usual pouch is made of reaches those sealed in it before anybody said', () => {
    const house = withFreshRest();
    house.db
      .prepare(
        "UPDATE setting SET value_json = json_set(value_json, '$.material', null) WHERE name = 'pouch'",
      )
      .run();
    const answer = house.say('/seal 1 x 90 g B1');
    expect(answer).toContain('counted as clear plastic');
    expect(house.say('/house pouch foil')).toMatch(/B1-3 [A-Z][a-z]+ 2028 → Mar 2029/);
    // Those of foil stay as they are.
    expect(house.say('/house pouch clear')).toBe(
      'Noted: pouch 20 x 30 cm flat, clear plastic, at most 2720 ml when full.',
    );
  });
  test('unchecked pouches get no date by it', () => {
    const house = openSeason();
    house.say('/house storage 5 C');
    expect(house.say('/pouch B3-1')).not.toContain('Best by');
  });
});
