import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** A screen set tight against the bulkhead, its cable bent hard behind the plug. */
export const plugsNoRoomToBend: Fault = {
  rule: 'plugs/no-room-to-bend',
  about: ['tight-screen'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [netSheet('screen-tight', { ports: [socket('eth')] })],
      kit: [
        {
          id: 'tight-screen',
          name: 'screen against the bulkhead',
          sheet: 'screen-tight',
          place: 'helm',
          tail: taped(0.1),
        },
        { id: 'tight-store', name: 'recorder of the tight screen', sheet: 'screen-tight', place: 'helm-locker' },
      ],
      links: [['link-tight', 'tight-screen.eth', 'tight-store.eth']],
    }),
};
