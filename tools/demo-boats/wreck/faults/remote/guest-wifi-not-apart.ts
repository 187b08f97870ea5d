import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** Guests are given the one wifi of the router, which is one network with the camera. */
export const remoteGuestWifiNotApart: Fault = {
  rule: 'remote/guest-wifi-not-apart',
  about: ['guest-box'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [
        netSheet('guest-box-sheet', {
          ports: [socket('lan'), { id: 'air', protocol: 'wifi', role: 'both' }],
          together: [['lan', 'air']],
        }),
        netSheet('eye-guests', { ports: [socket('eth')] }),
      ],
      kit: [
        {
          id: 'guest-box',
          name: 'router with one wifi for all',
          sheet: 'guest-box-sheet',
          place: 'helm-locker',
          remote: { guests: 'air' },
        },
        { id: 'guest-eye', name: 'camera that guests find', sheet: 'eye-guests', place: 'roof' },
      ],
      links: [['link-guests', 'guest-box.lan', 'guest-eye.eth']],
    }),
};
