import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { expect, test } from 'vitest';

/** Who may import whom, packages included; `types` is what may be imported as types only. */
const mayImport: Record<string, { plain: RegExp; types?: RegExp }> = {
  'src/core': { plain: /^\.\.?\// },
  'src/words': { plain: /^(\.\/|#core\/|luxon$)/ },
  'src/foods': { plain: /^(\.\.?\/|#core\/|#words\/)/ },
  'src/store': { plain: /^(\.\/|#core\/|better-sqlite3$|zod$|node:)/, types: /^#foods\/food\.ts$/ },
  'src/settings': { plain: /^(\.\/|#core\/|#words\/|luxon$)/ },
  'src/house': { plain: /^(\.\/|#core\/|#words\/|#foods\/|luxon$)/, types: /^#store\// },
  'src/cards': { plain: /^(\.\/|#core\/|#words\/|#foods\/|#house\/|luxon$)/, types: /^#draw\// },
  'src/draw': {
    plain:
      /^(\.\/|#core\/|#words\/|node:(fs|module|path|worker_threads|zlib)$|(pdfkit|fontkit|subset-font|linebreak|bidi-js|uqr|vega|ical-generator|zxing-wasm\/reader|@resvg\/resvg-js)$)/,
  },
  'src/talk': { plain: /^(\.\/|#core\/|#words\/|luxon$)/ },
  'src/questions': {
    plain: /^(\.\/|#core\/|#words\/|#foods\/|#house\/|#cards\/|#settings\/|#chat\/command\.ts$|luxon$)/,
    types: /^#store\//,
  },
  'src/solver': { plain: /^(\.\/|#core\/|highs$|node:worker_threads$)/ },
  'src/chat': {
    plain: /^(\.\/|#core\/|#words\/|#talk\/|#house\/|node:)/,
    types: /^(#store\/|#foods\/|#solver\/|#draw\/)/,
  },
  'src/reminders': { plain: /^(\.\/|#core\/|#words\/|#house\/|#chat\/answerer\.ts$|node:timers)/ },
  commands: {
    plain: /^(#core\/|#words\/|#foods\/|#house\/|#cards\/|#settings\/|#draw\/|#chat\/|luxon$)/,
    types: /^#store\//,
  },
  'src/doors': { plain: /^(\.\/|#core\/(talk|fault)\.ts$|#chat\/|grammy$|node:)/ },
  'src/keep': { plain: /^(\.\/|#store\/|#config\.ts$|node:)/ },
  // These put the program together, each for a purpose of its own, and nothing else imports them.
  'src/demo': { plain: /^(\.\/|#(?!keep\/|bench\/)|luxon$|node:)/ },
  'src/bench': {
    plain: /^(\.\.?\/|#|zod$|fast-check$|highs$|grammy$|luxon$|better-sqlite3$|vite$|vitest\/node$|node:)/,
  },
  src: { plain: /^(\.\/|#(?!demo\/|bench\/)|luxon$|zod$|node:)/ },
};

const folders = Object.keys(mayImport).filter((layer) => layer !== 'src');
const layersOf = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => ({ layer: folder, file: join(folder, name) }));
const files = [
  ...folders.flatMap(layersOf),
  ...readdirSync('src')
    .filter((name) => name.endsWith('.ts'))
    .map((name) => ({ layer: 'src', file: join('src', name) })),
];

interface Import {
  readonly isType: boolean;
  readonly from: string;
}

/** What a file imports or passes on, types included, at its top or on the way. */
function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  return [
    ...[...text.matchAll(/^(?:import|export)( type)?[^;]*? from '([^']+)';/gms)].map(([, type, from]) => ({
      isType: Boolean(type),
      from: from!,
    })),
    ...[...text.matchAll(/\bimport\('([^']+)'\)/g)].map(([, from]) => ({ isType: false, from: from! })),
  ];
}

test('every folder of the source has its row in the table', () => {
  const there = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(there.map(({ name }) => `src/${name}`).filter((folder) => !folders.includes(folder))).toEqual([]);
});

test.each(files)('$file imports downwards only', ({ layer, file }) => {
  const { plain, types } = mayImport[layer]!;
  const wrong = importsOf(file).filter(
    ({ isType, from }) => !plain.test(from) && !(isType && types?.test(from)),
  );
  expect(wrong.map(({ from }) => from)).toEqual([]);
});

test('no file imports itself by way of others, not even for its types', () => {
  const target = (file: string, from: string) =>
    from.startsWith('#')
      ? from.replace('#', 'src/')
      : from.startsWith('.')
        ? normalize(join(dirname(file), from))
        : undefined;
  const graph = new Map(
    files.map(({ file }) => [
      file,
      importsOf(file).flatMap(({ from }) => {
        const to = target(file, from);
        return to?.endsWith('.ts') ? [to] : [];
      }),
    ]),
  );
  const circles: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, way: readonly string[]): void => {
    if (way.includes(file)) {
      circles.push([...way.slice(way.indexOf(file)), file].join(' → '));
      return;
    }
    if (done.has(file)) return;
    for (const next of graph.get(file) ?? []) visit(next, [...way, file]);
    done.add(file);
  };
  for (const file of graph.keys()) visit(file, []);
  expect(circles).toEqual([]);
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
