import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Work } from '../../boat/work.ts';
import type { Finding } from '../../plan-shape.ts';
import { aJob } from '../../work/some-jobs.test-helper.ts';
import type { Job, PhaseWork } from '../../work-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf, type RuleCase } from '../rule-case.test-helper.ts';

/** The work of one phase, nine days of it from the first of March, with nothing in it. */
export const aPhase = (own: Partial<PhaseWork> = {}): PhaseWork => ({
  phase: 1,
  perDay: 14,
  from: 18,
  hands: [],
  days: Array.from({ length: 9 }, (_, day) => ({
    day,
    date: `2027-03-0${day + 1}`,
    hands: [],
    afloat: true,
    mast: 'up' as const,
    foul: false,
    moves: true,
    left: false,
  })),
  taken: [],
  jobs: [],
  functions: [],
  orderBy: [],
  ...own,
});

/** A small sound boat of whose work something is said, with the work of some phases. */
export const workCase = (
  phases: readonly Partial<PhaseWork>[],
  work: Work = {},
  boat: Boat = aBoat().boat,
): RuleCase => ({
  boat: { ...boat, work },
  plan: { work: { phases: phases.map(aPhase), leaving: [] } },
});

/** What one rule finds in the work of one phase, on a small sound boat of whose work something is said. */
export const foundIn = (rule: Rule, phase: Partial<PhaseWork>, work: Work = {}, boat: Boat = aBoat().boat): Finding[] =>
  findingsOf(rule, workCase([phase], work, boat));

/** A job that waits for others for one reason. */
export const waiting = (
  id: string,
  { first, why, waitH }: { first: string; why: Job['after'][number]['why']; waitH?: number },
  own: Partial<Job> = {},
): Job => aJob(id, { after: [{ job: first, why, ...(waitH === undefined ? {} : { waitH }) }], ...own });
