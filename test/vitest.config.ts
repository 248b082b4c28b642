import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Two rings: what is quick, and with RING=all also what starts processes, draws, fuzzes or copies databases. */
const isAll = process.env['RING'] === 'all';

export default defineConfig({
  test: {
    root: '.',
    include: ['test/**/*.test.ts'],
    exclude: isAll ? [] : ['test/**/*.long.test.ts'],
    globalSetup: ['test/food-table.ts'],
    // Files share their workers: what they load (foods, requests, the solver) is loaded once in each.
    isolate: false,
    pool: 'forks',
    // One short of all by default, which on two cores is one at a time.
    maxWorkers: availableParallelism(),
    minWorkers: 1,
    // A shared machine may be slow; no test here is about time.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
