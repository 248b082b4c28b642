import { expect, test } from 'vitest';
import { labelsTold } from '#words/label-parts.ts';
import type { Names } from '#words/parts.ts';
import { Reading } from '#words/reading.ts';

/** Labels are read from the words alone: no name of the household is asked for. */
const names = {} as Names;

const nothing = {
  paper: undefined,
  cells: undefined,
  sizeMm: undefined,
  leftMm: undefined,
  topMm: undefined,
  gapMm: undefined,
};

test.each([
  ['A4 3 x 8', { paper: 'a4', cells: { columns: 3, rows: 8 } }],
  ['us letter', { paper: 'letter' }],
  ['single 100 x 60 mm', { paper: 'single', sizeMm: { width: 100, height: 60 } }],
  ['single 4 x 2 in', { paper: 'single', sizeMm: { width: 101.6, height: 50.8 } }],
  [
    'A4 3 x 8 of 63.5 x 33.9 mm gap 2.5 mm left 7 mm top 1.3 cm',
    {
      paper: 'a4',
      cells: { columns: 3, rows: 8 },
      sizeMm: { width: 63.5, height: 33.9 },
      gapMm: { x: 2.5, y: 0 },
      leftMm: 7,
      topMm: 13,
    },
  ],
] as const)('reads %j whole', (typed, value) => {
  const reading = new Reading(typed);
  expect(labelsTold.read(reading, names)).toEqual({ ...nothing, ...value });
  expect(reading.leftovers()).toEqual([]);
});

test('takes nothing from words about something else', () => {
  const reading = new Reading('lentil pot for Noa');
  expect(labelsTold.read(reading, names)).toBeUndefined();
  expect(reading.leftovers()).toEqual(['lentil pot', 'Noa']);
});

test.each([
  ['0 x 8', /no sheet I can follow/],
  ['3 x 2.5', /no sheet I can follow/],
  ['left 900 mm top 1 mm', /no margin/],
])('refuses %j', (typed, says) => {
  expect(() => labelsTold.read(new Reading(typed), names)).toThrow(says);
});
