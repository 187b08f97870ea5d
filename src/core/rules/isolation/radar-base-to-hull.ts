import type { Rule } from '../rule.ts';
import { wayFindings } from './way-findings.ts';

/** The base of a scanner whose case is its minus must not stand bare on mast or arch. */
export const radarBaseToHull: Rule = {
  id: 'isolation/radar-base-to-hull',
  level: 'fault',
  title: 'The base of a radar joins the minus to the hull.',
  sources: ['practice-cautions'],
  check: (input) => wayFindings(input, 'radar', 'part of the current of the radar may go home through the mast'),
};
