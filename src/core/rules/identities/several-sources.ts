import { soleReadings } from '../../facts/numbered-readings.ts';
import { readingWords } from '../../facts/reading-words.ts';
import { isSettled } from '../../readings/chosen-primary.ts';
import { doubledSources } from '../../readings/doubled.ts';
import type { Rule } from '../rule.ts';
import { busName, unitName } from '../rule-words.ts';

const list = (names: readonly string[]): string =>
  names.length > 4 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(' and ');

/** Several units send one reading and nothing tells the screens which to show: the value jumps, or the wrong one is shown. */
export const severalSources: Rule = {
  id: 'identities/several-sources',
  level: 'doubt',
  title: 'Several units send the same reading and nothing says which counts.',
  sources: ['messages-conflicts'],
  looksAt: 'whole-plan',
  check: ({ index, reaches }) =>
    doubledSources(reaches)
      .filter(({ reading }) => soleReadings.has(reading) && !isSettled(index.boat, reading))
      .map(({ bus, reading, instance, ports }) => ({
        about: [bus, ...ports.map((port) => port.split('.')[0] ?? port)],
        apart: [reading, ...(instance === undefined ? [] : [instance])],
        says: `${readingWords[reading]} is sent by ${ports.length} units on ${busName(index, bus)}: ${list(ports.map((port) => unitName(index, port)))}. Screens may show either, and jump between them.`,
        measured: { value: ports.length, unit: 'units' },
        cure: 'Say in the source plan which one counts; give the others another number or switch this reading off in them.',
      })),
};
