import { assemble } from '#assemble.ts';
import { answer } from '#chat/answer.ts';
import { openFoods } from '#store/foods.ts';
import { openDatabase } from '#store/open.ts';
import { typed } from './typed.ts';

const db = openDatabase(':memory:');
const { house } = await assemble({ db, foods: openFoods(':memory:'), zone: 'UTC', log: () => undefined });
let count = 0;

/**
 * What an eater never eats once somebody has typed it to the bot.
 * @param said as people say it: 'no nuts', 'is coeliac'
 * @returns the recorded words; null when nothing was recorded
 */
export function neverOf(said: string): readonly string[] | null {
  count += 1;
  answer(
    house,
    typed(count, `/eater Pip child 7 ${said}`, Date.UTC(2027, 0, 1, 8) + count * 61_000, {
      chat: `bench ${count}`,
    }),
  );
  const row = db
    .prepare('SELECT id, household FROM eater WHERE name = ? ORDER BY id DESC LIMIT 1')
    .get('Pip') as { id: number; household: number } | undefined;
  if (!row || row.household === lastHousehold) return null;
  lastHousehold = row.household;
  return (
    house.stores
      .of(row.household)
      .eaters.all()
      .find(({ id }) => id === row.id)?.never ?? []
  );
}
let lastHousehold = -1;
