import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';
import { withJoin } from '../../on-steel.ts';

const usb = (boat: Boat, id: string): Boat => ({
  ...boat,
  sheets: boat.sheets.map((sheet) =>
    sheet.id === `${id}-sheet`
      ? {
          ...sheet,
          kind: 'computer-part',
          plugs: [...sheet.plugs, { id: 'usb', connector: 'usb-a', gender: 'female' }],
          ports: [...sheet.ports, { id: 'usb', onPlug: 'usb', protocol: 'usb', role: 'both', isolated: false }],
        }
      : sheet,
  ),
});

const supplied = (boat: Boat): Boat => ({
  ...boat,
  supply: {
    ...boat.supply,
    dcdc: [
      ...boat.supply.dcdc,
      { id: 'desk-supply', place: 'panel-locker', outV: 12, ratedA: 3, efficiencyPct: 88, isolated: true },
    ],
    panels: [
      ...boat.supply.panels.map((panel) =>
        panel.id === 'switches'
          ? {
              ...panel,
              circuits: [
                ...panel.circuits,
                { id: 'c-desk-supply', ratingA: 7.5, kind: 'fuse' as const, feeds: ['desk-supply'] },
              ],
            }
          : panel,
      ),
      {
        id: 'desk-panel',
        place: 'panel-locker',
        from: 'desk-supply',
        feeder: { length: taped(0.5), areaMm2: 6 },
        mainA: 3,
        freeWays: 2,
        circuits: [],
      },
    ],
  },
});

/** A computer on an isolated supply, and a printer on the house bank, joined by a plain cable. */
export const isolationSuppliesTied: Fault = {
  rule: 'isolation/supplies-tied',
  about: ['desk-computer', 'desk-printer'],
  plant: (boat) => {
    const one = withFedUnit(supplied(boat), {
      kit: { id: 'desk-computer', name: 'computer on its own supply', place: 'aft-cabin', tail: taped(0.5) },
      maxA: 1,
      circuit: { ratingA: 2 },
      panel: 'desk-panel',
    });
    const two = withFedUnit(one, {
      kit: { id: 'desk-printer', name: 'printer on the house bank', place: 'aft-cabin', tail: taped(0.5) },
      maxA: 1,
    });
    return withJoin(usb(usb(two, 'desk-computer'), 'desk-printer'), {
      id: 'usb-desk',
      kind: 'usb',
      members: [
        { kit: 'desk-computer', port: 'usb', as: 'both' },
        { kit: 'desk-printer', port: 'usb', as: 'both' },
      ],
    });
  },
};
