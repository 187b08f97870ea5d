import { draftJob, type JobDraft } from './job-draft.ts';
import type { PhaseFrame } from './job-frame.ts';

/** Papers that nobody has asked for yet: half an hour at a desk, and then so many days of waiting. */
export const paperJobs = (frame: PhaseFrame): JobDraft[] =>
  frame.plan.shipPapers
    .filter(({ state, for: units }) => {
      const isWanted = frame.comes.some(({ id }) => units.includes(id));
      return isWanted && (state === 'to-ask' || state === 'to-start');
    })
    .map(({ paper, for: units, waitDays }) =>
      draftJob(frame, paper, { kind: 'paper', about: [paper, ...units], waitH: waitDays * 24 }),
    );
