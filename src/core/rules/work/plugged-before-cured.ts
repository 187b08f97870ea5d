import { jobName } from './job-name.ts';
import { phaseRule } from './phase-rule.ts';
import { daysFrom, daysWaited, linksOf, thingsOf } from './work-links.ts';

/** How far a day lies from another, by days after it. */
const dayWords = (days: number, other: string): string => {
  if (days === 0) return 'the same day';
  const many = Math.abs(days) === 1 ? '1 day' : `${Math.abs(days)} days`;
  return `${many} ${days < 0 ? 'before' : 'after'} ${other}`;
};

/** A job is settled for a day on which what seals it has not cured yet. */
export const pluggedBeforeCured = phaseRule({
  id: 'work/plugged-before-cured',
  level: 'fault',
  title: 'Something is plugged in or launched before its sealant has cured.',
  sources: ['memory-cure-times', 'choice-work-rules'],
  find: ({ index, phase }) =>
    linksOf(phase).flatMap(({ job, first, why, waitH }) => {
      if (why !== 'cured-first' || job.leftOut !== undefined) return [];
      const isOut = first.leftOut !== undefined;
      const days = job.day === undefined || first.day === undefined ? undefined : daysFrom(first.day, job.day);
      const isEarly = days !== undefined && days < daysWaited(waitH);
      if (!isEarly && !isOut) return [];
      const when = isOut
        ? 'waits for it, and it is left out'
        : `is settled for ${job.day}, ${dayWords(days ?? 0, first.day ?? '')}`;
      return [
        {
          about: thingsOf(index, first).concat(thingsOf(index, job).slice(0, 1)),
          apart: [job.id, first.id],
          says: `After ${jobName(index, first)} the sealant cures for some ${waitH} hours; ${jobName(index, job)} ${when}. Water comes in on the first wet night.`,
          ...(days === undefined ? {} : { measured: { value: days * 24, unit: 'h' } }),
          limit: { value: waitH, unit: 'h', source: 'from memory: the tube decides' },
          cure: 'Leave the days open, or put the second one later by as long as the tube says.',
        },
      ];
    }),
});
