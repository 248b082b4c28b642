import { paged } from './chart-stock.ts';
import { openFaces } from './faces.ts';
import type { SeasonFacts } from './facts.ts';
import { chart, colours, marks } from './look.ts';
import { type Body, type Mark, picture, type Picture, textMark, wrapped } from './picture.ts';

const namesPx = 330;
const headPx = 56;
const rowLeastPx = 62;
const countPx = 54;
const barPx = 26;

/** What is counted: its heading says what its colour says. */
const columns = [
  { key: 'sealed', says: 'sealed', colour: colours.rule },
  { key: 'eaten', says: 'eaten', colour: marks.green },
  { key: 'left', says: 'left', colour: marks.blue },
  { key: 'wasted', says: 'thrown away', colour: marks.vermilion },
] as const;

interface Row {
  readonly lines: readonly string[];
  readonly heightPx: number;
  readonly of: SeasonFacts['rows'][number];
}

/** A season by meal: what was sealed, eaten and thrown away, and what is left; several pictures where one is too small. */
export async function drawSeason(facts: SeasonFacts): Promise<Picture[]> {
  await openFaces([...facts.rows.map(({ meal }) => meal), ...columns.map(({ says }) => says)]);
  const lineStep = chart.textPx * chart.lineHeight;
  const rows = facts.rows.map((of): Row => {
    const lines = wrapped(of.meal, chart.textPx, namesPx - 24, 'bold');
    return { lines, heightPx: Math.max(rowLeastPx, lines.length * lineStep + 20), of };
  });
  const most = Math.max(...facts.rows.flatMap((row) => columns.map(({ key }) => row[key])));
  const pages = paged(rows, chart.mostHeightPx - 460);
  return Promise.all(
    pages.map((page, i) =>
      picture(
        pages.length === 1 ? facts.title : `${facts.title} (${i + 1} of ${pages.length})`,
        facts.caption,
        (widthPx) => seasonBody(page, most, widthPx),
      ),
    ),
  );
}

function seasonBody(rows: readonly Row[], most: number, widthPx: number): Body {
  const cellPx = (widthPx - namesPx) / columns.length;
  const lineStep = chart.textPx * chart.lineHeight;
  const marksOf: Mark[] = columns.map(({ says }, c) =>
    textMark(says, namesPx + c * cellPx, 32, { name: 'column' }),
  );
  let top = headPx;
  for (const { lines, heightPx, of } of rows) {
    const middle = top + heightPx / 2;
    marksOf.push(rule(top, widthPx));
    lines.forEach((text, i) =>
      marksOf.push(
        textMark(text, 0, middle + (i - (lines.length - 1) / 2) * lineStep + 10, {
          bold: true,
          name: 'meal',
        }),
      ),
    );
    columns.forEach(({ key, colour }, c) => {
      const x = namesPx + c * cellPx;
      marksOf.push(
        textMark(String(of[key]), x + countPx - 14, middle + 10, {
          align: 'right',
          bold: true,
          name: 'count',
        }),
      );
      if (of[key] > 0)
        marksOf.push(
          bar(x + countPx, middle - barPx / 2, (of[key] / most) * (cellPx - countPx - 16), colour),
        );
    });
    top += heightPx;
  }
  return { heightPx: top, spec: { marks: marksOf } };
}

const bar = (x: number, y: number, width: number, colour: string): Mark => ({
  type: 'rect',
  name: 'bar',
  encode: {
    enter: {
      x: { value: x },
      y: { value: y },
      width: { value: width },
      height: { value: barPx },
      fill: { value: colour },
      stroke: { value: colours.ink },
      strokeWidth: { value: 1 },
    },
  },
});

const rule = (y: number, widthPx: number): Mark => ({
  type: 'rule',
  encode: {
    enter: {
      x: { value: 0 },
      x2: { value: widthPx },
      y: { value: y },
      stroke: { value: colours.rule },
      strokeWidth: { value: chart.gridPx },
    },
  },
});
