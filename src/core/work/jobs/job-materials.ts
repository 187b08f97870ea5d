import type { Job } from '../../work-shape.ts';
import { connectJobOf } from './connect-jobs.ts';
import type { JobDraft } from './job-draft.ts';
import { endsOf, jobId, type PhaseFrame, type WorkedPlan } from './job-frame.ts';
import type { PullGroup } from './pull-groups.ts';
import { sharedOut } from './shared-out.ts';

type ShoppingEntry = WorkedPlan['shopping'][number];
type Materials = ReadonlyMap<string, Job['materials']>;

/** Pieces are counted whole; what is sold by the metre is shared out to the tenth. */
const partsOf = ({ count, by }: ShoppingEntry): number => (by === 'metre' ? 10 : Number.isInteger(count) ? 1 : 100);

interface Spots {
  readonly frame: PhaseFrame;
  readonly pullOf: ReadonlyMap<string, string>;
  readonly byId: ReadonlyMap<string, JobDraft>;
}

/** The unit of a port, or what is named itself. */
const unitOf = (id: string): string => id.split('.')[0] ?? id;

const there = ({ byId }: Spots, jobs: readonly string[]): string[] => [...new Set(jobs)].filter((job) => byId.has(job));

/** Where a line is worked with: where it is pulled, else where it is connected. */
const ofLine = (spots: Spots, line: string): string[] => {
  const pulled = spots.pullOf.get(line);
  if (pulled !== undefined) return [pulled];
  return endsJobs(spots, line).slice(0, 1);
};

const endsJobs = (spots: Spots, id: string): string[] => {
  const { frame } = spots;
  const line = frame.lines.find((one) => one.id === id);
  const ends = line === undefined ? [unitOf(id)] : endsOf(frame, line);
  return there(spots, [
    ...ends.map((end) => connectJobOf(frame, end)),
    ...ends.map((end) => jobId('panel', end, frame.phase)),
  ]);
};

const mountsOf = (spots: Spots, id: string): string[] =>
  there(spots, [
    ...['mount', 'mount-aloft', 'underwater'].map((kind) => jobId(kind, id, spots.frame.phase)),
    jobId('cut', spots.frame.index.kit.get(id)?.place ?? id, spots.frame.phase),
  ]);

const sealsOf = (spots: Spots, id: string): string[] =>
  there(spots, [jobId('seal', id, spots.frame.phase), jobId('pull', id, spots.frame.phase)]);

/** The jobs an item is wanted for, by what it is for. */
const spotsOf = (spots: Spots, { kind, for: things }: ShoppingEntry): string[] => {
  switch (kind) {
    case 'unit':
      return things.flatMap((id) => mountsOf(spots, id).slice(0, 1));
    case 'trunk':
    case 'drop':
    case 'cable':
      return things.flatMap((id) => ofLine(spots, id));
    case 'fixing':
      return things.flatMap((id) => [...mountsOf(spots, id).slice(-1), ...sealsOf(spots, id).slice(-1)]);
    case 'passage':
      return things.flatMap((id) => sealsOf(spots, id).slice(0, 1));
    case 'plug':
    case 'adapter':
    case 'power':
      return things.flatMap((id) => endsJobs(spots, id).slice(0, 1));
    case 'bus-part':
      return things.flatMap((id) => there(spots, [connectJobOf(spots.frame, unitOf(id))]));
    case 'label':
    case 'spare':
      return [];
  }
};

/** Jobs of a phase with how its lines are pulled. */
export interface PhaseDrafts {
  readonly frame: PhaseFrame;
  readonly groups: readonly PullGroup[];
  readonly drafts: readonly JobDraft[];
}

const spotsIn = ({ frame, groups, drafts }: PhaseDrafts): Spots => ({
  frame,
  byId: new Map(drafts.map((job) => [job.id, job])),
  pullOf: new Map(groups.flatMap(({ lines, job }) => lines.map((line): [string, string] => [line, job]))),
});

/** What of the shopping list each job takes. Counts of one item add up to what is bought of it for these jobs. */
export const materialsOfJobs = (phases: readonly PhaseDrafts[]): Materials => {
  const found = new Map<string, Job['materials']>();
  const spots = phases.map(spotsIn);
  for (const entry of phases[0]?.frame.plan.shopping ?? []) {
    const weights = new Map<string, number>();
    for (const job of spots.flatMap((one) => spotsOf(one, entry))) weights.set(job, (weights.get(job) ?? 0) + 1);
    const parts = partsOf(entry);
    const counts = weights.size === 0 ? [] : sharedOut(Math.round(entry.count * parts), [...weights.values()]);
    [...weights.keys()].forEach((job, at) => {
      const count = (counts[at] ?? 0) / parts;
      if (count > 0) found.set(job, [...(found.get(job) ?? []), { item: entry.id, count }]);
    });
  }
  return found;
};
