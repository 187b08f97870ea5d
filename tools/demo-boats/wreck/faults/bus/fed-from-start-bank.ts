import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const key = { id: 'start-key', name: 'keypad by the engine', place: 'aft-cabin', tail: taped(0.3) };

/** A small bus hangs on the panel of the engine. */
export const busFedFromStartBank: Fault = {
  rule: 'bus/fed-from-start-bank',
  about: ['engine-bus'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'engine-bus',
      name: 'Engine bus',
      sheet: fillerSheet('start-keypad', 'Keypad by the engine', 1),
      kit: [key],
      walk: [{ place: 'aft-cabin', tees: ['start-key.n2k', 'feed'] }],
    });
    const panels = boat.supply.panels.map((panel) => ({
      ...panel,
      circuits: panel.circuits.filter((circuit) => circuit.id !== 'c-engine-bus'),
    }));
    return {
      ...boat,
      supply: {
        ...boat.supply,
        banks: [
          ...boat.supply.banks,
          {
            id: 'starter',
            place: 'battery-box',
            chemistry: 'flooded',
            nominalV: 12,
            capacityAh: 70,
            lowestV: 11.5,
            for: 'start',
            coldCrankingA: 600,
            main: { kind: 'fuse', family: 'anl', distance: taped(0.05), ratingA: 40 },
            isolator: true,
            partedBy: 'apart',
          },
        ],
        panels: [
          ...panels,
          {
            id: 'engine-panel',
            place: 'battery-box',
            from: 'starter',
            feeder: { length: taped(1), areaMm2: 25 },
            mainA: 40,
            freeWays: 4,
            circuits: [{ id: 'c-engine-bus', ratingA: 3, kind: 'breaker', feeds: ['engine-bus'] }],
          },
        ],
      },
    };
  },
};
