import { Resvg } from '@resvg/resvg-js';
import * as vega from 'vega';
import { openFaces } from './faces.ts';
import { chart, colours } from './look.ts';
import { outlined } from './outline.ts';
import { line, lines } from './typeset.ts';

export type Mark = NonNullable<vega.Spec['marks']>[number];

export interface Picture {
  readonly svg: string;
  readonly png: Buffer;
}

/** What fills a picture between its title and its caption. */
export interface Body {
  readonly heightPx: number;
  /** Placed from the top left corner of the body. */
  readonly spec: Pick<vega.Spec, 'data' | 'scales' | 'axes' | 'marks'>;
}

/** A text wrapped to a width, as the strings of its lines; the fonts for it are open. */
export function wrapped(
  text: string,
  sizePx: number,
  widthPx: number,
  weight: 'regular' | 'bold' = 'regular',
): string[] {
  return lines(text, { weight, sizePt: sizePx }, () => widthPx, 'auto').map((one) => one.text);
}

export function textMark(
  text: string,
  xPx: number,
  baselinePx: number,
  more: {
    sizePx?: number;
    bold?: boolean;
    align?: 'left' | 'center' | 'right';
    colour?: string;
    name?: string;
  } = {},
): Mark {
  return {
    type: 'text',
    name: more.name ?? 'words',
    encode: {
      enter: {
        text: { value: text },
        x: { value: xPx },
        y: { value: baselinePx },
        fontSize: { value: more.sizePx ?? chart.textPx },
        fontWeight: { value: more.bold ? 'bold' : 'normal' },
        align: { value: more.align ?? 'left' },
        fill: { value: more.colour ?? colours.ink },
      },
    },
  };
}

interface TextMetrics {
  width: (item: { readonly fontSize?: number; readonly fontWeight?: string }, text: unknown) => number;
}

// Vega lays labels out by their widths: it is given the widths that will be drawn. Its types leave the hook out.
(vega as unknown as { readonly textMetrics: TextMetrics }).textMetrics.width = (item, text) =>
  text === '' || text === null || text === undefined
    ? 0
    : line(`${text as string | number}`, {
        weight: item.fontWeight === 'bold' ? 'bold' : 'regular',
        sizePt: item.fontSize ?? chart.textPx,
      }).widthPt;

/** What axes and our own words are made of. */
const ascii = Array.from({ length: 95 }, (_, i) => String.fromCodePoint(32 + i)).join('');

/** Vega wants every mark's name once; a name that comes again is numbered: meal, meal-2. */
function numbered(marks: readonly Mark[], seen = new Map<string, number>()): Mark[] {
  return marks.map((mark) => {
    const count = mark.name === undefined ? 0 : (seen.get(mark.name) ?? 0) + 1;
    if (mark.name !== undefined) seen.set(mark.name, count);
    return {
      ...mark,
      ...(count > 1 ? { name: `${mark.name}-${count}` } : {}),
      ...('marks' in mark && mark.marks ? { marks: numbered(mark.marks, seen) } : {}),
    };
  });
}

/** A title, a body, a caption: one picture, as SVG with its words and as PNG. */
export async function picture(
  title: string,
  caption: readonly string[],
  bodyOf: (widthPx: number, roomPx: number) => Body,
): Promise<Picture> {
  await openFaces([title, ...caption, `${ascii}–−…`]);
  const widthPx = chart.widthPx - 2 * chart.marginPx;
  const heading = wrapped(title, chart.titlePx, widthPx, 'bold');
  const foot = caption.flatMap((text) => wrapped(text, chart.captionPx, widthPx));
  const titleStep = chart.titlePx * chart.lineHeight;
  const captionStep = chart.captionPx * chart.lineHeight;
  const bodyTop = chart.marginPx + heading.length * titleStep + 14;
  const footPx = 18 + foot.length * captionStep + chart.marginPx * 0.7;
  const body = bodyOf(widthPx, chart.mostHeightPx - bodyTop - footPx);
  const captionTop = bodyTop + body.heightPx + 18;
  const heightPx = Math.ceil(bodyTop + body.heightPx + footPx);
  const spec: vega.Spec = {
    width: chart.widthPx,
    height: heightPx,
    padding: 0,
    autosize: 'none',
    background: colours.paper,
    config: {
      axis: {
        labelFontSize: chart.textPx,
        titleFontSize: chart.textPx,
        titleFontWeight: 'bold',
        labelColor: colours.ink,
        titleColor: colours.ink,
        domainColor: colours.ink,
        domainWidth: 3,
        tickColor: colours.ink,
        tickWidth: 3,
        tickSize: 9,
        gridColor: colours.faint,
        gridWidth: chart.gridPx,
        labelPadding: 8,
      },
    },
    marks: numbered([
      ...heading.map((text, i) =>
        textMark(text, chart.marginPx, chart.marginPx + (i + 0.8) * titleStep, {
          sizePx: chart.titlePx,
          bold: true,
          name: 'title',
        }),
      ),
      {
        type: 'group',
        name: 'body',
        encode: {
          enter: {
            x: { value: chart.marginPx },
            y: { value: bodyTop },
            width: { value: widthPx },
            height: { value: body.heightPx },
          },
        },
        ...body.spec,
      },
      ...foot.map((text, i) =>
        textMark(text, chart.marginPx, captionTop + (i + 0.8) * captionStep, {
          sizePx: chart.captionPx,
          name: 'caption',
        }),
      ),
    ]),
  };
  const svg = await new vega.View(vega.parse(spec), { renderer: 'none' }).toSVG();
  const png = new Resvg(await outlined(svg), { font: { loadSystemFonts: false } }).render().asPng();
  return { svg, png };
}
