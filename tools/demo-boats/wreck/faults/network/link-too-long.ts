import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** A camera on a hundred metres of cable that was coiled up in the bow and counted as a way. */
export const networkLinkTooLong: Fault = {
  rule: 'network/link-too-long',
  about: ['eye-far', 'eye-near'],
  plant: (boat) => {
    const far: Boat = {
      ...boat,
      places: [
        ...boat.places,
        {
          id: 'far-mast',
          name: 'head of the far mast',
          xM: 9,
          yM: 0,
          zM: 12,
          exposure: 'weather',
          reach: 'hard',
          tees: false,
        },
      ],
      ways: [
        ...boat.ways,
        { id: 'far-way', ends: ['fore-locker', 'far-mast'], length: taped(104), kind: 'open', known: 'seen' },
      ],
    };
    return withNetwork(far, {
      sheets: [netSheet('eye-plain', { ports: [socket('eth')] })],
      kit: [
        { id: 'eye-far', name: 'camera on the far mast', sheet: 'eye-plain', place: 'far-mast' },
        { id: 'eye-near', name: 'recorder at the helm', sheet: 'eye-plain', place: 'helm' },
      ],
      links: [['link-far', 'eye-far.eth', 'eye-near.eth']],
    });
  },
};
