import { byCodeUnit } from '../../boat/ids.ts';
import { leavingSteps } from '../../facts/leaving-steps.ts';
import type { Job, LeavingEntry } from '../../work-shape.ts';
import { type JobsInput, jobId, kindOf, phaseFrames } from './job-frame.ts';
import { unitsOfCable } from './pull-groups.ts';

/** What is done to a unit before it leaves, in order, and what of it only its maker can do. */
const stepsOf = (kind: string): Pick<LeavingEntry, 'steps' | 'byMaker'> => {
  const own = leavingSteps.filter(({ kinds }) => kinds === undefined || kinds.includes(kind));
  return {
    steps: own.map(({ id }) => id),
    byMaker: own.filter(({ byMaker = [] }) => byMaker.includes(kind)).map(({ id }) => id),
  };
};

/** The cables that go with a unit: those a person named, else those that go and were plugged into it. */
const cablesOf = (input: JobsInput, unit: string): string[] => {
  const { boat } = input.index;
  const said = boat.work?.leaving?.find((one) => one.unit === unit)?.with;
  if (said !== undefined) return [...said].sort(byCodeUnit);
  return boat.cables
    .filter(({ id, fate }) => fate === 'goes' && unitsOfCable(input, id).includes(unit))
    .map(({ id }) => id)
    .sort(byCodeUnit);
};

/** The job of a phase after which what goes in it may leave: its sea trial, else the last of its dock tests. */
const afterOf = (jobs: readonly Job[], phase: number): string => {
  const own = jobs.filter((job) => job.phase === phase && job.leftOut === undefined).map(({ id }) => id);
  const trial = jobId('sea-trial', '', phase);
  if (own.includes(trial)) return trial;
  return own.find((id) => id.startsWith('sea-trial')) ?? own.findLast((id) => id.startsWith('dock-test')) ?? trial;
};

/** Whether somebody has photographed a unit, or the place it stands at. */
const isPhotographed = ({ index }: JobsInput, unit: string, place: string): boolean =>
  index.boat.photos?.some(({ of }) => of === unit || of === place) === true;

/** What becomes of every unit that goes: kept with its cables until the sea trial has passed, wiped, told of, and then gone. */
export const leavingOf = ({ jobs, ...input }: JobsInput & { readonly jobs: readonly Job[] }): LeavingEntry[] =>
  phaseFrames(input)
    .flatMap(({ goes, phase }) =>
      goes.map((unit): LeavingEntry => {
        const to = input.index.boat.work?.leaving?.find((one) => one.unit === unit.id)?.to;
        return {
          unit: unit.id,
          ...(to === undefined ? {} : { to }),
          cables: cablesOf(input, unit.id),
          ...stepsOf(kindOf(input, unit.id)),
          serial: unit.aboard?.serial !== undefined,
          photo: isPhotographed(input, unit.id, unit.place),
          after: afterOf(jobs, phase),
        };
      }),
    )
    .sort((one, other) => byCodeUnit(one.unit, other.unit));
