import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['src/**/*.test.{ts,tsx}', 'tests/*.test.ts', 'tools/**/*.test.ts'],
          environment: 'node',
          // a plan of the Wreck takes seconds on a busy machine of two cores
          testTimeout: 30_000,
        },
      },
      {
        test: { name: 'crash', include: ['tests/crash/**/*.test.ts'], environment: 'node', testTimeout: 60_000 },
      },
      {
        test: {
          name: 'e2e',
          include: ['tests/e2e/**/*.test.ts'],
          environment: 'node',
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
