import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { openFoods } from '#store/foods.ts';

/** The food table is read in once and then opened by every test file, as later starts of the program do. */
export const foodTablePath = join(
  import.meta.dirname,
  '..',
  'node_modules',
  '.cache',
  'tray-to-trail',
  'foods.db',
);

export default function readFoodTable(): void {
  mkdirSync(join(foodTablePath, '..'), { recursive: true });
  openFoods(foodTablePath).close();
}
