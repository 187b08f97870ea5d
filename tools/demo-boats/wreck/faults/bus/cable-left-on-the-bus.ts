import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const kit = [{ id: 'ring-key', name: 'keypad on the ring', place: 'panel-locker', tail: taped(0.3) }];

/** The new trunk runs past the panel; the old one through the engine space is left plugged in at both ends. */
export const busCableLeftOnTheBus: Fault = {
  rule: 'bus/cable-left-on-the-bus',
  about: ['ring-bus', 'ring-cable'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'ring-bus',
      name: 'Bus in a ring',
      sheet: fillerSheet('ring-keypad', 'Keypad on the ring', 1),
      kit,
      walk: [
        { place: 'panel-locker', tees: ['ring-key.n2k', 'feed'] },
        { place: 'aft-cabin', via: 'w8', tees: [] },
      ],
    });
    return {
      ...boat,
      cables: [
        ...boat.cables,
        {
          id: 'ring-cable',
          kind: 'trunk',
          name: 'old trunk through the engine space',
          from: { place: 'panel-locker' },
          to: { place: 'aft-cabin' },
          serves: 'ring-bus',
          ways: ['w6', 'w7'],
          length: taped(3.3),
          diameterMm: 6.5,
          condition: 'good',
          fate: 'stays',
        },
      ],
    };
  },
};
