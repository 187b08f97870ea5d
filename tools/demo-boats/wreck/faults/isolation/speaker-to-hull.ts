import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** A horn speaker whose basket is one of its poles, screwed to the cockpit side. */
export const isolationSpeakerToHull: Fault = {
  rule: 'isolation/speaker-to-hull',
  about: ['cockpit-horn'],
  plant: (boat) =>
    withMetalUnit(boat, {
      kit: { id: 'cockpit-horn', name: 'horn speaker', place: 'cockpit', tail: taped(0.4), mount: 'metal' },
      kind: 'loudspeaker',
      earthing: { bodyTo: 'negative' },
    }),
};
