import type { Boat } from '../../boat/boat-schema.ts';
import type { Job, PhaseWork } from '../../work-shape.ts';
import { jobName } from './job-name.ts';
import { phaseRule } from './phase-rule.ts';
import { thingsOf } from './work-links.ts';

/** Whether a job makes or opens a hole below the waterline. */
const opensHull = ({ work }: Boat, { id, kind }: Job): boolean =>
  kind === 'underwater' || work?.own?.some((own) => own.throughHull === true && `own:${own.id}` === id) === true;

/** Whether she floats on a day that a person settled, by the days ashore in her file or those taken for her. */
const floatsOn = ({ work }: Boat, { days, taken }: PhaseWork, date: string): boolean => {
  const isEntered = work?.ashore?.some(({ from, to }) => from <= date && date <= to) === true;
  const at = days.find((day) => day.date === date)?.day;
  const isTaken = at !== undefined && taken.some(({ what, from, to }) => what === 'ashore' && from <= at && at <= to);
  return !isEntered && !isTaken;
};

/** A hole below the waterline is listed for when she is afloat. */
export const holeAfloat = phaseRule({
  id: 'work/hole-afloat',
  level: 'danger',
  title: 'A hole below the waterline is made or opened afloat.',
  sources: ['practice-cautions', 'choice-work-rules'],
  find: ({ index, phase }) =>
    phase.jobs.flatMap((job) => {
      if (!opensHull(index.boat, job) || job.leftOut !== undefined) return [];
      const isListed = job.state === 'afloat';
      const isPinned = job.day !== undefined && floatsOn(index.boat, phase, job.day);
      if (!isListed && !isPinned) return [];
      const when = isListed ? 'while she is afloat' : `on ${job.day}, when she is afloat`;
      return [
        {
          about: thingsOf(index, job),
          apart: [job.id],
          says: `${jobName(index, job)} opens the hull below the waterline, and is listed for ${when}: water comes in.`,
          cure: 'Do it ashore only, with the blanking plug at hand, and look for weeping when she is lowered and again after a day afloat.',
        },
      ];
    }),
});
