import type { Fault } from '../../fault.ts';
import { netSheet, socket, withNetwork } from '../../network-units.ts';

/** The old dome and the wifi box are in one plain switch. */
export const networkPicturesOverWifi: Fault = {
  rule: 'network/pictures-over-wifi',
  about: ['dome-net', 'wifi-box'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [
        netSheet('dome-sheet', { ports: [socket('eth', { sends: [{ reading: 'radar-picture' }] })] }),
        netSheet('wifi-sheet', {
          ports: [socket('lan'), { id: 'radio', protocol: 'wifi', role: 'both' }],
          together: [['lan', 'radio']],
        }),
      ],
      kit: [
        { id: 'dome-net', name: 'dome on the network', sheet: 'dome-sheet', place: 'roof' },
        { id: 'wifi-box', name: 'wifi box', sheet: 'wifi-sheet', place: 'helm-locker' },
      ],
      links: [['link-dome', 'dome-net.eth', 'wifi-box.lan']],
    }),
};
