import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** A tank sender of which nobody knows how its signal goes home. */
export const isolationNotLookedAt: Fault = {
  rule: 'isolation/not-looked-at',
  about: ['fore-sender'],
  plant: (boat) =>
    withMetalUnit(boat, {
      kit: { id: 'fore-sender', name: 'sender of the fore tank', place: 'fore-cabin', tail: taped(0.3) },
      kind: 'tank-sender',
      earthing: {},
    }),
};
