import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { unitOf } from './supply-words.ts';

/** A 12 V set on a 24 V circuit is gone in the moment its breaker is closed. */
export const lowVoltUnitOnHighVoltPanel: Rule = {
  id: 'supply/low-volt-unit-on-high-volt-panel',
  level: 'danger',
  title: 'A unit hangs on a panel of more volts than it stands.',
  sources: ['practice-separate-feeds'],
  check: ({ index, plan }) =>
    plan.loads.flatMap(({ port, source, maxV }) => {
      if (source.by !== 'circuit') return [];
      const panel = plan.panels.find((entry) => entry.panel === source.panel);
      if (panel === undefined || maxV >= panel.nominalV) return [];
      return [
        {
          about: [unitOf(port), source.circuit, panel.panel],
          says: `${unitName(index, port)} stands ${maxV} V at most and hangs on the circuit ${source.circuit} of the panel ${panel.panel}, which has ${panel.nominalV} V. It is destroyed when the circuit is closed, and may burn.`,
          measured: { value: panel.nominalV, unit: 'V' },
          limit: { value: maxV, unit: 'V', source: `the sheet of ${unitName(index, port)}` },
          cure: 'Leave the circuit open. Feed it from a panel of its own voltage, or through a converter with a fuse of its own.',
        },
      ];
    }),
};
