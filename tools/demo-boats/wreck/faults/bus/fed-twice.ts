import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const key = { id: 'twice-key', name: 'keypad with two feeds', place: 'aft-cabin', tail: taped(0.3) };

/** A bus with a feed from a second fuse, put there when the first seemed dead. */
export const busFedTwice: Fault = {
  rule: 'bus/fed-twice',
  about: ['twice', 'c-twice', 'c-twice-again'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'twice',
      name: 'Bus with two feeds',
      sheet: fillerSheet('twice-keypad', 'Keypad with two feeds', 1),
      kit: [key],
      walk: [{ place: 'aft-cabin', tees: ['twice-key.n2k', 'feed'] }],
    });
    return {
      ...boat,
      supply: {
        ...boat.supply,
        panels: boat.supply.panels.map((panel) =>
          panel.id === 'switches'
            ? {
                ...panel,
                circuits: [...panel.circuits, { id: 'c-twice-again', ratingA: 3, kind: 'fuse', feeds: ['twice'] }],
              }
            : panel,
        ),
      },
    };
  },
};
