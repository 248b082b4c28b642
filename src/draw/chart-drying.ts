import type { DryingFacts, DryingSeries } from './facts.ts';
import { openFaces } from './faces.ts';
import { aheadMarks, curve, key, keyPx, pointsAhead } from './chart-drying-marks.ts';
import { chart, colours } from './look.ts';
import { type Body, type Mark, picture, type Picture, textMark } from './picture.ts';

const leftPx = 132;
const rightPx = 240;
const curveMostPx = 560;
const curveLeastPx = 240;
const bandPx = 200;
const betweenPx = 78;
const axisPx = 92;

const figure = (value: number) => String(Number(value.toFixed(Math.abs(value) < 10 ? 1 : 0)));

/** Names at the lines' ends, pushed apart where lines end together. */
function apart(wanted: readonly number[], stepPx: number, mostPx: number): number[] {
  const order = wanted.map((y, i) => ({ y, i })).toSorted((a, b) => a.y - b.y);
  let last = -Infinity;
  const placed = order.map(({ y, i }) => ({ i, y: (last = Math.max(y, last + stepPx)) }));
  const over = Math.max(0, last - mostPx);
  const out: number[] = [];
  for (const { i, y } of placed) out[i] = y - over;
  return out;
}

/** The weights of a batch over time, the weight expected of it when dry, and below how near it is to steady. */
export async function drawDrying(facts: DryingFacts): Promise<Picture[]> {
  const { series } = facts;
  await openFaces(series.map(({ called }) => called));
  const hasBand = series.some(({ points }) => points.length > 2);
  return [
    await picture(facts.title, facts.caption, (widthPx, roomPx) =>
      dryingBody(facts, widthPx, roomPx, hasBand),
    ),
  ];
}

function dryingBody(facts: DryingFacts, widthPx: number, roomPx: number, hasBand: boolean): Body {
  const { series, ahead } = facts;
  const belowPx = (hasBand ? betweenPx + bandPx : 0) + axisPx;
  const curvePx = Math.max(curveLeastPx, Math.min(curveMostPx, roomPx - belowPx));
  const plotPx = widthPx - leftPx - rightPx;
  const all = series.flatMap(({ points }) => points);
  const mostHours = Math.max(1, ...all.map(({ hours }) => hours), ahead?.latestHours ?? 0);
  const expected = series.flatMap(({ expectedG }) => (expectedG === null ? [] : [expectedG]));
  const mostG = Math.max(...all.map(({ g }) => g), ...expected) * 1.05;
  const showsPoints = all.length <= chart.mostPoints;
  const limitG = Math.min(...series.map(({ thresholdG }) => thresholdG));
  const windowG = limitG * 4;
  const lastOf = ({ points }: DryingSeries) => points.at(-1)!.g;
  const yOf = (g: number) => curvePx * (1 - g / mostG);
  const ends = apart(
    series.map((one) => yOf(lastOf(one)) + 10),
    chart.textPx * 1.12,
    curvePx + 8,
  );
  const [low, high] = [Math.min(...expected), Math.max(...expected)];
  const expectedSays =
    expected.length === 0
      ? ''
      : `expected dry: ${figure(low)}${high - low < 0.5 ? '' : ` to ${figure(high)}`} g`;
  // Under the line nothing is ever weighed; above it the curve comes down.
  const underY = Math.max(yOf(low), yOf(high)) + chart.textPx + 6;
  const expectedWordsY = underY < curvePx - 8 ? underY : yOf(high) - 14;
  const hoursAxis = {
    orient: 'bottom',
    scale: 'hours',
    title: 'hours since loading',
    tickCount: 6,
    titlePadding: 8,
  };
  return {
    heightPx: curvePx + belowPx,
    spec: {
      data: series.flatMap((one, i) => [
        {
          name: `weights${i}`,
          values: one.points.map(({ hours, g }) => ({ hours, g, overLastG: g - lastOf(one) })),
        },
        { name: `ahead${i}`, values: ahead === null ? [] : pointsAhead(one, ahead.readyHours) },
      ]),
      scales: [
        {
          name: 'hours',
          type: 'linear',
          domain: [0, mostHours],
          range: [leftPx, leftPx + plotPx],
          nice: false,
        },
        { name: 'g', type: 'linear', domain: [0, mostG], range: [curvePx, 0] },
      ],
      marks: [
        {
          type: 'group',
          name: 'weights',
          encode: { enter: { height: { value: curvePx }, width: { value: widthPx } } },
          axes: [
            {
              orient: 'left',
              scale: 'g',
              offset: -leftPx,
              grid: true,
              title: 'weight, g',
              format: '.6~g',
              titlePadding: 16,
              tickCount: 6,
              gridScale: 'hours',
            },
            ...(hasBand ? [{ ...hoursAxis, title: '' }] : [hoursAxis]),
          ],
          marks: [
            ...aheadMarks(facts, curvePx),
            ...(expected.length === 0
              ? []
              : [
                  {
                    type: 'rect',
                    name: 'expected',
                    encode: {
                      enter: {
                        x: { value: leftPx },
                        x2: { value: leftPx + plotPx },
                        y: { value: yOf(high) - 3 },
                        y2: { value: Math.max(yOf(low), yOf(high)) + 3 },
                        fill: { value: colours.ink },
                        fillOpacity: { value: 0.35 },
                      },
                    },
                  } as Mark,
                  textMark(expectedSays, leftPx + 14, expectedWordsY, { name: 'expected-words', bold: true }),
                ]),
            ...curve(series, 'g', showsPoints),
            ...series.flatMap((one, i): Mark[] => [
              key(i, leftPx + plotPx + 18, ends[i]! - 10),
              textMark(`${one.called} ${figure(lastOf(one))} g`, leftPx + plotPx + 18 + keyPx + 8, ends[i]!, {
                bold: true,
                name: 'end',
              }),
            ]),
          ],
        } as Mark,
        ...(hasBand
          ? [bandPart(series, curvePx + betweenPx, widthPx, plotPx, limitG, windowG, hoursAxis, showsPoints)]
          : []),
      ],
    },
  };
}

/** The same weighings as differences from the last, close up: inside the band the batch counts as steady. */
function bandPart(
  series: readonly DryingSeries[],
  topPx: number,
  widthPx: number,
  plotPx: number,
  limitG: number,
  windowG: number,
  hoursAxis: object,
  showsPoints: boolean,
): Mark {
  const at = (g: number) => bandPx * (0.5 - g / (2 * windowG));
  return {
    type: 'group',
    name: 'steady',
    encode: {
      enter: { y: { value: topPx }, height: { value: bandPx }, width: { value: widthPx } },
    },
    scales: [{ name: 'overLastG', type: 'linear', domain: [-windowG, windowG], range: [bandPx, 0] }],
    axes: [
      {
        orient: 'left',
        scale: 'overLastG',
        offset: -leftPx,
        values: [-2 * limitG, 0, 2 * limitG],
        format: '.3~g',
        title: 'above last, g',
        titlePadding: 16,
        encode: {
          labels: { update: { text: { signal: "datum.value > 0 ? '+' + datum.label : datum.label" } } },
        },
      },
      hoursAxis,
    ],
    marks: [
      {
        type: 'rect',
        name: 'steady-band',
        encode: {
          enter: {
            x: { value: leftPx },
            x2: { value: leftPx + plotPx },
            y: { value: at(limitG) },
            y2: { value: at(-limitG) },
            fill: { value: colours.faint },
            stroke: { value: colours.ink },
            strokeWidth: { value: chart.gridPx },
          },
        },
      },
      {
        type: 'group',
        clip: true,
        encode: {
          enter: { width: { value: leftPx + plotPx + 12 }, height: { value: bandPx } },
        },
        marks: curve(series, 'overLastG', showsPoints),
      },
      textMark('steady:', leftPx + plotPx + 18, bandPx / 2 - 6, { name: 'steady-words', bold: true }),
      textMark(`within ${figure(limitG)} g`, leftPx + plotPx + 18, bandPx / 2 + 28, { name: 'steady-words' }),
    ],
  } as Mark;
}
