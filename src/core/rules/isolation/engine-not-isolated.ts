import type { Rule } from '../rule.ts';
import { wayFindings } from './way-findings.ts';

/** An engine with isolated poles stays so, and one whose block is its minus meets a metal hull at the named point only. */
export const engineNotIsolated: Rule = {
  id: 'isolation/engine-not-isolated',
  level: 'fault',
  title: 'The block of an engine meets the minus away from the named point.',
  sources: ['practice-cautions'],
  check: (input) => wayFindings(input, 'engine', 'shaft and propeller may carry current into the water, and eat away'),
};
