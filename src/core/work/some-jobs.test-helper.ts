import type { Job, Watched } from '../work-shape.ts';

/** A job of one hour for one person, unless said otherwise. */
export const aJob = (id: string, own: Partial<Job> = {}): Job => ({
  id,
  kind: 'own',
  phase: 1,
  about: [],
  hoursH: { least: 1, most: 1 },
  slots: 2,
  people: 1,
  needs: [],
  steps: [],
  tools: [],
  materials: [],
  cautions: [],
  after: [],
  takes: [],
  outside: false,
  aloft: false,
  apart: [],
  waitsFor: [],
  source: 'practice-labour',
  ...own,
});

/** Waits for some jobs, with no hours between. */
export const afterJobs = (...ids: readonly string[]): Job['after'] => ids.map((job) => ({ job, why: 'person' }));

/** The sounder of a boat: the old one until it is taken out, the new one once it is powered up. */
export const watchedDepth: Watched = {
  function: 'depth',
  hard: false,
  ways: [
    { by: ['old-sounder'], from: [], until: ['take-out:old-sounder'] },
    { by: ['sounder'], from: ['power-up:sounder'], until: [] },
  ],
};

/** An old sounder for a new one, whose transducer is fitted ashore. */
export const sounderJobs: readonly Job[] = [
  aJob('survey', { slots: 6 }),
  aJob('take-out:old-sounder', { after: afterJobs('survey') }),
  aJob('haul-out', { kind: 'haul-out', state: 'ashore', outside: true }),
  aJob('underwater:transducer', { state: 'ashore', slots: 8, after: afterJobs('haul-out', 'take-out:old-sounder') }),
  aJob('launch', {
    kind: 'launch',
    state: 'afloat',
    outside: true,
    after: [{ job: 'underwater:transducer', why: 'cured-first', waitH: 24 }],
  }),
  aJob('pull:transducer', { slots: 5, after: afterJobs('take-out:old-sounder') }),
  aJob('power-up:sounder', { after: afterJobs('underwater:transducer', 'pull:transducer', 'launch') }),
];
