import { command } from '#chat/command.ts';
import { ingredientsCost, priceMeant, sayMoney, thingKey, unpricedPhrase } from '#house/costs.ts';
import { nameKey } from '#house/figures.ts';
import type { House } from '#house/house.ts';
import { Refusal } from '#core/refusal.ts';
import { foldName } from '#foods/line.ts';
import type { Price } from '#store/prices.ts';
import { priceTold } from '#words/price-parts.ts';

const sayPrice = ({ called, per, amount, currency }: Price): string =>
  per === 'piece'
    ? `${called}: ${sayMoney(amount, currency)}`
    : `${called}: ${sayMoney(amount, currency)} a ${per}`;

/** What a serving of each meal that holds it costs now. */
function mealsWith(house: House, { key, currency }: Price): string[] {
  return house.recipes.names().flatMap((name) => {
    const recipe = house.recipes.find(nameKey(name))!;
    if (!recipe.lines.some((line) => foldName(line.called) === key)) return [];
    const { sum, unpriced } = ingredientsCost(house, recipe.lines);
    const each = sayMoney(sum / recipe.servings, currency);
    return [
      unpriced.length === 0
        ? `${name}: ${each} a serving.`
        : `${name}: ${each} a serving so far, ${unpricedPhrase(unpriced)}.`,
    ];
  });
}

export default command({
  name: 'prices',
  alsoCalled: ['price'],
  usage: '/prices [<thing> <price> per <amount>] · /prices <thing> forget',
  summary: 'what food, electricity, pouches and absorbers cost; a pouch is then reckoned from it',
  examples: [
    '/prices red lentils 3.20 EUR per kg',
    '/prices 400 g tin chopped tomatoes 0.95',
    '/prices electricity 0.32 per kWh',
    '/prices absorbers 12.00 for 100',
    '/prices',
  ],
  help: [
    'What has no price is named, never guessed. "What does B4-2 cost?" tells a pouch.',
    'Drying counts by the meter (/dryer meter 4521.3 at its start and end), else by the power of the dryer (/house watts 1200), which is the most it can be.',
  ],
  records: true,
  takes: { told: priceTold },
  run: ({ told }, house) => {
    if (told.is === 'list') return { is: 'list' as const, prices: house.prices.all() };
    if (told.is === 'forget') {
      if (!house.prices.forget(thingKey(house, told.what)))
        throw new Refusal('no-such-price', `No price of "${told.what}" is on record.`);
      return { is: 'forgotten' as const, what: told.what };
    }
    const price = priceMeant(house, told);
    house.prices.put(price, house.nowMs);
    return { is: 'told' as const, price, meals: mealsWith(house, price) };
  },
  say: (told) => {
    if (told.is === 'list')
      return {
        group:
          told.prices.length === 0
            ? 'No price is told yet: /prices red lentils 3.20 EUR per kg'
            : told.prices.map(sayPrice).join('\n'),
      };
    if (told.is === 'forgotten')
      return { group: `Price of ${told.what} forgotten.`, did: `forgot the price of ${told.what}` };
    const [first, ...others] = told.meals;
    return {
      group: [`Noted: ${sayPrice(told.price)}.`, ...(first === undefined ? [] : [first])].join('\n'),
      why: others,
      did: `noted ${sayPrice(told.price)}`,
    };
  },
});
