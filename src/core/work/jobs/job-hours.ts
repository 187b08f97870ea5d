import { outsideHours } from '../../facts/job-figures.ts';
import type { JobKind } from '../../facts/job-kinds.ts';
import { jobShares } from '../../facts/job-shares.ts';
import { hundredthsOf } from '../../quote/hour-lines.ts';
import type { Range, Work } from '../../quote/quote-shape.ts';
import { connectJobOf } from './connect-jobs.ts';
import type { JobDraft } from './job-draft.ts';
import { endsOf, jobId, type PhaseFrame } from './job-frame.ts';
import type { PullGroup } from './pull-groups.ts';
import { sharedOut } from './shared-out.ts';

/** Jobs of one phase by id, with how its lines are pulled. */
interface Jobs {
  readonly frame: PhaseFrame;
  readonly groups: readonly PullGroup[];
  readonly byId: ReadonlyMap<string, JobDraft>;
}

interface Share {
  readonly job: string;
  readonly weight: number;
}

/** Equal shares of a weight among those of some jobs that there are. */
const among = ({ byId }: Jobs, jobs: readonly string[], weight: number): Share[] => {
  const there = [...new Set(jobs)].filter((job) => byId.has(job));
  return there.map((job) => ({ job, weight: weight / there.length }));
};

const ofKind = ({ byId }: Jobs, kind: JobKind): JobDraft[] => [...byId.values()].filter((job) => job.kind === kind);

const lengthOf = ({ frame }: Jobs, ways: readonly string[]): number =>
  ways.reduce((sum, way) => sum + (frame.index.ways.get(way)?.length.valueM ?? 0), 0);

/** Shares of a line among the jobs that pull it, by the length of their ways; in a mast, outside of one, or both. */
const alongLine = (jobs: Jobs, line: string, weight: number, mast?: boolean): Share[] => {
  const own = jobs.groups.filter((group) => (mast === undefined || group.mast === mast) && group.lines.includes(line));
  const whole = own.reduce((sum, { ways }) => sum + lengthOf(jobs, ways), 0);
  return own.map(({ job, ways }) => ({
    job,
    weight: whole === 0 ? weight / own.length : (weight * lengthOf(jobs, ways)) / whole,
  }));
};

/** The new display that stands over the hole of an old one: the first of the place for the first that goes, and so on. */
const overHole = ({ frame }: Jobs, unit: string): string | undefined => {
  const place = frame.index.kit.get(unit)?.place;
  const isCovered = (id: string): boolean =>
    frame.pieces.some(({ task, of }) => (task === 'cover-plate' || task === 'flush-mount') && of === id);
  const old = frame.goes.filter((one) => one.place === place && isCovered(one.id)).map(({ id }) => id);
  const fresh = frame.comes.filter(
    ({ id, place: at }) =>
      at === place &&
      ['display', 'instrument', 'pilot-head', 'keypad'].includes(frame.index.sheetOf.get(id)?.kind ?? ''),
  );
  return fresh[old.indexOf(unit)]?.id;
};

const mountOf = ({ frame, byId }: Jobs, unit: string): string[] =>
  (['mount', 'mount-aloft', 'underwater'] as const)
    .map((kind) => jobId(kind, unit, frame.phase))
    .filter((job) => byId.has(job));

/** Units whose fitting a piece of work counts. */
const unitsOf = (jobs: Jobs, { task, of, also = [] }: Work): string[] => {
  if (of === undefined) return [];
  if (task === 'cover-plate') return [overHole(jobs, of)].flatMap((unit) => unit ?? []);
  return [of, ...also];
};

/** The jobs in which the part of a piece that is of one kind is done, with their weights. */
const sharesOfKind = (jobs: Jobs, piece: Work, kind: JobKind, weight: number): Share[] => {
  const { frame } = jobs;
  const { phase, index } = frame;
  const { of = '' } = piece;
  const line = frame.lines.find(({ id }) => id === of);
  const named = (...ids: readonly string[]): Share[] =>
    among(
      jobs,
      ids.map((id) => jobId(kind, id, phase)),
      weight,
    );
  switch (kind) {
    case 'mount':
    case 'mount-aloft':
      return among(
        jobs,
        unitsOf(jobs, piece).flatMap((unit) => mountOf(jobs, unit)),
        weight,
      );
    case 'cut':
      return named(index.kit.get(of)?.place ?? '');
    case 'pull':
    case 'mast-pull': {
      if (line !== undefined) return alongLine(jobs, of, weight, kind === 'mast-pull');
      const own = frame.lines.filter((one) => endsOf(frame, one).includes(of));
      return own.flatMap((one) => alongLine(jobs, one.id, weight / own.length));
    }
    case 'seal':
      return named(...(line?.ways ?? []));
    case 'connect': {
      if (piece.task === 'fit-plug') return plugShares(jobs, weight);
      const ends = line === undefined ? unitsOf(jobs, piece) : endsOf(frame, line);
      return among(
        jobs,
        ends.map((end) => connectJobOf(frame, end)),
        weight,
      );
    }
    case 'panel':
      return named(...(line === undefined ? [] : endsOf(frame, line)));
    case 'take-out':
    case 'open-way':
      return named(of);
    default:
      return byCount(jobs, kind, weight);
  }
};

/** Plugs fitted aboard, shared among what is connected by cables that take them. */
const plugShares = (jobs: Jobs, weight: number): Share[] => {
  const { frame } = jobs;
  const plugged = new Set(frame.plan.shopping.filter(({ kind }) => kind === 'plug').flatMap((item) => item.for));
  const ends = frame.lines.filter(({ id }) => plugged.has(id)).flatMap((line) => endsOf(frame, line));
  const named = among(
    jobs,
    ends.map((id) => connectJobOf(frame, id)),
    weight,
  );
  return named.length > 0
    ? named
    : among(
        jobs,
        ofKind(jobs, 'connect').map(({ id }) => id),
        weight,
      );
};

/** Jobs of a kind that stand for a whole phase or slice: by how much each is about. */
const byCount = (jobs: Jobs, kind: JobKind, weight: number): Share[] => {
  const own = ofKind(jobs, kind);
  const sizes = own.map(({ about, steps }) => Math.max(1, kind === 'sea-trial' ? steps.length : about.length));
  const whole = sizes.reduce((sum, size) => sum + size, 0);
  return own.map(({ id }, at) => ({ job: id, weight: (weight * (sizes[at] ?? 0)) / whole }));
};

/** The jobs one piece of work is done in, with weights; work that finds none of its own is done with the last of all. */
const sharesOf = (jobs: Jobs, piece: Work): Share[] => {
  const hasTrial = jobs.frame.pieces.some(({ task }) => task === 'sea-trial');
  const kinds = Object.entries(jobShares.byTask[piece.task]) as [JobKind, number][];
  const shares = kinds
    .filter(([kind]) => !(piece.task === 'commission' && kind === 'sea-trial' && hasTrial))
    .flatMap(([kind, weight]) => sharesOfKind(jobs, piece, kind, weight));
  if (shares.length > 0) return shares;
  const otherwise = ofKind(jobs, 'as-built')[0] ?? ofKind(jobs, 'sea-trial')[0] ?? [...jobs.byId.values()][0];
  return otherwise === undefined ? [] : [{ job: otherwise.id, weight: 1 }];
};

/**
 * Hours of each job of a phase in whole hundredths: every piece of work that the quote counts is shared out whole, so that all
 * jobs together take what the quote has; jobs that no quote counts have hours of their own.
 */
export const hundredthsOfJobs = (
  frame: PhaseFrame,
  groups: readonly PullGroup[],
  drafts: readonly JobDraft[],
): ReadonlyMap<string, Range> => {
  const jobs: Jobs = { frame, groups, byId: new Map(drafts.map((job) => [job.id, job])) };
  const found = new Map<string, Range>();
  const add = (job: string, { least, most }: Range): void => {
    const had = found.get(job) ?? { least: 0, most: 0 };
    found.set(job, { least: had.least + least, most: had.most + most });
  };
  for (const piece of frame.pieces) {
    const { least, most } = hundredthsOf(piece, frame.index.boat.quote ?? {});
    const shares = sharesOf(jobs, piece);
    const weights = shares.map(({ weight }) => weight);
    const lower = sharedOut(least, weights);
    const more = sharedOut(most - least, weights);
    shares.forEach(({ job }, at) => {
      const from = lower[at] ?? 0;
      add(job, { least: from, most: from + (more[at] ?? 0) });
    });
  }
  for (const { id, kind } of drafts) {
    const outside = Object.hasOwn(outsideHours.byKind, kind)
      ? outsideHours.byKind[kind as keyof typeof outsideHours.byKind]
      : undefined;
    if (outside !== undefined)
      add(id, { least: Math.round(outside.leastH * 100), most: Math.round(outside.mostH * 100) });
  }
  return found;
};
