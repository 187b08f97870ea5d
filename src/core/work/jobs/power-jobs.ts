import { keptFor } from '../../boat/kept-for.ts';
import { driveKinds, type WorkSlice, workSlices } from '../../facts/work-slices.ts';
import type { TestEntry } from '../../tests-shape.ts';
import { connected, connectedWith, connectJobOf } from './connect-jobs.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, kindOf, laterOf, type PhaseFrame, sliceOf } from './job-frame.ts';
import { isUnderwater } from './mount-jobs.ts';
import { interruptsOf, panelsOpened } from './panel-jobs.ts';

/** The slice of a unit in a phase: what is fitted below the waterline, and what is plugged in with it, comes last. */
export const sliceIn = (frame: PhaseFrame, id: string): WorkSlice => {
  const at = connectedWith(frame, id);
  const isWet = frame.comes.some((unit) => isUnderwater(frame, unit) && connectedWith(frame, unit.id) === at);
  return isWet ? 'hull' : sliceOf(frame, at);
};

/** What is in each slice of a phase: panels, buses and units that are connected in it. */
export const slicesOf = keptFor((frame: PhaseFrame): ReadonlyMap<WorkSlice, readonly string[]> => {
  const all = [...panelsOpened(frame), ...connected(frame)];
  return new Map(
    workSlices.flatMap((slice): [WorkSlice, string[]][] => {
      const own = all.filter((id) => sliceIn(frame, id) === slice);
      return own.length === 0 ? [] : [[slice, own]];
    }),
  );
});

/** Slices that must be on before another: power and the backbone before all, the displays before pilot and radar. */
const before = (slice: WorkSlice): readonly WorkSlice[] => {
  const first = workSlices.slice(0, Math.min(2, workSlices.indexOf(slice)));
  return slice === 'pilot' || slice === 'radar' || slice === 'hull' ? [...first, 'displays'] : first;
};

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

const powerUp = (frame: PhaseFrame, slice: WorkSlice, units: readonly string[]): JobDraft => {
  const { phase, index } = frame;
  const active = slicesOf(frame);
  const jobs = units.map((id) => (index.panels.has(id) ? jobId('panel', id, phase) : connectJobOf(frame, id)));
  const papers =
    slice === 'radio' ? frame.plan.shipPapers.filter((paper) => paper.for.some((id) => units.includes(id))) : [];
  return draftJob(frame, slice, {
    kind: 'power-up',
    about: units,
    after: [
      ...waits(jobs, slice === 'power' ? 'fed-by' : 'fixed-first'),
      ...(slice === 'power'
        ? waits(
            interruptsOf(frame).map(({ job }) => job),
            'fed-by',
          )
        : []),
      ...waits(
        before(slice)
          .filter((one) => active.has(one))
          .map((one) => jobId('power-up', one, phase)),
        'powered-first',
      ),
      ...papers
        .filter(({ state }) => state === 'to-ask' || state === 'to-start')
        .map(({ paper, waitDays }) => ({
          job: jobId('paper', paper, phase),
          why: 'papers-first' as const,
          waitH: waitDays * 24,
        })),
    ],
    waitsFor: papers
      .filter(({ state }) => state === 'asked')
      .map(({ paper, thereOn }) => ({
        what: 'paper' as const,
        id: paper,
        ...(thereOn === undefined ? {} : { on: thereOn }),
      })),
    needs:
      slice === 'radio' && frame.index.boat.papers?.workBy === 'radio-installer' && hasRadioHand(frame)
        ? ['radio']
        : [],
  });
};

const hasRadioHand = ({ index }: PhaseFrame): boolean =>
  index.boat.work?.hands?.some(({ can = [] }) => can.includes('radio')) === true;

/** Each slice switched on, brought to one set of versions and tested; and the drive checked. */
export const powerJobs = (frame: PhaseFrame): JobDraft[] => {
  const { phase } = frame;
  const tests = testsBySlice(frame);
  const active = slicesOf(frame);
  return [
    ...[...active].flatMap(([slice, units]): JobDraft[] => {
      const on = powerUp(frame, slice, units);
      const newer = updated(frame, slice);
      const own = tests.get(slice) ?? [];
      const update = draftJob(frame, slice, { kind: 'update', about: newer, after: waits([on.id], 'powered-first') });
      const last = newer.length === 0 ? on.id : update.id;
      const test = draftJob(frame, slice, {
        kind: 'dock-test',
        about: own.map(({ id }) => id),
        after: waits([last], newer.length === 0 ? 'powered-first' : 'updated-first'),
        ...(needsWater(own) ? { state: 'afloat' as const } : {}),
      });
      return [on, ...(newer.length === 0 ? [] : [update]), ...(own.length === 0 ? [] : [test])];
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
