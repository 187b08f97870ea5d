import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** A log in a bronze housing that touches no wire, screwed straight into the bottom. */
export const isolationHousingOnMetalHull: Fault = {
  rule: 'isolation/housing-on-metal-hull',
  about: ['keel-log'],
  plant: (boat) =>
    withMetalUnit(boat, {
      kit: { id: 'keel-log', name: 'log in a bronze housing', place: 'bilge-well', tail: taped(0.4), mount: 'metal' },
      kind: 'speed-sensor',
      earthing: { bodyTo: 'nothing' },
    }),
};
