import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** Two network cables of 5 m were bought for a run that lies in the bilge from end to end. */
export const shoppingJointInTheWet: Fault = {
  rule: 'shopping/joint-in-the-wet',
  about: ['bilge-run', 'eye-bilge-1', 'eye-bilge-2'],
  plant: (boat) => {
    const wet = withNetwork(
      {
        ...boat,
        places: [
          ...boat.places,
          {
            id: 'bilge-far',
            name: 'bilge under the aft cabin',
            xM: 2.4,
            yM: 0,
            zM: -0.3,
            exposure: 'bilge',
            reach: 'panel',
            tees: false,
          },
        ],
        ways: [
          ...boat.ways,
          { id: 'bilge-run', ends: ['bilge-well', 'bilge-far'], length: taped(8), kind: 'open', known: 'pulled' },
        ],
      },
      {
        sheets: [netSheet('eye-bilge', { ports: [socket('eth')] })],
        kit: [
          { id: 'eye-bilge-1', name: 'level camera forward', sheet: 'eye-bilge', place: 'bilge-well' },
          { id: 'eye-bilge-2', name: 'level camera aft', sheet: 'eye-bilge', place: 'bilge-far' },
        ],
        links: [['link-bilge', 'eye-bilge-1.eth', 'eye-bilge-2.eth']],
      },
    );
    const line = 'ethernet:eye-bilge-1.socket-eth~eye-bilge-2.socket-eth';
    const pieces = { ...wet.pins?.pieces, [line]: { pieces: [{ mm: 5000 }, { mm: 5000 }], state: 'fixed' as const } };
    return { ...wet, pins: { ...wet.pins, pieces } };
  },
};
