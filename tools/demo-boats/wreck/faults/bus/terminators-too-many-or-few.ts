import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const kit = [{ id: 'crowded-key', name: 'keypad with a terminator in it', place: 'stern-locker', tail: taped(0.3) }];

/** A kept trunk cable and the unit at its end each hold a terminator. */
export const busTerminatorsTooManyOrFew: Fault = {
  rule: 'bus/terminators-too-many-or-few',
  about: ['crowded', 'crowded-key.n2k', 'crowded-cable'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'crowded',
      name: 'Bus with two terminators at one end',
      sheet: { ...fillerSheet('crowded-unit', 'Keypad with a terminator in it', 1), terminator: true },
      kit,
      walk: [
        { place: 'panel-locker', tees: ['feed'] },
        { place: 'aft-cabin', via: 'w8', tees: [] },
        { place: 'stern-locker', via: 'w9', tees: ['crowded-key.n2k'] },
      ],
    });
    return {
      ...boat,
      cables: [
        ...boat.cables,
        {
          id: 'crowded-cable',
          kind: 'trunk',
          name: 'old trunk with its terminator',
          from: { place: 'aft-cabin' },
          to: { place: 'stern-locker' },
          serves: 'crowded',
          ways: ['w9'],
          length: taped(2.4),
          diameterMm: 6.5,
          condition: 'good',
          fate: 'stays',
          terminator: true,
        },
      ],
    };
  },
};
