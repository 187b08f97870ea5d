import { netBoat } from '../../joins/network-boat.test-helper.ts';
import type { Finding } from '../../plan-shape.ts';
import type { Rule } from '../rule.ts';
import { findingsOf } from '../rule-case.test-helper.ts';

/** What a rule finds on a small boat with network units and cables between their sockets. */
export const findsOnNetwork =
  (rule: Rule) =>
  (...net: Parameters<typeof netBoat>): Finding[] => {
    const { boat, joins, entries } = netBoat(...net);
    const plan = { joins: joins.map((join) => ({ ...join, lines: [] })), networks: [...entries] };
    return findingsOf(rule, { boat, plan });
  };
