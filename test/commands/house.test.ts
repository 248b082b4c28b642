import { expect, test } from 'vitest';
import { openTestHouse } from '../house.ts';
import { openSeason, refuses } from '../season.ts';

test.each([
  ['/house altitude 1,200 ft', 'altitude 366 m'],
  ['/house altitude 340', 'altitude 340 m'],
  ['/house storage 59 F', 'storage 15 °C'],
  ['/house storage 15 degrees', 'storage 15 °C'],
  ['/house absorbers 0.3 l 100 ml', 'absorbers 100 and 300 ml of oxygen'],
  ['/house absorber safety 1.2', 'absorber safety 1.2'],
  ['/house pouch 1.5 l', 'pouch 1500 ml, foil'],
  ['/house tray weights 512 498 505 510 g', 'tray weight 512 g, 498 g, 505 g and 510 g'],
  ['/house dryer limit 4.5 kg', 'at most 4500 g a load'],
  ['/house units ounces', 'units ounces'],
  ['/house cup us', 'cup 237 ml'],
  ['/house zone lisbon', 'zone Europe/Lisbon'],
  ['/house steady 90 min', 'steady after two weighings 1.5 h apart'],
  ['/house moisture 2,5 %', 'moisture expected in dry food 2.5 %'],
  ['/house scale 0.1 g', 'scale to 0.1 g'],
  ['/house reminders off', 'reminders off'],
  ['/house remind seal check off', 'reminders weigh, best-by and trip, none at night'],
  ['/house remind best-by off', 'reminders weigh, seal check and trip, none at night'],
  ['/house no reminders of the weighing', 'reminders seal check, best-by and trip, none at night'],
  ['/house horizon 3 months', 'horizon 90 days before best-by'],
  ['/house horizon 2 weeks', 'horizon 14 days before best-by'],
])('%s', (typed, noted) => {
  expect(openSeason().say(typed)).toContain(noted);
});

test('without words it shows all', () => {
  const answer = openSeason().say('/house');
  expect(answer).toContain('dryer 4 trays of 20 x 45 cm, at most 4000 g a load');
  expect(answer).toContain('tray weight 512 g');
});

test('ounces come first for a household that weighs so', () => {
  const house = openSeason();
  house.say('/house units ounces');
  // 95 g = 3.351 oz (28.349523125 g an ounce, exact).
  expect(house.say('/water B4-2')).toContain('3.4 oz (95 g)');
});

test.each([
  ['/house tray 3 weight 502 g', 'tray weight 512 g, 512 g, 502 g and 512 g'],
  ['/house tray 3 502', 'tray weight 512 g, 512 g, 502 g and 512 g'],
  ['/house tray 3: 502 g, tray 4: 498 g', 'tray weight 512 g, 512 g, 502 g and 498 g'],
  ['/house the weight of tray 1 is 0.5 kg', 'tray weight 500 g, 512 g, 512 g and 512 g'],
])('one tray of several: %s', (typed, noted) => {
  const house = openSeason();
  expect(house.say(typed)).toBe(`Noted: ${noted}.`);
  expect(house.say('/house')).toContain(noted);
});

test('one tray of a house that told nothing of the others is refused', () => {
  const house = openTestHouse('2027-04-01 08:00');
  expect(house.say('/house tray 3 weight 502 g')).toContain('What the other trays weigh is not told yet.');
  house.say('/house tray weight 512 g');
  expect(house.say('/house tray 3 weight 502 g')).toContain('How many trays there are is not told yet.');
  expect(house.say('/house')).toContain('tray weight 512 g\n');
});

test.each([
  ['/house pouches 20x30 and 15x20', 'Which is the usual pouch?', ['20 x 30 cm', '15 x 20 cm']],
  ['/house pouches 8 x 12 in and 15x20 cm', 'Which is the usual pouch?', ['8 x 12 in', '15 x 20 cm']],
  ['/house pouch 20x30', 'I read 20 x 30, but not of what.', ['20 x 30 cm']],
  ['/house pouch 8 x 12', 'I read 8 x 12, but not of what.', ['8 x 12 cm', '8 x 12 in']],
  ['/house pouch 200 by 300', 'I read 200 x 300, but not of what.', ['200 x 300 mm']],
])('%s asks', (typed, asks, labels) => {
  const house = openSeason();
  const before = house.dump();
  expect(house.say(typed)).toContain(asks);
  expect(house.last.at(-1)!.reply.buttons!.map(({ label }) => label)).toEqual(labels);
  expect(house.dump()).toBe(before);
  expect(house.press(1)).toContain('Noted: pouch ');
});

refuses([
  ['/house wallpaper blue', /no setting of the house\. There are: altitude/],
  ['/house altitude', /no value/],
  ['/house altitude 9000 m', /The altitude has to be between -500 and 5500 m; it was 9000 m/],
  ['/house altitude 340 ml', /no value/],
  ['/house storage 90 C', /The storage temperature has to be between -40 and 50 °C; it was 90 °C/],
  ['/house cup 2 ml', /A cup has to be between 100 and 500 ml; it was 2 ml/],
  ['/house absorbers -100 ml', /An absorber has to be between 10 and 5000 ml; it was -100 ml/],
  ['/house absorbers', /no value/],
  ['/house tray 3', /no value/],
  ['/house tray 3 weight', /no value/],
  ['/house tray 9 weight 502 g', /There are 4 trays; there is no tray 9/],
  ['/house tray 3 weight 502 g 498 g', /tray 3, but 2 weights/],
  ['/house dryer 0 trays', /cannot be/],
  ['/house zone Atlantis', /no time zone "Atlantis"/],
  ['/house moisture 50 %', /The moisture left in dry food has to be between 0 and 10 %; it was 50 %/],
  ['/house units parsecs', /no value/],
  ['/house reminders', /no value/],
  ['/house remind birthdays off', /"birthdays" is none of them/],
  ['/house horizon 3 kg', /no value/],
  ['/house horizon 90 years', /no value/],
  ['/house horizon 900 days', /The horizon has to be between 1 and 730 days; it was 900 days/],
  ['/house altitude 340 m blue', /could not place "blue"/],
]);
