import type { Fault } from '../../fault.ts';

/** Nobody has drawn how a cable gets to the lamp at the bow, so it cannot be fed. */
export const waysPlaceJoinedToNothing: Fault = {
  rule: 'ways/place-joined-to-nothing',
  about: ['bow-rail'],
  plant: (boat) => ({
    ...boat,
    places: [
      ...boat.places,
      {
        id: 'bow-rail',
        name: 'rail at the bow',
        xM: 9.6,
        yM: 0,
        zM: 1.9,
        exposure: 'weather',
        reach: 'open',
        tees: false,
      },
    ],
    sheets: [
      ...boat.sheets,
      {
        id: 'bow-lamp-sheet',
        name: 'Lamp on the rail, by its manual',
        kind: 'lamp',
        source: 'manual',
        sourceNote: 'Invented for this boat.',
        plugs: [],
        ports: [],
      },
    ],
    kit: [
      ...boat.kit,
      { id: 'bow-lamp-old', name: 'lamp on the rail', sheet: 'bow-lamp-sheet', fate: 'stays', place: 'bow-rail' },
    ],
  }),
};
