import type { DryingFacts, DryingSeries } from './facts.ts';
import { chart, colours, lineMarks } from './look.ts';
import type { Mark } from './picture.ts';

export const keyPx = 46;

/** The weighings of each line, and where there are not too many each as a point. */
export function curve(series: readonly DryingSeries[], field: string, showsPoints: boolean): Mark[] {
  return series.flatMap((_, i): Mark[] => {
    const { colour, dash } = lineMarks[i % lineMarks.length]!;
    const at = { x: { scale: 'hours', field: 'hours' }, y: { scale: field, field } };
    return [
      {
        type: 'line',
        name: 'curve',
        from: { data: `weights${i}` },
        encode: {
          enter: {
            ...at,
            stroke: { value: colour },
            strokeWidth: { value: chart.linePx },
            strokeDash: { value: [...dash] },
          },
        },
      },
      ...(showsPoints
        ? [
            {
              type: 'symbol',
              name: 'weighing',
              from: { data: `weights${i}` },
              encode: {
                enter: {
                  ...at,
                  size: { value: chart.pointArea },
                  fill: { value: colours.paper },
                  stroke: { value: colour },
                  strokeWidth: { value: chart.linePx - 1 },
                },
              },
            } as Mark,
          ]
        : []),
    ];
  });
}

/** A stretch of a line as it is drawn, before its name. */
export function key(i: number, xPx: number, yPx: number): Mark {
  const { colour, dash } = lineMarks[i % lineMarks.length]!;
  return {
    type: 'rule',
    name: 'key',
    encode: {
      enter: {
        x: { value: xPx },
        x2: { value: xPx + keyPx },
        y: { value: yPx },
        stroke: { value: colour },
        strokeWidth: { value: chart.linePx },
        strokeDash: { value: [...dash] },
      },
    },
  };
}

/** How many straight pieces stand for the curve ahead. */
const curvePieces = 24;

/** From its last weight a line goes on as the root of the water to go falls: straight, to nothing at the end. */
export function pointsAhead(
  { points, expectedG }: DryingSeries,
  readyHours: number,
): { hours: number; g: number }[] {
  const last = points.at(-1)!;
  if (expectedG === null || readyHours <= last.hours) return [];
  return Array.from({ length: curvePieces + 1 }, (_, i) => {
    const share = i / curvePieces;
    return {
      hours: last.hours + share * (readyHours - last.hours),
      g: expectedG + (last.g - expectedG) * (1 - share) ** 2,
    };
  });
}

/** The time in which it should be dry, behind the lines, and the way there. */
export function aheadMarks({ series, ahead }: DryingFacts, curvePx: number): Mark[] {
  if (ahead === null) return [];
  const { earliestHours, latestHours, readyHours } = ahead;
  return [
    {
      type: 'rect',
      name: 'ahead-band',
      encode: {
        enter: {
          x: { scale: 'hours', value: earliestHours },
          x2: { scale: 'hours', value: latestHours },
          y: { value: 0 },
          y2: { value: curvePx },
          fill: { value: colours.faint },
        },
      },
    },
    {
      type: 'rule',
      name: 'ahead-hour',
      encode: {
        enter: {
          x: { scale: 'hours', value: readyHours },
          y: { value: 0 },
          y2: { value: curvePx },
          stroke: { value: colours.ink },
          strokeWidth: { value: chart.gridPx },
        },
      },
    },
    ...series.map((_, i): Mark => ({
      type: 'line',
      name: 'ahead',
      from: { data: `ahead${i}` },
      encode: {
        enter: {
          x: { scale: 'hours', field: 'hours' },
          y: { scale: 'g', field: 'g' },
          stroke: { value: lineMarks[i % lineMarks.length]!.colour },
          strokeWidth: { value: chart.linePx / 2 },
        },
      },
    })),
  ];
}
