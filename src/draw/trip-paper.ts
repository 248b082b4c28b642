import { openFaces } from './faces.ts';
import type { PaperRow, TripPaper } from './facts.ts';
import { colours, pointMm, sheet, type Weight } from './look.ts';
import { Pdf } from './pdf.ts';
import type { Printed } from './label-sheet.ts';
import { type Line, lineHeightPt, lines } from './typeset.ts';

/** Something that is not torn apart between two pages. */
interface Strip {
  readonly heightMm: number;
  /** Stays with what follows it. */
  readonly isHead: boolean;
  readonly draw: (pdf: Pdf, topMm: number) => void;
}

/** Columns of a row behind its box, in parts of the width. */
const columns = { code: 0.09, meal: 0.37, figures: 0.3, eaters: 0.24 } as const;

/**
 * A trip's sheet: by day and meal the pouches with a box to tick, who eats what, water; what each person should know,
 * totals and cautions. The type shrinks so that one page holds it, where it can still be read.
 * @throws Refusal 'no-glyph'
 */
export async function drawTripPaper(paper: TripPaper): Promise<Printed> {
  await openFaces(textsOf(paper));
  const pdf = new Pdf(paper.title, paper.paper);
  const roomMm = pdf.size.heightMm - 2 * sheet.marginMm;
  const sizes = [0, 1, 2, 3, 4, 5, 6].map((step) => sheet.bodyMostPt - step * 0.5);
  const sizePt =
    sizes.find((size) => size >= sheet.bodyLeastPt && heightOf(stripsOf(paper, size, pdf)) <= roomMm) ?? 9;
  const pages = paged(stripsOf(paper, sizePt, pdf), roomMm);
  pages.forEach((strips, i) => {
    pdf.page();
    let topMm = sheet.marginMm;
    for (const strip of strips) {
      strip.draw(pdf, topMm);
      topMm += strip.heightMm;
    }
    if (pages.length > 1) {
      const [line] = lines(`page ${i + 1} of ${pages.length}`, { weight: 'regular', sizePt: 8 }, () => 200);
      const y = pdf.size.heightMm - sheet.marginMm / 2;
      pdf.line(line!, pdf.size.widthMm - sheet.marginMm - line!.widthPt * pointMm, y, 8);
    }
  });
  return { pdf: await pdf.end(), pages: pdf.pages };
}

const heightOf = (strips: readonly Strip[]) => strips.reduce((sum, { heightMm }) => sum + heightMm, 0);

function paged(strips: readonly Strip[], roomMm: number): Strip[][] {
  const pages: Strip[][] = [[]];
  let usedMm = 0;
  strips.forEach((strip, i) => {
    let needsMm = strip.heightMm;
    for (let next = i; strips[next]!.isHead && next + 1 < strips.length; next++)
      needsMm += strips[next + 1]!.heightMm;
    if (usedMm + needsMm > roomMm && usedMm > 0) {
      pages.push([]);
      usedMm = 0;
    }
    pages.at(-1)!.push(strip);
    usedMm += strip.heightMm;
  });
  return pages;
}

function textsOf(paper: TripPaper): string[] {
  const rows = paper.days.flatMap(({ day, slots }) => [
    day,
    ...slots.flatMap(({ meal, about, rows: all }) => [
      meal,
      about,
      ...all.flatMap((row) => [row.code, row.meal, row.figures, row.eaters]),
    ]),
  ]);
  const people = paper.people.flatMap(({ who, text }) => [who, personLine(who, text)]);
  const heads = 'For each person Totals Mind page of 0123456789';
  return [
    paper.title,
    paper.subtitle,
    ...rows,
    ...people,
    ...paper.totals,
    ...paper.cautions,
    paper.foot,
    heads,
  ];
}

const personLine = (who: string, text: string) => `\u2068${who}\u2069: ${text}`;

function stripsOf(paper: TripPaper, bodyPt: number, pdf: Pdf): Strip[] {
  const widthMm = pdf.size.widthMm - 2 * sheet.marginMm;
  const text = (
    words: string,
    weight: Weight,
    ratio: number,
    more: { isHead?: boolean; beforeMm?: number } = {},
  ) => textStrip(words, weight, bodyPt * ratio, widthMm, more);
  const gapMm = bodyPt * pointMm * 0.55;
  const listed = (head: string, all: readonly string[]) =>
    all.length === 0
      ? []
      : [
          ruleStrip(widthMm, gapMm),
          text(head, 'bold', sheet.dayRatio, { isHead: true }),
          ...all.map((words) => text(words, 'regular', 1)),
        ];
  return [
    text(paper.title, 'bold', sheet.titleRatio),
    text(paper.subtitle, 'regular', 1),
    ...paper.days.flatMap(({ day, slots }) => [
      ruleStrip(widthMm, gapMm),
      text(day, 'bold', sheet.dayRatio, { isHead: true }),
      ...slots.flatMap(({ meal, about, rows }) => [
        text(`${meal}: ${about}`, 'bold', 1, { isHead: true, beforeMm: gapMm * 0.5 }),
        ...rows.map((row) => rowStrip(row, bodyPt, widthMm)),
      ]),
    ]),
    ...listed(
      'For each person',
      paper.people.map(({ who, text: words }) => personLine(who, words)),
    ),
    ...listed('Totals', paper.totals),
    ...listed('Mind', paper.cautions),
    text(paper.foot, 'regular', 0.8, { beforeMm: gapMm }),
  ];
}

const capitals = 0.688;

function drawLines(pdf: Pdf, set: readonly Line[], xMm: number, topMm: number, sizePt: number): void {
  const step = lineHeightPt(sizePt) * pointMm;
  set.forEach((line, i) => {
    pdf.line(line, xMm, topMm + i * step + (step + sizePt * pointMm * capitals) / 2, sizePt);
  });
}

function textStrip(
  words: string,
  weight: Weight,
  sizePt: number,
  widthMm: number,
  { isHead = false, beforeMm = 0 }: { isHead?: boolean; beforeMm?: number },
): Strip {
  const set = lines(words, { weight, sizePt }, () => widthMm / pointMm);
  return {
    isHead,
    heightMm: beforeMm + set.length * lineHeightPt(sizePt) * pointMm,
    draw: (pdf, topMm) => drawLines(pdf, set, sheet.marginMm, topMm + beforeMm, sizePt),
  };
}

function ruleStrip(widthMm: number, gapMm: number): Strip {
  return {
    isHead: true,
    heightMm: gapMm * 1.6,
    draw: (pdf, topMm) => {
      const y = topMm + gapMm;
      pdf.stroke(sheet.marginMm, y, sheet.marginMm + widthMm, y, 0.35, colours.ink);
    },
  };
}

function rowStrip(row: PaperRow, sizePt: number, widthMm: number): Strip {
  const tickMm = Math.min(sheet.tickMm, sizePt * pointMm);
  const restMm = widthMm - tickMm - 2;
  const cells = [
    { text: row.code, weight: 'bold', share: columns.code, base: 'ltr' },
    { text: row.meal, weight: 'regular', share: columns.meal, base: 'auto' },
    { text: row.figures, weight: 'regular', share: columns.figures, base: 'ltr' },
    { text: row.eaters, weight: 'regular', share: columns.eaters, base: 'ltr' },
  ] as const;
  let xMm = sheet.marginMm + tickMm + 2;
  const set = cells.map(({ text, weight, share, base }) => {
    const at = xMm;
    const wide = restMm * share;
    xMm += wide;
    return { xMm: at, lines: lines(text, { weight, sizePt }, () => (wide - 1.5) / pointMm, base) };
  });
  const most = Math.max(1, ...set.map(({ lines: all }) => all.length));
  const step = lineHeightPt(sizePt) * pointMm;
  return {
    isHead: false,
    heightMm: most * step + 0.6,
    draw: (pdf, topMm) => {
      const boxTop = topMm + (step - tickMm) / 2;
      pdf.frame(sheet.marginMm, boxTop, tickMm, tickMm, 0.3);
      if (row.isPacked) {
        pdf.stroke(sheet.marginMm, boxTop, sheet.marginMm + tickMm, boxTop + tickMm, 0.3, colours.ink);
        pdf.stroke(sheet.marginMm + tickMm, boxTop, sheet.marginMm, boxTop + tickMm, 0.3, colours.ink);
      }
      for (const { xMm: x, lines: all } of set) drawLines(pdf, all, x, topMm, sizePt);
    },
  };
}
