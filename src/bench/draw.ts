import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answer } from '#chat/answer.ts';
import { commonGrids } from '#core/label-grid.ts';
import { openDrawing } from '#draw/drawing.ts';
import type { ChartFacts, LabelFacts } from '#draw/facts.ts';
import { openFoods } from '#store/foods.ts';
import { openDatabase } from '#store/open.ts';
import { assemble } from '#assemble.ts';
import { typed } from './typed.ts';

// Times labels and charts as the chat asks for them, from the thread's start on, and how the chat answers meanwhile.

const runs = 15;
const grid30 = commonGrids.find(({ rows }) => rows === 10)!;

const labels = (meal: string): LabelFacts[] =>
  Array.from({ length: 30 }, (_, i) => ({
    code: `B4-${i + 1}`,
    meal,
    water: '355 ml (1½ cups)',
    soak: 'Stand 15 min at 340 m',
    dry: '95 g',
    servings: '1.2 servings',
    sealed: 'Sat 3 Apr 2027',
    bestBy: 'Sept 2028',
    cautions: [],
    camp: null,
    contents: ['Contains: milk, wheat.'],
    notFor: ['Not for Noa: milk'],
    scan: `https://t.me/kettle_and_tray_bot?start=h1_B4-${i + 1}`,
  }));

const curve = (points: number): ChartFacts => ({
  is: 'drying',
  title: 'B4 Red lentil pot: drying',
  caption: ['3000 g wet on 4 trays. Expected dry: about 728 g in all.'],
  ahead: { readyHours: 27, earliestHours: 25, latestHours: 31 },
  series: Array.from({ length: 4 }, (_, tray) => ({
    called: `tray ${tray + 1}`,
    points: Array.from({ length: points }, (_point, i) => ({
      hours: (i * 25) / Math.max(1, points - 1),
      g: 190 + tray + 560 * Math.exp((-i * 6) / points),
    })),
    thresholdG: 2,
    expectedG: 182,
  })),
});

const stock: ChartFacts = {
  is: 'stock',
  title: 'Pouches by meal and best-by month',
  caption: ['240 pouches.'],
  nowMonth: '2027-04',
  cells: Array.from({ length: 48 }, (_, i) => ({
    meal: `Meal ${i % 12}`,
    month: `2028-0${1 + (i % 4)}`,
    pouches: 5,
  })),
};

const trip: ChartFacts = {
  is: 'trip',
  title: 'Heron Lake: sodium and energy a day',
  caption: ['Of the kept meals alone.'],
  rows: Array.from({ length: 16 }, (_, i) => ({
    who: ['Ana', 'Ben', 'Noa', 'Rosa'][i % 4]!,
    day: `day ${Math.floor(i / 4) + 1}`,
    sodiumMg: 700 + 100 * i,
    kcal: 900 + 50 * i,
    sodiumLimitMg: 1500,
    kcalNeed: 2400,
  })),
};

const ms = (value: number) => `${value.toFixed(0)} ms`.padStart(8);
const sorted = (all: number[]) => all.toSorted((a, b) => a - b);

async function timed<T>(work: () => Promise<T>): Promise<{ tookMs: number; result: T }> {
  const from = performance.now();
  const result = await work();
  return { tookMs: performance.now() - from, result };
}

const drawing = openDrawing();
console.log('                                  first   median   slowest       size');
for (const [called, draw] of [
  [
    '30 labels on a sheet',
    (i: number) => drawing.labels({ grid: grid30, from: 1, labels: labels(`Lentil pot ${i}`) }),
  ],
  [
    '30 labels, Japanese names',
    (i: number) => drawing.labels({ grid: grid30, from: 1, labels: labels(`きのこ大麦 ${i}`) }),
  ],
  ['curve of 4 trays, 6 weighings', () => drawing.chart(curve(6))],
  ['curve of 4 trays, 1000 weighings', () => drawing.chart(curve(1000))],
  ['stock, 12 meals in 4 months', () => drawing.chart(stock)],
  ['trip, 4 eaters on 4 days', () => drawing.chart(trip)],
] as const) {
  const all: number[] = [];
  let bytes = 0;
  for (let i = 0; i < runs; i++) {
    const { tookMs, result } = await timed(() => draw(i));
    all.push(tookMs);
    bytes = result.files[0]!.byteLength;
  }
  const later = sorted(all.slice(1));
  console.log(
    `${called.padEnd(33)}${ms(all[0]!)} ${ms(later[Math.floor(later.length / 2)]!)} ${ms(later.at(-1)!)} ${(bytes / 1024).toFixed(0).padStart(7)} kB`,
  );
}
await drawing.dispose();

/** How long other requests take in the chat, alone and while a sheet of 300 labels is drawn beside it. */
async function besideTheChat(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const db = openDatabase(join(folder, 'household.db'));
  const foods = openFoods(join(folder, 'foods.db'));
  const { house, close } = await assemble({ db, foods, zone: 'UTC', log: (line) => console.error(line) });
  let count = 0;
  const send = (text: string) => {
    count += 1;
    return answer(house, typed(count, text, Date.UTC(2027, 3, 3) + count * 3 * 3_600_000)).pending;
  };
  for (const text of [
    '/recipe Lentil pot, 60 servings: 6 kg red lentils; 4 kg carrots; 90 g salt; 18 l water',
    '/batch lentil pot trays 7500 7500 7500 7500 g',
    '/weigh B1 1900 1900 1900 1900 sure',
    '/weigh B1 1900 1900 1900 1900 sure',
    '/seal 300 x 20 g B1',
    '/label B1-1',
  ])
    await send(text);
  const asking = async (until: () => boolean): Promise<number[]> => {
    const took: number[] = [];
    while (!until()) {
      const from = performance.now();
      void send('/water B1-3');
      took.push(performance.now() - from);
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
    return sorted(took);
  };
  const end = performance.now() + 500;
  const alone = await asking(() => performance.now() > end);
  let isDrawn = false;
  const from = performance.now();
  const pending = send('/label B1')!.then(() => void (isDrawn = true));
  const meanwhile = await asking(() => isDrawn);
  await pending;
  const say = (all: readonly number[]) =>
    `${all.length} requests, median ${all[Math.floor(all.length / 2)]!.toFixed(1)} ms, slowest ${all.at(-1)!.toFixed(1)} ms`;
  console.log(`/water alone: ${say(alone)}`);
  console.log(
    `/water while 300 labels are drawn (${(performance.now() - from).toFixed(0)} ms): ${say(meanwhile)}`,
  );
  await close();
  rmSync(folder, { recursive: true, force: true });
}

await besideTheChat();
process.exit(0);
