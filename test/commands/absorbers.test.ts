// Witness: oxygen by the published air (20.95 %), absorbers combined and counted by hand.
import { describe, expect, test } from 'vitest';
import { openSeason } from '../season.ts';

/** The rest of B1, 100 g, and of B4, 190 g, may be sealed within the hour. */
function withFreshRests() {
  const house = openSeason();
  house.say('/weigh B1 100 g');
  house.say('/weigh B4 190 g');
  return house;
}

describe('several sizes in one pouch', () => {
  test('300 + 500 for a jar of 2.4 l', () => {
    // 2400 ml less 60 g of food: 2358 ml of air, 494 ml of oxygen, times 1.5: 741 ml.
    const house = withFreshRests();
    const answer = house.say('/seal 1 x 60 g B1 jar 2.4 l');
    expect(answer).toContain('Absorber: 500 + 300 ml (494 ml of oxygen');
    expect(house.say('/pouch B1-3')).toContain('absorber 500 + 300 ml.');
    expect(house.say('which absorber does B1-3 have?')).toContain('B1-3: 500 + 300 ml.');
    house.say('/found B1-3 loose');
    expect(house.say('/found B1-3 resealed 60 g')).toContain(
      'A fresh absorber: 500 + 300 ml; the old one is spent.',
    );
  });
});

describe('packs counted, and counted down', () => {
  test.each([
    ['/house absorbers 20 x 300 ml', '300 ml: 20 counted'],
    ['/house absorbers 20 x 300', '300 ml: 20 counted'],
    ['/house absorbers 50 of 300 ml opened today', '300 ml: 50 counted, bag opened 2027-04-03'],
    ['/house absorbers 300 ml: 17 left', '300 ml: 17 counted'],
    ['/house absorbers 300 ml opened yesterday', '300 ml, bag opened 2027-04-02'],
    ['/house absorbers 20 x 300 ml and 10 x 500 ml', '300 ml: 20 counted; 500 ml: 10 counted'],
    ['/house absorbers 20 x 200 ml', 'absorbers 100, 200, 300 and 500 ml of oxygen; 200 ml: 20 counted'],
    ['/house absorbers 100 300 ml', 'absorbers 100 and 300 ml of oxygen.'],
    ['we have 50 absorbers of 300 ml', '300 ml: 50 counted'],
    ['we opened the 300 ml absorbers today', '300 ml, bag opened 2027-04-03'],
    ['our absorbers are 100 and 300 ml', 'absorbers 100 and 300 ml of oxygen.'],
  ])('%s', (typed, says) => {
    expect(openSeason().say(typed)).toContain(says);
  });
  test('sealing takes them off; undone, they are there again; sealed anew takes a fresh one', () => {
    const house = withFreshRests();
    house.say('/house absorbers 20 x 300 ml opened yesterday');
    // Two of 100 ml: none of those that were counted.
    expect(house.say('/seal 2 x 50 g B1')).not.toContain('left, bag');
    expect(house.say('/seal 1 x 95 g B4')).toContain('300 ml: 19 packs left, bag open since Fri 2 Apr.');
    house.say('/undo');
    expect(house.say('which absorbers do we have?')).toBeTruthy();
    expect(house.say('/seal 2 x 95 g B4')).toContain('300 ml: 18 packs left');
    house.say('/found B4-7 loose');
    house.say('/found B4-7 resealed 95 g');
    expect(house.say('what absorber for 60 g?')).toContain('300 ml: 17 packs left');
  });
  test('none left is said', () => {
    const house = withFreshRests();
    house.say('/house absorbers 1 x 300 ml');
    expect(house.say('/seal 2 x 95 g B4')).toContain('300 ml: none left as counted');
  });
  test.each(['/house absorbers 2.5 x 300 ml', '/house absorbers 9000 x 300 ml'])('%s is refused', (typed) => {
    const house = openSeason();
    const before = house.dump();
    expect(house.say(typed)).toContain('For example');
    expect(house.dump()).toBe(before);
  });
});

describe('measured once in a bowl of water', () => {
  test('holds for the next pouches of that meal, by weight, and says on which', () => {
    const house = withFreshRests();
    expect(house.say('/seal 1 x 50 g B1 pressed 200 ml')).toContain('about 200 ml as measured');
    expect(house.say('/seal 1 x 25 g B1')).toContain('about 100 ml as measured on B1-3');
    expect(house.say('/seal 1 x 25 g B1 jar 1 l')).toContain('about 1000 ml of jar');
    expect(house.say('/seal 1 x 95 g B4')).toContain('with the air pressed out');
  });
});
