import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const lamp = { id: 'up-lamp', name: 'keypad in the roof', place: 'loft', tail: taped(0.3) };

/** A trunk goes through a gland to the loft and back again. */
export const busTrunkTooOftenInAWay: Fault = {
  rule: 'bus/trunk-too-often-in-a-way',
  about: ['up', 'w-loft'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'up',
      name: 'Loft bus',
      sheet: fillerSheet('up-keypad', 'Keypad in the roof', 1),
      kit: [lamp],
      walk: [
        { place: 'panel-locker', tees: ['feed'] },
        { place: 'loft', via: 'w-loft', tees: ['up-lamp.n2k'] },
        { place: 'panel-locker', via: 'w-loft', tees: [] },
      ],
    });
    return {
      ...boat,
      places: [
        ...boat.places,
        {
          id: 'loft',
          name: 'loft under the roof',
          xM: 4.6,
          yM: -0.6,
          zM: 2,
          exposure: 'dry',
          reach: 'panel',
          tees: true,
        },
      ],
      ways: [
        ...boat.ways,
        { id: 'w-loft', ends: ['loft', 'panel-locker'], length: taped(1.4), kind: 'gland', known: 'seen' },
      ],
    };
  },
};
