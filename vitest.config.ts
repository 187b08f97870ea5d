import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take longest; begun first, so that no core waits for one of them in the end. */
const longest = [
  'tests/e2e/no-barriers.test.ts',
  'tests/e2e/save.test.ts',
  'tests/e2e/same-plan.test.ts',
  'tests/e2e/phone.test.ts',
  'tests/wreck.test.ts',
  'tests/fuzz-boats.test.ts',
  'tests/crash/save.test.ts',
  'src/core/blackouts/another-search.test.ts',
  'tests/order-survives-the-tape.test.ts',
  'src/papers/sheet/boat-sheet.test.ts',
  'tests/nets.test.ts',
  'tests/package.test.ts',
  'tests/binder.test.ts',
  'src/core/backbone/solve-layout.test.ts',
  'tests/direct-current.test.ts',
  'tests/another-simulator.test.ts',
];

const rankOf = ({ moduleId }: TestSpecification): number => {
  const at = longest.findIndex((name) => moduleId.endsWith(`/${name}`));
  return at < 0 ? longest.length : at;
};

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((one, other) => rankOf(one) - rankOf(other));
  }
}

export default defineConfig({
  test: {
    // left alone, one of two cores would go unused
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
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
          // beside those of one part, as much of it is waiting for a disk
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'e2e',
          include: ['tests/e2e/**/*.test.ts'],
          environment: 'node',
          globalSetup: ['tests/e2e/one-browser.ts'],
          // what opens and shuts pages is loaded once for all files
          isolate: false,
          testTimeout: 60_000,
          hookTimeout: 120_000,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
