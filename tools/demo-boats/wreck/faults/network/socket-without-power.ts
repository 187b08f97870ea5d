import type { Fault } from '../../fault.ts';
import { netSheet, plainSwitch, socket, withNetwork } from '../../network-units.ts';

/** The camera in the engine space lives on its cable, and hangs on a plain switch. */
export const networkSocketWithoutPower: Fault = {
  rule: 'network/socket-without-power',
  about: ['eye-engine.eth', 'hub-plain.p1'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [
        plainSwitch('switch-plain'),
        netSheet('eye-fed', {
          ports: [socket('eth')],
          power: [{ port: 'eth', typical: 4.8, max: 4.8, unit: 'W', behaves: 'power', minV: 37, maxV: 57 }],
        }),
      ],
      kit: [
        { id: 'hub-plain', name: 'plain switch', sheet: 'switch-plain', place: 'helm-locker' },
        { id: 'eye-engine', name: 'camera in the engine space', sheet: 'eye-fed', place: 'engine-room' },
      ],
      links: [['link-plain', 'hub-plain.p1', 'eye-engine.eth']],
    }),
};
