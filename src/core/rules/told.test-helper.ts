import type { Rule } from './rule.ts';
import { findingsOf, type RuleCase } from './rule-case.test-helper.ts';

/** What one rule says, whole: level, whom it is about, sentence, figure and limit, cure. */
export const told = (rules: readonly Rule[], id: string, given: RuleCase): readonly string[] => {
  const rule = rules.find((one) => one.id === id);
  if (rule === undefined) throw new Error(`There is no rule ${id}.`);
  const found = findingsOf(rule, given);
  if (found.some((one) => one.rule !== id)) throw new Error(`The rule ${id} broke down.`);
  return found.map(({ level, about, says, measured, limit, cure }) => {
    const figure = measured && `${measured.value} ${measured.unit}`;
    return `${level} ${about.join(' ')}: ${says} [${figure ?? ''} / ${limit?.value ?? ''}] ${cure}`;
  });
};
