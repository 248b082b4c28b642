import { openFaces } from './faces.ts';
import type { StockFacts } from './facts.ts';
import { chart, colours } from './look.ts';
import { type Body, type Mark, picture, type Picture, textMark, wrapped } from './picture.ts';

const namesPx = 330;
const headPx = 84;
const rowLeastPx = 58;
const mostColumns = 8;
const monthNames = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** A stretch of best-by time: a month, or where there are many, a quarter or a year. */
interface Column {
  readonly key: string;
  readonly says: readonly [string, string];
  readonly isPast: boolean;
}

interface Row {
  readonly meal: string;
  readonly lines: readonly string[];
  readonly heightPx: number;
  readonly pouches: ReadonlyMap<string, number>;
}

const undated: Column = { key: '-', says: ['no', 'best-by'], isPast: false };

const keyers: readonly ((month: string) => string)[] = [
  (month) => month,
  (month) => `${month.slice(0, 4)} ${Math.floor((Number(month.slice(5)) - 1) / 3)}`,
  (month) => month.slice(0, 4),
];

function says(key: string): readonly [string, string] {
  const [year, quarter] = key.split(' ');
  if (quarter !== undefined) {
    const first = Number(quarter) * 3;
    return [`${monthNames[first]}–${monthNames[first + 2]}`, year!];
  }
  return key.length === 4 ? ['in', key] : [monthNames[Number(key.slice(5)) - 1]!, key.slice(0, 4)];
}

/** The finest division of time that leaves columns wide enough to read; years past the last are put together. */
function columnsOf({ cells, nowMonth }: StockFacts): {
  columns: Column[];
  keyOf: (month: string | null) => string;
} {
  const months = [...new Set(cells.flatMap(({ month }) => (month === null ? [] : [month])))].toSorted();
  const hasUndated = cells.some(({ month }) => month === null);
  const most = mostColumns - Number(hasUndated);
  const keyer = keyers.find((one) => new Set(months.map(one)).size <= most) ?? keyers.at(-1)!;
  const keys = [...new Set(months.map(keyer))];
  const kept = keys.slice(0, most);
  const late = keys.length > most ? kept.at(-1) : undefined;
  const columns = kept.map((key): Column => {
    const [first, second] = says(key);
    return {
      key,
      says: key === late ? [second, 'and later'] : [first, second],
      isPast: key < keyer(nowMonth),
    };
  });
  return {
    columns: hasUndated ? [...columns, undated] : columns,
    keyOf: (month) => {
      if (month === null) return undated.key;
      const key = keyer(month);
      return late !== undefined && key > late ? late : key;
    },
  };
}

/** How many pouches of each meal are there, by the time they should be eaten; several pictures where one is too small. */
export async function drawStock(facts: StockFacts): Promise<Picture[]> {
  const meals = [...new Set(facts.cells.map(({ meal }) => meal))];
  await openFaces([...meals, ...monthNames, 'no best-by in and later past –']);
  const { columns, keyOf } = columnsOf(facts);
  const lineStep = chart.textPx * chart.lineHeight;
  const rows = meals.map((meal): Row => {
    const set = wrapped(meal, chart.textPx, namesPx - 24, 'bold');
    const pouches = new Map<string, number>();
    for (const cell of facts.cells) {
      if (cell.meal !== meal) continue;
      const key = keyOf(cell.month);
      pouches.set(key, (pouches.get(key) ?? 0) + cell.pouches);
    }
    return { meal, lines: set, heightPx: Math.max(rowLeastPx, set.length * lineStep + 20), pouches };
  });
  const pages = paged(rows, chart.mostHeightPx - 400);
  const mostPouches = Math.max(...rows.flatMap(({ pouches }) => [...pouches.values()]));
  return Promise.all(
    pages.map((page, i) =>
      picture(
        pages.length === 1 ? facts.title : `${facts.title} (${i + 1} of ${pages.length})`,
        facts.caption,
        (widthPx) => stockBody(page, columns, mostPouches, widthPx),
      ),
    ),
  );
}

/** Rows in pictures of at most so many pixels. */
export function paged<T extends { readonly heightPx: number }>(rows: readonly T[], mostPx: number): T[][] {
  const pages: T[][] = [];
  let heightPx = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    if (heightPx + row.heightPx > mostPx) {
      pages.push([]);
      heightPx = 0;
    }
    pages.at(-1)!.push(row);
    heightPx += row.heightPx;
  }
  return pages;
}

function stockBody(
  rows: readonly Row[],
  columns: readonly Column[],
  mostPouches: number,
  widthPx: number,
): Body {
  const cellPx = (widthPx - namesPx) / columns.length;
  const lineStep = chart.textPx * chart.lineHeight;
  let top = headPx;
  const tops = rows.map(({ heightPx }) => {
    const at = top;
    top += heightPx;
    return at;
  });
  const cells = rows.flatMap((row, r) =>
    columns.flatMap(({ key, isPast }, c) => {
      const pouches = row.pouches.get(key) ?? 0;
      return pouches === 0
        ? []
        : [
            {
              meal: row.meal,
              column: key,
              pouches,
              isPast,
              x: namesPx + c * cellPx + 3,
              y: tops[r]! + 3,
              width: cellPx - 6,
              height: row.heightPx - 6,
            },
          ];
    }),
  );
  return {
    heightPx: top,
    spec: {
      data: [{ name: 'cells', values: cells }],
      scales: [
        // Dark at the top in grey print too; the figure in the cell says the same.
        { name: 'shade', type: 'linear', domain: [0, mostPouches], range: ['#e6f1f8', '#00456b'] },
      ],
      marks: [
        ...columns.flatMap(({ says: [first, second], isPast }, c): Mark[] => {
          const x = namesPx + (c + 0.5) * cellPx;
          const more = { align: 'center', bold: isPast, name: 'column' } as const;
          return [
            textMark(isPast ? `past: ${first}` : first, x, 30, more),
            textMark(second, x, 30 + lineStep, more),
          ];
        }),
        ...rows.flatMap(({ lines: set, heightPx }, r): Mark[] => [
          {
            type: 'rule',
            encode: {
              enter: {
                x: { value: 0 },
                x2: { value: widthPx },
                y: { value: tops[r]! },
                stroke: { value: colours.rule },
                strokeWidth: { value: chart.gridPx },
              },
            },
          },
          ...set.map((text, i) =>
            textMark(text, 0, tops[r]! + heightPx / 2 + (i - (set.length - 1) / 2) * lineStep + 10, {
              bold: true,
              name: 'meal',
            }),
          ),
        ]),
        {
          type: 'rect',
          name: 'cell',
          from: { data: 'cells' },
          encode: {
            enter: {
              x: { field: 'x' },
              y: { field: 'y' },
              width: { field: 'width' },
              height: { field: 'height' },
              fill: { scale: 'shade', field: 'pouches' },
              stroke: { value: colours.ink },
              strokeWidth: { value: chart.gridPx },
            },
          },
        },
        {
          type: 'text',
          name: 'count',
          from: { data: 'cells' },
          encode: {
            enter: {
              x: { signal: 'datum.x + datum.width / 2' },
              y: { signal: 'datum.y + datum.height / 2 + 11' },
              text: { field: 'pouches' },
              align: { value: 'center' },
              fontSize: { value: chart.textPx + 4 },
              fontWeight: { value: 'bold' },
              fill: {
                signal: `datum.pouches > ${mostPouches * 0.68} ? '${colours.paper}' : '${colours.ink}'`,
              },
            },
          },
        },
      ],
    },
  };
}
