import type { Rule } from '../rule.ts';
import { wayFindings } from './way-findings.ts';

/** A metal case that is the minus of its unit must not stand bare on the hull. */
export const caseToHull: Rule = {
  id: 'isolation/case-to-hull',
  level: 'fault',
  title: 'The case of a unit joins the minus to the hull.',
  sources: ['practice-cautions'],
  check: (input) =>
    wayFindings(input, 'case', 'part of the current of the boat may go home through it, and eat metal in the water'),
};
