import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // left alone, one of two cores would go unused
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'unit',
          include: ['src/**/*.test.{ts,tsx}', 'tests/*.test.ts', 'tools/**/*.test.ts'],
          environment: 'node',
          setupFiles: ['tests/same-draws.ts'],
          // the files of one worker share what they import, as nothing in it can tell who asked before
          isolate: false,
          // a plan of the Wreck takes seconds on a busy machine of two cores
          testTimeout: 30_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'crash',
          include: ['tests/crash/**/*.test.ts'],
          environment: 'node',
          testTimeout: 60_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'e2e',
          include: ['tests/e2e/**/*.test.ts'],
          environment: 'node',
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
