import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** A drop to a mast step goes through a 12 mm gland. */
export const plugsPlugTooBigForTheWay: Fault = {
  rule: 'plugs/plug-too-big-for-the-way',
  about: ['w-gland'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'gland-bus',
      name: 'Bus through a gland',
      sheet: fillerSheet('gland-keypad', 'Keypad behind a gland', 1),
      kit: [{ id: 'gland-key', name: 'keypad behind a gland', place: 'step', tail: taped(0.3) }],
      walk: [{ place: 'panel-locker', tees: ['gland-key.n2k', 'feed'] }],
    });
    return {
      ...boat,
      places: [
        ...boat.places,
        {
          id: 'step',
          name: 'step behind a small gland',
          xM: 4.6,
          yM: -1.4,
          zM: 1.1,
          exposure: 'spray',
          reach: 'open',
          tees: false,
        },
      ],
      ways: [
        ...boat.ways,
        {
          id: 'w-gland',
          ends: ['panel-locker', 'step'],
          length: taped(0.8),
          kind: 'gland',
          known: 'seen',
          bore: { mm: 12, how: 'taped' },
        },
      ],
    };
  },
};
