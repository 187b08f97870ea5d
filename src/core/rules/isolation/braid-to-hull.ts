import type { Rule } from '../rule.ts';
import { wayFindings } from './way-findings.ts';

/** The braid of a coax lies on the minus of the radio; an antenna screwed bare to metal takes it to the hull. */
export const braidToHull: Rule = {
  id: 'isolation/braid-to-hull',
  level: 'fault',
  title: 'The braid of a coax joins the minus to the hull.',
  sources: ['practice-cautions'],
  check: (input) =>
    wayFindings(input, 'braid', 'part of the current of the boat may go home through it, and eat metal in the water'),
};
