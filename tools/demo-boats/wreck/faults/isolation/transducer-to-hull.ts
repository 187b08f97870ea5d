import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** A bronze transducer whose housing is its minus; a pad of wood parts it from the plating, but a bolt goes through. */
export const isolationTransducerToHull: Fault = {
  rule: 'isolation/transducer-to-hull',
  about: ['keel-ping'],
  plant: (boat) =>
    withMetalUnit(boat, {
      kit: { id: 'keel-ping', name: 'bronze transducer', place: 'bilge-well', tail: taped(0.4), mount: 'metal' },
      kind: 'transducer',
      earthing: { bodyTo: 'negative' },
    }),
};
