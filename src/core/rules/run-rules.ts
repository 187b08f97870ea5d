import { byCodeUnit } from '../boat/ids.ts';
import type { Finding } from '../plan-shape.ts';
import type { Observation, Rule, RuleInput } from './rule.ts';

const sentence = (says: string): string => says.replace(/^./, (first) => first.toUpperCase());

const toFinding = (rule: Rule, { about, apart = [], level = rule.level, says, ...rest }: Observation): Finding => {
  const sorted = [...new Set(about)].sort(byCodeUnit);
  const id = [rule.id, sorted.join(','), ...apart].filter((part) => part !== '').join(':');
  return { id, rule: rule.id, level, about: sorted, says: sentence(says), ...rest };
};

/** A rule that breaks must not take the others with it; it becomes a doubt the person can read. */
const crashed = (rule: Rule): Finding => ({
  id: `program/rule-broke:${rule.id}`,
  rule: 'program/rule-broke',
  level: 'doubt',
  about: [],
  says: `The check "${rule.title}" broke down, so nothing is known about it on this boat. This is a fault in the program, not in the boat.`,
});

const runOne = (rule: Rule, input: RuleInput): readonly Finding[] => {
  try {
    return rule.check(input).map((observation) => toFinding(rule, observation));
  } catch {
    return [crashed(rule)];
  }
};

/** Every finding of the given rules, sorted by id; one finding per id. */
export const runRules = (rules: readonly Rule[], input: RuleInput): Finding[] => {
  const found = new Map(rules.flatMap((rule) => runOne(rule, input)).map((finding) => [finding.id, finding]));
  return [...found.values()].sort((a, b) => byCodeUnit(a.id, b.id));
};
