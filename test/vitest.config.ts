import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: '.',
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/food-table.ts'],
    // A shared machine may be slow; no test here is about time.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
