import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** Cable to the stern is bought by a length that somebody thought likely, round by a side nobody has taped. */
export const provenanceLengthGuessedAndBought: Fault = {
  rule: 'provenance/length-guessed-and-bought',
  about: ['guess-bus', 'w-guessed'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'guess-bus',
      name: 'Bus to the stern',
      sheet: fillerSheet('stern-key', 'Keypad for the stern', 1),
      kit: [
        { id: 'stern-key-a', name: 'keypad in the aft cabin', place: 'aft-cabin', tail: taped(0.3) },
        { id: 'stern-key-b', name: 'keypad in the stern', place: 'stern-locker', tail: taped(0.3) },
      ],
    });
    const walk = [
      { place: 'aft-cabin', tees: ['stern-key-a.n2k', 'feed'] },
      { place: 'stern-locker', via: 'w-guessed', tees: ['stern-key-b.n2k'] },
    ];
    return {
      ...boat,
      ways: [
        ...boat.ways,
        {
          id: 'w-guessed',
          ends: ['aft-cabin', 'stern-locker'],
          length: { valueM: 3.1, how: 'guessed' },
          kind: 'open',
          known: 'seen',
        },
      ],
      pins: {
        ...boat.pins,
        layouts: { ...boat.pins?.layouts, 'guess-bus': { grade: 'light', walk, state: 'bought' } },
      },
    };
  },
};
