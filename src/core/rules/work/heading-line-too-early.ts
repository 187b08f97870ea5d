import { jobName } from './job-name.ts';
import { phaseRule } from './phase-rule.ts';
import { linksOf } from './work-links.ts';

/** A trial that leans on the heading is settled before the heading sensor is calibrated, or that one is left out. */
export const headingLineTooEarly = phaseRule({
  id: 'work/heading-line-too-early',
  level: 'fault',
  title: 'A heading line is set before the heading is calibrated.',
  sources: ['practice-trial-order', 'choice-work-rules'],
  find: ({ index, phase }) =>
    linksOf(phase).flatMap(({ job, first, why }) => {
      if (why !== 'calibrated-first' || job.leftOut !== undefined) return [];
      const isOut = first.leftOut !== undefined;
      const isEarly = job.day !== undefined && first.day !== undefined && job.day < first.day;
      if (!isEarly && !isOut) return [];
      const words = isOut ? 'is done though it is left out' : `is settled for ${job.day}, before ${first.day}`;
      return [
        {
          about: job.about,
          apart: [job.id],
          says: `The heading sensor is calibrated by ${jobName(index, first)}, and ${jobName(index, job)} ${words}: it is to be done again.`,
          cure: 'Swing the heading sensor and align it first, then set the heading line of the radar and all else that leans on it.',
        },
      ];
    }),
});
