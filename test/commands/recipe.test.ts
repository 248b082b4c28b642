import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason, refuses } from '../season.ts';

test('each line shows food, grams and water; a serving is in figures', () => {
  const house = openTestHouse();
  const answer = house.say('/recipe Plain lentils, 4 servings\n250 g red lentils\n1 tsp salt\n1 l water');
  expect(answer).toContain('1. 250 g red lentils → red lentils, dry, 250 g');
  // SR28 02047: 1 tsp of salt is 6.0 g with 2325.5 mg of sodium; lentils (6 or 7 mg/100 g) and water (4) bring 55.
  expect(answer).toContain('2. 1 tsp salt → salt, 6 g');
  expect(answer).toMatch(/A serving: .* 59[5-6] mg sodium/);
});

test('one line with semicolons or commas is a recipe too', () => {
  const house = openTestHouse();
  expect(house.say('/recipe Rice for 3: 200 g rice, 2 onions, chopped, 1/2 tsp salt')).toContain(
    '3. 1/2 tsp salt',
  );
});

test('a line without an amount is kept, counted as zero and named', () => {
  const house = openTestHouse();
  expect(house.say('/recipe Rice for 3: 200 g rice; salt to taste')).toContain(
    'salt to taste → salt, no amount: counted as 0',
  );
  expect(house.say('/recipe rice')).toContain('at least');
});

test('a line that is not understood is asked about, and its allergens are unknown', () => {
  const house = openTestHouse();
  const answer = house.say('/recipe Odd pot for 3: 200 g rice; 100 g zorblax');
  expect(answer).toMatch(/2\. 100 g zorblax → \?/);
  expect(answer).toContain('Allergens unknown because of: zorblax');
  expect(house.say('/recipe odd pot line 2: 100 g carrots')).toContain('No listed allergen');
});

test('a number that can be read two ways is asked about with both readings', () => {
  const house = openTestHouse();
  house.say('/recipe Rice for 8: 1,500 g rice');
  expect(house.press(1)).toMatch(/^Line 1 of Rice: was "1,500 g rice".*, now rice, dry 1500 g\./);
});

test('the weighed pot puts the boiled-away water into the sums', () => {
  const house = openTestHouse();
  house.say('/recipe Plain lentils, 4 servings: 250 g red lentils; 1 l water');
  // 250 g + 1 l (996 to 1002 g by the table's cup) less 1100 g.
  expect(house.say('/recipe plain lentils pot 1.1 kg')).toMatch(
    /1(4[5-9]|5[0-3]) g of water boiled away in the kitchen/,
  );
});

test('the pot also counts for a batch that is loaded and not sealed', () => {
  const house = openTestHouse();
  house.say('/recipe Plain lentils, 4 servings: 250 g red lentils; 1 l water');
  house.say('/batch plain lentils trays 550 g');
  expect(house.say('/recipe plain lentils pot 1.1 kg')).toContain('It holds for B1 too');
  expect(house.say('/pouch B1')).toContain('550 g wet');
});

test('a recipe sent anew replaces it; batches keep the older wording', () => {
  const house = openSeason();
  expect(house.say('/recipe Barley soup, 6 servings: 300 g pearl barley; 200 ml double cream')).toContain(
    'It replaces the recipe',
  );
  expect(house.say('/pouch B1-1')).not.toMatch(/Contains: .*milk/);
  expect(house.say('/recipe barley soup')).toMatch(/Contains: .*milk/);
});

test('method text below the ingredients is kept and not counted', () => {
  const house = openTestHouse();
  const answer = house.say(
    '/recipe Rice for 3\nIngredients:\n- 200 g rice\n- 1 onion\nMethod\n1. Fry the onion for 5 minutes.\n2. Add the rice and 500 ml of water.',
  );
  expect(answer).toContain('2. 1 onion');
  expect(answer).not.toContain('3. ');
  expect(answer).toContain('The method is kept');
});

test('names are kept as typed, in any script', () => {
  const house = openTestHouse();
  expect(house.say('/recipe Мамин <b>борщ</b> & co, 4 servings: 300 g beetroot')).toContain(
    'Recorded: Мамин <b>борщ</b> & co, 4 servings.',
  );
  expect(house.say('/recipe мамин')).toContain('<b>борщ</b>');
});

test('loose names find the recipe, and two candidates become buttons', () => {
  const house = openSeason();
  expect(house.say('/recipe lentl pot')).toContain('Lentil pot, 8 servings');
  house.say('/recipe Lentil salad, 2 servings: 100 g lentils');
  expect(house.say('/water 100 g lentil')).toContain('could be either of two meals');
  expect(house.press(1)).toContain('100 g Lentil');
});

test('a food that a line only names is shown, and blocks', () => {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no peanuts');
  const answer = house.say(
    '/recipe Chicken rice, 4 servings\n600 g chicken breast in peanut sauce\n300 g rice',
  );
  expect(answer).toContain('→ chicken breast, 600 g, 443 g of it water (named, not weighed: peanut sauce)');
  expect(answer).toContain('Contains: peanut');
  expect(answer).toContain('Noa: not for you: peanut (peanut sauce)');
});

test('a word not understood leaves verdicts open until one tap settles it for the house', () => {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no peanuts');
  const asked = house.say('/recipe Peas, 2 servings\n200 g Gronk peas');
  expect(asked).toContain('peas, 200 g, 158 g of it water ? What is "gronk"?');
  expect(asked).toContain('Noa: unknown, so not for you yet: peanut (peas)');
  expect(house.press(1)).toContain('Noa: clear');
  expect(house.say('/recipe More peas, 2 servings\n300 g Gronk peas')).toContain('Noa: clear');
});

const withMethod = `/recipe Rice pot, 4 servings
For the peanut sauce:
300 g rice
2 onions
Method:
Fry the onions until golden. Toast the rice, then salt the water. Stir in the cream.`;

test('foods of headings and method that no line has are quoted back and leave verdicts open', () => {
  const house = openTestHouse();
  house.say('/eater Noa child 6 no peanuts');
  const asked = house.say(withMethod);
  expect(asked).toContain('Headings or method name peanut sauce and cream, which no line has');
  expect(asked).toContain('unknown, so not for you yet: peanut (peanut sauce in the method)');
  const settled = house.press(1);
  expect(settled).toContain('Noted: peanut sauce is not in it.');
  expect(settled).toContain('Noa: clear');
  expect(settled).toContain('Headings or method name cream, which no line has');
  expect(house.say('/undo')).toContain('peanut sauce is not in it');
  expect(house.say('/recipe Rice pot: peanut sauce is in line 1')).toContain('not for you: peanut');
  expect(house.say('/recipe Rice pot line 3: 50 ml cream')).toContain('Contains: peanut, soy, milk');
  expect(house.say('/recipe Rice pot')).not.toContain('which no line has');
});

test('one tap says of all of them that they are not in it', () => {
  const house = openTestHouse();
  house.say(`${withMethod} Add the walnuts.`);
  expect(house.press(1)).toContain('Noted: peanut sauce, cream and walnut are not in it.');
});

refuses([
  ['/recipe Rice pot, 4 servings\nServes 6\n300 g rice', /I read 4 and 6 servings/],
  ['/recipe barley soup: tofu is not in it', /Of "tofu" nothing is open in Barley soup/],
  ['/recipe Nothing known', /I know no recipe "Nothing known"/],
  ['/recipe Soup of the day\n300 g barley', /not how many servings it makes/],
  ['/recipe , 4 servings: 300 g barley', /no name/],
  ['/recipe Soup, 0 servings: 300 g barley', /0 servings cannot be/],
  ['/recipe Soup, -4 servings: 300 g barley', /servings/],
  [`/recipe ${'long '.repeat(20)}, 4 servings: 300 g barley`, /does not fit on a pouch/],
  ['/recipe barley soup pot 0 kg', /above zero/],
  ['/recipe barley soup pot 100 g', /cannot be: the lines/],
  ['/recipe barley soup line 9: 300 g barley', /there is no line 9/],
  ['/recipe unheard line 1: 300 g barley', /I know no recipe "unheard"/],
]);

test.each([
  ['Rice pot\nServes 6 • Cook 40 min\n300 g rice\n2 onions', 6],
  ['Rice pot\nPrep 15 min\nCook 40 min\nYield: 4\n\nIngredients\n300 g rice\n2 onions', 4],
  ['Rice pot\nTotal time 1 h\n300 g rice\n2 onions\nfor 6', 6],
  ['Rice pot (serves 4)\nPrep 10 min\n300 g rice\n2 onions', 4],
  ['Rice pot for 6\n300 g rice\n2 onions', 6],
  ['Rice pot, 6 portions\nServes 6\n300 g rice\n2 onions', 6],
  ['Rice pot\nServes 4-6\n300 g rice\n2 onions', 5],
  ['Rice pot: serves 4; 300 g rice; 2 onions; cook 20 min', 4],
])('times and servings are no ingredients: %j', (typed, servings) => {
  const answer = openTestHouse().say(`/recipe ${typed}`);
  expect(answer).toContain(`Recorded: Rice pot, ${servings} servings.`);
  expect(answer).toMatch(/1\. 300 g rice.*\n2\. 2 onions.*\nThe pot/);
});
