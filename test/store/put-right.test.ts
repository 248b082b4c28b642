// Witness: none outside; that nothing recorded is lost is this project's promise.
import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';

test('what a line, a pot or a weight said before it was put right stays in the journal', () => {
  const house = openTestHouse();
  house.say('/recipe Barley soup, 6 servings: 300 g pearl barley; 400 g carrots; 1 l water');
  house.say('/recipe barley soup pot 1.6 kg');
  house.say('/batch barley soup trays 800 g');
  house.say('/recipe barley soup line 2: 450 g carrots');
  house.say('/recipe barley soup pot 1.65 kg');
  house.say('/weigh B1 500 g');
  house.say('/fix B1 tray 1 510 g');
  const before = (table: string) =>
    house.db
      .prepare(
        'SELECT before_json FROM row_change WHERE table_name = ? AND before_json IS NOT NULL ORDER BY id',
      )
      .pluck()
      .all(table)
      .map((json) => JSON.parse(json as string) as Record<string, unknown>);
  expect(before('recipe_line')).toContainEqual(
    expect.objectContaining({ typed: '400 g carrots', grams: 400 }),
  );
  expect(before('recipe')).toContainEqual(expect.objectContaining({ pot_g: 1600 }));
  expect(before('weighing')).toContainEqual(expect.objectContaining({ net_g: 500 }));
});
