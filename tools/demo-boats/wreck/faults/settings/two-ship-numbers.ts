import { withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { withAis } from '../../measured-parts.ts';

/** A used AIS still has the number of the ship it came from. */
export const settingsTwoShipNumbers: Fault = {
  rule: 'settings/two-ship-numbers',
  about: ['ais-used'],
  plant: (boat) =>
    withUnit(withAis(boat, 'ais-used', 'stays'), 'ais-used', (unit) => ({
      ...unit,
      aboard: { settings: [{ name: 'MMSI', value: '000333444' }] },
    })),
};
