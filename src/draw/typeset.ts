import bidiFactory from 'bidi-js';
import LineBreaker from 'linebreak';
import { type Face, facesOf, plainText, signsOf } from './faces.ts';
import { leading, type Weight } from './look.ts';

/** A stretch of text in one face and one direction, as it is handed to the shaper: always left to right on the page. */
export interface Piece {
  readonly face: Face;
  readonly text: string;
  /** From the start of the line, pt. */
  readonly xPt: number;
  readonly widthPt: number;
}

export interface Line {
  /** As it is read. */
  readonly text: string;
  /** In reading order, each with its place. */
  readonly pieces: readonly Piece[];
  readonly widthPt: number;
}

export interface Type {
  readonly weight: Weight;
  readonly sizePt: number;
}

/** Asked of every shaper alike, so that what is measured is what is drawn. */
export const features = ['kern'];

const bidi = bidiFactory();
const strongRtl = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;
const widths = new Map<string, number>();

/** Advance of a stretch at size 1. */
function widthOf(face: Face, text: string): number {
  const key = `${face.key} ${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  const width = face.font.layout(text, features).advanceWidth / face.font.unitsPerEm;
  if (widths.size > 20_000) widths.clear();
  widths.set(key, width);
  return width;
}

/** The shaper takes its direction from the letters; where that is not the line's, the text is turned beforehand. */
function asShaped(text: string, isRtl: boolean): string {
  const shaperTurns = strongRtl.test(text);
  const faced = isRtl
    ? Array.from(text)
        .map((one) => bidi.getMirroredCharacter(one) ?? one)
        .join('')
    : text;
  return isRtl === shaperTurns ? faced : signsOf(faced).toReversed().join('');
}

interface Paragraph {
  readonly text: string;
  readonly weight: Weight;
  readonly levels: Uint8Array;
  /** Where a line may end. */
  readonly breaks: readonly number[];
  /** Lines already set, at size 1, by where they start and end. */
  readonly set: Map<string, Line>;
}

const paragraphs = new Map<string, Paragraph>();

/** @param base the direction of the sentence around; 'auto' for a name, which has its own */
function paragraph(raw: string, weight: Weight, base: 'ltr' | 'auto'): Paragraph {
  const key = `${weight} ${base} ${raw}`;
  const known = paragraphs.get(key);
  if (known) return known;
  const text = plainText(raw);
  const { levels } = bidi.getEmbeddingLevels(text, base);
  const made = { text, weight, levels, breaks: breaksOf(text), set: new Map<string, Line>() };
  // A thread that draws for years keeps no names it drew long ago.
  if (paragraphs.size > 500) paragraphs.clear();
  paragraphs.set(key, made);
  return made;
}

const scaled = ({ text, pieces, widthPt }: Line, sizePt: number): Line => ({
  text,
  pieces: pieces.map((piece) => ({
    ...piece,
    xPt: piece.xPt * sizePt,
    widthPt: piece.widthPt * sizePt,
  })),
  widthPt: widthPt * sizePt,
});

/** The pieces of one line, at size 1, where rules L1, L2 and L4 of unicode.org's UAX 9 put them. */
function setLine(whole: Paragraph, from: number, to: number): Line {
  const key = `${from} ${to}`;
  const known = whole.set.get(key);
  if (known) return known;
  const { text, weight, levels } = whole;
  const runs: { face: Face; text: string; level: number; isAlone: boolean }[] = [];
  let at = from;
  for (const { text: sign, face, sets } of facesOf(text.slice(from, to), weight, text)) {
    const found = text.indexOf(sign, at);
    const level = levels[found]!;
    at = found + sign.length;
    const isAlone = sets !== null;
    const seen = (sets ?? sign).replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, '');
    if (seen === '') continue;
    const last = runs.at(-1);
    if (last?.face === face && last.level === level && !last.isAlone && !isAlone) last.text += seen;
    else runs.push({ face, text: seen, level, isAlone });
  }
  let xPt = 0;
  const pieces = new Map<(typeof runs)[number], Piece>();
  for (const run of inOrder(runs)) {
    const shaped = asShaped(run.text, run.level % 2 === 1);
    const widthPt = widthOf(run.face, shaped);
    pieces.set(run, { face: run.face, text: shaped, xPt, widthPt });
    xPt += widthPt;
  }
  // Each stands where it is seen; they come in the order in which they are read, for whoever copies the text.
  const line = { text: text.slice(from, to), pieces: runs.map((run) => pieces.get(run)!), widthPt: xPt };
  whole.set.set(key, line);
  return line;
}

/** From the highest level down, every stretch at that level or above is turned round. */
function inOrder<T extends { readonly level: number }>(runs: readonly T[]): T[] {
  const ordered = [...runs];
  const most = Math.max(0, ...runs.map(({ level }) => level));
  for (let level = most; level > 0; level--) {
    for (let i = 0; i < ordered.length; i++) {
      let end = i;
      while (end < ordered.length && ordered[end]!.level >= level) end += 1;
      if (end > i) ordered.splice(i, end - i, ...ordered.slice(i, end).toReversed());
      i = Math.max(i, end);
    }
  }
  return ordered;
}

/** One line, however wide. */
export function line(text: string, { weight, sizePt }: Type, base: 'ltr' | 'auto' = 'ltr'): Line {
  const whole = paragraph(text, weight, base);
  return scaled(setLine(whole, 0, whole.text.length), sizePt);
}

/**
 * Text in lines no wider than asked; a word wider than a line is broken between signs. Nothing is left out.
 * @param widthPt of each line by its number, counted from 0, pt
 */
export function lines(
  text: string,
  { weight, sizePt }: Type,
  widthPt: (lineNo: number) => number,
  base: 'ltr' | 'auto' = 'ltr',
): Line[] {
  const whole = paragraph(text, weight, base);
  const done: Line[] = [];
  let from = 0;
  while (from < whole.text.length) {
    const room = widthPt(done.length) / sizePt;
    const ending = (to: number) => setLine(whole, from, endOf(whole.text, to));
    const fits = (to: number) => ending(to).widthPt <= room;
    const start = from;
    const to =
      lastThat(
        whole.breaks.filter((one) => one > start),
        fits,
      ) ?? insideWord(whole.text, from, fits);
    done.push(scaled(ending(to), sizePt));
    from = to;
    while (whole.text[from] === ' ') from += 1;
  }
  return done;
}

/** A word wider than the line is broken between signs; one sign at least goes on each. */
function insideWord(text: string, from: number, fits: (to: number) => boolean): number {
  let at = from;
  const ends = signsOf(text.slice(from)).map((sign) => (at += sign.length));
  return lastThat(ends, fits) ?? ends[0]!;
}

function breaksOf(text: string): number[] {
  const breaker = new LineBreaker(text);
  const found: number[] = [];
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) found.push(next.position);
  return found;
}

/** Spaces at a line's end hang beyond it. */
function endOf(text: string, to: number): number {
  let end = to;
  while (end > 0 && text[end - 1] === ' ') end -= 1;
  return end;
}

function lastThat(places: readonly number[], fits: (to: number) => boolean): number | undefined {
  let last: number | undefined;
  for (const place of places) {
    if (!fits(place)) break;
    last = place;
  }
  return last;
}

export const lineHeightPt = (sizePt: number): number => sizePt * leading;
