import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** Two routers in one cable, each with its own idea of numbers. */
export const remoteTwoAddressGivers: Fault = {
  rule: 'remote/two-address-givers',
  about: ['giver-new', 'giver-old'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [{ ...netSheet('giver-sheet', { ports: [socket('lan')] }), remote: { givesAddresses: true } }],
      kit: [
        { id: 'giver-new', name: 'new router', sheet: 'giver-sheet', place: 'helm-locker' },
        { id: 'giver-old', name: 'old router', sheet: 'giver-sheet', place: 'aft-cabin' },
      ],
      links: [['link-givers', 'giver-new.lan', 'giver-old.lan']],
    }),
};
