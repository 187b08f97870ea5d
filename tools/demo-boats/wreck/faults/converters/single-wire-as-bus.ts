import type { Fault } from '../../fault.ts';

/** A second-hand display was bought for the bus and has only its maker's old wire. */
export const convertersSingleWireAsBus: Fault = {
  rule: 'converters/single-wire-as-bus',
  about: ['wind-display'],
  plant: (boat) => ({
    ...boat,
    sheets: [
      ...boat.sheets,
      {
        id: 'wind-display-on-wire',
        name: 'Second-hand wind display, as its manual has it',
        kind: 'instrument',
        source: 'manual',
        sourceNote: 'Read aboard in its manual, chapter on connections.',
        compassSafe: { valueM: 0.3, how: 'papers' },
        plugs: [{ id: 'wire', connector: 'maker-a-3', gender: 'female' }],
        ports: [
          {
            id: 'wire',
            onPlug: 'wire',
            protocol: 'single-wire',
            dialect: 'maker-a/1',
            role: 'both',
            hears: [{ reading: 'wind-apparent' }],
          },
        ],
      },
    ],
    kit: [
      ...boat.kit,
      {
        id: 'wind-display',
        name: 'second-hand wind display',
        sheet: 'wind-display-on-wire',
        fate: 'comes',
        place: 'helm',
      },
    ],
  }),
};
