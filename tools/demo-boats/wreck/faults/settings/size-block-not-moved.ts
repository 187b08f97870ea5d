import type { Fault } from '../../fault.ts';
import { withAis, withTyped } from '../../measured-parts.ts';

/** The antenna of the AIS stands on the roof, its size block is that of the stern rail it came from. */
export const settingsSizeBlockNotMoved: Fault = {
  rule: 'settings/size-block-not-moved',
  about: ['ais-moved'],
  plant: (before) => {
    const boat = withAis(before, 'ais-moved', 'stays');
    const joined = {
      ...boat,
      kit: [
        ...boat.kit,
        {
          id: 'gnss-moved',
          name: 'position antenna of the AIS',
          sheet: 'gnss-moved-sheet',
          fate: 'stays' as const,
          place: 'roof',
        },
      ],
      sheets: [
        ...boat.sheets,
        {
          id: 'gnss-moved-sheet',
          name: 'Position antenna on coax, as its manual has it',
          kind: 'position-antenna',
          source: 'manual' as const,
          sourceNote: 'Read aboard in its manual, chapter on connections.',
          plugs: [{ id: 'coax', connector: 'tnc', gender: 'male' as const }],
          ports: [
            {
              id: 'rf',
              onPlug: 'coax',
              protocol: 'coax' as const,
              role: 'talk' as const,
              sends: [{ reading: 'position' as const }],
            },
          ],
          compassSafe: { valueM: 0.2, how: 'papers' as const, lessM: 0, moreM: 0 },
          earthing: { body: 'plastic' as const },
        },
      ],
      joins: [
        ...boat.joins,
        {
          id: 'coax-moved',
          kind: 'coax' as const,
          members: [
            { kit: 'gnss-moved', port: 'rf', as: 'talk' as const },
            { kit: 'ais-moved', port: 'gnss-rf', as: 'listen' as const },
          ],
          hold: 'fixed' as const,
        },
      ],
    };
    return withTyped(
      joined,
      { unit: 'ais-moved', what: 'ais-bow', figure: 10, in: 'm' },
      { unit: 'ais-moved', what: 'ais-stern', figure: 0, in: 'm' },
    );
  },
};
