// Witness: what each tap says by its plain words, by hand.
import { expect, test } from 'vitest';
import { openTestHouse, type TestHouse } from '../house.ts';

function openPot(...lines: string[]): TestHouse {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no milk');
  house.say(['/recipe Barley pot, 4 servings', '300 g pearl barley', ...lines].join('\n'));
  return house;
}

function tap(house: TestHouse, label: string, from = 'Ana'): string {
  const at = house.last.flatMap(({ buttons }) => buttons).findIndex((one) => one.label.startsWith(label));
  expect(at, label).toBeGreaterThanOrEqual(0);
  return house.press(at + 1, from);
}

test('a line that nobody understands is no food by one tap: it goes to the method, for batches too', () => {
  const house = openPot('a love letter from grandma');
  house.say('/batch barley pot trays 500 g pot 600 g');
  expect(house.say('/recipe barley pot')).toContain('Noa: unknown');
  const answer = tap(house, '2: no food');
  expect(answer).toContain('"a love letter from grandma": no food, so it stands with the method now.');
  expect(house.say('/recipe barley pot')).toContain('Noa: clear');
  expect(house.say('/pouch B1')).toContain('Noa: clear');
  house.say('/undo');
  expect(house.say('/pouch B1')).toContain('Noa: unknown');
});

test('what was counted as food stays with the batches cooked from it', () => {
  const house = openPot('1 cup milk tea while it simmers');
  house.say('/batch barley pot trays 500 g pot 600 g');
  house.say('/recipe barley pot line 2 is wrong');
  tap(house, 'No food at all');
  expect(house.say('/pouch B1')).not.toContain('Noa: clear');
});

test.each(['/recipe barley pot line is wrong', 'a line of the barley pot is wrong'])(
  '%s: the lines are buttons, then what the line may be',
  (typed) => {
    const house = openPot('400 g chicken');
    expect(house.say(typed)).toContain('Which line of Barley pot is read wrongly?');
    expect(tap(house, '2: chicken breast')).toContain(
      '"400 g chicken" is read as chicken breast. What is it?',
    );
    const offered = house.last.flatMap(({ buttons }) => buttons.map(({ label }) => label));
    expect(offered).toContain('No food at all');
    expect(offered.length).toBeGreaterThan(1);
    expect(house.press(1)).toMatch(
      /^Line 2 of Barley pot: was (?:"400 g chicken", )?chicken breast 400 g, now /,
    );
  },
);

test.each([
  '/recipe barley pot line 2 is no food',
  'line 2 of the barley pot is not an ingredient',
  "/recipe barley pot line 2 isn't food",
])('%s: the tap of a grown-up decides', (typed) => {
  const house = openPot('a love letter from grandma');
  house.say('/eater me child 9', 'Ben');
  const before = house.dump();
  house.say(typed);
  expect(house.dump()).toBe(before);
  expect(tap(house, 'No food at all')).toContain('no food');
  house.say('/undo');
  expect(house.say(typed, 'Ben')).toContain('A grown-up has to say what is no food');
});

test.each([
  'is line 2 of the barley pot wrong?',
  'is line 2 of the barley pot no food?',
  'maybe line 2 of the barley pot is no food',
])('%s records nothing', (typed) => {
  const house = openPot('a love letter from grandma');
  const before = house.dump();
  house.say(typed);
  expect(house.dump()).toBe(before);
});
