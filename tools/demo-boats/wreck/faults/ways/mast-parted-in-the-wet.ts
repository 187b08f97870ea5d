import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** A camera on a signal mast whose foot stands in the bilge well, with no dry place by it. */
export const waysMastPartedInTheWet: Fault = {
  rule: 'ways/mast-parted-in-the-wet',
  about: ['mast-heel'],
  plant: (boat) =>
    withNetwork(
      {
        ...boat,
        places: [
          ...boat.places,
          {
            id: 'mast-heel',
            name: 'heel of the signal mast',
            xM: 6.5,
            yM: 0,
            zM: -0.3,
            exposure: 'bilge',
            reach: 'hard',
            tees: false,
          },
          {
            id: 'mast-top',
            name: 'top of the signal mast',
            xM: 6.5,
            yM: 0,
            zM: 1.9,
            exposure: 'weather',
            reach: 'aloft',
            tees: false,
          },
        ],
        ways: [
          ...boat.ways,
          { id: 'signal-mast', ends: ['mast-heel', 'mast-top'], length: taped(2.3), kind: 'mast', known: 'seen' },
          { id: 'to-mast', ends: ['bilge-well', 'mast-heel'], length: taped(0.3), kind: 'open', known: 'seen' },
        ],
      },
      {
        sheets: [netSheet('eye-mast', { ports: [socket('eth')] })],
        kit: [
          { id: 'eye-aloft', name: 'camera on the signal mast', sheet: 'eye-mast', place: 'mast-top' },
          { id: 'eye-store', name: 'recorder of the mast camera', sheet: 'eye-mast', place: 'fore-cabin' },
        ],
        links: [['link-mast', 'eye-aloft.eth', 'eye-store.eth']],
      },
    ),
};
