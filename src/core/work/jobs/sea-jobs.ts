import { isAboard } from '../../boat/phase.ts';
import { seaTrials } from '../../facts/trial-tests.ts';
import { connected } from './connect-jobs.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, kindOf, type PhaseFrame } from './job-frame.ts';

/** Trials at sea that are a job of their own: the heading is calibrated first, and the heading line of a radar set after it. */
const parted: Readonly<Record<string, string>> = { heading: 'heading', compass: 'heading', radar: 'radar' };

/** Kinds that steer or draw by the heading: with one of them new, the heading sensor aboard is calibrated too. */
const leanOnHeading: readonly string[] = ['heading-sensor', 'radar', 'pilot', 'pilot-computer'];

/** The trials of a phase by the job they are done in: those of what is new in it, and those that every boat does. */
const trialsOf = (frame: PhaseFrame): ReadonlyMap<string, readonly string[]> => {
  const kinds = new Set(connected(frame).map((id) => kindOf(frame, id)));
  const aboard = new Set(
    frame.index.boat.kit.filter((unit) => isAboard(unit, frame.phase)).map(({ id }) => kindOf(frame, id)),
  );
  const isCalibrated = aboard.has('heading-sensor') && leanOnHeading.some((kind) => kinds.has(kind));
  const found = new Map<string, string[]>();
  for (const { id, kinds: of } of seaTrials) {
    const wanted = parted[id] === 'heading' ? isCalibrated : of === undefined || of.some((kind) => kinds.has(kind));
    const isNew = wanted && (of === undefined || of.some((kind) => aboard.has(kind)));
    const name = parted[id] ?? '';
    if (isNew) found.set(name, [...(found.get(name) ?? []), id]);
  }
  return found;
};

/** The sea trial of a phase, once all else in it is done; the papers as built, and what leaves. */
export const seaJobs = (frame: PhaseFrame, jobs: readonly JobDraft[]): JobDraft[] => {
  const { phase } = frame;
  if (frame.pieces.length === 0) return [];
  const waited = new Set(jobs.flatMap(({ after }) => after.map(({ job }) => job)));
  const tried = jobs.filter(({ id }) => !waited.has(id)).map(({ id }) => id);
  const trials = trialsOf(frame);
  const heading = jobId('sea-trial', 'heading', phase);
  const atSea = [...trials].map(([name, steps]) =>
    draftJob(frame, name, {
      kind: 'sea-trial',
      about: connected(frame).filter((id) =>
        seaTrials.some((trial) => steps.includes(trial.id) && trial.kinds?.includes(kindOf(frame, id))),
      ),
      steps,
      state: 'afloat',
      after: [
        ...waits(tried, 'tried-first'),
        ...(name !== 'heading' && trials.has('heading') ? waits([heading], 'calibrated-first') : []),
      ],
    }),
  );
  const last = atSea.map(({ id }) => id);
  return [
    ...atSea,
    ...(frame.isLast ? [draftJob(frame, '', { kind: 'as-built', after: waits(last, 'tried-first') })] : []),
    ...(frame.goes.length === 0
      ? []
      : [
          draftJob(frame, '', {
            kind: 'leaving',
            about: frame.goes.map(({ id }) => id),
            after: waits(last, 'tried-first'),
          }),
        ]),
  ];
};
