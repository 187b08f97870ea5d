import { isOpen } from '../../core/accepted-findings.ts';
import type { Finding, Level, Plan } from '../../core/plan-shape.ts';
import { type JobStep, jobSteps } from './job-steps.ts';
import { stepsOfRule } from './steps-of-rule.ts';

/** The findings of a level that still want something done. */
export const openAt = (plan: Plan, level: Level): readonly Finding[] =>
  plan.findings.filter((finding) => finding.level === level && isOpen(finding));

/** The step at which most of some findings are looked after. */
export const stepOfMost = (rules: readonly string[]): JobStep => {
  const countAt = (step: JobStep): number => rules.filter((rule) => stepsOfRule(rule)[0] === step).length;
  return jobSteps.reduce((most, step) => (countAt(step) > countAt(most) ? step : most));
};
