import { paged } from './chart-stock.ts';
import { openFaces } from './faces.ts';
import type { TripFacts } from './facts.ts';
import { chart, colours, marks } from './look.ts';
import { type Body, type Mark, picture, type Picture, textMark, wrapped } from './picture.ts';

const namesPx = 190;
const daysPx = 130;
const headPx = 46;
const rowPx = 46;
const gapPx = 14;
/** Room for a figure behind the longest bar. */
const figurePx = 104;

type TripRow = TripFacts['rows'][number];

/** One eater's days; an eater with more days than a picture holds comes in several. */
interface Group {
  readonly who: string;
  readonly lines: readonly string[];
  readonly rows: readonly TripRow[];
  readonly heightPx: number;
}

const mostDays = 14;

/** Sodium and energy of each eater on each day, against what the day allows or needs. */
export async function drawTrip(facts: TripFacts): Promise<Picture[]> {
  const people = [...new Set(facts.rows.map(({ who }) => who))];
  await openFaces([...people, ...facts.rows.map(({ day }) => day), 'sodium, mg energy, kcal']);
  const lineStep = chart.textPx * chart.lineHeight;
  const groups = people.flatMap((who): Group[] => {
    const rows = facts.rows.filter((row) => row.who === who);
    const set = wrapped(who, chart.textPx, namesPx - 16, 'bold');
    return Array.from({ length: Math.ceil(rows.length / mostDays) }, (_, i) => {
      const some = rows.slice(i * mostDays, (i + 1) * mostDays);
      return {
        who,
        lines: set,
        rows: some,
        heightPx: Math.max(some.length * rowPx, set.length * lineStep) + gapPx,
      };
    });
  });
  const most = {
    sodium: Math.max(1, ...facts.rows.flatMap((row) => [row.sodiumMg, row.sodiumLimitMg ?? 0])),
    kcal: Math.max(1, ...facts.rows.flatMap((row) => [row.kcal, row.kcalNeed ?? 0])),
  };
  const pages = paged(groups, chart.mostHeightPx - 420);
  return Promise.all(
    pages.map((page, i) =>
      picture(
        pages.length === 1 ? facts.title : `${facts.title} (${i + 1} of ${pages.length})`,
        facts.caption,
        (widthPx) => tripBody(page, most, widthPx),
      ),
    ),
  );
}

function tripBody(groups: readonly Group[], most: { sodium: number; kcal: number }, widthPx: number): Body {
  const panelPx = (widthPx - namesPx - daysPx) / 2;
  const barPx = panelPx - figurePx;
  const lineStep = chart.textPx * chart.lineHeight;
  const words: Mark[] = [];
  const rules: Mark[] = [];
  const bars: object[] = [];
  let top = headPx;
  for (const { lines: set, rows, heightPx } of groups) {
    rules.push(rule(0, top - gapPx / 2, widthPx, top - gapPx / 2, colours.rule, chart.gridPx));
    set.forEach((text, i) => {
      words.push(textMark(text, 0, top + rowPx * 0.68 + i * lineStep, { bold: true, name: 'eater' }));
    });
    rows.forEach((row, r) => {
      const y = top + r * rowPx;
      words.push(textMark(row.day, namesPx, y + rowPx * 0.68, { name: 'day' }));
      bars.push(
        bar(row, 'sodium', row.sodiumMg, row.sodiumLimitMg, y),
        bar(row, 'kcal', row.kcal, row.kcalNeed, y),
      );
    });
    top += heightPx;
  }
  const at = { sodium: namesPx + daysPx, kcal: namesPx + daysPx + panelPx };
  return {
    heightPx: top,
    spec: {
      data: [{ name: 'bars', values: bars }],
      scales: [
        { name: 'sodium', type: 'linear', domain: [0, most.sodium], range: [at.sodium, at.sodium + barPx] },
        { name: 'kcal', type: 'linear', domain: [0, most.kcal], range: [at.kcal, at.kcal + barPx] },
      ],
      marks: [
        textMark('sodium, mg', at.sodium, 26, { bold: true, name: 'panel' }),
        textMark('energy, kcal', at.kcal, 26, { bold: true, name: 'panel' }),
        ...rules,
        ...words,
        ...(['sodium', 'kcal'] as const).flatMap((kind): Mark[] => barMarks(kind)),
      ],
    },
  };
}

function bar(row: TripRow, kind: 'sodium' | 'kcal', value: number, limit: number | null, y: number) {
  const isOver = kind === 'sodium' && limit !== null && value > limit;
  return {
    kind,
    who: row.who,
    day: row.day,
    value,
    limit,
    y,
    isOver,
    says: `${Math.round(value)}${isOver ? ' over' : ''}`,
  };
}

function barMarks(kind: 'sodium' | 'kcal'): Mark[] {
  const from = { data: `only-${kind}` };
  const inside = { y: { field: 'y', offset: 9 }, height: { value: rowPx - 18 } };
  return [
    {
      type: 'group',
      data: [
        {
          name: `only-${kind}`,
          source: 'bars',
          transform: [{ type: 'filter', expr: `datum.kind === '${kind}'` }],
        },
        {
          name: `limits-${kind}`,
          source: `only-${kind}`,
          transform: [{ type: 'filter', expr: 'datum.limit !== null' }],
        },
      ],
      marks: [
        {
          type: 'rect',
          name: `bar-${kind}`,
          from,
          encode: {
            enter: {
              x: { scale: kind, value: 0 },
              x2: { scale: kind, field: 'value' },
              ...inside,
              fill: {
                signal: `datum.isOver ? '${marks.vermilion}' : '${kind === 'sodium' ? marks.blue : marks.green}'`,
              },
            },
          },
        },
        {
          type: 'rect',
          name: `limit-${kind}`,
          from: { data: `limits-${kind}` },
          encode: {
            enter: {
              x: { scale: kind, field: 'limit', offset: -3 },
              width: { value: 6 },
              y: { field: 'y', offset: 2 },
              height: { value: rowPx - 4 },
              fill: { value: colours.ink },
              stroke: { value: colours.paper },
              strokeWidth: { value: 2 },
            },
          },
        },
        {
          type: 'text',
          name: `figure-${kind}`,
          from,
          encode: {
            enter: {
              x: {
                signal: `scale('${kind}', datum.value) + 10 + (datum.limit !== null && abs(scale('${kind}', datum.limit) - scale('${kind}', datum.value) - 50) < 54 ? max(0, scale('${kind}', datum.limit) - scale('${kind}', datum.value) + 2) : 0)`,
              },
              y: { field: 'y', offset: rowPx * 0.68 },
              text: { field: 'says' },
              fontSize: { value: chart.textPx },
              fontWeight: { signal: "datum.isOver ? 'bold' : 'normal'" },
              fill: { value: colours.ink },
            },
          },
        },
      ],
    } as unknown as Mark,
  ];
}

function rule(x: number, y: number, x2: number, y2: number, colour: string, widthPx: number): Mark {
  return {
    type: 'rule',
    encode: {
      enter: {
        x: { value: x },
        y: { value: y },
        x2: { value: x2 },
        y2: { value: y2 },
        stroke: { value: colour },
        strokeWidth: { value: widthPx },
      },
    },
  };
}
