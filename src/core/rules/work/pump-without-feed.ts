import { functionNames } from '../../facts/function-names.ts';
import type { Job, PhaseWork, Watched } from '../../work-shape.ts';
import { jobName } from './job-name.ts';
import { phaseRule } from './phase-rule.ts';
import { allBefore, thingsOf } from './work-links.ts';

/** Whether a way surely holds all through a job: made before it begins, broken only after it. */
const bridges = (phase: PhaseWork, { from, until }: Watched['ways'][number], job: Job): boolean => {
  if (from.includes(job.id) || until.includes(job.id)) return false;
  const isOut = (id: string): boolean => phase.jobs.find((one) => one.id === id)?.leftOut !== undefined;
  const before = allBefore(phase, job.id);
  return (
    from.every((id) => before.has(id) && !isOut(id)) &&
    until.every((id) => isOut(id) || allBefore(phase, id).has(job.id))
  );
};

/** Whether she stands ashore on every day of a job, where it has a day. */
const isAshore = ({ order, days }: PhaseWork, { id, state }: Job): boolean => {
  if (state === 'ashore') return true;
  const start = order?.starts.find(({ job }) => job === id);
  if (start === undefined) return false;
  return days.filter(({ day }) => start.day <= day && day <= start.lastDay).every(({ afloat }) => !afloat);
};

/** Jobs while which a pump or its alarm has no way that surely holds. */
const darkening = (phase: PhaseWork, { ways }: Watched): Job[] => {
  const ends = new Set(ways.flatMap(({ until }) => until));
  return phase.jobs.filter(
    (job) =>
      ends.has(job.id) &&
      job.kind !== 'take-temporary-feed-out' &&
      job.leftOut === undefined &&
      !isAshore(phase, job) &&
      !ways.some((way) => bridges(phase, way, job)),
  );
};

/** A bilge pump or the high-water alarm is out of use afloat. */
export const pumpWithoutFeed = phaseRule({
  id: 'work/pump-without-feed',
  level: 'danger',
  title: 'A bilge pump or its alarm is off afloat.',
  sources: ['choice-watched-functions', 'practice-work-order'],
  find: ({ index, phase }) =>
    phase.functions
      .filter(({ hard }) => hard)
      .flatMap((one) => {
        const jobs = darkening(phase, one);
        if (jobs.length === 0) return [];
        const names = jobs.slice(0, 3).map((job) => jobName(index, job));
        const left = jobs.length - names.length;
        const more = left === 0 ? '' : ` and ${left} more ${left === 1 ? 'job' : 'jobs'}`;
        return [
          {
            about: [...new Set(jobs.flatMap((job) => thingsOf(index, job)))],
            apart: [one.function, phase.phase],
            says: `Nothing feeds the ${functionNames.byFunction[one.function]} during ${names.join(', ')}${more}, while she is afloat. A boat can fill and sink at her berth.`,
            cure: 'Lay a temporary feed with a fuse of its own from the battery first, lift the float by hand and see the pump run; take it out when the panel is back.',
          },
        ];
      }),
});
