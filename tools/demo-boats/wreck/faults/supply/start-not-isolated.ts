import type { Fault } from '../../fault.ts';
import { soundBank, withMore } from '../../supply-parts.ts';

/** The bank of the electric engine is wired straight to its starter bank. */
export const supplyStartNotIsolated: Fault = {
  rule: 'supply/start-not-isolated',
  about: ['free-start'],
  plant: (boat) =>
    withMore(boat, {
      banks: [
        soundBank('free-house', { nominalV: 36, lowestV: 35 }),
        soundBank('free-start', { nominalV: 36, lowestV: 35, for: 'start', partedBy: 'nothing' }),
      ],
    }),
};
