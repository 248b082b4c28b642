import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';
import { dishes, fill, readyToDry } from '../larder.ts';

function house(...filled: readonly (keyof typeof dishes)[]): TestHouse {
  const made = readyToDry(openTestHouse('2027-05-01 08:00'));
  for (const dish of filled) fill(made, dishes[dish], 2);
  made.say('/eater Ana adult female 38', 'Ana');
  made.say('/eater Ben adult male 40', 'Ana');
  return made;
}

test('strawberry crisps and peanut sauce are no dinner', async () => {
  const made = house('crisps', 'sauce');
  made.say('/trip Hut 18-19 June dinner for all', 'Ana');
  const answer = await made.ask('/pick', 'Ana');
  expect(answer).toMatch(/NOT all are fed\.[^]*Ana: \d+ kcal short, nothing at 2 meals\./);
  expect(answer).toMatch(/Ana: Fri \d+ of 660 kcal, no dinner; Sat \d+ of 660 kcal, no dinner/);
  expect(answer).not.toContain('All are fed');
});

test('porridge is not dinner and goulash is not breakfast, until the house says so', async () => {
  const made = house('porridge', 'goulash');
  made.say('/trip Hut 18-19 June dinner breakfast for all', 'Ana');
  const answer = await made.ask('/pick', 'Ana');
  expect(answer).toMatch(/Hut, Fri 18 Jun:\nDinner: Goulash/);
  expect(answer).toMatch(/Hut, Sat 19 Jun:\nBreakfast: Oat porridge/);
  made.say('/use B1-1 B1-2 B1-3', 'Ana');
  expect(await made.ask('/pick', 'Ana')).toContain(
    'Nothing for Ana and Ben at Sat 19 Jun breakfast: nothing that is clear is for breakfast; "Goulash is for breakfast too" would change that.',
  );
  expect(made.say('goulash is for breakfast too', 'Ana')).toContain(
    'Goulash: for breakfast, lunch and dinner, was for lunch and dinner.',
  );
  expect(await made.ask('/pick', 'Ana')).toMatch(/Hut, Sat 19 Jun:\nBreakfast: Goulash/);
  expect(made.say('/undo', 'Ana')).toContain('said what Goulash is for');
  expect(await made.ask('/pick', 'Ana')).toContain('Nothing for Ana and Ben at Sat 19 Jun breakfast');
});

test('soup alone is told to be too little, in kcal a day, with what would mend it', async () => {
  const made = house('soup');
  made.say(`/recipe ${dishes.curry}`, 'Ana');
  made.say('/trip Hut 18-18 June lunch dinner for all', 'Ana');
  const answer = await made.ask('/pick', 'Ana');
  expect(answer).toMatch(/Short: Ana: Fri \d+ of 1320 kcal/);
  expect(answer).toMatch(/Short: Ben: Fri \d+ of 1680 kcal/);
  expect(answer).toMatch(/About \d serving(?:s)? more of Lentil curry would mend it: \/cook\./);
});

test('enough is said only of enough', async () => {
  const made = house('curry', 'goulash');
  made.say('/trip Hut 18-18 June lunch dinner for all', 'Ana');
  expect(await made.ask('/pick', 'Ana')).toContain('All are fed.');
});
