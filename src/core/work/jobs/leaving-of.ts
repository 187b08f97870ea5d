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

/** The cables that go with each unit: those a person named, else those that go and were plugged into it, each with one unit. */
const cablesByUnit = (input: JobsInput, units: readonly string[]): ReadonlyMap<string, string[]> => {
  const { boat } = input.index;
  const said = (boat.work?.leaving ?? []).flatMap(({ unit, with: cables = [] }) =>
    cables.map((cable): [string, string] => [cable, unit]),
  );
  const unitOf = new Map(said);
  for (const { id, fate } of boat.cables) {
    if (fate !== 'goes' || unitOf.has(id)) continue;
    const own = unitsOfCable(input, id).find((unit) => units.includes(unit));
    if (own !== undefined) unitOf.set(id, own);
  }
  const found = new Map<string, string[]>();
  for (const [cable, unit] of [...unitOf].sort(([one], [other]) => byCodeUnit(one, other))) {
    found.set(unit, [...(found.get(unit) ?? []), cable]);
  }
  return found;
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
export const leavingOf = ({ jobs, ...input }: JobsInput & { readonly jobs: readonly Job[] }): LeavingEntry[] => {
  const frames = phaseFrames(input);
  const cables = cablesByUnit(
    input,
    frames.flatMap(({ goes }) => goes.map(({ id }) => id)),
  );
  return frames
    .flatMap(({ goes, phase }) =>
      goes.map((unit): LeavingEntry => {
        const to = input.index.boat.work?.leaving?.find((one) => one.unit === unit.id)?.to;
        return {
          unit: unit.id,
          ...(to === undefined ? {} : { to }),
          cables: cables.get(unit.id) ?? [],
          ...stepsOf(kindOf(input, unit.id)),
          serial: unit.aboard?.serial !== undefined,
          photo: isPhotographed(input, unit.id, unit.place),
          after: afterOf(jobs, phase),
        };
      }),
    )
    .sort((one, other) => byCodeUnit(one.unit, other.unit));
};
