import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  centred,
  checkedGrid,
  commonGrids,
  gridFrom,
  papers,
  placesOf,
  type LabelsTold,
} from '#core/label-grid.ts';

const nothing: LabelsTold = {
  paper: undefined,
  cells: undefined,
  sizeMm: undefined,
  leftMm: undefined,
  topMm: undefined,
  gapMm: undefined,
};
const house = commonGrids[0]!;

// ISO 216: A4 is 210 x 297 mm. US Letter is 8.5 x 11 in.
test('papers have their published sides', () => {
  expect(papers.a4).toMatchObject({ widthMm: 210, heightMm: 297 });
  expect(papers.letter.widthMm).toBeCloseTo(8.5 * 25.4, 6);
  expect(papers.letter.heightMm).toBeCloseTo(11 * 25.4, 6);
});

test.each(commonGrids)('$paper $columns x $rows of $widthMm x $heightMm mm stays on its paper', (grid) => {
  expect(checkedGrid(grid)).toBe(grid);
});

test('labels run along the rows; by hand', () => {
  const grid = { ...centred('a4', 2, 3, 90, 50, 4, 2), leftMm: 10, topMm: 20 };
  expect(placesOf(grid).map(({ xMm, yMm }) => [xMm, yMm])).toEqual([
    [10, 20],
    [104, 20],
    [10, 72],
    [104, 72],
    [10, 124],
    [104, 124],
  ]);
});

test('labels never overlap and never leave the paper', () => {
  const side = fc.integer({ min: 40, max: 120 });
  const count = fc.integer({ min: 1, max: 6 });
  const gap = fc.integer({ min: 0, max: 10 });
  fc.assert(
    fc.property(count, count, side, side, gap, gap, (columns, rows, width, height, x, y) => {
      const grid = centred('a4', columns, rows, width, height, x, y);
      let fits = true;
      try {
        checkedGrid(grid);
      } catch {
        fits = false;
      }
      const places = placesOf(grid);
      const onPaper = places.every(
        (p) => p.xMm >= -0.01 && p.yMm >= -0.01 && p.xMm + width <= 210.51 && p.yMm + height <= 297.51,
      );
      expect(fits).toBe(onPaper);
      for (const [i, a] of places.entries())
        for (const b of places.slice(i + 1))
          expect(
            a.xMm + width <= b.xMm + 1e-9 || b.xMm + width <= a.xMm + 1e-9 || a.yMm + height <= b.yMm + 1e-9,
          ).toBe(true);
    }),
  );
});

test('what is told goes over what the house has', () => {
  expect(gridFrom(nothing, house)).toEqual(house);
  expect(gridFrom({ ...nothing, leftMm: 6, topMm: 12 }, house)).toEqual({ ...house, leftMm: 6, topMm: 12 });
  expect(gridFrom({ ...nothing, cells: { columns: 3, rows: 10 } }, house)).toMatchObject({
    paper: 'letter',
    heightMm: 25.4,
  });
  expect(gridFrom({ ...nothing, paper: 'letter' }, house)).toMatchObject({
    paper: 'letter',
    columns: 2,
    rows: 5,
  });
  expect(gridFrom({ ...nothing, paper: 'single' }, house)).toMatchObject({
    paper: 'single',
    widthMm: 100,
    heightMm: 60,
  });
  // 210 / 70 = 3 columns, 297 / 37 = 8.03 rows.
  expect(gridFrom({ ...nothing, sizeMm: { width: 70, height: 37 } }, house)).toMatchObject({
    columns: 3,
    rows: 8,
  });
});

test.each([
  [{ cells: { columns: 3, rows: 9 } }, /I know A4 sheets of 2 x 7/],
  [
    { cells: { columns: 3, rows: 8 }, sizeMm: { width: 90, height: 30 } },
    /would reach .* A4 is 210 x 297 mm/,
  ],
  [{ sizeMm: { width: 30, height: 15 } }, /too small to be read/],
] as const)('refuses %j', (told, says) => {
  expect(() => gridFrom({ ...nothing, ...told }, house)).toThrow(says);
});
