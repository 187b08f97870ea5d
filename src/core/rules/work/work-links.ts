import type { BoatIndex } from '../../boat/boat-index.ts';
import { keptFor } from '../../boat/kept-for.ts';
import type { PlanDraft } from '../../plan-shape.ts';
import { dayNumber } from '../../units/day-number.ts';
import type { Job, PhaseWork } from '../../work-shape.ts';

/** The phases of the work that a plan has; none where nobody planned it. */
export const phasesOf = ({ work }: Pick<PlanDraft, 'work'>): readonly PhaseWork[] => work?.phases ?? [];

/** One job that waits for another, both of them still to be done. */
export interface WorkLink {
  readonly job: Job;
  readonly first: Job;
  readonly why: Job['after'][number]['why'];
  readonly waitH: number;
}

/** What waits for what in a phase, one step each; kept for the phase, since several rules ask, and the work stays from plan to plan. */
export const linksOf = keptFor(({ jobs }: Pick<PhaseWork, 'jobs'>): readonly WorkLink[] => {
  const byId = new Map(jobs.map((job) => [job.id, job]));
  return jobs.flatMap((job) =>
    job.after.flatMap(({ job: id, why, waitH = 0 }): WorkLink[] => {
      const first = byId.get(id);
      return first === undefined ? [] : [{ job, first, why, waitH }];
    }),
  );
});

/** Whole days that must lie between the day of one job and that of another that waits so long for it. */
export const daysWaited = (waitH: number): number => Math.ceil(waitH / 24);

/** Days from one to another, by the calendar. */
export const daysFrom = (from: string, to: string): number => dayNumber(to) - dayNumber(from);

/** What a job is about that has a name aboard: units, panels, ways, places, no lines. */
export const thingsOf = ({ kit, panels, ways, places, buses }: BoatIndex, { about, place }: Job): string[] =>
  [...about, ...(place === undefined ? [] : [place])].filter(
    (id) => kit.has(id.split('.')[0] ?? id) || panels.has(id) || ways.has(id) || places.has(id) || buses.has(id),
  );

/** All that a job waits for, by however many steps. */
export const allBefore = ({ jobs }: Pick<PhaseWork, 'jobs'>, id: string): ReadonlySet<string> => {
  const byId = new Map(jobs.map((job) => [job.id, job]));
  const seen = new Set<string>();
  const open = [id];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const { job } of byId.get(at)?.after ?? []) {
      if (!seen.has(job)) open.push(job);
      seen.add(job);
    }
  }
  return seen;
};
