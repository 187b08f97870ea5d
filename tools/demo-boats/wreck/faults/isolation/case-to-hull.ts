import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** An old amplifier in a metal case that is its minus, bolted to a frame. */
export const isolationCaseToHull: Fault = {
  rule: 'isolation/case-to-hull',
  about: ['frame-amp'],
  plant: (boat) =>
    withMetalUnit(boat, {
      kit: { id: 'frame-amp', name: 'amplifier on a frame', place: 'aft-cabin', tail: taped(0.4), mount: 'metal' },
      kind: 'amplifier',
      earthing: { bodyTo: 'negative' },
    }),
};
