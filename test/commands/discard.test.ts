import { expect, test } from 'vitest';
import { openSeason, refuses } from '../season.ts';

test('the reason is kept as typed', () => {
  const house = openSeason();
  expect(house.say('/discard B4-3 seal failed <b>twice</b>')).toContain('because: seal failed <b>twice</b>.');
  expect(house.say('/log')).toContain('discarded B4-3 (Lentil pot): seal failed <b>twice</b>');
});

test('no reason is needed', () => {
  expect(openSeason().say('/discard B4-3')).toContain('Discarded: B4-3 (Lentil pot).');
});

refuses([
  ['/discard', /Which pouch/],
  ['/discard seal failed', /still need a pouch code/],
  ['/discard B7-1 bad', /no batch B7/],
]);
