import { fuseAgainstConductor } from '../../facts/fuses.ts';
import type { PanelEntry } from '../../panels-shape.ts';
import { fuseVerdict } from '../../power/fuse-verdict.ts';
import type { Observation, Rule } from '../rule.ts';
import { sourceWords } from '../rule-words.ts';
import { amperes } from './supply-words.ts';

const guardWords: Readonly<Record<NonNullable<PanelEntry['guardBy']>, string>> = {
  'bank-main': 'the main at the battery',
  'panel-main': 'its main',
  circuit: 'the circuit before it',
  'panel-above': 'what guards the panel above',
  converter: 'its converter',
};

const overFeeder = ({ panel, from, feeder, guardA, guardBy, nominalV }: PanelEntry): Observation[] => {
  if (feeder?.ampacityA === undefined || guardA === undefined || guardBy === undefined) return [];
  const conductorA = Math.floor(feeder.ampacityA + 1e-9);
  const { verdict, pct } = fuseVerdict({ fuseA: guardA, conductorA: feeder.ampacityA, nominalV });
  if (verdict === 'ok') return [];
  const { warnAbove } = fuseAgainstConductor;
  return [
    {
      about: [panel, from],
      level: verdict === 'warn' ? 'doubt' : 'fault',
      says: `The feeder of the panel ${panel} is ${feeder.areaMm2} mm² and carries ${conductorA} A${feeder.engineSpace ? ' in the engine space' : ''}; ${guardWords[guardBy]} lets ${amperes(guardA)} through, ${Math.round(pct)} % of that. The wire burns before it opens.`,
      measured: { value: guardA, unit: 'A' },
      limit: { value: conductorA, unit: 'A', source: sourceWords(warnAbove.source) },
      cure: `Fit ${conductorA} A or less at the source, or lead a heavier feeder.`,
    },
  ];
};

/** The fuse before a feeder is there for the feeder. */
export const mainOverFeeder: Rule = {
  id: 'supply/main-over-feeder',
  level: 'fault',
  title: 'What guards the feeder of a panel lets more through than the feeder carries.',
  sources: ['choice-fuse-limit', 'cfr-33-183-455', 'memory-iso-ampacity'],
  check: ({ plan }) => plan.panels.flatMap(overFeeder),
};
