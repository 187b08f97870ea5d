import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const key = { id: 'fused-key', name: 'keypad behind a big fuse', place: 'aft-cabin', tail: taped(0.3) };

/** 7.5 A on light cable. */
export const busFuseOverCable: Fault = {
  rule: 'bus/fuse-over-cable',
  about: ['fused', 'c-fused'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'fused',
      name: 'Bus behind a big fuse',
      sheet: fillerSheet('fused-keypad', 'Keypad behind a big fuse', 1),
      kit: [key],
      walk: [{ place: 'aft-cabin', tees: ['fused-key.n2k', 'feed'] }],
    });
    return {
      ...boat,
      supply: {
        ...boat.supply,
        panels: boat.supply.panels.map((panel) => ({
          ...panel,
          circuits: panel.circuits.map((circuit) =>
            circuit.id === 'c-fused' ? { ...circuit, ratingA: 7.5 } : circuit,
          ),
        })),
      },
    };
  },
};
