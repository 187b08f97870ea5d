import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import type { Finding } from '../../plan-shape.ts';
import { remoteOf } from '../../remote/remote-boat.test-helper.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

/** What a rule finds on a boat with her ways in. */
export const findsRemote = (rule: Rule, boat: Boat): Finding[] => {
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(rule, { boat, plan: { joins, remote: remoteOf(boat) } });
};
