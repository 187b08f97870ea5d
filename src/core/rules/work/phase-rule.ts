import type { BoatIndex } from '../../boat/boat-index.ts';
import type { PhaseWork } from '../../work-shape.ts';
import type { Observation, WholePlanRule } from '../rule.ts';
import { phasesOf } from './work-links.ts';

/** A boat and the work of one of her phases. */
export interface PhaseCase {
  readonly index: BoatIndex;
  readonly phase: PhaseWork;
}

/** A rule that looks at one phase after the other. */
export interface PhaseRule extends WholePlanRule {
  readonly find: (input: PhaseCase) => readonly Observation[];
}

/** The rule that finds in each phase of the work what `find` finds in one. */
export const phaseRule = (rule: Omit<PhaseRule, 'check' | 'looksAt'>): PhaseRule => ({
  ...rule,
  looksAt: 'whole-plan',
  check: ({ index, plan }) => phasesOf(plan).flatMap((phase) => rule.find({ index, phase })),
});
