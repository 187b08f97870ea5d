import { byCodeUnit } from '../../boat/ids.ts';
import { isOutsideQuote, outsideHours } from '../../facts/job-figures.ts';
import { jobShares } from '../../facts/job-shares.ts';
import { toolsOfJobs } from '../../facts/tools-of-jobs.ts';
import type { Range } from '../../quote/quote-shape.ts';
import type { Job } from '../../work-shape.ts';
import { connectJobs } from './connect-jobs.ts';
import { cautionsOf } from './job-cautions.ts';
import { type JobDraft, waits } from './job-draft.ts';
import { type JobsInput, jobId, type PhaseFrame, phaseFrames } from './job-frame.ts';
import { hundredthsOfJobs } from './job-hours.ts';
import { materialsOfJobs, type PhaseDrafts } from './job-materials.ts';
import { mountJobs } from './mount-jobs.ts';
import { ownJobs } from './own-jobs.ts';
import { fedMeanwhile, functionsTaken, interruptsOf, panelJobs } from './panel-jobs.ts';
import { paperJobs } from './paper-jobs.ts';
import { powerJobs } from './power-jobs.ts';
import { type PullGroup, pullGroups } from './pull-groups.ts';
import { pullJobs } from './pull-jobs.ts';
import { seaJobs } from './sea-jobs.ts';
import { surveyJobs } from './survey-jobs.ts';
import { yardJobs } from './yard-jobs.ts';

/** Nothing is touched before it was looked at: what waits for nothing else waits for the survey. */
const surveyFirst = (drafts: readonly JobDraft[], { kind }: JobDraft): JobDraft['after'] =>
  kind === 'survey' || kind === 'paper' || kind === 'own'
    ? []
    : waits(
        drafts.filter((other) => other.kind === 'survey').map(({ id }) => id),
        'label-first',
      );

/**
 * Jobs wait only for jobs that there are, each once, and never for themselves; whatever waits for another job of the boat need
 * not be told to wait for the survey too, since that one does.
 */
const trimmed = (drafts: readonly JobDraft[]): JobDraft[] => {
  const ids = new Set(drafts.map(({ id }) => id));
  const surveys = new Set(drafts.filter(({ kind }) => kind === 'survey' || kind === 'paper').map(({ id }) => id));
  return drafts.map((job) => {
    const seen = new Set<string>();
    const there = job.after.filter(({ job: other, why }) => {
      const isNew = !seen.has(other);
      if (other !== job.id && (ids.has(other) || why === 'person')) seen.add(other);
      return isNew && seen.has(other);
    });
    const surveyed = there.some(({ job: other, why }) => !surveys.has(other) && why !== 'person');
    const needed = surveyed
      ? there.filter(({ why, job: other }) => why !== 'label-first' || !surveys.has(other))
      : there;
    return { ...job, after: [...needed, ...(needed.length === 0 ? surveyFirst(drafts, job) : [])] };
  });
};

/**
 * Whatever takes the supply off the pumps waits until they have a feed of their own, and until what took supply off before it is
 * done with.
 */
const safeFirst = (frame: PhaseFrame, drafts: readonly JobDraft[]): JobDraft[] => {
  const feed = jobId('temporary-feed', '', frame.phase);
  const fed = new Set(fedMeanwhile(frame).flatMap((one) => one.jobs));
  const chain = interruptsOf(frame).map(({ job }) => job);
  return drafts.map((job) => {
    const before = chain[chain.indexOf(job.id) - 1];
    const first = [...(fed.has(job.id) ? [feed] : []), ...(before === undefined ? [] : [before])];
    return first.length === 0 ? job : { ...job, after: [...job.after, ...waits(first, 'safe-first')] };
  });
};

const draftsOf = (frame: PhaseFrame, groups: readonly PullGroup[]): JobDraft[] => {
  const main = [
    ...paperJobs(frame),
    ...surveyJobs(frame),
    ...pullJobs(frame, groups),
    ...mountJobs(frame),
    ...connectJobs(frame, groups),
    ...panelJobs(frame, groups),
    ...powerJobs(frame),
  ];
  const withYard = [...main, ...yardJobs(frame, main)];
  return trimmed([...safeFirst(frame, withYard), ...seaJobs(frame, withYard), ...ownJobs(frame)]);
};

const slotsPerHour = 2;

/** Half hours a job lasts: the middle of its hours, shared by its people, at least one; none where it is only waited for. */
const slotsOf = ({ least, most }: Range, people: number): number =>
  Math.max(1, Math.round((((least + most) / 2) * slotsPerHour) / people));

/** Jobs while which the radar is live: nobody is aloft on their days. */
const radarLive = (jobs: readonly { readonly id: string; readonly kind: string }[]): string[] =>
  jobs
    .filter(({ id, kind }) => ['power-up', 'update', 'dock-test'].includes(kind) && id.split(':')[1] === 'radar')
    .map(({ id }) => id);

const withHours = ({ frame, groups, drafts }: PhaseDrafts, materials: ReadonlyMap<string, Job['materials']>): Job[] => {
  const hours = hundredthsOfJobs(frame, groups, drafts);
  return drafts.map((job): Job => {
    const { least, most } = hours.get(job.id) ?? { least: 0, most: 0 };
    const hoursH = { least: least / 100, most: most / 100 };
    const own = materials.get(job.id) ?? [];
    const taken = functionsTaken(frame).get(job.id) ?? [];
    return {
      ...job,
      about: [...new Set(job.about)],
      hoursH,
      slots: slotsOf(hoursH, job.people),
      steps: [...job.steps],
      tools: [...toolsOfJobs.byKind[job.kind]],
      materials: own,
      cautions: cautionsOf(frame, job),
      takes: [...job.takes, ...taken],
      apart: [],
      waitsFor: [...job.waitsFor],
      source: isOutsideQuote(job.kind) ? outsideHours.source : jobShares.source,
    };
  });
};

/** What a person said of a job, in place of what is usual. */
const withOwn = ({ index }: PhaseFrame, job: Job): Job => {
  const { work = {} } = index.boat;
  const mine = job.kind === 'own' ? work.own?.find(({ id }) => `own:${id}` === job.id) : undefined;
  const said = work.jobs?.find((one) => one.job === job.id);
  const hoursH = said?.hoursH ?? mine?.hoursH;
  const after = (said?.after ?? []).filter((other) => job.after.every((one) => one.job !== other));
  return {
    ...job,
    ...(hoursH === undefined
      ? {}
      : { hoursH: { least: hoursH, most: hoursH }, slots: slotsOf({ least: hoursH, most: hoursH }, job.people) }),
    after: [...job.after, ...waits(after, 'person')],
    ...(mine === undefined ? {} : { name: mine.name }),
    ...(said?.day === undefined ? {} : { day: said.day }),
    ...(said?.hand === undefined ? {} : { hand: said.hand }),
    ...(said?.leftOut === undefined ? {} : { leftOut: said.leftOut }),
    ...(said?.lockedOff === undefined ? {} : { lockedOff: said.lockedOff }),
  };
};

/** Jobs up a standing mast and jobs with a live radar fall on different days, unless one of the two says it is locked off. */
const keptApart = (jobs: readonly Job[]): Job[] => {
  const locked = new Set(jobs.filter(({ lockedOff }) => lockedOff === true).map(({ id }) => id));
  const live = radarLive(jobs).filter((id) => !locked.has(id));
  const aloft = jobs.filter((job) => job.aloft && !locked.has(job.id)).map(({ id }) => id);
  return jobs.map((job) => {
    if (live.includes(job.id)) return { ...job, apart: aloft };
    return aloft.includes(job.id) ? { ...job, apart: live } : job;
  });
};

const draftsOfPhase = (frame: PhaseFrame): PhaseDrafts => {
  const groups = pullGroups(frame);
  return { frame, groups, drafts: draftsOf(frame, groups) };
};

/**
 * The jobs of a refit, phase by phase, sorted by id, as they are whatever was ordered (`jobs-awaiting.ts` adds that). Their hours
 * together are those of the quote, but for kinds that no quote counts and hours that a person set. Pure.
 */
export const jobsOf = (input: JobsInput): Job[] => {
  const phases = phaseFrames(input).map(draftsOfPhase);
  const materials = materialsOfJobs(phases);
  return phases.flatMap((phase) =>
    keptApart(withHours(phase, materials).map((job) => withOwn(phase.frame, job))).sort((one, other) =>
      byCodeUnit(one.id, other.id),
    ),
  );
};
