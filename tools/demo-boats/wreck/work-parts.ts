import type { Boat } from '../../../src/core/boat/boat-schema.ts';
import type { OwnJob, OwnOfJob, Work } from '../../../src/core/boat/work.ts';

/** The boat with something else said of her work. */
export const withWork = (boat: Boat, change: (work: Work) => Work): Boat => ({
  ...boat,
  work: change(boat.work ?? {}),
});

/** The boat with more settled of jobs of the plan. */
export const withSettled = (boat: Boat, ...said: readonly OwnOfJob[]): Boat =>
  withWork(boat, ({ jobs = [], ...work }) => ({ ...work, jobs: [...jobs, ...said] }));

/** The boat with more jobs of the owner’s own. */
export const withOwnJobs = (boat: Boat, ...more: readonly OwnJob[]): Boat =>
  withWork(boat, ({ own = [], ...work }) => ({ ...work, own: [...own, ...more] }));
