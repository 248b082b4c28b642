import { allergens, kinds } from '#core/allergens.ts';
import { Refusal } from '#core/refusal.ts';
import { avoidanceNamed } from '#foods/avoided.ts';
import { forgiven, slips } from '#words/near.ts';
import type { House } from './house.ts';

/**
 * What is to be kept away must be something that recipes can be searched for; a slip of the pen must not pass.
 * @throws Refusal 'no-such-food'
 */
export function knownFood(house: Pick<House, 'foods'>, words: string, purpose: string): void {
  if (avoidanceNamed(words) !== undefined || house.foods.search(words, 1).length > 0) return;
  const near = [...allergens, ...kinds].find(
    (name) => slips(words, name, forgiven(words)) <= forgiven(words),
  );
  throw new Refusal(
    'no-such-food',
    `I know no food, allergen or diet called "${words}", so I could not ${purpose}. ${near === undefined ? 'Is it spelt right?' : `Perhaps ${near}?`}`,
  );
}
