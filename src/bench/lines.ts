import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { resolveLine } from '#foods/line.ts';
import { openFoods } from '#store/foods.ts';

/** One line of a file to measure by: `typed`, the `grams` its author states, and its `kind`. */
const Row = z.object({ typed: z.string(), grams: z.number(), kind: z.string().default('all') });

const [, , file, ...flags] = process.argv;
if (file === undefined) {
  console.error(
    'Usage: npm run bench:lines -- FILE [--each]    FILE: one JSON object a line: typed, grams, kind',
  );
  process.exit(2);
}
const table = openFoods(':memory:');
const rows = readFileSync(file, 'utf8')
  .split('\n')
  .filter((line) => line.trim() !== '')
  .map((line) => Row.parse(JSON.parse(line)));

if (flags.includes('--each')) {
  for (const { typed } of rows) {
    const { grams, food, is } = resolveLine(typed, table);
    console.log(JSON.stringify({ typed, grams, food: food?.ndb ?? null, asks: is === 'asked' }));
  }
} else report();

function report(): void {
  const measured = rows.map((row) => {
    const result = resolveLine(row.typed, table);
    return {
      ...row,
      kind: row.kind ?? 'all',
      result,
      error: result.grams === null ? null : Math.abs(result.grams - row.grams) / row.grams,
    };
  });
  for (const kind of [...new Set(measured.map((row) => row.kind))].toSorted()) {
    const mine = measured.filter((row) => row.kind === kind);
    const errors = mine.flatMap(({ error }) => (error === null ? [] : [error])).toSorted((a, b) => a - b);
    const share = (count: number) => `${((100 * count) / mine.length).toFixed(1)} %`;
    const within = (limit: number) => share(errors.filter((error) => error <= limit).length);
    const median = errors[Math.floor(errors.length / 2)];
    console.log(
      `${kind.padEnd(7)} ${String(mine.length).padStart(4)} lines  resolved ${share(errors.length)}  within 15 % ${within(0.15)}  within 25 % ${within(0.25)}  median error ${((median ?? 0) * 100).toFixed(1)} %  asks ${share(mine.filter(({ result }) => result.question !== null).length)}`,
    );
  }
  const most = flags.includes('--all') ? Infinity : 40;
  const worst = measured
    .filter(({ error }) => error === null || error > 0.15)
    .toSorted((a, b) => (b.error ?? 99) - (a.error ?? 99));
  for (const { typed, grams, result, error } of worst.slice(0, most)) {
    const off = error === null ? `asks: ${result.question ?? result.is}` : `${(error * 100).toFixed(0)} %`;
    console.log(
      `  ${off.padEnd(6)} "${typed}" stated ${grams} g, read ${result.grams === null ? '-' : result.grams.toFixed(1)} g of ${result.called}`,
    );
  }
}
