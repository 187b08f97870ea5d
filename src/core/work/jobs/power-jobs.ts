import { driveKinds, type WorkSlice, workSlices } from '../../facts/work-slices.ts';
import { connected } from './connect-jobs.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, kindOf, laterOf, type PhaseFrame, type WorkedPlan } from './job-frame.ts';
import { powerUp, sliceIn, slicesOf, switchedOn } from './power-up-jobs.ts';

type TestEntry = NonNullable<WorkedPlan['tests']>[number];

const trialSlices: Readonly<Record<string, WorkSlice>> = {
  'radio-check': 'radio',
  'dsc-position': 'radio',
  'ais-read-back': 'radio',
  'led-noise': 'radio',
  'pilot-sense': 'pilot',
  'pilot-let-go': 'pilot',
};

const sliceOfTest = (frame: PhaseFrame, { group, what = '', about }: TestEntry): WorkSlice => {
  if (group === 'bus') return 'backbone';
  if (group === 'feed' || group === 'hull') return 'power';
  if (group === 'trial' || group === 'noise') return trialSlices[what] ?? 'displays';
  return laterOf(about.map((id) => sliceIn(frame, id.split('.')[0] ?? id))) ?? 'displays';
};

/** The phase from which all is aboard that a test is about. */
const phaseOfTest = ({ index }: PhaseFrame, { about }: TestEntry): number =>
  Math.max(
    1,
    ...about.map((id) => {
      const unit = index.kit.get(id.split('.')[0] ?? id);
      return unit?.fate === 'comes' ? (unit.phase ?? 1) : 1;
    }),
  );

/** The tests of a phase by the slice after which they can be taken. */
export const testsBySlice = (frame: PhaseFrame): ReadonlyMap<WorkSlice, readonly TestEntry[]> => {
  const active = [...slicesOf(frame).keys()];
  const found = new Map<WorkSlice, TestEntry[]>();
  for (const test of frame.plan.tests ?? []) {
    if (phaseOfTest(frame, test) !== frame.phase) continue;
    const wanted = sliceOfTest(frame, test);
    const at = workSlices.indexOf(wanted);
    const slice = active.find((one) => workSlices.indexOf(one) >= at) ?? active.at(-1);
    if (slice !== undefined) found.set(slice, [...(found.get(slice) ?? []), test]);
  }
  return found;
};

const withSoftware = (frame: PhaseFrame, id: string): boolean =>
  frame.comes.some((unit) => unit.id === id) &&
  frame.index.sheetOf.get(id)?.ports.some(({ protocol }) => ['nmea2000', 'ethernet', 'wifi'].includes(protocol)) ===
    true;

/** Units of a slice that are brought to one set of versions. */
const updated = (frame: PhaseFrame, slice: WorkSlice): string[] =>
  (slicesOf(frame).get(slice) ?? []).filter((id) => withSoftware(frame, id));

const needsWater = (tests: readonly TestEntry[]): boolean =>
  tests.some(({ reading }) => reading === 'depth' || reading === 'speed-water');

/** Each slice switched on, brought to one set of versions and tested; and the drive checked. */
export const powerJobs = (frame: PhaseFrame): JobDraft[] => {
  const { phase } = frame;
  const tests = testsBySlice(frame);
  const active = slicesOf(frame);
  return [
    ...[...active.keys()].flatMap((slice): JobDraft[] => {
      const on = [...switchedOn(frame)]
        .filter(([, one]) => one.slice === slice)
        .map(([id, one]) => powerUp(frame, id, one));
      const ids = on.map(({ id }) => id);
      const newer = updated(frame, slice);
      const own = tests.get(slice) ?? [];
      const update = draftJob(frame, slice, { kind: 'update', about: newer, after: waits(ids, 'powered-first') });
      const test = draftJob(frame, slice, {
        kind: 'dock-test',
        about: own.map(({ id }) => id),
        after: newer.length === 0 ? waits(ids, 'powered-first') : waits([update.id], 'updated-first'),
        ...(needsWater(own) ? { state: 'afloat' as const } : {}),
      });
      return [...on, ...(newer.length === 0 ? [] : [update]), ...(own.length === 0 ? [] : [test])];
    }),
    ...(hasDriveWork(frame)
      ? [
          draftJob(frame, '', {
            kind: 'drive-check',
            about: drivesTouched(frame),
            state: 'afloat',
            after: waits([jobId('power-up', 'pilot', phase)], 'powered-first'),
          }),
        ]
      : []),
  ];
};

const drivesTouched = (frame: PhaseFrame): string[] =>
  [...connected(frame), ...frame.goes.map(({ id }) => id)].filter((id) => driveKinds.kinds.includes(kindOf(frame, id)));

/** Whether the work of a phase touches what turns the rudder. */
export const hasDriveWork = (frame: PhaseFrame): boolean => drivesTouched(frame).length > 0;
