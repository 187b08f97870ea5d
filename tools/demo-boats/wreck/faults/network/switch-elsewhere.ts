import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { netSheet, plainSwitch, socket, withNetwork } from '../../network-units.ts';

/** A new switch is planned in the stern for two units in the bow. */
export const networkSwitchElsewhere: Fault = {
  rule: 'network/switch-elsewhere',
  about: ['hub-stern'],
  plant: (boat) => {
    const planned = withNetwork(boat, {
      sheets: [plainSwitch('switch-stern'), netSheet('eye-bow', { ports: [socket('eth')] })],
      kit: [
        { id: 'hub-stern', name: 'switch in the stern', sheet: 'switch-stern', place: 'stern-locker' },
        { id: 'eye-bow-1', name: 'first camera in the bow', sheet: 'eye-bow', place: 'fore-cabin' },
        { id: 'eye-bow-2', name: 'second camera in the bow', sheet: 'eye-bow', place: 'fore-cabin' },
      ],
      links: [
        ['link-bow-1', 'hub-stern.p1', 'eye-bow-1.eth'],
        ['link-bow-2', 'hub-stern.p2', 'eye-bow-2.eth'],
      ],
    });
    return withUnit(planned, 'hub-stern', (unit) => ({ ...unit, fate: 'comes' }));
  },
};
