import type { Fault } from '../../fault.ts';
import { netSheet, plainSwitch, socket, withNetwork } from '../../network-units.ts';

/** Two old cameras were led to one socket of a switch, the other two being taken in the mind of whoever drew it. */
export const networkTwoCablesInOneSocket: Fault = {
  rule: 'network/two-cables-in-one-socket',
  about: ['hub-full.p1', 'link-full-1', 'link-full-2'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [plainSwitch('switch-full'), netSheet('eye-full', { ports: [socket('eth')] })],
      kit: [
        { id: 'hub-full', name: 'switch under the helm', sheet: 'switch-full', place: 'helm-locker' },
        { id: 'eye-fore', name: 'camera forward', sheet: 'eye-full', place: 'fore-cabin' },
        { id: 'eye-aft', name: 'camera aft', sheet: 'eye-full', place: 'cockpit' },
      ],
      links: [
        ['link-full-1', 'hub-full.p1', 'eye-fore.eth'],
        ['link-full-2', 'hub-full.p1', 'eye-aft.eth'],
      ],
    }),
};
