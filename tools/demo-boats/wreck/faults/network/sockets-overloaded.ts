import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** Two lamps of 20 W hang on a switch whose supply gives 45 W. */
export const networkSocketsOverloaded: Fault = {
  rule: 'network/sockets-overloaded',
  about: ['hub-weak'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [
        netSheet('switch-weak', {
          ports: [
            socket('p1', { poe: 'at' }),
            socket('p2', { poe: 'at' }),
            socket('p3'),
            { id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' },
          ],
          together: [['p1', 'p2', 'p3']],
          power: [{ port: 'dc', typical: 5, max: 50, unit: 'W', behaves: 'power', minV: 10, maxV: 32 }],
        }),
        netSheet('lamp-fed', {
          ports: [socket('eth')],
          power: [{ port: 'eth', typical: 20, max: 20, unit: 'W', behaves: 'power', minV: 42.5, maxV: 57 }],
        }),
      ],
      kit: [
        { id: 'hub-weak', name: 'switch that feeds', sheet: 'switch-weak', place: 'helm-locker' },
        { id: 'lamp-one', name: 'first searchlight camera', sheet: 'lamp-fed', place: 'roof' },
        { id: 'lamp-two', name: 'second searchlight camera', sheet: 'lamp-fed', place: 'roof' },
      ],
      links: [
        ['link-lamp-1', 'hub-weak.p1', 'lamp-one.eth'],
        ['link-lamp-2', 'hub-weak.p2', 'lamp-two.eth'],
      ],
    }),
};
