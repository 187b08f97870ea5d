import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const key = { id: 'dead-key', name: 'keypad without a feed', place: 'aft-cabin', tail: taped(0.3) };

/** A small bus that nobody gave a circuit. */
export const busNoFeed: Fault = {
  rule: 'bus/no-feed',
  about: ['dead'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'dead',
      name: 'Bus without a feed',
      sheet: fillerSheet('dead-keypad', 'Keypad without a feed', 1),
      kit: [key],
      walk: [{ place: 'aft-cabin', tees: ['dead-key.n2k', 'feed'] }],
    });
    const panels = boat.supply.panels.map((panel) => ({
      ...panel,
      circuits: panel.circuits.filter((circuit) => circuit.id !== 'c-dead'),
    }));
    return { ...boat, supply: { ...boat.supply, panels } };
  },
};
