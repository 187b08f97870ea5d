import { byCodeUnit } from '../boat/ids.ts';
import { withoutNeeds } from '../joins/standing-boat.ts';
import type { Finding } from '../plan-shape.ts';
import type { LaidInput, LaidRule, Observation, Rule, RuleInput } from './rule.ts';

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

const runOne = (rule: Rule, check: () => readonly Observation[]): readonly Finding[] => {
  try {
    return check().map((observation) => toFinding(rule, observation));
  } catch {
    return [crashed(rule)];
  }
};

/** The same without what a rule of the laid boat may not look at. */
const asLaid = ({ index: whole, plan: all, reaches }: RuleInput): LaidInput => {
  const index = { ...whole, boat: withoutNeeds(whole.boat) };
  // hidden rather than taken out, so that nothing of a bus is read before a rule does
  const unmended = { mend: { value: undefined } };
  const plan = Object.create(all, { buses: { value: all.buses.map((bus) => Object.create(bus, unmended)) } });
  return { index, plan, reaches: { ...reaches, network: { ...reaches.network, index } } };
};

/** Findings sorted by id, one an id. */
export const inOrder = (findings: readonly Finding[]): Finding[] =>
  [...new Map(findings.map((finding) => [finding.id, finding])).values()].sort((a, b) => byCodeUnit(a.id, b.id));

/** Every finding of rules that look at what is laid, sorted by id; one finding per id. */
export const runLaidRules = (rules: readonly LaidRule[], input: LaidInput): Finding[] =>
  inOrder(rules.flatMap((rule) => runOne(rule, () => rule.check(input))));

/** Every finding of the given rules, sorted by id; one finding per id. */
export const runRules = (rules: readonly Rule[], input: RuleInput): Finding[] => {
  const laid = asLaid(input);
  return inOrder(
    rules.flatMap((rule) => runOne(rule, () => (rule.looksAt === 'whole-plan' ? rule.check(input) : rule.check(laid)))),
  );
};
