import type { BoatIndex } from '../../boat/boat-index.ts';
import { numberedReadings } from '../../facts/numbered-readings.ts';
import { readingWords } from '../../facts/reading-words.ts';
import { doubledSources } from '../../readings/doubled.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

/** The device instance of a NAME, bits 32 to 39; the identity is written with the highest digit first (source: pgn-database). */
const deviceInstance = (index: BoatIndex, port: string): number | undefined => {
  const identity = index.kit.get(port.split('.')[0] ?? port)?.identity;
  return identity === undefined ? undefined : Number.parseInt(identity.slice(6, 8), 16);
};

/** Two units told apart by their device instance, with one data instance: somebody has set the wrong one of the two numbers. */
export const deviceNumberForDataNumber: Rule = {
  id: 'identities/device-number-for-data-number',
  level: 'doubt',
  title: 'The number of a device was set in place of the number of what it measures.',
  sources: ['messages-conflicts', 'pgn-database'],
  check: ({ index, reaches }) =>
    doubledSources(reaches)
      .filter(({ reading, instance }) => instance !== undefined && numberedReadings.has(reading))
      .flatMap(({ reading, instance, ports }) => {
        const known = ports.flatMap((port) => {
          const device = deviceInstance(index, port);
          return device === undefined ? [] : [{ port, device }];
        });
        if (new Set(known.map(({ device }) => device)).size < 2) return [];
        const told = known.map(({ port, device }) => `${unitName(index, port)} is device ${device}`);
        return [
          {
            about: ports.map((port) => port.split('.')[0] ?? port),
            apart: [reading, instance ?? ''],
            says: `${told.join(' and ')}, and ${told.length === 2 ? 'both' : 'all'} send ${readingWords[reading]} ${instance}. A screen tells ${readingWords[reading]} 0 from 1 by the number in the message, not by that of the device.`,
            cure: 'Set the data instance in each unit, and leave the device instance as it was: two numbers, in two places of the menu.',
          },
        ];
      }),
};
