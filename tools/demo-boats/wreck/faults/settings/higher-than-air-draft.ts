import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

/** A pole with a new camera stands higher than the air draft anybody measured. */
export const settingsHigherThanAirDraft: Fault = {
  rule: 'settings/higher-than-air-draft',
  about: ['pole-camera'],
  plant: (boat) => ({
    ...boat,
    sheets: [
      ...boat.sheets,
      {
        id: 'pole-camera-sheet',
        name: 'Camera on a pole, as its manual has it',
        kind: 'camera',
        source: 'manual',
        sourceNote: 'Read aboard in its manual, chapter on connections.',
        plugs: [],
        ports: [],
        compassSafe: { valueM: 0.2, how: 'papers', lessM: 0, moreM: 0 },
        earthing: { body: 'plastic' },
      },
    ],
    places: [
      ...boat.places,
      {
        id: 'pole-top',
        name: 'top of the pole',
        xM: 4.6,
        yM: 0,
        zM: 5.2,
        exposure: 'weather',
        reach: 'aloft',
        tees: false,
      },
    ],
    ways: [...boat.ways, { id: 'w-pole', ends: ['roof', 'pole-top'], length: taped(2.4), kind: 'open', known: 'seen' }],
    kit: [
      ...boat.kit,
      { id: 'pole-camera', name: 'camera on the pole', sheet: 'pole-camera-sheet', fate: 'comes', place: 'pole-top' },
    ],
  }),
};
