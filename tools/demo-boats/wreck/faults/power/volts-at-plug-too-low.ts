import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const needy = fillerSheet('needy-panel', 'Alarm panel that wants its volts', 10);

/** An alarm panel on a bus of its own whose maker asks for more than the battery has at its lowest. */
export const powerVoltsAtPlugTooLow: Fault = {
  rule: 'power/volts-at-plug-too-low',
  about: ['house', 'needy-unit.n2k'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'needy',
      name: 'Bus of the alarm panel',
      sheet: {
        ...needy,
        power: [{ port: 'n2k', typical: 0.05, max: 0.5, unit: 'A', behaves: 'power', minV: 11.7, maxV: 16 }],
      },
      kit: [{ id: 'needy-unit', name: 'alarm panel', place: 'stern-locker', tail: taped(0.3) }],
      walk: [
        { place: 'aft-cabin', tees: ['feed'] },
        { place: 'stern-locker', via: 'w9', tees: ['needy-unit.n2k'] },
      ],
    }),
};
