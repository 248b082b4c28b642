import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Who may import whom, packages included; `type` marks what may be imported as types only. */
const mayImport: Record<string, { plain: RegExp; types?: RegExp }> = {
  'src/core': { plain: /^\.\.?\// },
  'src/words': { plain: /^(\.\/|#core\/|luxon$)/ },
  'src/foods': { plain: /^(\.\.?\/|#core\/|#words\/)/ },
  'src/store': { plain: /^(\.\/|#core\/|better-sqlite3$|zod$|node:)/, types: /^#foods\/food\.ts$/ },
  'src/chat': {
    plain: /^(\.\/|#core\/|#words\/|#foods\/|luxon$|node:)/,
    types: /^(#store\/|#solver\.ts$|#draw\/)/,
  },
  'src/draw': {
    plain:
      /^(\.\/|#core\/|#words\/|node:(fs|module|path|worker_threads|zlib)$|(pdfkit|fontkit|subset-font|linebreak|bidi-js|uqr|vega|@resvg\/resvg-js)$)/,
  },
  commands: { plain: /^(#core\/|#words\/|#foods\/|#chat\/|#draw\/|luxon$)/, types: /^#store\// },
  'src/doors': { plain: /^(\.\/|#core\/talk\.ts$|#chat\/|grammy$|node:)/ },
};

function sources(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name));
}

const files = Object.keys(mayImport).flatMap((layer) => sources(layer).map((file) => ({ layer, file })));

test.each(files)('$file imports downwards only', ({ layer, file }) => {
  const text = readFileSync(file, 'utf8');
  const imports = [...text.matchAll(/^(import|export)( type)?[^;]*? from '([^']+)';/gms)];
  const wrong = imports
    .map(([whole, , type, from]) => ({ whole, isType: Boolean(type), from: from! }))
    .filter(
      ({ isType, from }) =>
        !mayImport[layer]!.plain.test(from) && !(isType && mayImport[layer]!.types?.test(from)),
    )
    .map(({ from }) => from);
  expect(wrong).toEqual([]);
});

test.each(files.filter(({ layer }) => ['src/core', 'src/words', 'src/foods'].includes(layer)))(
  '$file has no clock, chance, outside world or waiting',
  ({ file }) => {
    const text = readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
    expect(
      text.match(/Date\.now|DateTime\.(now|local)|new Date\(\)|Math\.random|process\.|console\.|\bawait\b/g),
    ).toBeNull();
  },
);
