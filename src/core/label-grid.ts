import { Refusal } from './refusal.ts';
import { figure } from './within.ts';

/** Sides of the sheets, mm: ISO 216 A4 and US Letter, 8.5 x 11 in. */
export const papers = {
  a4: { called: 'A4', widthMm: 210, heightMm: 297 },
  letter: { called: 'US Letter', widthMm: 215.9, heightMm: 279.4 },
} as const;

export type Paper = keyof typeof papers;

/** How a sheet is cut into labels, mm. 'single': one label a page, the page its size. */
export interface LabelGrid {
  readonly paper: Paper | 'single';
  readonly columns: number;
  readonly rows: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly gapXMm: number;
  readonly gapYMm: number;
}

/** What a person told about their labels; the rest is filled in. */
export interface LabelsTold {
  readonly paper: Paper | 'single' | undefined;
  readonly cells: { readonly columns: number; readonly rows: number } | undefined;
  readonly sizeMm: { readonly width: number; readonly height: number } | undefined;
  readonly leftMm: number | undefined;
  readonly topMm: number | undefined;
  readonly gapMm: { readonly x: number; readonly y: number } | undefined;
}

/** One label a page, its page the label's size. */
export function singleLabel(widthMm: number, heightMm: number): LabelGrid {
  return {
    paper: 'single',
    columns: 1,
    rows: 1,
    widthMm,
    heightMm,
    leftMm: 0,
    topMm: 0,
    gapXMm: 0,
    gapYMm: 0,
  };
}

/** A grid in the middle of its page. */
export function centred(
  paper: Paper,
  columns: number,
  rows: number,
  widthMm: number,
  heightMm: number,
  gapXMm = 0,
  gapYMm = 0,
): LabelGrid {
  const page = papers[paper];
  const round = (mm: number) => Math.round(mm * 100) / 100;
  return {
    paper,
    columns,
    rows,
    widthMm,
    heightMm,
    leftMm: round((page.widthMm - columns * widthMm - (columns - 1) * gapXMm) / 2),
    topMm: round((page.heightMm - rows * heightMm - (rows - 1) * gapYMm) / 2),
    gapXMm,
    gapYMm,
  };
}

/** Measures in which sheets are commonly cut; common practice, no source. The first of a paper is its usual one. */
export const commonGrids: readonly LabelGrid[] = [
  centred('a4', 2, 7, 99.1, 38.1, 2.5),
  centred('a4', 3, 8, 63.5, 33.9, 2.5),
  centred('a4', 3, 7, 63.5, 38.1, 2.5),
  centred('a4', 2, 5, 99.1, 57, 2.5),
  centred('a4', 2, 4, 99.1, 67.7, 2.5),
  centred('letter', 2, 5, 101.6, 50.8, 4.8),
  centred('letter', 3, 10, 66.7, 25.4, 3.2),
  centred('letter', 2, 7, 101.6, 33.9, 4.8),
  centred('letter', 2, 3, 101.6, 84.7, 4.8),
];

/** Sheets are cut and fed to within half a millimetre. */
const slackMm = 0.5;

/** @throws Refusal 'grid-off-page' for labels that would leave the paper, 'grid-too-small' */
export function checkedGrid(grid: LabelGrid): LabelGrid {
  if (grid.widthMm < 40 || grid.heightMm < 20)
    throw new Refusal(
      'grid-too-small',
      `A label of ${grid.widthMm} x ${grid.heightMm} mm is too small to be read; 40 x 20 mm is the least.`,
    );
  if (grid.paper === 'single') return grid;
  const page = papers[grid.paper];
  const right = grid.leftMm + grid.columns * grid.widthMm + (grid.columns - 1) * grid.gapXMm;
  const bottom = grid.topMm + grid.rows * grid.heightMm + (grid.rows - 1) * grid.gapYMm;
  if (
    Math.min(grid.leftMm, grid.topMm, grid.gapXMm, grid.gapYMm) < 0 ||
    right > page.widthMm + slackMm ||
    bottom > page.heightMm + slackMm
  ) {
    const mm = (value: number) => Number(value.toFixed(1));
    throw new Refusal(
      'grid-off-page',
      `${grid.columns} x ${grid.rows} labels of ${grid.widthMm} x ${grid.heightMm} mm from ${mm(grid.leftMm)} mm left and ${mm(grid.topMm)} mm top would reach ${mm(right)} x ${mm(bottom)} mm; ${page.called} is ${page.widthMm} x ${page.heightMm} mm.`,
    );
  }
  return grid;
}

/** Room for all that a pouch's label says; chosen. */
const usualSingle = { width: 100, height: 60 };

/**
 * The grid that is meant: what was told, over the grid of the house.
 * @throws Refusal 'no-such-grid' for columns and rows that are not common and come without a size
 */
export function gridFrom(told: LabelsTold, house: LabelGrid): LabelGrid {
  const base = baseGrid(told, house);
  const grid = {
    ...base,
    leftMm: told.leftMm ?? base.leftMm,
    topMm: told.topMm ?? base.topMm,
  };
  return checkedGrid(grid);
}

function baseGrid({ paper: toldPaper, cells, sizeMm, gapMm }: LabelsTold, house: LabelGrid): LabelGrid {
  const toldSingle =
    toldPaper === 'single' || (house.paper === 'single' && toldPaper === undefined && !cells);
  if (toldSingle) {
    if (!sizeMm && house.paper === 'single') return house;
    const { width, height } = sizeMm ?? usualSingle;
    return singleLabel(width, height);
  }
  const paper = toldPaper ?? (house.paper === 'single' ? 'a4' : house.paper);
  if (sizeMm) {
    const { x, y } = gapMm ?? { x: 0, y: 0 };
    const fits = (page: number, side: number, gap: number) =>
      Math.max(1, Math.floor((page + gap + slackMm) / (side + gap)));
    return centred(
      paper,
      cells?.columns ?? fits(papers[paper].widthMm, sizeMm.width, x),
      cells?.rows ?? fits(papers[paper].heightMm, sizeMm.height, y),
      sizeMm.width,
      sizeMm.height,
      x,
      y,
    );
  }
  const found = cells
    ? [house, ...commonGrids].find(
        (grid) =>
          grid.columns === cells.columns &&
          grid.rows === cells.rows &&
          (toldPaper === undefined ? grid.paper !== 'single' : grid.paper === paper),
      )
    : house.paper === paper
      ? house
      : commonGrids.find((grid) => grid.paper === paper)!;
  if (!found) {
    const known = commonGrids
      .filter((grid) => grid.paper === paper)
      .map((grid) => `${grid.columns} x ${grid.rows}`);
    throw new Refusal(
      'no-such-grid',
      `I know ${papers[paper].called} sheets of ${known.join(', ')} labels. Of others tell me a label's size: ${cells!.columns} x ${cells!.rows} of 63.5 x 33.9 mm.`,
    );
  }
  if (!gapMm) return found;
  return centred(paper, found.columns, found.rows, found.widthMm, found.heightMm, gapMm.x, gapMm.y);
}

/** 'A4, 2 x 7 labels of 99.1 x 38.1 mm'. */
export function sayGrid(grid: LabelGrid): string {
  const size = `${figure(grid.widthMm)} x ${figure(grid.heightMm)} mm`;
  if (grid.paper === 'single') return `single labels of ${size}`;
  return `${papers[grid.paper].called}, ${grid.columns} x ${grid.rows} labels of ${size}`;
}

/** Every label of a sheet along its rows, mm from the page's top left corner. */
export function placesOf(
  grid: LabelGrid,
): { readonly xMm: number; readonly yMm: number; readonly widthMm: number; readonly heightMm: number }[] {
  return Array.from({ length: grid.columns * grid.rows }, (_, i) => ({
    xMm: grid.leftMm + (i % grid.columns) * (grid.widthMm + grid.gapXMm),
    yMm: grid.topMm + Math.floor(i / grid.columns) * (grid.heightMm + grid.gapYMm),
    widthMm: grid.widthMm,
    heightMm: grid.heightMm,
  }));
}
