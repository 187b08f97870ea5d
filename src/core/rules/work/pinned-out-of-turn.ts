import type { Job, PhaseWork } from '../../work-shape.ts';
import { jobName } from './job-name.ts';
import { phaseRule } from './phase-rule.ts';
import { allBefore, linksOf } from './work-links.ts';

/** Waits that other rules speak of. */
const toldElsewhere: ReadonlySet<string> = new Set(['cured-first', 'calibrated-first']);

/** A job and one that comes before it, settled for days the wrong way round. */
const outOfTurn = (phase: PhaseWork): [Job, Job][] => {
  const dated = phase.jobs.filter(
    ({ day, leftOut, kind }) => day !== undefined && leftOut === undefined && kind !== 'leaving',
  );
  const told = new Set(
    linksOf(phase).flatMap(({ job, first, why }) => (toldElsewhere.has(why) ? [`${job.id} ${first.id}`] : [])),
  );
  return dated.flatMap((job) => {
    const before = allBefore(phase, job.id);
    return dated
      .filter(
        (first) => before.has(first.id) && (first.day ?? '') > (job.day ?? '') && !told.has(`${job.id} ${first.id}`),
      )
      .map((first): [Job, Job] => [job, first]);
  });
};

/** Two days that a person settled contradict what must come first. */
export const pinnedOutOfTurn = phaseRule({
  id: 'work/pinned-out-of-turn',
  level: 'fault',
  title: 'Two settled days are the wrong way round.',
  sources: ['choice-work-rules', 'practice-work-order'],
  find: ({ index, phase }) =>
    outOfTurn(phase).map(([job, first]) => ({
      about: [job.id, first.id],
      says: `${jobName(index, first)} comes before ${jobName(index, job)}, and is settled for ${first.day}, after ${job.day}.`,
      cure: 'Let one of the two days go.',
    })),
});
