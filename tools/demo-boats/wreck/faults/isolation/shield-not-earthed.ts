import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

/** The shield of a small bus was cut off at the feed, to be tidy. */
export const isolationShieldNotEarthed: Fault = {
  rule: 'isolation/shield-not-earthed',
  about: ['bare-bus'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'bare-bus',
      name: 'Bus with its shield cut off',
      sheet: fillerSheet('bare-keypad', 'Keypad on a bus without earth', 1),
      kit: [{ id: 'bare-key', name: 'keypad on a bus without earth', place: 'aft-cabin', tail: taped(0.3) }],
      walk: [{ place: 'aft-cabin', tees: ['bare-key.n2k', 'feed'] }],
    });
    return { ...boat, buses: boat.buses.map((bus) => (bus.id === 'bare-bus' ? { ...bus, shieldAt: [] } : bus)) };
  },
};
