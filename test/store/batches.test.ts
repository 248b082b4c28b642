import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';

test('the batches of a meal come newest first, of every wording of its recipe', () => {
  const house = openTestHouse();
  house.say('/recipe Barley soup, 6 servings: 300 g pearl barley; 400 g carrots; 1 l water; 6 g salt');
  house.say('/batch barley soup trays 500 g');
  house.say('/recipe barley soup line 2: 450 g carrots');
  house.say('/batch barley soup trays 600 g anew');
  house.say('/recipe Lentil pot, 4 servings: 300 g red lentils; 1 l water');
  house.say('/batch lentil pot trays 700 g');
  house.say('/batch barley soup trays 800 g anew');
  const household = house.db.prepare('SELECT id FROM household').pluck().get() as number;
  const { batches } = house.house.stores.of(household);
  const barley = batches.find(1)!.recipe.id;
  expect(batches.ofMeal(barley).map(({ no }) => no)).toEqual([4, 2, 1]);
  expect(batches.ofMeal(batches.find(4)!.recipe.id).map(({ no }) => no)).toEqual([4, 2, 1]);
});
