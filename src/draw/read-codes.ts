import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const find = createRequire(import.meta.url);
prepareZXingModule({
  overrides: { wasmBinary: readFileSync(find.resolve('zxing-wasm/reader/zxing_reader.wasm')).buffer },
});

/** A pile of pouches in one picture. */
const mostCodes = 60;

/** The texts of all two-dimensional codes in a picture, PNG or JPEG, each once; none for what is no picture. */
export async function readCodes(picture: Uint8Array): Promise<string[]> {
  try {
    const found = await readBarcodes(picture, {
      formats: ['QRCode'],
      tryHarder: true,
      tryRotate: true,
      tryDownscale: true,
      maxNumberOfSymbols: mostCodes,
    });
    return [...new Set(found.filter(({ isValid }) => isValid).map(({ text }) => text))];
  } catch {
    return [];
  }
}
