import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { create, type Font } from 'fontkit';
import subsetFont from 'subset-font';
import { Refusal } from '#core/refusal.ts';
import type { Weight } from './look.ts';
import { unpackWoff } from './woff.ts';

/** One font file opened: part of a family, in one weight. */
export interface Face {
  readonly key: string;
  readonly data: Buffer;
  readonly font: Font;
}

/** How a sign is set: by a face, and in place of what the face lacks by other letters of it. */
interface Chosen {
  readonly face: Face;
  readonly sets: string | null;
}

interface Slice {
  readonly key: string;
  readonly path: (weight: Weight) => string;
  readonly ranges: readonly (readonly [number, number])[];
  readonly isVariable: boolean;
}

const weights = { regular: 400, bold: 700 } as const;

/** In the order in which they are asked for a sign; all under the SIL Open Font License. */
const families = [
  '@fontsource/fira-sans-condensed',
  '@fontsource/noto-sans',
  '@fontsource/noto-sans-arabic',
  '@fontsource/noto-sans-hebrew',
  '@fontsource/noto-sans-thai',
  '@fontsource/noto-sans-armenian',
  '@fontsource/noto-sans-georgian',
  '@fontsource-variable/noto-sans-sc',
  '@fontsource-variable/noto-sans-jp',
  '@fontsource-variable/noto-sans-kr',
  '@fontsource-variable/noto-emoji',
] as const;

type Family = (typeof families)[number];

const read = createRequire(import.meta.url);
const slices = new Map<Family, readonly Slice[]>();
const opened = new Map<string, Face>();
const chosen = new Map<string, Chosen>();

/** A sign as people see it, marks and joiners with it. */
const signs = new Intl.Segmenter('und', { granularity: 'grapheme' });

export function signsOf(text: string): string[] {
  return [...signs.segment(text)].map(({ segment }) => segment);
}

/** Joiners, selectors and direction marks: they steer the signs beside them and have no look of their own. */
const unseen = /\p{Default_Ignorable_Code_Point}/u;

function slicesOf(family: Family): readonly Slice[] {
  const known = slices.get(family);
  if (known) return known;
  const path = read.resolve(`${family}/unicode.json`);
  const told = JSON.parse(readFileSync(path, 'utf8')) as Record<string, string>;
  const folder = join(dirname(path), 'files');
  const files = new Set(readdirSync(folder));
  const name = family.split('/')[1]!;
  const isVariable = family.startsWith('@fontsource-variable/');
  const found = Object.entries(told).map(([part, ranges]): Slice => {
    const stem = `${name}-${part.replace(/[[\]]/g, '')}`;
    const file = (weight: Weight) =>
      isVariable ? `${stem}-wght-normal.woff2` : `${stem}-${weights[weight]}-normal.woff`;
    if (!files.has(file('bold'))) throw new Error(`${family} has no ${file('bold')}`);
    return {
      key: stem,
      path: (weight) => join(folder, file(weight)),
      ranges: ranges.split(',').map((range) => {
        const [from, to] = range.trim().slice(2).split('-');
        return [Number.parseInt(from!, 16), Number.parseInt(to ?? from!, 16)] as const;
      }),
      isVariable,
    };
  });
  slices.set(family, found);
  return found;
}

const covers = ({ ranges }: Slice, point: number) =>
  ranges.some(([from, to]) => from <= point && point <= to);

async function open(slice: Slice, weight: Weight): Promise<Face> {
  const key = `${slice.key}-${weight}`;
  const known = opened.get(key);
  if (known) return known;
  const file = readFileSync(slice.path(weight));
  const data = slice.isVariable ? await atWeight(slice, file, weight) : unpackWoff(file);
  const face = { key, data, font: create(data) as Font };
  opened.set(key, face);
  return face;
}

/** A variable font held at one weight and unpacked, which is what a PDF can carry. */
async function atWeight(slice: Slice, file: Buffer, weight: Weight): Promise<Buffer> {
  const all = slice.ranges
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)))
    .join('');
  return subsetFont(file, all, { targetFormat: 'truetype', variationAxes: { wght: weights[weight] } });
}

/** Han signs are drawn as the language of the text around them draws them. */
function orderFor(text: string): readonly Family[] {
  const cjk = /[\u3040-\u30ff]/u.test(text) ? 'jp' : /\p{Script=Hangul}/u.test(text) ? 'kr' : 'sc';
  return families
    .toSorted((a, b) => Number(b.endsWith(`-${cjk}`)) - Number(a.endsWith(`-${cjk}`)) || 0)
    .toSorted(
      (a, b) => Number(a.startsWith('@fontsource-variable/')) - Number(b.startsWith('@fontsource-variable/')),
    );
}

/** Code points one by one; joined signs are meant to come apart here. */
const pointsOf = (sign: string): string[] => Array.from(sign);

const seenPoints = (sign: string): number[] =>
  pointsOf(sign).flatMap((one) => (unseen.test(one) ? [] : [one.codePointAt(0)!]));

async function find(
  points: readonly number[],
  weight: Weight,
  order: readonly Family[],
): Promise<Face | undefined> {
  for (const family of order) {
    for (const slice of slicesOf(family)) {
      if (!points.every((point) => covers(slice, point))) continue;
      const face = await open(slice, weight);
      if (points.every((point) => face.font.hasGlyphForCodePoint(point))) return face;
    }
  }
  return undefined;
}

const chosenKey = (sign: string, weight: Weight, language: Family) => `${weight} ${language} ${sign}`;
const languageOf = (order: readonly Family[]) => order.find((family) => /-(sc|jp|kr)$/.test(family))!;

/** Text as it is set: composed, on one line, without orders to turn letters against their own direction. */
export function plainText(text: string): string {
  return text
    .normalize('NFC')
    .replace(/(?:(?!\u00a0)[\p{Cc}\s])+/gu, ' ')
    .replace(/[\u202d\u202e]/gu, '')
    .trim();
}

/**
 * Opens the fonts that these texts need.
 * @throws Refusal 'no-glyph' naming a sign that no font has: it would be an empty box on paper
 */
export async function openFaces(texts: Iterable<string>): Promise<void> {
  for (const raw of texts) {
    const text = plainText(raw);
    const order = orderFor(text);
    for (const sign of new Set(signsOf(text))) {
      if (seenPoints(sign).length === 0) continue;
      for (const weight of ['regular', 'bold'] as const) {
        if (chosen.has(chosenKey(sign, weight, languageOf(order)))) continue;
        const whole = await find(seenPoints(sign), weight, order);
        if (whole) chosen.set(chosenKey(sign, weight, languageOf(order)), { face: whole, sets: null });
        else await openParts(sign, text, weight, order);
      }
    }
  }
}

/** No font has the whole sign: its parts are set one by one. */
async function openParts(
  sign: string,
  text: string,
  weight: Weight,
  order: readonly Family[],
): Promise<void> {
  for (const point of seenPoints(sign)) {
    const one = String.fromCodePoint(point);
    const sets = asFraction(one);
    const face =
      (await find([point], weight, order)) ??
      (sets === null ? undefined : await find(seenPoints(sets), weight, order));
    if (!face) {
      const number = point.toString(16).toUpperCase().padStart(4, '0');
      throw new Refusal(
        'no-glyph',
        `My fonts have no sign for "${one}" (U+${number}) in "${text}", and an empty box on paper would help nobody. Nothing was drawn.`,
      );
    }
    const isThere = face.font.hasGlyphForCodePoint(point);
    chosen.set(chosenKey(one, weight, languageOf(order)), { face, sets: isThere ? null : sets });
  }
}

/** Eighths and thirds, which few fonts hold, as figures around a fraction slash: fonts set those small and slanted. */
function asFraction(sign: string): string | null {
  const parts = sign.normalize('NFKD');
  return /^\d+\u2044\d+$/.test(parts) ? parts : null;
}

export interface Faced extends Chosen {
  readonly text: string;
}

/**
 * Which face sets each sign of a stretch of text.
 * @param whole the text that it is part of, seen by `openFaces` before
 */
export function facesOf(text: string, weight: Weight, whole: string): Faced[] {
  const language = languageOf(orderFor(whole));
  return signsOf(text).flatMap((sign): Faced[] => {
    if (seenPoints(sign).length === 0) return [];
    const whole = chosen.get(chosenKey(sign, weight, language));
    if (whole) return [{ text: sign, ...whole }];
    return pointsOf(sign).flatMap((one) => {
      if (unseen.test(one)) return [];
      const part = chosen.get(chosenKey(one, weight, language));
      if (!part) throw new Error('a text was set whose fonts were not opened');
      return [{ text: one, ...part }];
    });
  });
}
