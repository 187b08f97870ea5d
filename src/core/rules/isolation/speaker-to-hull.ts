import type { Rule } from '../rule.ts';
import { wayFindings } from './way-findings.ts';

/** The basket of a horn or speaker that is one of its poles must not be screwed bare to metal. */
export const speakerToHull: Rule = {
  id: 'isolation/speaker-to-hull',
  level: 'fault',
  title: 'A speaker joins the minus to the hull.',
  sources: ['practice-cautions'],
  check: (input) => wayFindings(input, 'speaker', 'each word hailed sends current through the plating'),
};
