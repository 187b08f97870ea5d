import { middleTaps } from '../../facts/supply-figures.ts';
import type { Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';

/** 12 V taken from the middle of 24 V empties one battery and overcharges the other. */
export const midTap: Rule = {
  id: 'supply/mid-tap',
  level: 'danger',
  title: 'A panel is fed from the middle of a bank.',
  sources: ['practice-middle-tap'],
  check: ({ index, plan }) =>
    plan.panels
      .filter(({ tap }) => tap === true)
      .map(({ panel, source, nominalV }) => ({
        about: [panel, source],
        says: `The panel ${panel} takes ${nominalV} V from between the batteries of ${source}, which has ${index.banks.get(source)?.nominalV ?? 'more'} V. The battery below is emptied, the one above is charged beyond what it stands: it boils, gasses and can burst.`,
        measured: { value: 1, unit: 'taps' },
        limit: figurePart(middleTaps),
        cure: 'Take the tap off. Feed the panel through a converter on the whole bank, with a fuse at the battery.',
      })),
};
