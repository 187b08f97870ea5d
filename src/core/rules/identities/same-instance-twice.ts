import type { ReadingId } from '../../facts/reading-ids.ts';
import { readingWords } from '../../facts/reading-words.ts';
import { doubledSources } from '../../readings/doubled.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** Readings that exist several times aboard and are told apart by their number alone. */
const toldApartByNumber: ReadonlySet<ReadingId> = new Set([
  'engine',
  'transmission',
  'fuel-level',
  'water-level',
  'battery',
  'charging',
  'ac-power',
]);

/** Two tanks, engines or batteries with one number overwrite each other on every screen. */
export const sameInstanceTwice: Rule = {
  id: 'identities/same-instance-twice',
  level: 'fault',
  title: 'Two units send the same reading under the same number.',
  sources: ['messages-conflicts'],
  check: ({ index, plan }) =>
    doubledSources(index, plan.phase, plan.joins)
      .filter(({ reading, instance }) => instance !== undefined && toldApartByNumber.has(reading))
      .map(({ bus, reading, instance, ports }) => ({
        about: [bus, ...ports.map((port) => port.split('.')[0] ?? port)],
        apart: [reading, instance ?? ''],
        says: `${ports.map((port) => unitName(index, port)).join(' and ')} both send ${readingWords[reading]} as number ${instance}; on every screen one overwrites the other.`,
        cure: 'Give each its own number, in the unit and on the settings sheet.',
      })),
};
