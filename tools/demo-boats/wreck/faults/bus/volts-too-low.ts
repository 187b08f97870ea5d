import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** Two lamps of 1 A each at the bow lose about 2 V on light cable from the panel. */
export const busVoltsTooLow: Fault = {
  rule: 'bus/volts-too-low',
  about: ['bow', 'bow-lamp-2.n2k'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'bow',
      name: 'Bow bus',
      sheet: fillerSheet('bow-lamp', 'Bow lamp fed by the bus', 20),
      kit: [
        { id: 'bow-lamp-1', name: 'bow lamp, port', place: 'fore-cabin', tail: taped(1.2) },
        { id: 'bow-lamp-2', name: 'bow lamp, starboard', place: 'fore-cabin', tail: taped(2.5) },
      ],
      walk: [
        { place: 'panel-locker', tees: ['feed'] },
        { place: 'helm-locker', via: 'w5', tees: [] },
        { place: 'bilge-well', via: 'w3', tees: [] },
        { place: 'fore-cabin', via: 'w2', tees: ['bow-lamp-1.n2k', 'bow-lamp-2.n2k'] },
      ],
    }),
};
