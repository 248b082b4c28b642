import { createCanvas, loadImage } from '@napi-rs/canvas';
import { describe, expect, test } from 'vitest';
import { drawChart } from '#draw/chart.ts';
import type { DryingFacts, SeasonFacts, StockFacts, TripFacts } from '#draw/facts.ts';
import { lineMarks } from '#draw/look.ts';
import { longName } from './facts.ts';

/** The words of a chart and how many marks of each name it has: numbered names count as one. */
function structure(svg: string): { words: string[]; marks: Record<string, number> } {
  const words = [...svg.matchAll(/<text[^>]*>([^<]+)<\/text>/g)].map((m) =>
    m[1]!.replaceAll('&amp;', '&').replaceAll('&lt;', '<'),
  );
  const marks: Record<string, number> = {};
  const groups = svg.split(/<g class="mark-/).slice(1);
  for (const group of groups) {
    const named = /^(\w+) role-mark ([\w-]+?)(?:-\d+)?"/.exec(group);
    if (!named) continue;
    marks[named[2]!] =
      (marks[named[2]!] ?? 0) + [...group.split('</g>')[0]!.matchAll(/<(path|text|line)\b/g)].length;
  }
  return { words, marks };
}

/** Size and whether the picture holds a colour at all: read by another library than drew it. */
async function seen(png: Buffer): Promise<{ width: number; height: number; colours: Set<string> }> {
  const image = await loadImage(png);
  const canvas = createCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  const colours = new Set<string>();
  for (let i = 0; i < data.length; i += 4)
    colours.add(`#${[0, 1, 2].map((k) => data[i + k]!.toString(16).padStart(2, '0')).join('')}`);
  return { width: image.width, height: image.height, colours };
}

const drying = (points: readonly (readonly [hours: number, g: number])[], called = 'batch') => ({
  called,
  points: points.map(([hours, g]) => ({ hours, g })),
  thresholdG: 4,
  expectedG: 728,
});

const dryingFacts = (series: DryingFacts['series'], title = 'B4 Bean pot: drying'): DryingFacts => ({
  is: 'drying',
  title,
  caption: ['3000 g wet on 4 trays. Expected dry: about 728 g.'],
  ahead: null,
  series,
});

describe('drying', () => {
  test.each([
    { called: 'none', points: [[0, 3000]], symbols: 1, hasBand: false },
    {
      called: 'one',
      points: [
        [0, 3000],
        [20, 800],
      ],
      symbols: 2,
      hasBand: false,
    },
    {
      called: 'three',
      points: [
        [0, 3000],
        [20, 800],
        [22, 760],
        [25, 758],
      ],
      symbols: 8,
      hasBand: true,
    },
  ] as const)('a batch with $called weighings', async ({ points, symbols, hasBand }) => {
    const [picture] = await drawChart(dryingFacts([drying(points)]));
    const { words, marks } = structure(picture!.svg);
    // Each weighing stands in the curve, and once more close up where there is a band.
    expect(marks.weighing).toBe(symbols);
    expect(marks['steady-band'] ?? 0).toBe(hasBand ? 1 : 0);
    expect(words).toContain('B4 Bean pot: drying');
    expect(words).toContain('weight, g');
    expect(words).toContain('hours since loading');
    expect(words).toContain('expected dry: 728 g');
    expect(words).toContain(`batch ${points.at(-1)![1]} g`);
    expect(words.includes('steady:')).toBe(hasBand);
    const { width, height, colours } = await seen(picture!.png);
    expect(Math.max(width, height)).toBeLessThan(1280);
    if (points.length > 1) expect(colours).toContain(lineMarks[0].colour);
  });

  test('what is still to come is drawn to the hour it should be dry, before its band ends', async () => {
    const points = [
      [0, 3000],
      [10, 1600],
      [15, 1150],
    ] as const;
    const ahead = { readyHours: 24, earliestHours: 21, latestHours: 27 };
    const [picture] = await drawChart({ ...dryingFacts([drying(points)]), ahead });
    const { marks } = structure(picture!.svg);
    expect(marks).toMatchObject({ ahead: 1, 'ahead-band': 1, 'ahead-hour': 1 });
    const way = /role-mark ahead"[\s\S]*?d="M([^"]+)"/.exec(picture!.svg)![1]!.split('L');
    const [first, last] = [way[0]!, way.at(-1)!].map((point) => point.split(',').map(Number));
    // From the last weighing down to the weight expected when dry.
    expect(first![0]!).toBeLessThan(last![0]!);
    expect(first![1]!).toBeLessThan(last![1]!);
    const none = await drawChart(dryingFacts([drying(points)]));
    expect(structure(none[0]!.svg).marks.ahead).toBeUndefined();
  });

  test('a thousand weighings are one line without points', async () => {
    const points = Array.from({ length: 1000 }, (_, i) => [i / 30, 760 + 2240 * Math.exp(-i / 150)] as const);
    const [picture] = await drawChart(dryingFacts([drying(points)]));
    const { marks } = structure(picture!.svg);
    expect(marks.weighing).toBeUndefined();
    const curve = /role-mark curve"[\s\S]*?d="([^"]+)"/.exec(picture!.svg)![1]!;
    expect(curve.split('L')).toHaveLength(1000);
  });

  test('trays have lines that differ in colour and in dash, named at their ends', async () => {
    const series = [1, 2, 3, 4].map((no) =>
      drying(
        [
          [0, 750],
          [20, 200 + no],
          [23, 190 + no],
        ],
        `tray ${no}`,
      ),
    );
    const [picture] = await drawChart(dryingFacts(series));
    const { words, marks } = structure(picture!.svg);
    expect(marks.key).toBe(4);
    for (const no of [1, 2, 3, 4]) expect(words).toContain(`tray ${no} ${190 + no} g`);
    expect(new Set(lineMarks.map(({ dash }) => dash.join(' '))).size).toBe(lineMarks.length);
  });

  test('a long name wraps and the picture stays small enough to be shown', async () => {
    const facts = dryingFacts(
      [
        drying([
          [0, 3000],
          [20, 800],
          [22, 760],
        ]),
      ],
      `B4 ${longName}: drying`,
    );
    const [picture] = await drawChart({ ...facts, caption: Array.from({ length: 3 }, () => longName) });
    const { words } = structure(picture!.svg);
    expect(words.join(' ').replaceAll(/\s+/g, ' ')).toContain(`B4 ${longName}: drying`);
    expect((await seen(picture!.png)).height).toBeLessThan(1280);
  });

  test('the curve stands where the figures put it', async () => {
    const [picture] = await drawChart(
      dryingFacts([
        drying([
          [0, 3000],
          [10, 1500],
          [20, 750],
        ]),
      ]),
    );
    const curve = /role-mark curve"[\s\S]*?d="M([^"]+)"/.exec(picture!.svg)![1]!;
    const [first, middle, last] = curve.split('L').map((at) => at.split(',').map(Number));
    // Half the time is half the way; half the weight lost is two thirds of three quarters: by hand.
    expect((middle![0]! - first![0]!) / (last![0]! - first![0]!)).toBeCloseTo(0.5, 3);
    expect((middle![1]! - first![1]!) / (last![1]! - first![1]!)).toBeCloseTo(1500 / 2250, 3);
  });

  test('a sign that no font has is named', async () => {
    await expect(drawChart(dryingFacts([drying([[0, 3000]])], 'B4 ꦱ'))).rejects.toThrow(/no sign for "ꦱ"/);
  });
});

describe('a season', () => {
  const row = (meal: string, eaten: number) => ({ meal, sealed: 6, eaten, left: 6 - eaten, wasted: 0 });
  const facts = (rows: SeasonFacts['rows']): SeasonFacts => ({
    is: 'season',
    title: 'A season at a glance',
    caption: ['12 pouches.'],
    rows,
  });

  test('a row a meal: every count in figures, a bar as long as its count, none for nothing', async () => {
    const [picture] = await drawChart(facts([row('Bean pot', 4), row('מרק', 0)]));
    const { words, marks } = structure(picture!.svg);
    // Four columns, without what was thrown away and the soup's eaten.
    expect(marks.bar).toBe(5);
    for (const word of ['sealed', 'eaten', 'left', 'thrown away', 'Bean pot', 'מרק', '4', '2', '0'])
      expect(words).toContain(word);
  });

  test('fifty meals take several pictures, each small enough to be shown', async () => {
    const pictures = await drawChart(
      facts(Array.from({ length: 50 }, (_, i) => row(`Bean pot ${i}`, i % 6))),
    );
    expect(pictures.length).toBeGreaterThan(1);
    for (const { png } of pictures) expect((await seen(png)).height).toBeLessThan(1280);
  });
});

describe('stock', () => {
  const cell = (meal: string, month: string | null, pouches: number) => ({ meal, month, pouches });
  const facts = (cells: StockFacts['cells']): StockFacts => ({
    is: 'stock',
    title: 'Pouches by meal and best-by month',
    caption: ['12 pouches.'],
    cells,
    nowMonth: '2027-04',
  });

  test('a cell for each meal and month, its figure in it; what is past and what has no date is said', async () => {
    const cells = [cell('Bean pot', '2027-03', 2), cell('Bean pot', '2028-09', 7), cell('מרק', null, 3)];
    const [picture] = await drawChart(facts(cells));
    const { words, marks } = structure(picture!.svg);
    expect(marks.cell).toBe(3);
    for (const word of ['2', '7', '3', 'past: Mar', 'Sep', '2028', 'no', 'best-by', 'Bean pot', 'מרק'])
      expect(words).toContain(word);
  });

  test.each([
    { months: 24, first: 'Jan–Mar' },
    { months: 84, first: 'in' },
  ])(
    '$months months are put together until columns can be read, and none is lost',
    async ({ months, first }) => {
      const cells = Array.from({ length: months }, (_, i) =>
        cell('Bean pot', `${2028 + Math.floor(i / 12)}-${String((i % 12) + 1).padStart(2, '0')}`, 1),
      );
      const [picture] = await drawChart(facts(cells));
      const { words } = structure(picture!.svg);
      expect(words).toContain(first);
      const counts = words.filter((word) => /^\d{1,3}$/.test(word)).map(Number);
      expect(counts.reduce((sum, count) => sum + count, 0)).toBe(months);
    },
  );

  test('fifty meals take several pictures, each small enough to be shown', async () => {
    const cells = Array.from({ length: 50 }, (_, i) => cell(`Bean pot ${i}`, '2028-09', 1));
    const pictures = await drawChart(facts(cells));
    expect(pictures.length).toBeGreaterThan(1);
    const words = pictures.flatMap(({ svg }) => structure(svg).words);
    for (const { meal } of cells) expect(words).toContain(meal);
    for (const { png } of pictures) expect((await seen(png)).height).toBeLessThan(1280);
  });
});

describe('a trip', () => {
  const facts: TripFacts = {
    is: 'trip',
    title: 'Heron Lake: sodium and energy a day',
    caption: ['Of the kept meals alone.'],
    rows: ['Ana', 'Noa'].flatMap((who) =>
      ['Sat 12 Jun', 'Sun 13 Jun'].map((day) => ({
        who,
        day,
        sodiumMg: who === 'Noa' ? 1600 : 900,
        kcal: 700,
        sodiumLimitMg: who === 'Noa' ? 1500 : 2300,
        kcalNeed: who === 'Noa' ? null : 2400,
      })),
    ),
  };

  test('a bar for each eater, day and figure, a stroke where there is a limit, "over" in words', async () => {
    const [picture] = await drawChart(facts);
    const { words, marks } = structure(picture!.svg);
    expect(marks['bar-sodium']).toBe(4);
    expect(marks['bar-kcal']).toBe(4);
    expect(marks['limit-sodium']).toBe(4);
    expect(marks['limit-kcal']).toBe(2);
    expect(words.filter((word) => word === '1600 over')).toHaveLength(2);
    expect(words.filter((word) => word === '900')).toHaveLength(2);
    for (const word of ['sodium, mg', 'energy, kcal', 'Ana', 'Noa', 'Sat 12 Jun'])
      expect(words).toContain(word);
  });

  test('a long trip takes several pictures and loses no day', async () => {
    const rows = Array.from({ length: 40 }, (_, i) => ({ ...facts.rows[0]!, day: `day ${i}` }));
    const pictures = await drawChart({ ...facts, rows });
    const words = pictures.flatMap(({ svg }) => structure(svg).words);
    for (const { day } of rows) expect(words.filter((word) => word === day)).toHaveLength(1);
    for (const { png } of pictures) expect((await seen(png)).height).toBeLessThan(1280);
  });
});

// What each kind of chart is made of, without coordinates: another version of the library changes nothing here for nothing.
test('charts keep their structure', async () => {
  const all = [
    dryingFacts([
      drying([
        [0, 3000],
        [20, 800],
        [22, 760],
      ]),
    ]),
    {
      is: 'stock',
      title: 'Pouches',
      caption: ['2 pouches.'],
      nowMonth: '2027-04',
      cells: [{ meal: 'Bean pot', month: '2028-09', pouches: 2 }],
    } satisfies StockFacts,
  ];
  const told = await Promise.all(
    all.map(async (facts) => {
      const { words, marks } = structure((await drawChart(facts))[0]!.svg);
      const counts = Object.entries(marks).map(([name, count]) => `  ${count} ${name}`);
      return [facts.is, ...counts.toSorted(), `  words: ${words.join(' | ')}`].join('\n');
    }),
  );
  await expect(`${told.join('\n')}\n`).toMatchFileSnapshot('golden/charts.txt');
});
