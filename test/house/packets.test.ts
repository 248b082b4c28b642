import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason } from '../season.ts';

const risotto =
  '/recipe Risotto\nServes 4\n400 g risotto rice\n1 l chicken stock\n150 ml white wine\n60 g parmesan\n1 onion';

function open() {
  const house = openTestHouse();
  house.say('/eater Noa child 7 egg allergy');
  return house;
}

test('from unknown to clear in three taps, from the answer itself', () => {
  const house = open();
  expect(house.say(risotto)).toContain('Noa: unknown, so not for you yet: egg');
  expect(house.press(1)).toContain('chicken stock: no egg (read by Ana, Sun 3 May 2026)');
  expect(house.press(1)).toContain('white wine: no egg');
  expect(house.press(1)).toContain('Noa: clear');
});

test('from unknown to blocked in one tap', () => {
  const house = open();
  house.say(risotto);
  expect(house.press(2)).toContain('Noa: not for you: egg (chicken stock)');
});

test('the same in one message a packet, and for recipes recorded afterwards', () => {
  const house = open();
  house.say('/our chicken stock contains celery, no egg, no milk');
  house.say('/our white wine is egg-free');
  house.say('/our parmesan contains no egg');
  expect(house.say(risotto)).toContain('Noa: clear');
  expect(house.say('/our')).toContain('chicken stock: contains celery; no egg, no milk (read by Ana');
});

test('later is later: nothing is recorded and nothing becomes clear', () => {
  const house = open();
  house.say(risotto);
  const before = house.dump();
  expect(house.press(3)).toContain('stays unknown');
  expect(house.dump()).toBe(before);
});

test('for one recipe alone', () => {
  const house = open();
  house.say('/recipe Soup, 4 servings: 1 l chicken stock');
  house.say('/recipe Stew, 4 servings: 1 l chicken stock; 300 g carrots');
  expect(house.say('/our chicken stock contains no egg in Soup')).toContain('For Soup alone');
  expect(house.say('/recipe soup')).toContain('Noa: clear');
  expect(house.say('/recipe stew')).toContain('Noa: unknown');
  expect(house.say('/our')).toContain('Nothing was taught yet');
});

test('what was recorded before is offered the change; a warning counts at once', () => {
  const house = open();
  house.say('/recipe Soup, 4 servings: 1 l chicken stock');
  expect(house.say('/our chicken stock contains no egg')).toContain('is not used yet in Soup');
  expect(house.say('/recipe soup')).toContain('Noa: unknown');
  house.say('/our chicken stock contains no egg');
  expect(house.press(1)).toContain('Soup, line 1: counted as the packet of chicken stock says');
  expect(house.say('/recipe soup')).toContain('Noa: clear');
  expect(house.say('/our chicken stock may contain egg')).toContain('counts at once in Soup');
  expect(house.say('/recipe soup')).toContain('Noa: unknown');
});

test('what was read is lifted by a tap only, and undone by /undo', () => {
  const house = open();
  house.say('/our chicken stock contains egg');
  const before = house.dump();
  expect(house.say('/our chicken stock contains no egg')).toContain('Nothing is changed yet');
  expect(house.say('/our chicken stock contains no egg sure')).toContain('Nothing is changed yet');
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('chicken stock: no egg');
  house.say('/undo');
  expect(house.say('/our')).toContain('chicken stock: contains egg');
  house.say('/our chicken stock forget');
  expect(house.say('/our')).not.toContain('chicken stock');
});

test('negation never turns round: no egg is no name of an egg', () => {
  const house = open();
  for (const typed of [
    '/our parmesan contains no egg',
    '/our parmesan is without egg',
    '/our parmesan has no egg',
  ])
    expect(house.say(typed)).toContain('parmesan: no egg');
  expect(house.say('/recipe P, 1 servings: 50 g parmesan')).toContain('Noa: clear');
});

test('a packet that denies what the food is made of, and one read by a child, are refused', () => {
  const house = open();
  const before = house.dump();
  expect(house.say('/our parmesan contains no milk')).toContain('made with milk');
  expect(house.say('/our soy sauce is gluten-free')).toContain('another food');
  expect(house.dump()).toBe(before);
  house.say('/eater me child 9', 'Kit');
  expect(house.say('/our chicken stock contains no egg', 'Kit')).toContain('A grown-up has to read');
  expect(house.say('/our chicken stock contains egg', 'Kit')).toContain('chicken stock: contains egg');
});

test('a gluten-free packet settles the diet, not a wheat allergy', () => {
  const house = openTestHouse();
  house.say('/eater Noa coeliac');
  house.say('/eater Pip wheat allergy');
  house.say('/our vegetable stock is gluten-free');
  const answer = house.say('/recipe Soup, 4 servings: 1 l vegetable stock; 2 carrots');
  expect(answer).toContain('Noa: clear');
  expect(answer).toContain('Pip: unknown');
});

test.each([
  '/our no egg in the stock',
  '/our chicken stock contains no whey',
  '/our gronk contains no egg',
  '/our chicken stock contains celery, no milk, egg',
])('nothing is kept of %s', (typed) => {
  const house = open();
  const before = house.dump();
  house.say(typed);
  expect(house.dump()).toBe(before);
});

test('the same from the answers about somebody and about the stock', () => {
  for (const typed of ['/eater Noa', '/stock for Noa']) {
    const house = openSeason();
    expect(house.say(typed)).toMatch(/Barley soup/);
    const answer = house.press(1);
    expect(answer).toContain('vegetable stock: no milk');
    expect(answer).toContain('Noa: clear');
    expect(house.say('/eater Noa')).toContain('Clear in stock: Barley soup');
  }
});
