import { numberedReadings } from '../../facts/numbered-readings.ts';
import { readingWords } from '../../facts/reading-words.ts';
import { doubledSources } from '../../readings/doubled.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Two tanks, engines or batteries with one number overwrite each other on every screen. */
export const sameInstanceTwice: Rule = {
  id: 'identities/same-instance-twice',
  level: 'fault',
  title: 'Two units send the same reading under the same number.',
  sources: ['messages-conflicts'],
  check: ({ index, reaches }) =>
    doubledSources(reaches)
      .filter(({ reading, instance }) => instance !== undefined && numberedReadings.has(reading))
      .map(({ bus, reading, instance, ports }) => ({
        about: [bus, ...ports.map((port) => port.split('.')[0] ?? port)],
        apart: [reading, instance ?? ''],
        says: `${ports.map((port) => unitName(index, port)).join(' and ')} ${ports.length === 2 ? 'both' : 'all'} send ${readingWords[reading]} as number ${instance}; on every screen one overwrites the other.`,
        cure: 'Give each its own number, in the unit and on the settings sheet.',
      })),
};
