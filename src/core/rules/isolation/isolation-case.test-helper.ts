import type { BoatBuilder } from '../../boat/a-boat.test-helper.ts';
import { plan } from '../../plan.ts';
import type { Finding } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

/** What a rule finds on a boat, with her isolation as the plan has it. */
export const isolationFindings = (rule: Rule, { boat }: BoatBuilder): Finding[] => {
  const { isolation, joins } = plan(boat, new Map());
  return findingsOf(rule, { boat, plan: { isolation, joins } });
};
