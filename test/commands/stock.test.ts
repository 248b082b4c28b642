import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('what is there, unchecked first, then oldest best-by first', () => {
  const lines = openSeason().say('/stock').split('\n');
  expect(lines[0]).toBe('9 pouches, about 11 servings:');
  expect(lines[1]).toContain('UNCHECKED');
  expect(lines.slice(2, 4).map((line) => line.split(':')[0])).toEqual(['Lentil pot', 'Barley soup']);
});

test('a meal, loosely named', () => {
  expect(openSeason().say('/stock lentl')).toMatch(/^Lentil pot: 6 pouches of 95 g/);
});

test('without an allergen: blocked is kept back, unknown is said', () => {
  const answer = openSeason().say('/stock no milk');
  expect(answer).toContain('Kept back: Lentil pot.');
  expect(answer).toMatch(/Barley soup: .* Unknown because of milk \(vegetable stock\)/);
});

test('for a person', () => {
  expect(openSeason().say('/stock for Noa')).toContain('Kept back: Lentil pot.');
});

test('before a month', () => {
  expect(openSeason().say('/stock before 2030-01')).toContain('Lentil pot');
  expect(openSeason().say('/stock lentil before 2027-06')).toContain('Nothing in stock fits that');
});

test('what a trip holds is named apart', async () => {
  const house = openSeason();
  await house.ask('/pick keep');
  expect(house.say('/stock')).toContain('Kept for Heron Lake: ');
});

refuses([['/stock before 2027-13', /no day or month of the calendar/]]);
