import type { Boat } from '../../boat/boat-schema.ts';
import { plan } from '../../plan.ts';
import type { Finding } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';

/** What one rule finds on a whole boat as planned. */
export const findsAboard =
  (rule: Rule) =>
  (boat: Boat): Finding[] =>
    plan(boat, new Map()).findings.filter((finding) => finding.rule === rule.id);
