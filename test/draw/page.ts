import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { createCanvas, type ImageData } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

// Pages are read back by another library than drew them (pdf.js), codes by another than made them (ZXing).

const find = createRequire(import.meta.url);
const pdfjs = dirname(find.resolve('pdfjs-dist/package.json'));
const mmOfPt = 25.4 / 72;

export interface Word {
  readonly text: string;
  /** From the page's left edge and its top edge to the foot of the letters. */
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly sizePt: number;
}

export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly words: readonly Word[];
  readonly text: string;
  render(dpi: number): Promise<ImageData>;
}

/** One blank for every run of blanks, fractions apart: what a person reads, not how it was set. */
export function plain(text: string): string {
  return (
    text
      .normalize('NFKC')
      .replace(/[\u2066-\u2069\u200e\u200f]/gu, '')
      // Fonts draw the dots of Arabic letters as signs of their own, which stand for no letter.
      .replace(/(?!\s)\p{Cc}/gu, '')
      .replace(/\s+/gu, ' ')
      .trim()
  );
}

export async function pagesOf(pdf: Uint8Array): Promise<Page[]> {
  const document = await getDocument({
    data: new Uint8Array(pdf),
    standardFontDataUrl: `${pdfjs}/standard_fonts/`,
    useSystemFonts: false,
    isEvalSupported: false,
    verbosity: 0,
  }).promise;
  return Promise.all(
    Array.from({ length: document.numPages }, async (_, i): Promise<Page> => {
      const page = await document.getPage(i + 1);
      const [, , widthPt, heightPt] = page.view as [number, number, number, number];
      const { items } = await page.getTextContent();
      const words = items.flatMap((item): Word[] => {
        if (!('str' in item) || plain(item.str) === '') return [];
        const [, , , size, x, y] = item.transform as [number, number, number, number, number, number];
        return [
          {
            text: item.str,
            xMm: x * mmOfPt,
            yMm: (heightPt - y) * mmOfPt,
            widthMm: item.width * mmOfPt,
            sizePt: size,
          },
        ];
      });
      const text = items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('');
      return {
        widthMm: widthPt * mmOfPt,
        heightMm: heightPt * mmOfPt,
        words,
        text: plain(text),
        async render(dpi) {
          const viewport = page.getViewport({ scale: dpi / 72 });
          const [width, height] = [Math.round(viewport.width), Math.round(viewport.height)];
          const canvas = createCanvas(width, height);
          const context = canvas.getContext('2d');
          await page.render({ canvasContext: context as never, viewport }).promise;
          return context.getImageData(0, 0, width, height);
        },
      };
    }),
  );
}

prepareZXingModule({
  overrides: { wasmBinary: readFileSync(find.resolve('zxing-wasm/reader/zxing_reader.wasm')).buffer },
});

/** The texts of all codes in an image. */
export async function codesIn(image: ImageData): Promise<string[]> {
  const found = await readBarcodes(image, {
    formats: ['QRCode'],
    tryHarder: true,
    maxNumberOfSymbols: 255,
  });
  return found.map(({ text }) => text);
}

/** Whether a rectangle of a rendered page holds any ink. */
export function inkIn(
  image: ImageData,
  dpi: number,
  word: Pick<Word, 'xMm' | 'yMm' | 'widthMm' | 'sizePt'>,
): boolean {
  const px = (mm: number) => Math.round((mm * dpi) / 25.4);
  const [left, right] = [px(word.xMm), px(word.xMm + word.widthMm)];
  const [top, bottom] = [px(word.yMm - word.sizePt * mmOfPt), px(word.yMm)];
  for (let y = Math.max(0, top); y < bottom; y++)
    for (let x = Math.max(0, left); x < right; x++)
      if (image.data[(y * image.width + x) * 4]! < 128) return true;
  return false;
}
