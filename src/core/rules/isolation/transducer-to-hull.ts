import type { Rule } from '../rule.ts';
import { wayFindings } from './way-findings.ts';

/** A metal through-hull housing that is joined to the minus is an electrode in the water. */
export const transducerToHull: Rule = {
  id: 'isolation/transducer-to-hull',
  level: 'fault',
  title: 'The body of a transducer joins the minus to hull or water.',
  sources: ['practice-cautions'],
  check: (input) =>
    wayFindings(input, 'transducer', 'its housing and the plating round it may be eaten away below the waterline'),
};
