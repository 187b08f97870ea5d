import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const key = { id: 'high-key', name: 'keypad by the windlass panel', place: 'aft-cabin', tail: taped(0.3) };

/** A small bus hangs on the 24 V panel of the windlass. */
export const busVoltsTooHigh: Fault = {
  rule: 'bus/volts-too-high',
  about: ['high-bus', 'c-high-bus'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'high-bus',
      name: 'Bus on 24 V',
      sheet: fillerSheet('high-keypad', 'Keypad by the windlass panel', 1),
      kit: [key],
      walk: [{ place: 'aft-cabin', tees: ['high-key.n2k', 'feed'] }],
    });
    const panels = boat.supply.panels.map((panel) => ({
      ...panel,
      circuits: panel.circuits.filter((circuit) => circuit.id !== 'c-high-bus'),
    }));
    return {
      ...boat,
      supply: {
        ...boat.supply,
        banks: [
          ...boat.supply.banks,
          {
            id: 'windlass-bank',
            place: 'battery-box',
            chemistry: 'agm',
            nominalV: 24,
            capacityAh: 70,
            lowestV: 23,
            for: 'house',
            coldCrankingA: 600,
            main: { kind: 'fuse', family: 'anl', distance: taped(0.05), ratingA: 40 },
            isolator: true,
          },
        ],
        panels: [
          ...panels,
          {
            id: 'windlass-panel',
            place: 'battery-box',
            from: 'windlass-bank',
            feeder: { length: taped(1), areaMm2: 25 },
            mainA: 40,
            freeWays: 4,
            circuits: [{ id: 'c-high-bus', ratingA: 3, kind: 'breaker', feeds: ['high-bus'] }],
          },
        ],
      },
    };
  },
};
