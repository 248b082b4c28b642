// Worked by hand from the prices told; the prices and the household are invented.
import { describe, expect, test } from 'vitest';
import { readPrice } from '#words/price-parts.ts';
import { openTestHouse } from '../house.ts';
import { openSeason, refuses } from '../season.ts';

describe('a price as people say it', () => {
  test.each([
    ['red lentils 3.20 EUR per kg', 3.2, 'EUR', '1 kg red lentils'],
    ['red lentils cost 3,20 € a kilo', 3.2, 'EUR', '1 kilo red lentils'],
    ['red lentils are €3.20/kg', 3.2, 'EUR', '1 kg red lentils'],
    ['400 g tin chopped tomatoes 0.95', 0.95, '', '400 g tin chopped tomatoes'],
    ['paid 2.40 for 10 eggs', 2.4, '', '10 eggs'],
    ['eggs 2.40 for 10', 2.4, '', '10 eggs'],
    ['eggs 30 cents each', 0.3, '', '1 eggs'],
    ['milk 1.10 a litre', 1.1, '', '1 litre milk'],
    ['500 g butter is £3', 3, 'GBP', '500 g butter'],
    ['electricity 0.32 per kWh', 0.32, '', '1 kWh electricity'],
  ])('%s', (typed, price, currency, line) => {
    expect(readPrice(typed)).toEqual({ is: 'price', price, currency, line, isBare: false });
  });
  test('without an amount it is not known what it is the price of', () => {
    expect(readPrice('red lentils 3.20')).toMatchObject({ isBare: true });
  });
  test.each(['red lentils', '400 g tomatoes', 'B4-2 300 g'])('no price in %j', (typed) =>
    expect(readPrice(typed)).toBeUndefined(),
  );
});

/** The lentil pot: 600 g lentils, 400 g carrots, 200 ml cream, 9 g salt; 8 servings; B4-1 to B4-6 of 95 of 760 g dry. */
function priced() {
  const house = openSeason();
  house.say('/prices red lentils 3.00 EUR per kg');
  house.say('/prices carrots 1.50 a kg');
  return house;
}

test('a serving and a pouch cost what is known, and what is not is named', () => {
  const house = priced();
  // 1.80 for lentils and 0.60 for carrots: 2.40 for 8 servings.
  expect(house.say('what does a serving of the lentil pot cost?')).toBe(
    'Lentil pot: at least 0.30 EUR a serving, no price for double cream and salt.',
  );
  // A pouch is 95 of 760 g: an eighth.
  expect(house.say('what does B4-2 cost?').split('\n')[0]).toBe('B4-2, Lentil pot: at least 0.30 EUR.');
  house.say('/prices double cream 2.00 for 200 ml');
  house.say('/prices salt 0.00 per kg');
  house.say('/prices pouches 25.00 for 50');
  house.say('/prices absorbers 12.00 for 100');
  // 4.40 for 8 and a pouch of 0.50, an absorber of 0.12.
  expect(house.say('what does B4-2 cost?').split('\n')[0]).toBe('B4-2, Lentil pot: about 1.17 EUR.');
});

test('drying counts by the meter, else by the power of the dryer as the most', () => {
  const house = openTestHouse('2027-04-01 08:00');
  for (const said of [
    '/house pouch 20 x 30 cm foil',
    '/house absorbers 300 ml',
    '/recipe Rice cream, 4 servings: 400 g rice flour; 1.6 l water',
    '/prices rice flour 2.00 EUR per kg',
    '/prices electricity 0.50 per kWh',
    '/house watts 1000',
    '/dryer meter 4521.3 kWh',
    '/batch rice cream trays 1000 1000 g',
  ])
    house.say(said);
  house.at(20);
  house.say('/weigh B1 180 180 g');
  house.at(4);
  house.say('/weigh B1 180 180 g');
  house.say('/seal 4 x 90 g B1');
  // 24 h at 1 kW are 24 kWh, a quarter of them 6: 3.00 beside 0.20 of flour.
  expect(house.say('/pouch B1')).toContain("Drying took at most 24 kWh, by the dryer's power and its hours.");
  expect(house.say('what does B1-1 cost?')).toContain('drying: at most 3.00 EUR');
  expect(house.say('/dryer meter 4541.3 kWh')).toBe(
    'The meter shows 4541.3 kWh. 20 kWh since Thu 1 Apr 08:00.',
  );
  expect(house.say('/pouch B1')).toContain('Drying took 20 kWh by the meter.');
  expect(house.say('what does B1-1 cost?').split('\n')[0]).toBe('B1-1, Rice cream: about 2.70 EUR.');
});

test('a price is forgotten, put back and listed', () => {
  const house = priced();
  expect(house.say('/prices')).toBe('carrots: 1.50 EUR a kg\nred lentils, dry: 3.00 EUR a kg');
  expect(house.say('/prices carrots forget')).toBe('Price of carrots forgotten.');
  expect(house.say('/prices')).toBe('red lentils, dry: 3.00 EUR a kg');
  house.say('/undo');
  expect(house.say('/prices')).toContain('carrots: 1.50 EUR a kg');
});

refuses([
  ['/prices red lentils 3.20', /for how much: "per kg"/],
  ['/prices red lentils', /no price in it/],
  ['/prices moon dust 3.20 per kg', /I do not know what 1 kg moon dust weighs/],
  ['/prices carrots forget', /No price of "carrots" is on record/],
]);

test('two moneys do not add up', () => {
  const house = priced();
  expect(house.say('/prices salt $1.20 per kg')).toContain('Your other prices are in EUR');
});

test('a meter does not run backwards', () => {
  const house = openSeason();
  house.say('/dryer meter 4521.3');
  const before = house.dump();
  expect(house.say('/dryer meter 4500')).toContain('it does not run backwards');
  expect(house.dump()).toBe(before);
});

test('water alone costs nothing, and is no price of a meal', () => {
  const house = openSeason();
  house.say('/prices butter 9.00 EUR per kg');
  expect(house.say('what does a serving of the lentil pot cost?')).toBe(
    'Lentil pot: no price of what is in it.',
  );
});
