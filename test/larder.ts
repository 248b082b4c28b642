import type { TestHouse } from './house.ts';

/**
 * Cooks, dries and seals a whole pot as a household would, message by message.
 * @param recipe as typed: 'Oat porridge, 6 servings: 300 g rolled oats; …'
 * @param servingsEach servings in each pouch, as near as the scale allows; the pot is sealed up
 * @returns the batch's number
 */
export function fill(house: TestHouse, recipe: string, servingsEach = 1): number {
  const told = (text: string): string => {
    const answer = house.say(text, 'Ana');
    if (/For example:|Something broke|could be|Nothing is recorded/.test(answer))
      throw new Error(`${text}\n${answer}`);
    return answer;
  };
  const name = recipe.split(',')[0]!;
  const servings = Number(/(\d+) servings/.exec(recipe)![1]);
  const potG = Number(/The pot: (\d+) g/.exec(told(`/recipe ${recipe}`))![1]);
  const trays = Math.ceil(potG / 900);
  const each = Math.floor(potG / trays);
  const loaded = told(`/batch ${name} trays ${Array.from({ length: trays }, () => each).join(' ')} g`);
  const no = Number(/^B(\d+)/.exec(loaded)![1]);
  const dryG = Number(/Expected dry: about (\d+) g/.exec(loaded)![1]);
  for (const hours of [24, 3]) {
    house.at(hours);
    told(`/weigh B${no} ${dryG} g`);
  }
  const pouchG = Math.floor((dryG * servingsEach) / servings);
  told(`/seal ${Math.floor(dryG / pouchG)} x ${pouchG} g B${no}`);
  return no;
}

/** A house with a dryer and pouches, and nothing cooked yet. */
export function readyToDry(house: TestHouse): TestHouse {
  house.say('/house dryer 4 trays 20 x 45 cm 4 kg', 'Ana');
  house.say('/house pouch 20 x 30 cm', 'Ana');
  house.say('/house absorbers 100 300 500 ml', 'Ana');
  return house;
}

export const dishes = {
  porridge:
    'Oat porridge, 6 servings: 480 g rolled oats; 120 g raisins; 90 g whole milk powder; 60 g sugar; 1.8 l water',
  soup: 'Carrot soup, 6 servings: 1.2 kg carrots; 2 onions; 30 g butter; 1.2 l water; 6 g salt',
  curry:
    'Lentil curry, 6 servings: 600 g red lentils; 400 ml coconut milk; 300 g rice; 400 g tin chopped tomatoes; 2 onions; 1.5 l water; 8 g salt',
  goulash:
    'Goulash, 6 servings: 900 g lean beef; 900 g potatoes; 3 onions; 2 red peppers; 40 g sunflower oil; 1 l water; 8 g salt',
  chilli:
    'Bean chilli, 6 servings: 3 x 400 g tins kidney beans, drained; 400 g rice; 2 x 400 g tins chopped tomatoes; 2 onions; 40 ml olive oil; 6 g salt',
  sauce: 'Peanut sauce, 6 servings: 250 g peanut butter; 200 ml coconut milk; 30 g sugar; 200 ml water',
  crisps: 'Strawberry crisps, 10 servings: 1 kg strawberries',
} as const;
