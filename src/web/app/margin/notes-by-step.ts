import { type JobStep, jobSteps } from '../../../papers/next/job-steps.ts';
import { stepsOfRule } from '../../../papers/next/steps-of-rule.ts';
import type { Note } from './notes.ts';

/** The notes of a boat as one step shows them. */
export interface NotesByStep {
  /** what can be done something about here, and whatever must not be overlooked anywhere */
  readonly here: readonly Note[];
  /** doubts and advice that are looked after at other steps */
  readonly elsewhere: readonly Note[];
  /** how many of these at which step, in the order of the job */
  readonly counts: readonly { readonly step: JobStep; readonly count: number }[];
}

/** Parts notes into those of a step and those of others; a danger or a fault belongs to every step. */
export const notesByStep = (notes: readonly Note[], step: JobStep): NotesByStep => {
  const isHere = ({ finding: { level, rule } }: Note): boolean =>
    level === 'danger' || level === 'fault' || stepsOfRule(rule).includes(step);
  const elsewhere = notes.filter((note) => !isHere(note));
  const counts = jobSteps
    .map((one) => ({
      step: one,
      count: elsewhere.filter(({ finding }) => stepsOfRule(finding.rule)[0] === one).length,
    }))
    .filter(({ count }) => count > 0);
  return { here: notes.filter(isHere), elsewhere, counts };
};
