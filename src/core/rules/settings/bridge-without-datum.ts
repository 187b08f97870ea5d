import type { Rule } from '../rule.ts';
import { metres } from '../rule-words.ts';

/** A bridge is entered without the level its chart counts from; nothing is computed for it. */
export const bridgeWithoutDatum: Rule = {
  id: 'settings/bridge-without-datum',
  level: 'fault',
  title: 'The height of a bridge names no reference level.',
  sources: ['practice-air-draft'],
  looksAt: 'whole-plan',
  check: ({ index: { boat } }) =>
    (boat.sea?.bridges ?? [])
      .filter(({ datum }) => datum === undefined)
      .map(({ id, name, chartedM }) => ({
        about: [],
        apart: [id],
        says: `${name} is charted at ${metres(chartedM)}, and nobody said over which level: charts count from highest tide, mean high water, springs or a fixed level, metres apart. How high a tide she passes at is not computed.`,
        measured: { value: chartedM, unit: 'm' },
        cure: 'Read the level off the note of the chart, and how high it lies over the level of your tide table.',
      })),
};
