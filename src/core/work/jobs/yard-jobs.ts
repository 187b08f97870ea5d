import { jobWaits } from '../../facts/job-figures.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, type PhaseFrame } from './job-frame.ts';

const yardNeeds = ({ index }: PhaseFrame): JobDraft['needs'] =>
  index.boat.work?.hands?.some(({ can = [] }) => can.includes('yard')) === true ? ['yard'] : [];

/** The lift out and in, where something is done below the waterline, and the day and night she is watched after it. */
const liftJobs = (frame: PhaseFrame, jobs: readonly JobDraft[]): JobDraft[] => {
  const ashore = jobs.filter(({ state }) => state === 'ashore');
  if (ashore.length === 0) return [];
  const { phase } = frame;
  const wet = ashore.filter(({ kind }) => kind === 'underwater').map(({ id }) => id);
  const dry = ashore.filter(({ kind }) => kind !== 'underwater').map(({ id }) => id);
  const about = ashore.flatMap((job) => job.about.slice(0, 1));
  return [
    draftJob(frame, '', {
      kind: 'haul-out',
      about,
      state: 'ashore',
      outside: true,
      needs: yardNeeds(frame),
      after: waits([jobId('survey', '', phase)], 'label-first'),
    }),
    draftJob(frame, '', {
      kind: 'launch',
      about,
      state: 'afloat',
      outside: true,
      needs: yardNeeds(frame),
      after: [...waits(wet, 'cured-first', jobWaits.hullCure.value), ...waits(dry, 'in-reach')],
    }),
    draftJob(frame, '', {
      kind: 'watch-for-water',
      about,
      state: 'afloat',
      after: waits([jobId('launch', '', phase)], 'tried-first', jobWaits.watchForWater.value),
    }),
  ];
};

/** The mast taken down and put up, where work in it is done with it down. */
const mastJobs = (frame: PhaseFrame, jobs: readonly JobDraft[]): JobDraft[] => {
  const down = jobs.filter(({ mast }) => mast === 'down');
  if (down.length === 0) return [];
  const common = { outside: true, needs: yardNeeds(frame) } as const;
  return [
    draftJob(frame, '', {
      kind: 'mast-down',
      ...common,
      after: waits(
        jobs.filter(({ kind }) => kind === 'label' || kind === 'survey').map(({ id }) => id),
        'label-first',
      ),
    }),
    draftJob(frame, '', {
      kind: 'mast-up',
      ...common,
      after: waits(
        down.map(({ id }) => id),
        'in-reach',
      ),
    }),
  ];
};

/** What the yard does around the jobs of a phase. */
export const yardJobs = (frame: PhaseFrame, jobs: readonly JobDraft[]): JobDraft[] => [
  ...liftJobs(frame, jobs),
  ...mastJobs(frame, jobs),
];
