import { defineConfig } from 'vitest/config';

const tests = process.env.MUTANTS_TESTS ?? 'src/core/rules/**/*.test.ts,src/core/backbone/**/*.test.ts';

/** The tests that watch over rules and solver, as the program that plants faults runs them: without browsers. */
export default defineConfig({
  test: {
    include: tests.split(','),
    environment: 'node',
    setupFiles: ['tests/same-draws.ts'],
    isolate: false,
    testTimeout: 30_000,
  },
});
