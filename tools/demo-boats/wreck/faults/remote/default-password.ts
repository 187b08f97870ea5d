import type { Fault } from '../../fault.ts';
import { netSheet, withNetwork } from '../../network-units.ts';

/** A wifi box in the aft cabin still has the password that stands in its manual. */
export const remoteDefaultPassword: Fault = {
  rule: 'remote/default-password',
  about: ['fresh-box'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [netSheet('fresh-box-sheet', { ports: [{ id: 'air', protocol: 'wifi', role: 'both' }] })],
      kit: [
        {
          id: 'fresh-box',
          name: 'wifi box as it came',
          sheet: 'fresh-box-sheet',
          place: 'aft-cabin',
          remote: { password: 'default' },
        },
      ],
      links: [],
    }),
};
