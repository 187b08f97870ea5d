import type { JobKind } from '../../facts/job-kinds.ts';
import { type JobStep, stepsOfJobs } from '../../facts/job-steps.ts';
import type { Job } from '../../work-shape.ts';
import { jobId, type PhaseFrame } from './job-frame.ts';

/** A job before it has its hours, tools and cautions. */
export interface JobDraft {
  readonly id: string;
  readonly kind: JobKind;
  readonly phase: number;
  readonly about: readonly string[];
  readonly place?: string;
  readonly after: Job['after'];
  readonly steps: readonly string[];
  readonly people: 1 | 2;
  readonly needs: Job['needs'];
  readonly takes: Job['takes'];
  readonly state?: 'afloat' | 'ashore';
  readonly mast?: 'up' | 'down';
  readonly outside: boolean;
  readonly aloft: boolean;
  readonly waitsFor: Job['waitsFor'];
  readonly waitH?: number;
}

type Given = Partial<Omit<JobDraft, 'id' | 'kind' | 'phase'>> & { readonly kind: JobKind };

/** A job of a phase, with what is usual where nothing is said: one person, inside, its steps as its kind has them. */
export const draftJob = (
  { phase, index }: Pick<PhaseFrame, 'phase' | 'index'>,
  name: string,
  { kind, ...given }: Given,
): JobDraft => ({
  id: jobId(kind, name, phase),
  kind,
  phase,
  about: [],
  after: [],
  steps: stepsOfJobs.byKind[kind] satisfies readonly JobStep[],
  people: 1,
  needs: [],
  takes: [],
  outside: given.place !== undefined && index.places.get(given.place)?.exposure === 'weather',
  aloft: false,
  waitsFor: [],
  ...given,
});

/** Waits for each of some jobs, all for one reason; with `waitH` so long after their end. */
export const waits = (jobs: Iterable<string>, why: Job['after'][number]['why'], waitH?: number): Job['after'] =>
  [...new Set(jobs)].map((job) => ({ job, why, ...(waitH === undefined ? {} : { waitH }) }));
