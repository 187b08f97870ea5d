import type { Fault } from '../../fault.ts';
import { soundBank, withMore } from '../../supply-parts.ts';

/** One alternator charges a bank of 12 V and one of 24 V. */
export const supplyMixedVolts: Fault = {
  rule: 'supply/mixed-volts',
  about: ['mixed-alternator', 'mixed-12', 'mixed-24'],
  plant: (boat) =>
    withMore(boat, {
      banks: [soundBank('mixed-12'), soundBank('mixed-24', { nominalV: 24, lowestV: 23 })],
      chargers: [
        {
          id: 'mixed-alternator',
          place: 'engine-room',
          kind: 'alternator',
          charges: ['mixed-12', 'mixed-24'],
          ratedA: 60,
        },
      ],
    }),
};
