import type { Fault } from '../../fault.ts';
import { netSheet, plainSwitch, socket, withNetwork } from '../../network-units.ts';

/** Two screens of two makers share a switch. */
export const networkLanguagesSideBySide: Fault = {
  rule: 'network/languages-side-by-side',
  about: ['screen-one', 'screen-two'],
  plant: (boat) =>
    withNetwork(boat, {
      sheets: [
        plainSwitch('switch-shared'),
        netSheet('screen-a', { ports: [socket('eth', { dialect: 'maker-a/1' })] }),
        netSheet('screen-b', { ports: [socket('eth', { dialect: 'maker-b/1' })] }),
      ],
      kit: [
        { id: 'hub-shared', name: 'switch for both screens', sheet: 'switch-shared', place: 'helm-locker' },
        { id: 'screen-one', name: 'screen of the first maker', sheet: 'screen-a', place: 'helm' },
        { id: 'screen-two', name: 'screen of the second maker', sheet: 'screen-b', place: 'aft-cabin' },
      ],
      links: [
        ['link-first-maker', 'hub-shared.p1', 'screen-one.eth'],
        ['link-second-maker', 'hub-shared.p2', 'screen-two.eth'],
      ],
    }),
};
