import { expect, test } from 'vitest';
import { openSeason } from '../season.ts';

// Witness: the figures that the recipe's and the pouch's own cards tell, multiplied by hand; salt is 2.54 times its sodium
// (IUPAC standard atomic weights of sodium and chlorine).
test('a season at a glance: sealed, eaten, thrown away, and salt beside what was bought', () => {
  const house = openSeason();
  house.say('/use B4-1');
  house.say('/discard B4-2 mouldy');
  expect(house.say('how did the season go?')).not.toContain('Beside');
  house.say(
    '/bring 2 trail risotto 120 g, 520 kcal, 1380 mg sodium, 380 ml boiling water, contains milk, for dinner, best by 2029-05',
  );
  const answer = house.say('how did the season go?');
  expect(answer).toMatch(/^Season 2027 at a glance: \d+ loads sealed in \d+ pouches, about \d+ servings\.$/m);
  expect(answer).toMatch(/^Eaten: 1 pouch, about \d+ servings?\.$/m);
  expect(answer).toMatch(/^Thrown away or lost: B4-2, \d+ servings?, \d+ g dry\.$/m);
  const [, salt] = /Beside Trail risotto, serving for serving: (\d+) g less salt, /.exec(answer) ?? [];
  const sodiumMg = Number(/([\d,]+) mg sodium/.exec(house.say('/recipe lentil pot'))![1]!.replace(',', ''));
  const servings = Number(/^Eaten: 1 pouch, about (\d+)/m.exec(answer)![1]);
  expect(Number(salt)).toBeGreaterThan(0);
  expect(Math.abs(Number(salt) - ((1380 - sodiumMg) * servings * 2.54) / 1000)).toBeLessThan(2);
  const before = house.dump();
  house.say('the season at a glance');
  expect(house.dump()).toBe(before);
});

test('a year of which nothing is on record', () => {
  expect(openSeason().say('how did the season 2019 go?')).toContain('Nothing is on record for 2019');
});
