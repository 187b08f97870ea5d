import { keptFor } from '../../boat/kept-for.ts';
import { type WorkSlice, workSlices } from '../../facts/work-slices.ts';
import { connected, connectedWith, connectJobOf } from './connect-jobs.ts';
import { draftJob, type JobDraft, waits } from './job-draft.ts';
import { jobId, type PhaseFrame, sliceOf } from './job-frame.ts';
import { interruptsOf, panelsOpened } from './panel-jobs.ts';
import { isUnderwater } from './underwater.ts';

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

/** What is switched on in one job. */
interface SwitchedOn {
  readonly slice: WorkSlice;
  readonly units: readonly string[];
  /** where it stands, of screens at one of several places */
  readonly place?: string;
}

/** The jobs in which a phase is switched on: a slice each, and screens by their place, so that one helm need not wait for another. */
export const switchedOn = keptFor((frame: PhaseFrame): ReadonlyMap<string, SwitchedOn> => {
  const { index, phase } = frame;
  const found = new Map<string, SwitchedOn>();
  for (const [slice, units] of slicesOf(frame)) {
    const placeOf = (id: string): string => index.kit.get(id)?.place ?? '';
    const places = slice === 'displays' ? [...new Set(units.map(placeOf))] : [];
    if (places.length < 2) found.set(jobId('power-up', slice, phase), { slice, units });
    else
      for (const place of places) {
        const own = units.filter((id) => placeOf(id) === place);
        found.set(jobId('power-up', `${slice}:${place}`, phase), { slice, units: own, place });
      }
  }
  return found;
});

/** The job in which a unit or a bus of a phase is switched on. */
export const powerUpOf = (frame: PhaseFrame, id: string): string => {
  const at = connectedWith(frame, id);
  const own = [...switchedOn(frame)].find(([, { units }]) => units.includes(id) || units.includes(at));
  return own?.[0] ?? jobId('power-up', sliceIn(frame, id), frame.phase);
};

/** One slice switched on for the first time, or the screens at one place. */
export const powerUp = (frame: PhaseFrame, job: string, { slice, units, place }: SwitchedOn): JobDraft => {
  const { phase, index } = frame;
  const jobs = units.map((id) => (index.panels.has(id) ? jobId('panel', id, phase) : connectJobOf(frame, id)));
  const papers =
    slice === 'radio' ? frame.plan.shipPapers.filter((paper) => paper.for.some((id) => units.includes(id))) : [];
  const drafted = draftJob(frame, slice, {
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
        [...switchedOn(frame)].filter(([, one]) => before(slice).includes(one.slice)).map(([id]) => id),
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
    ...(place === undefined ? {} : { place }),
  });
  return { ...drafted, id: job, outside: false };
};

const hasRadioHand = ({ index }: PhaseFrame): boolean =>
  index.boat.work?.hands?.some(({ can = [] }) => can.includes('radio')) === true;
