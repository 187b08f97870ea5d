import type { Rule } from '../rule.ts';
import { wayFindings } from './way-findings.ts';

/** Two supplies meet at the common negative and nowhere else, or thick currents go through thin wires. */
export const suppliesTied: Rule = {
  id: 'isolation/supplies-tied',
  level: 'fault',
  title: 'Two supplies are joined elsewhere than at the common negative.',
  sources: ['practice-cautions'],
  check: (input) => wayFindings(input, 'supplies', 'when the engine starts, its current may go through a data cable'),
};
