// Witness: labels are drawn by this project, photographed by a canvas and read by zxing-wasm, another library than made
// the codes (uqr). How far a label may be turned, blurred or dark is no published figure: common practice, no source.
import type { ImageData } from '@napi-rs/canvas';
import { beforeAll, describe, expect, test } from 'vitest';
import { commonGrids, singleLabel } from '#core/label-grid.ts';
import { drawLabels } from '#draw/label-sheet.ts';
import { readCodes } from '#draw/read-codes.ts';
import { scanPayload } from '#words/scan.ts';
import { labelOf } from './facts.ts';
import { pagesOf } from './page.ts';
import { photographed, type Shot } from './photo.ts';

const link = 'https://t.me/TrailTestBot?start=';
const scanOf = (no: number) => link + scanPayload(12, { batch: 4, no });

describe('one label in a picture', () => {
  let page: ImageData;
  beforeAll(async () => {
    const labels = [labelOf('B4-1', 'Red lentil pot', { scan: scanOf(1) })];
    const [only] = await pagesOf((await drawLabels({ grid: singleLabel(62, 40), from: 1, labels })).pdf);
    page = await only!.render(300);
  });
  const shots: readonly (readonly [string, Shot])[] = [
    ['straight', {}],
    ['turned by 17°', { turnDeg: 17 }],
    ['turned by 45°', { turnDeg: 45 }],
    ['upside down', { turnDeg: 180 }],
    ['out of focus', { blurPx: 3 }],
    ['half lit', { halfLight: 0.25 }],
    ['turned, out of focus and half lit', { turnDeg: 31, blurPx: 2, halfLight: 0.4 }],
    ['small', { widthPx: 640 }],
  ];
  test.each(shots)('%s is read', async (_, shot) => {
    expect(await readCodes(photographed(page, shot))).toEqual([scanOf(1)]);
  });

  test('so dark and far out of focus is not guessed at', async () => {
    expect(await readCodes(photographed(page, { blurPx: 40, halfLight: 0.05 }))).toEqual([]);
  });
});

test('several labels in one picture are all read, and what is no picture has none', async () => {
  const grid = commonGrids.find(({ rows }) => rows === 10)!;
  const labels = Array.from({ length: 6 }, (_, i) =>
    labelOf(`B4-${i + 1}`, 'Red lentil pot', { scan: scanOf(i + 1) }),
  );
  const [sheet] = await pagesOf((await drawLabels({ grid, from: 1, labels })).pdf);
  const page = await sheet!.render(200);
  const found = await readCodes(photographed(page, { turnDeg: 8, halfLight: 0.5, widthPx: 2000 }));
  expect(found.toSorted()).toEqual(labels.map(({ scan }) => scan).toSorted());
  expect(await readCodes(Buffer.from('no picture'))).toEqual([]);
  expect(await readCodes(new Uint8Array())).toEqual([]);
});
